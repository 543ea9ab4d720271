import type { ValidationCase } from '../../form.ts';
import { totalKg } from '../asking.ts';

const STEEL = 7850;
const ALUMINIUM = 2700;
const TUBES = [
  { wallM: 0.0032, density: STEEL, printed: 3.56 },
  { wallM: 0.004, density: STEEL, printed: 4.37 },
  { wallM: 0.00447, density: ALUMINIUM, printed: 1.67 },
  { wallM: 0.004, density: ALUMINIUM, printed: 1.503 },
];
const OUTSIDE_M = 0.0483;
const LENGTH_M = 6;

export const theCase: ValidationCase = {
  id: 'VAL-TKO-06',
  title: 'Scaffold tube, steel and aluminium, against its own geometry',
  calculation: 'takeoff',
  unit: 'kg/m',
  tolerance: 0.01,
  run: () =>
    TUBES.map(({ wallM, density, printed }) => {
      const massKg = totalKg({
        kind: 'pipe',
        basis: 'published',
        length: LENGTH_M,
        massPerLength: printed,
      });
      const wantedKgPerM = Math.PI * (OUTSIDE_M - wallM) * wallM * density;
      return Math.abs(massKg / LENGTH_M - wantedKgPerM);
    }),
};
