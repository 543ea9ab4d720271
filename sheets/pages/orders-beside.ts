/** Two orders of one job, step by step side by side: how each leaves the set, and what it frees. */

import type { House } from '#house';
import { type CheckedOrder, type StepBetween, stepsBetween } from '#orders';
import type { Breach, OrderState } from '#rules';
import { phrase } from '#texts';
import { energyWords } from '../words/say-energy.ts';
import { sayFinding } from '../words/say-finding.ts';
import { height } from '../words/say-set.ts';
import { balanceWords, heldWords, type OrderWords } from '../words/say-standing.ts';
import { stepTitle } from '../words/step-title.ts';

export type BesideCell = {
  readonly title: string;
  readonly height: string;
  readonly balance: string;
  /** Whether nothing is broken there; the words say it too, never a sign alone. */
  readonly isBroken: boolean;
  readonly held: string;
  /** What would be set free, J and in words; null where nobody reckoned it. */
  readonly energyJ: number | null;
  readonly energy: string | null;
};

export type BesideRow = {
  /** 0 is how the set stands before the first step. */
  readonly number: number;
  readonly left: BesideCell | null;
  readonly right: BesideCell | null;
};

export type OrdersBeside = {
  readonly rows: readonly BesideRow[];
  readonly left: string;
  readonly right: string;
};

type Named = { readonly house: House; readonly nameOf: (item: string) => string };

const breachesAt = ({ verdict }: CheckedOrder, step: number): readonly Breach[] =>
  [...(verdict.broken === null ? [] : [verdict.broken]), ...verdict.alsoBroken].filter(
    (each) => each.step === step,
  );

/** A sum of floating numbers is off by less, N; the judge is no finer. */
const SAME_N = 1e-6;

const mostOf = (values: readonly (number | null)[]): number | null => {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : Math.max(...known);
};

/** Whether its own hold is passed there, whatever the step before it broke. */
const isUnheld = (
  { imbalance: { lowN, highN, doubtN }, holdInN, holdOutN }: OrderState,
  { checked, steps }: CheckedOrder,
): boolean => {
  // A pull on a stop narrows a doubt, and the judge knows by how much.
  const isNarrowed = steps.some(({ act }) => act === 'ease');
  const worstN = checked.doubt === 'worst' && !isNarrowed ? doubtN : 0;
  return lowN + worstN > holdInN + SAME_N || worstN - highN > holdOutN + SAME_N;
};

const heldOrBroken = (
  state: OrderState,
  breaches: readonly Breach[],
  { house, nameOf, isHeld }: Named & { readonly isHeld: boolean },
): string => {
  const [first, ...others] = breaches;
  if (first === undefined) {
    return isHeld
      ? heldWords(state, house)
      : phrase(house, 'NOT HELD: as the step before it left it.');
  }
  const { word, sentence } = sayFinding(first.finding, house, nameOf);
  const more =
    others.length === 0 ? '' : phrase(house, ' And {length} more.', { length: others.length });
  return `${word}, ${first.rule}: ${sentence}${more}`;
};

const cellOf = (
  order: CheckedOrder,
  between: StepBetween | null,
  state: OrderState,
  words: OrderWords,
): BesideCell => {
  const { house, physics } = words;
  const breaches = breachesAt(order, between === null ? -1 : between.number - 1);
  const isHeld = !isUnheld(state, order);
  const energyJ = mostOf([state.releasableJ, ...breaches.map(({ releasableJ }) => releasableJ)]);
  return {
    title: between === null ? phrase(house, 'Now') : stepTitle(between, words),
    height: height(state.standing.height, house),
    balance: balanceWords(state, words),
    isBroken: breaches.length > 0 || !isHeld,
    held: heldOrBroken(state, breaches, { house, nameOf: words.nameOf, isHeld }),
    energyJ,
    energy: energyJ === null ? null : energyWords(energyJ, physics, house),
  };
};

/** How the set stands at the start and after each step, in words, with what is broken there. */
export const orderCells = (
  order: CheckedOrder,
  { house, nameOf }: Named,
): readonly BesideCell[] => {
  const { physics, verdict, checked } = order;
  const words = { house, nameOf, physics, isDoubtTried: checked.doubt === 'worst' };
  const [start] = verdict.states;
  return [
    ...(start === undefined ? [] : [cellOf(order, null, start, words)]),
    ...stepsBetween(order).map((between) => cellOf(order, between, between.after, words)),
  ];
};

/** What is wrong first, and the most that any step could set free. */
export const orderSummary = (
  order: CheckedOrder,
  cells: readonly BesideCell[],
  house: House,
): string => {
  const { broken, refused } = order.verdict;
  const mostJ = mostOf(cells.map(({ energyJ }) => energyJ));
  const energy =
    mostJ === null
      ? phrase(house, 'Energy not reckoned.')
      : phrase(house, 'The most that it could set free: {energy}.', {
          energy: energyWords(mostJ, order.physics, house),
        });
  if (broken !== null) {
    const where =
      broken.step < 0
        ? phrase(house, 'before its first step')
        : phrase(house, 'at step {step}', { step: broken.step + 1 });
    return phrase(house, 'Breaks {rule} {where}. {energy}', { rule: broken.rule, where, energy });
  }
  if (refused !== null)
    return phrase(house, 'Step {step} cannot be replayed. {energy}', {
      step: refused.step + 1,
      energy,
    });
  return phrase(house, 'Replayed to its end, nothing broken. {energy}', { energy });
};

/** Rows of two orders by their number; where one has fewer steps, its side is null. */
export const ordersBeside = (
  left: CheckedOrder,
  right: CheckedOrder,
  named: Named,
): OrdersBeside => {
  const [ofLeft, ofRight] = [orderCells(left, named), orderCells(right, named)];
  const count = Math.max(ofLeft.length, ofRight.length);
  return {
    rows: Array.from({ length: count }, (_, number) => ({
      number,
      left: ofLeft[number] ?? null,
      right: ofRight[number] ?? null,
    })),
    left: orderSummary(left, ofLeft, named.house),
    right: orderSummary(right, ofRight, named.house),
  };
};
