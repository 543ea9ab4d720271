import { bendingEfficiency, sheaveRatio } from '#lines';
import { INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';

/** D/d and per cent of the catalogue strength. */
const TABLE = [
  [40, 95],
  [30, 93],
  [20, 91],
  [15, 89],
  [10, 86],
  [8, 83],
  [6, 79],
  [4, 75],
  [2, 65],
  [1, 50],
] as const;

const perCentAt = (ratio: number): number => 100 * (bendingEfficiency(ratio)?.value ?? Number.NaN);

const worked = (): number =>
  perCentAt(sheaveRatio({ sheaveDiameterM: 10 * INCH, lineDiameterM: INCH / 2 }));

export const theCase: ValidationCase = {
  id: 'VAL-LIN-06',
  title: 'What a bend over a sheave leaves of the strength',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-12,
  run: () => [
    ...TABLE.map(([ratio, perCent]) => Math.abs(perCentAt(ratio) / perCent - 1)),
    Math.abs(worked() / 91 - 1),
  ],
  also: [
    {
      what: 'D/d 16 by a second page',
      unit: 'per cent of the strength',
      tolerance: 1,
      run: () => [Math.abs(perCentAt(16) - 90)],
    },
  ],
};
