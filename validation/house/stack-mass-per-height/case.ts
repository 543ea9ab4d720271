import { stackHeight } from '#house';
import { FOOT, INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const NET = [
  { thickIn: 1, lb: 20.99 },
  { thickIn: 1.5, lb: 31.48 },
  { thickIn: 2, lb: 41.97 },
] as const;
const FAMILY = [
  { thickIn: 1, lb: 22 },
  { thickIn: 1.5, lb: 33 },
  { thickIn: 2, lb: 44 },
] as const;

const perFoot = (
  brick: { readonly thickIn: number; readonly lb: number },
  count: number,
): number => {
  const heightM = stackHeight({ brickThicknessM: count * brick.thickIn * INCH, spreader: null });
  return (count * brick.lb) / (heightM / FOOT);
};

export const theCase: ValidationCase = {
  id: 'VAL-HSE-04',
  title: 'Mass of a stack per height',
  calculation: 'house',
  unit: 'lb/ft',
  tolerance: 0.2,
  run: () => [
    ...NET.map((brick) => Math.abs(perFoot(brick, 24) - 251.9)),
    ...FAMILY.map((brick) => Math.abs(perFoot(brick, 24) - 264)),
  ],
  also: [
    {
      what: 'height of 48 in of bricks with their plates, 48.375 in',
      unit: 'in',
      // Rounding only: whole inches and eighths.
      tolerance: 5e-10,
      run: () => {
        const spreader = { thicknessM: (3 / 16) * INCH, everyM: 24 * INCH };
        return NET.map(({ thickIn }) => {
          const bricks = 48 / thickIn;
          const brickThicknessM = bricks * thickIn * INCH;
          return Math.abs(stackHeight({ brickThicknessM, spreader }) / INCH - 48.375);
        });
      },
    },
  ],
};
