/** The field of a balance drawing: heights upward, arbor heavy to the side of the arbor. */

import type { House } from '#house';
import { FOOT } from '#quantities';
import { phrase } from '#texts';
import { legendLines } from './balance-legend.ts';
import type { BalanceSubject } from './balance-subject.ts';
import type { Box } from './boxes.ts';
import type { HeightScale } from './height-scale.ts';
import { fitHeights, heightToY } from './height-scale.ts';
import { textWidth } from './lettering.ts';
import { LEADING } from './text-block.ts';
import { tradeWord } from './trade-words.ts';

export type BalanceFrame = {
  readonly field: Box;
  readonly letter: number;
  readonly lowM: number;
  readonly highM: number;
  readonly xOf: (imbalanceN: number) => number;
  readonly yOf: (heightM: number) => number;
  /** -1 where arbor heavy lies to the left: the operating side is stage right. */
  readonly arborSide: -1 | 1;
  readonly ticks: readonly { readonly heightM: number; readonly words: string }[];
  readonly headings: Readonly<Record<'arbor' | 'batten', readonly [string, string]>>;
  /** What the bands are, in as few lines as the width allows. */
  readonly legend: readonly string[];
};

/** Lines of lettering above the high stop, and what the words of the bands take beneath it. */
const LINES_ABOVE = 3.6;
const BELOW_LEGEND = 0.55;
const EDGE = 1.06;
const TICK_APART = 3;

const headingsOf = (house: House): BalanceFrame['headings'] => ({
  arbor: [tradeWord(house, 'arborHeavy'), phrase(house, 'wants to go out')],
  batten: [tradeWord(house, 'battenHeavy'), phrase(house, 'wants to come in')],
});

/** The furthest that the drawing must reach on either side, N. */
const reachOf = (
  { stretches, lockN, handsN }: BalanceSubject,
  beside: BalanceSubject['stretches'],
) => {
  const bandsN = Math.max(lockN ?? 0, handsN ?? 0);
  const ends = [...stretches, ...beside].flatMap(({ from, to }) => [from, to]);
  return {
    arborN: Math.max(bandsN, ...ends.map(({ lowN, doubtN }) => doubtN - lowN)) * EDGE,
    battenN: Math.max(bandsN, ...ends.map(({ highN, doubtN }) => highN + doubtN)) * EDGE,
  };
};

/** Where zero lies and how long a newton is, so that both headings have room. */
const acrossScale = (
  { arborN, battenN }: { readonly arborN: number; readonly battenN: number },
  { width, leastSide }: { readonly width: number; readonly leastSide: number },
): { readonly arborRoom: number; readonly perNewton: number } => {
  const even = width / (arborN + battenN);
  if (arborN * even < leastSide) {
    return { arborRoom: leastSide, perNewton: (width - leastSide) / battenN };
  }
  if (battenN * even < leastSide) {
    return { arborRoom: width - leastSide, perNewton: (width - leastSide) / arborN };
  }
  return { arborRoom: arborN * even, perNewton: even };
};

const ticksOf = (
  house: House,
  { lowM, highM, perMetre, letter }: Record<'lowM' | 'highM' | 'perMetre' | 'letter', number>,
): BalanceFrame['ticks'] => {
  const isFeet = house.units === 'customary';
  const unitM = isFeet ? FOOT : 1;
  const steps = isFeet ? [5, 10, 20] : [1, 2, 5];
  const step = steps.find((each) => each * unitM * perMetre >= TICK_APART * letter) ?? 20;
  const first = Math.ceil(lowM / (step * unitM));
  const last = Math.floor(highM / (step * unitM));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const size = (first + index) * step;
    return { heightM: size * unitM, words: isFeet ? `${size}'` : `${size} m` };
  });
};

export const balanceFrame = (
  subject: BalanceSubject,
  house: House,
  options: {
    readonly width: number;
    readonly height: number;
    readonly letter: number;
    readonly scale?: HeightScale;
  },
  /** Another curve that is to lie on the same axes. */
  beside: BalanceSubject['stretches'] = [],
): BalanceFrame => {
  const { width, height, letter } = options;
  const lowM = subject.set.lowStop;
  const highM = subject.set.highStop;
  const legend = legendLines(subject, house, { letter, width });
  const bottom = height - letter * (legend.length * LEADING + BELOW_LEGEND);
  const top = letter * LINES_ABOVE;
  const scale = options.scale ?? fitHeights({ lowM, highM, top, bottom });
  const ticks = ticksOf(house, { lowM, highM, perMetre: scale.perMetre, letter });
  const left = Math.max(0, ...ticks.map(({ words }) => textWidth(words, letter))) + letter * 0.5;
  const headings = headingsOf(house);
  const leastSide =
    Math.max(...[...headings.arbor, ...headings.batten].map((each) => textWidth(each, letter))) +
    letter;
  const fieldWidth = width - left - 2;
  const reach = reachOf(subject, beside);
  const { arborRoom, perNewton } = acrossScale(reach, { width: fieldWidth, leastSide });
  const arborSide = house.stage.operatingSide === 'stageRight' ? -1 : 1;
  const zeroX = arborSide === -1 ? left + arborRoom : left + fieldWidth - arborRoom;
  const yOf = (heightM: number) => heightToY(scale, heightM);
  return {
    field: { x: left, y: yOf(highM), width: fieldWidth, height: yOf(lowM) - yOf(highM) },
    letter,
    lowM,
    highM,
    xOf: (imbalanceN) => zeroX - arborSide * imbalanceN * perNewton,
    yOf,
    arborSide,
    ticks,
    headings,
    legend,
  };
};
