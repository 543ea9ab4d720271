import type { ValidationCase } from '../../form.ts';
import { solved } from '../asking.ts';
import { digitsOff } from '../even-spans.ts';

const INCH = 0.0254;
/** N. */
const KIP = 1000 * 0.45359237 * 9.80665;
/** N·m. */
const KIP_INCH = KIP * INCH;
const KSI = KIP / INCH ** 2;

/** N·m allowed, by the program, of a pipe of A53 grade B with this plastic modulus in in³. */
const allowedNm = (plasticIn3: number): number => {
  const { allowable } = solved({
    pipe: {
      massPerLength: 4,
      secondMoment: 1e-7,
      elasticModulus: 2e11,
      plasticModulus: plasticIn3 * INCH ** 3,
      yieldStrength: 35 * KSI,
    },
    left: 0,
    right: 6,
    lines: [1, 5].map((x) => ({ x, stiffness: null })),
    loads: [],
  });
  return allowable?.method === 'plastic' ? allowable.moment : Number.NaN;
};

/** Plastic modulus in in³ and Mn/1.67 in kip-in as tabled; nominal wall, then design wall. */
const TABLE: readonly (readonly [number, string])[] = [
  [0.3244, '6.798'],
  [0.4145, '8.687'],
  [0.4476, '9.381'],
  [0.5807, '12.170'],
  [0.7609, '15.946'],
  [1.0177, '21.330'],
  [0.3054, '6.401'],
  [0.3922, '8.220'],
  [0.421, '8.823'],
  [0.5486, '11.497'],
  [0.7143, '14.971'],
  [0.9594, '20.108'],
];

export const theCase: ValidationCase = {
  id: 'VAL-BEM-05',
  title: 'Allowable moment of steel pipe',
  calculation: 'beam',
  unit: 'kip-ft',
  tolerance: 0.005,
  run: () => [Math.abs(allowedNm(31.0) / (12 * KIP_INCH) - 54.14)],
  also: [
    {
      what: 'plastic moment of the same pipe',
      unit: 'last digits of kip-in printed',
      tolerance: 0.51,
      run: () => [digitsOff((allowedNm(31.0) * 1.67) / KIP_INCH, '1085')],
    },
    {
      what: 'table of pipes, computed',
      unit: 'kip-in',
      // Z has four digits: half of the last is 0.001 kip-in; and half of the table's own last.
      tolerance: 0.0016,
      run: () => TABLE.map(([z, mn]) => Math.abs(allowedNm(z) / KIP_INCH - Number(mn))),
    },
  ],
};
