import { lineFactor } from '#lines';
import { POUND_FORCE } from '#quantities';
import type { ValidationCase } from '../../form.ts';

/** Strength in lbf; loads at 8:1 and 10:1 in kN. */
const CABLES = [
  [2_000, 1.112, 0.89],
  [2_800, 1.557, 1.246],
  [4_200, 2.335, 1.868],
  [5_600, 3.114, 2.491],
  [7_000, 3.892, 3.114],
  [8_000, 4.448, 3.559],
  [9_800, 5.449, 4.359],
  [12_500, 6.95, 5.56],
  [14_400, 8.007, 6.405],
] as const;

const factorOf = (strengthLbf: number, loadN: number, termination = 1, bending = 1): number =>
  lineFactor({
    breakingN: strengthLbf * POUND_FORCE,
    termination,
    bending,
    tensionN: loadN,
  }) ?? Number.NaN;

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

export const theCase: ValidationCase = {
  id: 'VAL-LIN-01',
  title: 'Working loads of 7x19 cable at 8 and 10 to 1',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 6e-4,
  run: () =>
    CABLES.flatMap(([lbf, atEightKn, atTenKn]) => [
      relative(factorOf(lbf, 1000 * atEightKn), 8),
      relative(factorOf(lbf, 1000 * atTenKn), 10),
      relative(factorOf(lbf, 1000 * atEightKn, 0.8, 0.93), 5.952),
    ]),
  also: [
    {
      what: '875 and 700 lbf on 1/4 in cable',
      unit: 'of the factor',
      // The same division in pounds: only rounding differs.
      tolerance: 1e-12,
      run: () => [
        Math.abs(factorOf(7_000, 875 * POUND_FORCE) - 8),
        Math.abs(factorOf(7_000, 700 * POUND_FORCE) - 10),
      ],
    },
  ],
};
