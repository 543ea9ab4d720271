import { describe, expect, it } from 'vitest';
import { FOOT, INCH, POUND_FORCE } from '#quantities';
import { publishedAxialStiffness } from './construction.ts';
import { fleetAngle, keepsFleetRule } from './fleet.ts';
import { lineStiffness, lineStretch } from './stretch.ts';

describe('a line as a spring', () => {
  it('is softer the longer it is', () => {
    expect(lineStiffness({ axialStiffnessN: 1_000_000, freeLengthM: 20 })).toBe(50_000);
    expect(lineStiffness({ axialStiffnessN: 1_000_000, freeLengthM: 40 })).toBe(25_000);
  });

  it('stretches by its tension over its stiffness', () => {
    expect(lineStretch({ tensionN: 500, axialStiffnessN: 1_000_000, lengthM: 20 })).toBe(0.01);
    expect(lineStretch({ tensionN: 0, axialStiffnessN: 1_000_000, lengthM: 20 })).toBe(0);
  });
});

describe('the stiffness of a published construction', () => {
  it('goes by the square of the diameter', () => {
    const quarter = publishedAxialStiffness('7x19 galvanized', INCH / 4);
    expect(quarter / POUND_FORCE).toBeCloseTo(446_428.57, 2);
    expect(publishedAxialStiffness('7x19 galvanized', INCH / 2) / quarter).toBeCloseTo(4, 12);
  });

  it('is less with more wires of stainless steel, and most in a single strand', () => {
    const at = (construction: Parameters<typeof publishedAxialStiffness>[0]) =>
      publishedAxialStiffness(construction, INCH / 4);
    expect(at('7x19 stainless 302')).toBeLessThan(at('7x19 galvanized'));
    expect(at('7x19 galvanized')).toBeLessThan(at('7x7 galvanized'));
    expect(at('7x7 galvanized')).toBeLessThan(at('1x19 galvanized'));
  });
});

describe('the fleet angle', () => {
  it('is that of the offset over the distance, to either side', () => {
    const angle = fleetAngle({ offsetM: 1, distanceM: 1 });
    expect(angle).toBeCloseTo(Math.PI / 4, 12);
    expect(fleetAngle({ offsetM: -1, distanceM: 1 })).toBe(angle);
    expect(fleetAngle({ offsetM: 0, distanceM: 3 })).toBe(0);
  });

  it('keeps the taught rule up to one out for forty along', () => {
    expect(keepsFleetRule({ offsetM: 0.25, distanceM: 10 })).toBe(true);
    expect(keepsFleetRule({ offsetM: -0.2501, distanceM: 10 })).toBe(false);
    // 3 · 0.1 is a hair over 0.3.
    expect(keepsFleetRule({ offsetM: 3 * 0.1, distanceM: 12 })).toBe(true);
    expect(keepsFleetRule({ offsetM: 7.5 * INCH, distanceM: 25 * FOOT })).toBe(true);
    expect(keepsFleetRule({ offsetM: 0.65 * FOOT, distanceM: 25 * FOOT })).toBe(false);
  });
});
