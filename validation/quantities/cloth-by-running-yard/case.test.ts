import { expect, it } from 'vitest';
import { FOOT, POUND, parseQuantity } from '#quantities';
import { record } from '../../record.ts';

const kilogramsPerSquareMetre = (text: string): number => {
  const answer = parseQuantity('massPerArea', text);
  return answer.ok ? answer.value : Number.NaN;
};

it('VAL-QTY-03 at 54 in wide, 1 oz per running yard is 22.604 g/m², 2/3 of 1 oz/yd²', () => {
  const grams = kilogramsPerSquareMetre('1 oz/lin yd @ 54 in') * 1000;
  const running = kilogramsPerSquareMetre('25 oz/lin yd @ 54 in');
  const area = kilogramsPerSquareMetre('25 oz/yd²');
  const clothAreaM2 = 24 * FOOT * 1.5 * (20 * FOOT);
  const curtainLb = (clothAreaM2 * running) / POUND;
  const ratios = [grams / 22.6038316499, area / running / 1.5, curtainLb / (250 / 3)];
  const worst = Math.max(...ratios.map((ratio) => Math.abs(ratio - 1)));
  expect(worst).toBeLessThanOrEqual(1e-11);
  record({ id: 'VAL-QTY-03', worst, tolerance: 1e-11, unit: 'relative', cases: ratios.length });
});

it('VAL-QTY-03 the same figure without the width is refused, not guessed', () => {
  expect(parseQuantity('massPerArea', '25 oz/yd')).toMatchObject({
    ok: false,
    error: { code: 'QTY-018' },
  });
});
