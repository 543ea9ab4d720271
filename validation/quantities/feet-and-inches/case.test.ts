import { expect, it } from 'vitest';
import { formatLength, metres, NO_BREAK_SPACE, parseQuantity } from '#quantities';
import { record } from '../../record.ts';

const lengthM = (text: string): number => {
  const answer = parseQuantity('length', text);
  return answer.ok ? answer.value : Number.NaN;
};

/** The same trim as a keyboard, a phone and a drawing write it. */
const SPELLINGS = [`24'-6 1/2"`, `24' 6½"`, '24′-6 1⁄2″', '24’ 6½”', '24 ft 6.5 in', '294 1/2 in'];

it(`VAL-QTY-06 24'-6 1/2" is 7.4803 m, prints in both systems and reads back as itself`, () => {
  const customary = formatLength(metres(7.4803), 'customary');
  expect(customary).toBe(`24'-6${NO_BREAK_SPACE}1/2"`);
  expect(formatLength(metres(7.4803), 'metric')).toBe(`7.480${NO_BREAK_SPACE}m`);
  const ratios = [...SPELLINGS, customary].map((text) => lengthM(text) / 7.4803);
  ratios.push(lengthM(`34 3/8"`) / 0.873125);
  const worst = Math.max(...ratios.map((ratio) => Math.abs(ratio - 1)));
  expect(worst).toBeLessThanOrEqual(1e-14);
  record({ id: 'VAL-QTY-06', worst, tolerance: 1e-14, unit: 'relative', cases: ratios.length });
});
