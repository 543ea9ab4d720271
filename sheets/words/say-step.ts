/** One step of an order in the words of a crew: who, where, what, and what to expect after it. */

import type { StepBetween } from '#orders';
import { unreachable } from '#outcome';
import type { Standing, Step } from '#state';
import { message, phrase } from '#texts';
import type { Deed } from './deed.ts';
import { filled } from './fill-words.ts';
import { onTheWay } from './on-the-way.ts';
import { height } from './say-set.ts';
import {
  balanceWords,
  heldWords,
  isInContact,
  type OrderWords,
  platesWords,
  sayImbalance,
  zoneShort,
} from './say-standing.ts';
import { stepDeed } from './step-deeds.ts';

export type SaidStep = Deed & {
  readonly number: number;
  /** Balance with its direction, height, plates, what holds it. */
  readonly expect: readonly string[];
  /** Whether the crew may pause after it, and why not. */
  readonly pause: { readonly isHoldPoint: boolean; readonly words: string };
  /** What is closed while it is done, each by its own marshal. */
  readonly zone: string;
  /** Where nobody is while it is done; null where the step asks for nothing of the kind. */
  readonly clear: string | null;
  /** Proofs that only people can give; none of them is replaced by the list. */
  readonly proofs: readonly string[];
};

/** Only what the two ends do not show: more than at either of them. */
const wayWords = (
  step: Extract<Step, { readonly act: 'fly' }>,
  between: StepBetween,
  words: OrderWords,
): readonly string[] => {
  const way = onTheWay(step, between, words);
  if (way === null) return [];
  const { before, after } = between;
  const lowN = Math.min(before.imbalance.lowN, after.imbalance.lowN);
  const highN = Math.max(before.imbalance.highN, after.imbalance.highN);
  const worse = [
    ...(way.lowN < lowN && way.lowN < 0 ? [sayImbalance(way.lowN, words.house)] : []),
    ...(way.highN > highN && way.highN > 0 ? [sayImbalance(way.highN, words.house)] : []),
  ];
  if (worse.length === 0) return [];
  return [
    filled('On the way up to {worse}.', words.house, {
      worse: worse.join(phrase(words.house, ' and ')),
    }),
  ];
};

const standsWords = ({ after }: StepBetween, words: OrderWords): readonly string[] => {
  const { house } = words;
  const plates = platesWords(after.standing, house);
  const names = { at: height(after.standing.height, house), plates };
  return [
    capital(`${balanceWords(after, words)}.`),
    filled('Batten at {at}; {plates}.', house, names),
    heldWords(after, house),
  ];
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const expectWords = (between: StepBetween, words: OrderWords): readonly string[] => {
  const { step } = between;
  switch (step.act) {
    case 'close':
    case 'reopen':
      return [phrase(words.house, 'The set stands as before.')];
    case 'fly':
      return [...standsWords(between, words), ...wayWords(step, between, words)];
    case 'rig':
    case 'unrig':
      return [phrase(words.house, 'The set does not move.'), heldWords(between.after, words.house)];
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'add':
    case 'remove':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'ease':
      return standsWords(between, words);
    default:
      return unreachable(step);
  }
};

const pauseWords = (
  { after }: StepBetween,
  { house, areFaultsTried = false }: OrderWords,
): SaidStep['pause'] => {
  const no = (words: string) => ({ isHoldPoint: false, words });
  if (isInContact(after)) {
    return no(phrase(house, 'No hold point: its rest stays manned.'));
  }
  if (after.limit === 'nominal') {
    return no(phrase(house, 'No hold point: the zone stays closed and empty.'));
  }
  const kept = after.standing.restraints.some(
    ({ kind }) => kind === 'choke' || kind === 'bullLine',
  );
  if (kept) return no(phrase(house, 'No hold point: whoever leads the restraint stays at it.'));
  if (!areFaultsTried) return no(phrase(house, 'No hold point: no single fault was tried here.'));
  return {
    isHoldPoint: true,
    words: filled('HOLD POINT: it may wait here, locked, ringed and tagged.', house),
  };
};

const CLEAR = {
  bricks: message(
    'While a brick is in hand nobody is at the rail, in the arbor well or on a level below.',
  ),
  move: message('While it moves nobody is under the batten or in line with the arbor.'),
  items: message(
    'While a piece is tied on or off riggers stand beside the batten, and nobody under it.',
  ),
} as const;

const clearOf = (step: Step): string | null => {
  switch (step.act) {
    case 'add':
    case 'remove':
      return CLEAR.bricks;
    case 'fly':
    case 'ease':
      return CLEAR.move;
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'hangOnSteel':
    case 'takeOffSteel':
      return CLEAR.items;
    case 'rig':
    case 'unrig':
    case 'close':
    case 'reopen':
      return null;
    default:
      return unreachable(step);
  }
};

const clearWords = ({ step }: StepBetween, { house }: OrderWords): string | null => {
  const clear = clearOf(step);
  return clear === null ? null : filled(clear, house);
};

/** A zone that is being opened is closed until its marshal has the word. */
const closedDuring = ({ step, before, after }: StepBetween): Standing['closed'] =>
  step.act === 'close' ? after.standing.closed : before.standing.closed;

const zoneWords = (between: StepBetween, words: OrderWords): string => {
  const closed = closedDuring(between).map((zone) => zoneShort(zone, words));
  return closed.length === 0
    ? phrase(words.house, 'No zone is closed.')
    : filled('Closed and kept: {zones}.', words.house, { zones: closed.join('; ') });
};

/** Everything that a sheet or a screen says of one step, in the house's units and words. */
export const sayStep = (between: StepBetween, words: OrderWords): SaidStep => ({
  ...stepDeed(between, words),
  number: between.number,
  expect: expectWords(between, words),
  pause: pauseWords(between, words),
  zone: zoneWords(between, words),
  clear: clearWords(between, words),
  proofs: between.proofs.map((proof) => capital(filled(proof, words.house))),
});
