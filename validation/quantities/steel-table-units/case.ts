import type { Dimension } from '#quantities';
import { INCH, parseQuantity } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const ratio = (dimension: Dimension, text: string, expected: number): number => {
  const answer = parseQuantity(dimension, text);
  return answer.ok ? answer.value / expected : Number.NaN;
};

export const theCase: ValidationCase = {
  id: 'VAL-QTY-05',
  title: 'Units of American steel tables',
  calculation: 'quantities',
  unit: 'relative',
  tolerance: 1e-12,
  run: () => {
    const inchCm = INCH * 100;
    const ratios = [
      ratio('force', '1 kip', 4448.2216152605),
      ratio('pressure', '1 psi', 6894.757293168),
      ratio('pressure', '1 ksi', 6894757.293168),
      ratio('pressure', '144 psf', 6894.757293168),
      ratio('massPerLength', '1 lb/ft', 1.48816394357),
      ratio('massPerLength', '100 lb/100 ft', 1.48816394357),
      ratio('moment', '1000 lbf·in', 112.9848290276),
      inchCm ** 3 / 16.387064,
      inchCm ** 4 / 41.62314256,
    ];
    return ratios.map((each) => Math.abs(each - 1));
  },
};
