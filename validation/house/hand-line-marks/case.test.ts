import { expect, it } from 'vitest';
import { handLineTravel, panHeight } from '#house';
import { FOOT } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 1e-12;

it('VAL-HSE-09 the mark moves as the arbor does', () => {
  const errors = ([1, 2] as const).flatMap((purchase) =>
    [2, 7.5, 27.5, 30, 58].map((travelFt) => {
      const travel = { panAtLowM: 60 * FOOT, lowStopM: 3 * FOOT, purchase };
      const fallM = 60 * FOOT - panHeight({ ...travel, battenM: (3 + travelFt) * FOOT });
      return Math.abs(handLineTravel(travelFt * FOOT, 1 / purchase) / fallM - 1);
    }),
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-09', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
