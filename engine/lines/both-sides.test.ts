import { describe, expect, it } from 'vitest';
import { FOOT, GRAVITY, POUND, POUND_FORCE } from '#quantities';
import { arborWireMass, restrainedForce } from './both-sides.ts';

/** Six lines of the demo with the batten tied at 4 ft: the arbor stands 65.5 ft up. */
const TIED = {
  purchase: 1,
  lines: 6,
  massPerLength: (0.11 * POUND) / FOOT,
  headZ: 68 * FOOT,
  wireEndZ: 6 * FOOT,
  attachZ: 65.5 * FOOT,
} as const;

describe('the force of all lines with one side held', () => {
  it('is that of an arbor too heavy for a batten that is tied down', () => {
    // By hand: 800 lb and 6 · 0.11 · 2.5 ft of wire; against 169 lb and 6 · 0.11 · 62 ft.
    const found = restrainedForce(TIED, { battenSideKg: 169 * POUND, arborMassKg: 800 * POUND });
    expect(found.arborSide / POUND_FORCE).toBeCloseTo(801.65, 6);
    expect(found.battenSide / POUND_FORCE).toBeCloseTo(209.92, 6);
    expect(found.force).toBe(found.arborSide);
  });

  it('is that of the batten where the arbor is held and light', () => {
    const found = restrainedForce(TIED, { battenSideKg: 500 * POUND, arborMassKg: 161 * POUND });
    expect(found.force).toBe(found.battenSide);
  });

  it('halves a double-purchase arbor, whose dead ends carry the rest', () => {
    const double = { ...TIED, purchase: 2 as const, massPerLength: 0 };
    const found = restrainedForce(double, { battenSideKg: 0, arborMassKg: 100 });
    expect(found.arborSide).toBeCloseTo(50 * GRAVITY, 9);
  });
});

describe('wire on the side of the arbor', () => {
  it('is little with the batten in and much with it out', () => {
    expect(arborWireMass(TIED) / POUND).toBeCloseTo(6 * 0.11 * 2.5, 9);
    const out = { ...TIED, attachZ: 10 * FOOT };
    expect(arborWireMass(out) / POUND).toBeCloseTo(38.28, 9);
    expect(arborWireMass({ ...out, purchase: 2 }) / POUND).toBeCloseTo(76.56, 9);
  });
});
