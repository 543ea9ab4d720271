/** Asking for the order of a pair of Kestlemere, judging it, and a second look at what passes. */

import { type Metres, metres } from '#quantities';
import { type OrderOptions, type PairVerdict, verifyPair } from '#rules';
import { type Pair, type PairOptions, type PairPlan, planPair } from '#sequence';
import type { Standing, Step } from '#state';
import { missedAtRest, missedOnTheWay } from './order-oracle.ts';
import { bareOn, feet, hungOn, type PlanSet, showRuns } from './plan-sets.ts';

export type FoundPair = Extract<PairPlan, { found: unknown }>['found'];
type PairStep = FoundPair['steps'][number];

/** How each set is laden for the show, and where it hangs out. */
export type Laden = {
  readonly set: PlanSet;
  readonly full: number;
  readonly half: number;
  readonly outFt: number;
};

export type PairCase = {
  readonly laden: readonly [Laden, Laden];
  readonly bandFt: readonly [number, number];
};

const jobOf = ({ set, full, half, outFt }: Laden, work: 'load' | 'strike') => {
  const items = Object.fromEntries(
    set.items.map((id) => [id, work === 'load' ? ('on' as const) : ('away' as const)]),
  );
  const { physics } = set;
  return work === 'load'
    ? {
        physics,
        start: bareOn(set, 3),
        goal: { items, bricks: { F: full, H: half }, height: feet(outFt), service: 'in' as const },
      }
    : {
        physics,
        start: hungOn(set, outFt, showRuns(full, half)),
        goal: { items, bricks: {}, height: null, service: 'in' as const },
      };
};

export const pairFor = ({ laden, bandFt }: PairCase, work: 'load' | 'strike'): Pair => ({
  first: jobOf(laden[0], work),
  second: jobOf(laden[1], work),
  shared: [{ first: 'header', second: 'header' }],
  band: { leastM: feet(bandFt[0]), mostM: feet(bandFt[1]) },
});

/** One flight of both from where they hang to where they are to hang. */
export const cueFor = (
  { laden, bandFt }: PairCase,
  fromFt: readonly [number, number],
  toFt: readonly [number, number],
): Pair => {
  const job = ({ set, full, half }: Laden, from: number, to: number) => ({
    physics: set.physics,
    start: hungOn(set, from, showRuns(full, half)),
    goal: { items: {}, bricks: { F: full, H: half }, height: feet(to), service: 'in' as const },
  });
  return {
    ...pairFor({ laden, bandFt }, 'load'),
    first: job(laden[0], fromFt[0], toFt[0]),
    second: job(laden[1], fromFt[1], toFt[1]),
  };
};

export const askPair = (
  pair: Pair,
  lock: 'nominal' | 'planning',
  options: PairOptions = {},
): PairPlan =>
  planPair(pair, { doubtShare: 0, restraint: 'none', neatM: feet(0.25), lock, ...options });

export const mustPair = (plan: PairPlan): FoundPair => {
  if (!('found' in plan)) throw new Error(JSON.stringify(plan));
  return plan.found;
};

export const judgedPair = (
  { first, second, shared, band }: Pair,
  steps: readonly PairStep[],
  lock: 'nominal' | 'planning',
  doubt: OrderOptions['doubt'] = 'none',
): PairVerdict =>
  verifyPair({ first, second, shared, band }, steps, {
    doubt,
    faults: lock === 'nominal' ? 'skip' : 'check',
  });

/** What is done, zones left out, heights in feet. */
export const pairDeeds = ({ steps }: Pick<FoundPair, 'steps'>): readonly string[] =>
  steps.flatMap((each): readonly string[] => {
    const ft = (heightM: number): string => (heightM / feet(1)).toFixed(1);
    if ('together' in each) {
      return [each.together.map(({ set, to }) => `${set} to ${ft(to)}`).join(', ')];
    }
    const { set, step } = each;
    if (step.act === 'close' || step.act === 'reopen') return [];
    if ('item' in step) return [`${set} ${step.act} ${step.item}`];
    if ('count' in step) return [`${set} ${step.act} ${step.count} ${step.kind} ${step.gallery}`];
    return [step.act === 'fly' ? `${set} alone to ${ft(step.to)}` : `${set} ${step.act}`];
  });

const has = ({ items }: Standing): boolean =>
  Object.entries(items).some(
    ([id, phase]) => id === 'header' && phase !== 'away' && phase !== 'beside',
  );

const moves = (step: PairStep): readonly string[] =>
  'together' in step
    ? step.together.map(({ set }) => set)
    : step.step.act === 'fly'
      ? [step.set]
      : [];

const WALKED = 40;

type Sides = { readonly first: Standing; readonly second: Standing };

/**
 * What a second look finds wrong with an order that the judge let pass: it follows the steps with
 * the states that the judge gives for each set, and walks every flight of both in forty parts.
 */
export const pairMisses = (
  pair: Pair,
  steps: readonly PairStep[],
  { sets }: PairVerdict,
): readonly string[] => {
  const misses: string[] = [];
  const done = { first: 0, second: 0 };
  const at = (side: 'first' | 'second'): Standing =>
    sets[side].states[done[side]]?.standing ?? pair[side].start;
  let before: Sides = { first: at('first'), second: at('second') };
  steps.forEach((step, index) => {
    for (const side of ['first', 'second'] as const) {
      if (isOwn(step, pair[side].physics.set)) done[side] += 1;
    }
    const after: Sides = { first: at('first'), second: at('second') };
    misses.push(...looked(pair, step, before, after).map((each) => `step ${index}: ${each}`));
    before = after;
  });
  return misses;
};

const isOwn = (step: PairStep, set: string): boolean => {
  if ('together' in step) return true;
  const { act }: Step = step.step;
  return step.set === set || act === 'close' || act === 'reopen';
};

/** A thousandth of the largest share of a rest, as in the second look at one set. */
const NEAR_N = 3;

const looked = (pair: Pair, step: PairStep, before: Sides, after: Sides): readonly string[] => {
  const moving = moves(step);
  const misses: string[] = [];
  for (const side of ['first', 'second'] as const) {
    const { physics } = pair[side];
    if (missedAtRest(physics, after[side]) > NEAR_N) misses.push(`${physics.set} not held`);
    const isMoved = moving.includes(physics.set);
    const onWayN = isMoved ? missedOnTheWay(physics, before[side], after[side]) : 0;
    if (onWayN > NEAR_N) misses.push(`${physics.set} not held on the way`);
    if (isMoved && moving.length === 1 && has(before[side])) misses.push('moved alone');
  }
  misses.push(...people(step, before));
  if (!(has(before.first) && has(before.second) && has(after.first) && has(after.second))) {
    return misses;
  }
  for (let part = 0; part <= WALKED; part += 1) {
    const height = (side: 'first' | 'second'): Metres =>
      metres(before[side].height + (part / WALKED) * (after[side].height - before[side].height));
    const apartM = height('second') - height('first');
    if (apartM < pair.band.leastM - 1e-6 || apartM > pair.band.mostM + 1e-6) {
      misses.push(`out of the band at ${part} of ${WALKED}`);
    }
  }
  return misses;
};

/** Zones that have to be closed, and hands that have to finish what is half done. */
const people = (step: PairStep, { first, second }: Sides): readonly string[] => {
  const shut = (zone: string): boolean =>
    first.closed.some((each) => (each.zone === 'run' ? 'run' : each.gallery) === zone);
  const isHalf = has(first) !== has(second);
  if ('together' in step) {
    return [...(shut('run') ? [] : ['run open']), ...(isHalf ? ['flown half on'] : [])];
  }
  const { act } = step.step;
  const isFinishing = act === 'attach' || act === 'release' || act === 'close' || act === 'reopen';
  return [
    ...(act === 'fly' && !shut('run') ? ['run open'] : []),
    ...('gallery' in step.step && !shut(step.step.gallery) ? ['drop zone open'] : []),
    ...(isHalf && !isFinishing ? ['other work half on'] : []),
  ];
};
