import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, metres, POUND } from '#quantities';
import { exampleLoom } from '../example-house.ts';
import { hangingLoomKg, type Loom, lowPointM } from './looms.ts';

const loom = (lbPerFt: number, lengthFt: number, fixedFt: number | null): Loom => ({
  item: exampleLoom,
  kgPerM: (lbPerFt * POUND) / FOOT,
  lengthM: lengthFt * FOOT,
  fixedAtM: fixedFt === null ? null : fixedFt * FOOT,
});

const hangsLb = (of: Loom, battenFt: number): number => hangingLoomKg(of, battenFt * FOOT) / POUND;

describe('what a loom hangs on the batten', () => {
  it('hangs the batten’s side of the loop, by hand: 36 ft less a low point of 12 ft', () => {
    // ( 38 + 36 − 50 ) / 2 = 12 ft; 3.1 lb/ft · 24 ft = 74.4 lb.
    expect(hangsLb(loom(3.1, 50, 38), 36)).toBeCloseTo(74.4, 9);
  });

  it('hangs only what is between batten and deck while the loop lies there', () => {
    // ( 38 + 4 − 50 ) / 2 = −4 ft: 8 ft lie on the deck, and 4 ft hang.
    expect(lowPointM(loom(3.1, 50, 38), metres(4 * FOOT)) / FOOT).toBeCloseTo(-4, 9);
    expect(hangsLb(loom(3.1, 50, 38), 4)).toBeCloseTo(12.4, 9);
  });

  it('hangs no more than all of a loom that drops to the deck', () => {
    expect(hangsLb(loom(2, 30, null), 20)).toBeCloseTo(40, 9);
    expect(hangsLb(loom(2, 30, null), 45)).toBeCloseTo(60, 9);
  });

  it('never hangs less on the way out, nor more than there is (seed 4711)', () => {
    const heights = fc.double({ min: 0, max: 25, noNaN: true });
    fc.assert(
      fc.property(heights, heights, heights, heights, (lowM, moreM, lengthM, fixedAtM) => {
        const of: Loom = { item: exampleLoom, kgPerM: 1.5, lengthM, fixedAtM };
        const lowKg = hangingLoomKg(of, lowM);
        const highKg = hangingLoomKg(of, lowM + moreM);
        return highKg >= lowKg - 1e-9 && highKg <= 1.5 * lengthM + 1e-9;
      }),
      { seed: 4711 },
    );
  });
});
