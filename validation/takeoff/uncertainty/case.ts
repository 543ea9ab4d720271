import type { ValidationCase } from '../../form.ts';
import { BARE, takenOff } from '../asking.ts';

const pieces = () =>
  takenOff({
    kind: 'hardware',
    basis: 'estimated',
    lines: [
      { name: 'bracket', count: 1, each: { value: 30, tolerance: 3 } },
      { name: 'motor', count: 2, each: { value: 20, tolerance: 2 } },
      { name: 'sign', count: 1, each: { value: 60, relative: 0.2 } },
    ],
  }).mass;

const cloth = () =>
  takenOff({
    kind: 'cloth',
    basis: 'measured',
    // What is none is exactly none.
    toleranceByBasis: { measured: 0 },
    areaMass: { value: 0.4, relative: 0.05 },
    width: { value: 10, tolerance: 0.1 },
    drop: { value: 5, relative: 0.02 },
    fullness: 0,
    ...BARE,
  }).mass;

export const theCase: ValidationCase = {
  id: 'VAL-TKO-12',
  title: 'What a take-off may be off by, linearly and as root-sum-square',
  calculation: 'takeoff',
  unit: 'kg',
  tolerance: 1e-6,
  run: () => {
    const [some, drape] = [pieces(), cloth()];
    const found = [
      some?.uncertainty,
      some?.uncertaintyRss,
      drape?.uncertainty,
      drape?.uncertaintyRss,
    ];
    const wanted = [19, 13, 1.6342, 1.095445];
    return wanted.map((massKg, index) => Math.abs((found[index] ?? Number.NaN) - massKg));
  },
  also: [
    {
      what: 'the mass itself',
      unit: 'kg',
      tolerance: 0,
      run: () => [Math.abs((pieces()?.mass ?? Number.NaN) - 130)],
    },
  ],
};
