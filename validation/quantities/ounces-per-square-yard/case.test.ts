import { expect, it } from 'vitest';
import { parseQuantity } from '#quantities';
import { record } from '../../record.ts';

it('VAL-QTY-01 1 oz/yd² is 33.905747 g/m²', () => {
  const answer = parseQuantity('massPerArea', '1 oz/yd²');
  const gramsPerSquareMetre = answer.ok ? answer.value * 1000 : Number.NaN;
  const worst = Math.abs(gramsPerSquareMetre / 33.9057474749 - 1);
  expect(worst).toBeLessThanOrEqual(1e-11);
  record({ id: 'VAL-QTY-01', worst, tolerance: 1e-11, unit: 'relative', cases: 1 });
});
