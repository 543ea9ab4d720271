import { formatLength, metres, NO_BREAK_SPACE, parseQuantity } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

const lengthM = (text: string): number => {
  const answer = parseQuantity('length', text);
  return answer.ok ? answer.value : Number.NaN;
};

/** The same trim as a keyboard, a phone and a drawing write it. */
const SPELLINGS = [`24'-6 1/2"`, `24' 6½"`, '24′-6 1⁄2″', '24’ 6½”', '24 ft 6.5 in', '294 1/2 in'];

export const theCase: ValidationCase = {
  id: 'VAL-QTY-06',
  title: 'A trim in feet, inches and eighths',
  calculation: 'quantities',
  unit: 'relative',
  tolerance: 1e-14,
  run: () => {
    const customary = formatLength(metres(7.4803), 'customary');
    const ratios = [...SPELLINGS, customary].map((text) => lengthM(text) / 7.4803);
    return [...ratios, lengthM(`34 3/8"`) / 0.873125].map((ratio) => Math.abs(ratio - 1));
  },
  also: [
    {
      what: 'both ways of writing it',
      unit: 'texts unlike',
      tolerance: 0,
      run: () => [
        unlike(formatLength(metres(7.4803), 'customary'), `24'-6${NO_BREAK_SPACE}1/2"`),
        unlike(formatLength(metres(7.4803), 'metric'), `7.480${NO_BREAK_SPACE}m`),
      ],
    },
  ],
};
