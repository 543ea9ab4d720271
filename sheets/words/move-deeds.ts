/** The set in motion: flown from one height to another, or eased an inch off its stop. */

import type { StepBetween } from '#orders';
import type { Standing, Step } from '#state';
import { phrase } from '#texts';
import { AS_BEFORE, type Deed, deedOf } from './deed.ts';
import { height } from './say-set.ts';
import { type OrderWords, sayForce } from './say-standing.ts';

type FlyStep = Extract<Step, { readonly act: 'fly' }>;
type EaseStep = Extract<Step, { readonly act: 'ease' }>;

/** Heights apart by less than this are one. */
const SAME_M = 1e-6;

export type FromHeight = {
  readonly before: { readonly standing: Pick<Standing, 'height'> };
};

export const isIn = ({ to }: FlyStep, { before }: FromHeight): boolean =>
  to < before.standing.height;

/** A bull line is led on the whole way, by somebody who does nothing else. */
const ledWords = ({ before }: StepBetween, { house }: OrderWords): string => {
  const led = before.standing.restraints.filter(({ kind }) => kind === 'bullLine');
  return led.length === 0 ? '' : phrase(house, '; its leader at the bull line');
};

/** `in to 3'-0"`, `in onto the low stop, 3'-0"`: in or out, and how far. */
const wayWords = (step: FlyStep, between: StepBetween, { physics, house }: OrderWords): string => {
  const to = height(step.to, house);
  const is = (heightM: number): boolean => Math.abs(step.to - heightM) <= SAME_M;
  if (is(physics.lowStop.heightM)) {
    return isIn(step, between)
      ? phrase(house, 'in onto the low stop, {to}', { to })
      : phrase(house, 'out onto the low stop, {to}', { to });
  }
  if (is(physics.highStop.heightM)) {
    return isIn(step, between)
      ? phrase(house, 'in to the high stop, {to}', { to })
      : phrase(house, 'out to the high stop, {to}', { to });
  }
  return isIn(step, between)
    ? phrase(house, 'in to {to}', { to })
    : phrase(house, 'out to {to}', { to });
};

export const flyDeed = (step: FlyStep, between: StepBetween, words: OrderWords): Deed => {
  const { house, physics } = words;
  const going = isIn(step, between) ? phrase(house, 'coming in') : phrase(house, 'going out');
  return deedOf(
    {
      who: 'Rail operator with a watcher{led}',
      where: 'at the rail and in sight of the batten',
      does: 'Inch test. Then {way}, and stop: lock closed, ring on.',
      stopIf:
        'the inch test is not as expected, it runs by itself, it needs more than {pull}, it ' +
        'snags, or the watcher cannot see it',
      call: ['Rail operator', 'Set {set}: ring off, {way}?'],
      answer: ['Lead, then watcher', 'Set {set}: {way}, do. Set {set}: clear, {going}.'],
      done: 'Set {set}: at {to}, locked, ringed.',
      abandon:
        'Lock closed, ring on, where it is: it can be held all the way. Then back to {from} or ' +
        'on, as the lead says.',
    },
    words,
    {
      way: wayWords(step, between, words),
      going,
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
  const expected = lifted
    ? phrase(house, 'it moves off its stop, an inch at most')
    : phrase(house, 'it does not move');
  return deedOf(
    {
      who: 'Rail operator, with the lead watching the gauge',
      where: 'at the rail, the set on its stop',
      does: isLow
        ? 'Ring off, pull out with {pull} on a gauge: {expected}. Lock closed, ring on.'
        : 'Ring off, pull in with {pull} on a gauge: {expected}. Lock closed, ring on.',
      stopIf: lifted
        ? 'it does not move, or it moves more than an inch: the masses are not as listed'
        : 'it moves at all: the masses are not as listed',
      call: [
        'Rail operator',
        isLow ? 'Set {set}: ring off, ease out, {pull}?' : 'Set {set}: ring off, ease in, {pull}?',
      ],
      answer: [
        'Lead',
        isLow ? 'Set {set}: ease out, {pull}, do.' : 'Set {set}: ease in, {pull}, do.',
      ],
      done: 'Set {set}: on its stop, locked, ringed. Write down the pull.',
      abandon: 'Let it back on its stop, lock closed, ring on: {before}.',
    },
    words,
    { pull: sayForce(pull, house, 'up'), expected, before: phrase(house, AS_BEFORE) },
  );
};
