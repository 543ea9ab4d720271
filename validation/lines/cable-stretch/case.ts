import { type Construction, lineStretch, publishedAxialStiffness } from '#lines';
import { FOOT, INCH, POUND_FORCE } from '#quantities';
import type { ValidationCase } from '../../form.ts';

/** As printed: per cent of length for each lbf over the square of the inches. */
const PRINTED: readonly (readonly [Construction, string])[] = [
  ['7x7 galvanized', '0.0000107'],
  ['7x7 stainless 302', '0.0000120'],
  ['7x19 galvanized', '0.0000140'],
  ['7x19 stainless 302', '0.0000162'],
  ['6x19 IWRC galvanized', '0.0000136'],
  ['6x19 IWRC stainless 302', '0.0000157'],
  ['6x37 IWRC galvanized', '0.0000144'],
  ['1x19 galvanized', '0.00000698'],
  ['19x7 galvanized', '0.0000178'],
];

const stretchM = (
  construction: Construction,
  line: { readonly diameterIn: number; readonly tensionN: number; readonly lengthM: number },
): number =>
  lineStretch({
    tensionN: line.tensionN,
    axialStiffnessN: publishedAxialStiffness(construction, line.diameterIn * INCH),
    lengthM: line.lengthM,
  });

const errorOf = (
  construction: Construction,
  factor: string,
  inches: number,
  lbf: number,
): number => {
  const line = { diameterIn: inches, tensionN: lbf * POUND_FORCE, lengthM: 30 };
  const perCent = (100 * stretchM(construction, line)) / line.lengthM;
  return Math.abs(perCent / ((lbf * Number(factor)) / inches ** 2) - 1);
};

const quarterM = (tensionN: number, lengthM: number): number =>
  stretchM('7x19 galvanized', { diameterIn: 1 / 4, tensionN, lengthM });

export const theCase: ValidationCase = {
  id: 'VAL-LIN-03',
  title: 'Stretch of cable by its published factor',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    PRINTED.flatMap(([construction, factor]) =>
      [1 / 8, 1 / 4, 3 / 8].flatMap((inches) =>
        [100, 800].map((lbf) => errorOf(construction, factor, inches, lbf)),
      ),
    ),
  also: [
    {
      what: '500 lbf on 80 ft of 1/4 in 7x19',
      unit: 'in',
      tolerance: 5e-5,
      run: () => [Math.abs(quarterM(500 * POUND_FORCE, 80 * FOOT) / INCH - 1.0752)],
    },
    {
      what: '1 kN on 25 m of 1/4 in 7x19',
      unit: 'mm',
      tolerance: 5e-4,
      run: () => [Math.abs(1000 * quarterM(1000, 25) - 12.589)],
    },
  ],
};
