/** The set in motion: flown from one height to another, or eased an inch off its stop. */

import type { StepBetween } from '#orders';
import type { Step } from '#state';
import { AS_BEFORE, type Deed, deedOf } from './deed.ts';
import { height } from './say-set.ts';
import { type OrderWords, restraintName, sayForce } from './say-standing.ts';

type FlyStep = Extract<Step, { readonly act: 'fly' }>;
type EaseStep = Extract<Step, { readonly act: 'ease' }>;

/** Heights apart by less than this are one. */
const SAME_M = 1e-6;

export const isIn = ({ to }: FlyStep, { before }: StepBetween): boolean =>
  to < before.standing.height;

/** A bull line is led on the whole way, by somebody who does nothing else. */
const ledWords = ({ before }: StepBetween, { house }: OrderWords): string => {
  const led = before.standing.restraints.filter(({ kind }) => kind === 'bullLine');
  return led.length === 0
    ? ''
    : `; its leader at the ${restraintName({ kind: 'bullLine' }, house)}`;
};

const stopWords = ({ to }: FlyStep, { physics }: OrderWords): string => {
  if (Math.abs(to - physics.lowStop.heightM) <= SAME_M) return 'onto the low stop, {to}';
  return Math.abs(to - physics.highStop.heightM) <= SAME_M ? 'to the high stop, {to}' : 'to {to}';
};

export const flyDeed = (step: FlyStep, between: StepBetween, words: OrderWords): Deed => {
  const { house, physics } = words;
  const way = `${isIn(step, between) ? 'in' : 'out'} ${stopWords(step, words)}`;
  const going = isIn(step, between) ? 'coming in' : 'going out';
  return deedOf(
    {
      who: `Rail operator with a watcher{led}`,
      where: 'at the rail and in sight of the batten',
      does: `Inch test. Then ${way}, and stop: lock closed, ring on.`,
      stopIf:
        'the inch test is not as expected, it runs by itself, it needs more than {pull}, it ' +
        'snags, or the watcher cannot see it',
      call: ['Rail operator', `Set {set}: ring off, ${way}?`],
      answer: ['Lead, then watcher', `Set {set}: ${way}, do. Set {set}: clear, ${going}.`],
      done: 'Set {set}: at {to}, locked, ringed.',
      abandon:
        'Lock closed, ring on, where it is: it can be held all the way. Then back to {from} or ' +
        'on, as the lead says.',
    },
    words,
    {
      led: ledWords(between, words),
      pull: sayForce(physics.handsBriefN, house, 'down'),
      from: height(between.before.standing.height, house),
      to: height(step.to, house),
    },
  );
};

/** On a stop, pulled towards leaving it: what it does not lift at is a fact about its balance. */
export const easeDeed = (
  { pull, lifted }: EaseStep,
  { before }: StepBetween,
  words: OrderWords,
): Deed => {
  const { physics, house } = words;
  const { height: atM } = before.standing;
  const isLow = Math.abs(atM - physics.lowStop.heightM) <= Math.abs(physics.highStop.heightM - atM);
  const way = isLow ? 'out' : 'in';
  const expected = lifted ? 'it moves off its stop, an inch at most' : 'it does not move';
  return deedOf(
    {
      who: 'Rail operator, with the lead watching the gauge',
      where: 'at the rail, the set on its stop',
      does: `Ring off, pull ${way} with {pull} on a gauge: ${expected}. Lock closed, ring on.`,
      stopIf: lifted
        ? 'it does not move, or it moves more than an inch: the masses are not as listed'
        : 'it moves at all: the masses are not as listed',
      call: ['Rail operator', `Set {set}: ring off, ease ${way}, {pull}?`],
      answer: ['Lead', `Set {set}: ease ${way}, {pull}, do.`],
      done: 'Set {set}: on its stop, locked, ringed. Write down the pull.',
      abandon: `Let it back on its stop, lock closed, ring on: ${AS_BEFORE}.`,
    },
    words,
    { pull: sayForce(pull, house, 'up') },
  );
};
