import { FOOT, POUND, parseQuantity } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

const kilogramsPerSquareMetre = (text: string): number => {
  const answer = parseQuantity('massPerArea', text);
  return answer.ok ? answer.value : Number.NaN;
};

export const theCase: ValidationCase = {
  id: 'VAL-QTY-03',
  title: 'Cloth weight per running yard, with its width',
  calculation: 'quantities',
  unit: 'relative',
  tolerance: 1e-11,
  run: () => {
    const grams = kilogramsPerSquareMetre('1 oz/lin yd @ 54 in') * 1000;
    const running = kilogramsPerSquareMetre('25 oz/lin yd @ 54 in');
    const area = kilogramsPerSquareMetre('25 oz/yd²');
    const clothAreaM2 = 24 * FOOT * 1.5 * (20 * FOOT);
    const curtainLb = (clothAreaM2 * running) / POUND;
    const ratios = [grams / 22.6038316499, area / running / 1.5, curtainLb / (250 / 3)];
    return ratios.map((ratio) => Math.abs(ratio - 1));
  },
  also: [
    {
      what: 'the same figure without the width is refused, not guessed',
      unit: 'answers unlike',
      tolerance: 0,
      run: () => {
        const answer = parseQuantity('massPerArea', '25 oz/yd');
        return [unlike(answer.ok ? null : answer.error.code, 'QTY-018')];
      },
    },
  ],
};
