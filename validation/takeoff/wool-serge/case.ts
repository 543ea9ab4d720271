import type { ValidationCase } from '../../form.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const SERGE = [
  { cloth: '500 g/m²', allowances: BARE, wantedKg: 52.5 },
  { cloth: '300 g/m²', allowances: BARE, wantedKg: 31.5 },
  { cloth: '1000 g/m²', allowances: BARE, wantedKg: 105 },
  {
    cloth: '500 g/m²',
    allowances: { hemAllowance: 0.1, paint: 0.3, moisture: 0.05 },
    wantedKg: 78.82875,
  },
];

export const theCase: ValidationCase = {
  id: 'VAL-TKO-16',
  title: 'Wool serge: the average cloth and the range of it',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 1e-9,
  run: () =>
    SERGE.map(({ cloth, allowances, wantedKg }) => {
      const massKg = totalKg({
        kind: 'cloth',
        basis: 'published',
        width: 10,
        drop: 6,
        areaMass: typed('massPerArea', cloth),
        fullness: 0.75,
        ...allowances,
      });
      return Math.abs(massKg / wantedKg - 1);
    }),
};
