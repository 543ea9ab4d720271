import { describe, expect, it } from 'vitest';
import { FOOT, POUND } from '#quantities';
import { record } from '../../record.ts';
import { takenOff } from '../asking.ts';

const bothSides = (...feet: number[]): number[] => feet.flatMap((x) => [-x * FOOT, x * FOOT]);

const electric = takenOff({
  kind: 'units',
  basis: 'published',
  units: [
    { name: 'moving head', count: 6, each: 79 * POUND, xs: bothSides(4, 12, 20) },
    {
      name: 'profile',
      count: 12,
      each: 17 * POUND,
      clampEach: 1.5 * POUND,
      xs: bothSides(2, 6, 8, 10, 14, 16),
    },
    { name: 'cable end', count: 1, each: 30 * POUND, xs: [-24 * FOOT] },
    { name: 'bar cable', count: 1, each: 60 * POUND },
  ],
  placement: { from: -25 * FOOT, to: 25 * FOOT },
});

describe('VAL-TKO-13 an electric', () => {
  it('pulls a little to stage right of the centre line', () => {
    const loads = electric.loads ?? [];
    const loadsKg = loads.reduce((sum, { massKg }) => sum + massKg, 0);
    const errors = [
      Math.abs((electric.centreX ?? Number.NaN) / FOOT + 0.916031),
      Math.abs(loadsKg / POUND - 786),
      Math.abs((electric.mass?.mass ?? Number.NaN) / POUND - 786),
    ];
    record({
      id: 'VAL-TKO-13',
      worst: Math.max(...errors),
      tolerance: 1e-6,
      unit: 'ft or lb',
      cases: errors.length,
    });
    expect(loads.filter((load) => 'x' in load)).toHaveLength(19);
    expect(loads.filter((load) => 'from' in load)).toHaveLength(1);
  });
});
