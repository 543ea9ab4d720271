import { parseQuantity } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const TABLE = [
  { ounces: 3, grams: 101.7 },
  { ounces: 4, grams: 135.6 },
  { ounces: 4.5, grams: 152.6 },
  { ounces: 5, grams: 169.5 },
  { ounces: 5.5, grams: 186.5 },
  { ounces: 6, grams: 203.4 },
  { ounces: 8, grams: 271.2 },
  { ounces: 10, grams: 339.1 },
  { ounces: 12, grams: 406.9 },
  { ounces: 14, grams: 474.7 },
  { ounces: 16, grams: 542.5 },
  { ounces: 18, grams: 610.3 },
  { ounces: 20, grams: 678.1 },
  { ounces: 25, grams: 847.6 },
];

export const theCase: ValidationCase = {
  id: 'VAL-QTY-02',
  title: 'Table of cloth weights per square yard',
  calculation: 'quantities',
  unit: 'g/m²',
  tolerance: 0.05,
  run: () =>
    TABLE.map(({ ounces, grams }) => {
      const answer = parseQuantity('massPerArea', `${ounces} oz/yd²`);
      return answer.ok ? Math.abs(answer.value * 1000 - grams) : Number.NaN;
    }),
};
