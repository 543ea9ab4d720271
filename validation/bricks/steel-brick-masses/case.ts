import { INCH, POUND } from '#quantities';
import { takeOffNumbers } from '#takeoff';
import type { ValidationCase } from '../../form.ts';

/** kg/m³, from memory, as in most handbooks. */
const STEEL = 7850;

/** Thickness in inches, mass as the trade quotes it in lb, mass by hand in kg. */
const BRICKS = [
  { inches: 1, quotedLb: 22, byHandKg: 10.0338 },
  { inches: 1.5, quotedLb: 33, byHandKg: 15.0507 },
  { inches: 2, quotedLb: 44, byHandKg: 20.0676 },
] as const;

const pieceKg = (inches: number): number => {
  const answer = takeOffNumbers({
    kind: 'frame',
    basis: 'calculated',
    members: [],
    sheets: [
      {
        name: 'steel, 6 by 13 in',
        count: 1,
        area: 6 * INCH * (13 * INCH),
        massPerArea: STEEL * inches * INCH,
      },
    ],
    hardware: [],
    allowance: 0,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.total?.mass ?? Number.NaN;
};

export const theCase: ValidationCase = {
  id: 'VAL-BRK-03',
  title: 'Brick masses from the density of steel',
  calculation: 'bricks',
  unit: 'kg',
  tolerance: 0.5 * POUND,
  run: () => BRICKS.map(({ inches, quotedLb }) => Math.abs(pieceKg(inches) - quotedLb * POUND)),
  also: [
    {
      what: 'masses worked by hand',
      unit: 'kg',
      tolerance: 1e-4,
      run: () => BRICKS.map(({ inches, byHandKg }) => Math.abs(pieceKg(inches) - byHandKg)),
    },
  ],
};
