import { FOOT, POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { takenOff } from '../asking.ts';

const bothSides = (...feet: number[]): number[] => feet.flatMap((x) => [-x * FOOT, x * FOOT]);

const electric = () =>
  takenOff({
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

export const theCase: ValidationCase = {
  id: 'VAL-TKO-13',
  title: 'Where an electric pulls: units at their x, cable spread, a cable end to one side',
  calculation: 'takeoff',
  unit: 'ft or lb',
  tolerance: 1e-6,
  run: () => {
    const { loads, centreX, mass } = electric();
    const loadsKg = (loads ?? []).reduce((sum, { massKg }) => sum + massKg, 0);
    return [
      Math.abs((centreX ?? Number.NaN) / FOOT + 0.916031),
      Math.abs(loadsKg / POUND - 786),
      Math.abs((mass?.mass ?? Number.NaN) / POUND - 786),
    ];
  },
  also: [
    {
      what: '19 loads at a point and one spread',
      unit: 'loads miscounted',
      tolerance: 0,
      run: () => {
        const loads = electric().loads ?? [];
        return [
          Math.abs(loads.filter((load) => 'x' in load).length - 19),
          Math.abs(loads.filter((load) => 'from' in load).length - 1),
        ];
      },
    },
  ],
};
