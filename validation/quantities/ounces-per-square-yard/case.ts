import { parseQuantity } from '#quantities';
import type { ValidationCase } from '../../form.ts';

export const theCase: ValidationCase = {
  id: 'VAL-QTY-01',
  title: 'Cloth weight per square yard',
  calculation: 'quantities',
  unit: 'relative',
  tolerance: 1e-11,
  run: () => {
    const answer = parseQuantity('massPerArea', '1 oz/yd²');
    return [answer.ok ? Math.abs((answer.value * 1000) / 33.9057474749 - 1) : Number.NaN];
  },
};
