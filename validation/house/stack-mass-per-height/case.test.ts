import { expect, it } from 'vitest';
import { stackHeight } from '#house';
import { FOOT, INCH } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 0.2;

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

it('VAL-HSE-04 a foot of bricks is 251.9 lb, and of the family 264 lb', () => {
  const errors = [
    ...NET.map((brick) => Math.abs(perFoot(brick, 24) - 251.9)),
    ...FAMILY.map((brick) => Math.abs(perFoot(brick, 24) - 264)),
  ];
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-04', worst, tolerance: TOLERANCE, unit: 'lb/ft', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});

it('VAL-HSE-04 with their plates 48 in of bricks stand 48.375 in high', () => {
  const spreader = { thicknessM: (3 / 16) * INCH, everyM: 24 * INCH };
  for (const { thickIn } of NET) {
    const bricks = 48 / thickIn;
    const heightM = stackHeight({ brickThicknessM: bricks * thickIn * INCH, spreader });
    expect(heightM / INCH).toBeCloseTo(48.375, 9);
  }
});
