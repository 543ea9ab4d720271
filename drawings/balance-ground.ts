/** What lies beneath the curve: heights ruled across, bands of lock and hands, stops and zero. */

import type { House } from '#house';
import { phrase } from '#texts';
import type { BalanceFrame } from './balance-frame.ts';
import type { BalanceSubject } from './balance-subject.ts';
import { heightWords } from './printed.ts';
import type { Shape } from './shape.ts';
import { group, lettering, line, rect } from './shape.ts';
import { LEADING } from './text-block.ts';

const bandBetween = (
  frame: BalanceFrame,
  fromN: number,
  toN: number,
  hatch: 'lock' | 'hands',
): Shape => {
  const { field, xOf } = frame;
  const [one, other] = [xOf(fromN), xOf(toN)];
  return rect(Math.min(one, other), field.y, Math.abs(other - one), field.height, { hatch });
};

const upright = (frame: BalanceFrame, atN: number, dash?: 'hidden'): Shape => {
  const { field, xOf } = frame;
  const x = xOf(atN);
  const style = {
    stroke: 'line',
    weight: 'thin',
    ...(dash === undefined ? {} : { dash }),
  } as const;
  return line(x, field.y, x, field.y + field.height, style);
};

export const bandShapes = (frame: BalanceFrame, subject: BalanceSubject): readonly Shape[] => {
  const { lockN, handsN } = subject;
  const lock =
    lockN === null
      ? []
      : [bandBetween(frame, -lockN, lockN, 'lock'), upright(frame, -lockN), upright(frame, lockN)];
  const innerN = lockN ?? 0;
  const hands =
    handsN === null || handsN <= innerN
      ? []
      : [-1, 1].flatMap((side) => [
          bandBetween(frame, side * innerN, side * handsN, 'hands'),
          upright(frame, side * handsN, 'hidden'),
        ]);
  return [group([...hands, ...lock], { part: 'bands' })];
};

const rulingShapes = ({ field, letter, ticks, yOf }: BalanceFrame): readonly Shape[] =>
  ticks.flatMap(({ heightM, words }) => {
    const y = yOf(heightM);
    return [
      line(field.x, y, field.x + field.width, y, { stroke: 'rule', weight: 'hair' }),
      lettering(field.x - letter * 0.4, y + letter * 0.34, words, letter, {
        anchor: 'end',
        pen: 'ink2',
      }),
    ];
  });

const stopShapes = (frame: BalanceFrame, house: House): readonly Shape[] => {
  const { field, letter, lowM, highM, yOf } = frame;
  const right = field.x + field.width;
  const edge = { stroke: 'ink', weight: 'thick' } as const;
  const words = { pen: 'ink2' } as const;
  const high = phrase(house, 'high stop {at}', { at: heightWords(house, highM) });
  return [
    line(field.x, yOf(highM), right, yOf(highM), edge),
    line(field.x, yOf(lowM), right, yOf(lowM), edge),
    lettering(field.x, yOf(highM) - letter * 0.4, high, letter, words),
  ];
};

const legendShapes = ({ field, letter, lowM, yOf, legend }: BalanceFrame): readonly Shape[] =>
  legend.map((words, index) =>
    lettering(field.x, yOf(lowM) + letter * (1.25 + LEADING * index), words, letter, {
      pen: 'ink2',
    }),
  );

const headingShapes = (frame: BalanceFrame): readonly Shape[] => {
  const { field, letter, xOf, headings, arborSide } = frame;
  return (['arbor', 'batten'] as const).flatMap((side) => {
    const isLeft = (side === 'arbor') === (arborSide === -1);
    const x = xOf(0) + (isLeft ? -0.5 : 0.5) * letter;
    const anchor = isLeft ? 'end' : 'start';
    const [strong, plain] = headings[side];
    const y = field.y - letter * (LEADING + 1.5);
    return [
      lettering(x, y, strong, letter, { anchor, weight: 'strong' }),
      lettering(x, y + letter * LEADING, plain, letter, { anchor, pen: 'ink2' }),
    ];
  });
};

export const groundShapes = (frame: BalanceFrame, house: House): readonly Shape[] => {
  const { field, letter, xOf } = frame;
  const zero = line(xOf(0), field.y - letter * 0.6, xOf(0), field.y + field.height + letter * 0.4, {
    stroke: 'ink',
    weight: 'thin',
    dash: 'centre',
  });
  return [
    ...rulingShapes(frame),
    ...stopShapes(frame, house),
    zero,
    ...legendShapes(frame),
    ...headingShapes(frame),
  ];
};
