import { FOOT, POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { totalKg } from '../asking.ts';

const TIMBER = 0.511;
const AREA_FT2 = 4 * 8;

export const theCase: ValidationCase = {
  id: 'VAL-TKO-15',
  title: `A ply-faced flat against the trade's rule of thumb`,
  calculation: 'takeoff',
  unit: 'lb/ft²',
  tolerance: 0.15,
  run: () => {
    const massKg = totalKg({
      kind: 'frame',
      basis: 'calculated',
      members: [
        { name: 'stile', count: 2, length: 8 * FOOT, massPerLength: TIMBER },
        { name: 'rail', count: 3, length: 4 * FOOT, massPerLength: TIMBER },
        { name: 'corner brace', count: 2, length: 3 * FOOT, massPerLength: TIMBER },
      ],
      sheets: [{ name: 'skin', count: 1, area: AREA_FT2 * FOOT ** 2, massPerArea: 4.37 }],
      hardware: [{ name: 'corner block', count: 8, each: 0.1 }],
      allowance: 0.08,
    });
    return [Math.abs(massKg / POUND / AREA_FT2 - 1.35)];
  },
};
