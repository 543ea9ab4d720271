import { handLineTravel, panHeight } from '#house';
import { FOOT } from '#quantities';
import type { ValidationCase } from '../../form.ts';

export const theCase: ValidationCase = {
  id: 'VAL-HSE-09',
  title: 'Marks on the hand line',
  calculation: 'house',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    ([1, 2] as const).flatMap((purchase) =>
      [2, 7.5, 27.5, 30, 58].map((travelFt) => {
        const travel = { panAtLowM: 60 * FOOT, lowStopM: 3 * FOOT, purchase };
        const fallM = 60 * FOOT - panHeight({ ...travel, battenM: (3 + travelFt) * FOOT });
        return Math.abs(handLineTravel(travelFt * FOOT, 1 / purchase) / fallM - 1);
      }),
    ),
};
