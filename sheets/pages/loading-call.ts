/** What the loaders of one gallery are called for: visits in their order, and the bricks there. */

import type { House } from '#house';
import {
  type CheckedOrder,
  type CountOfKind,
  type StepBetween,
  stepsBetween,
  whyNotPrinted,
} from '#orders';
import type { Step } from '#state';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { bricksWords } from '../words/say-standing.ts';
import { whyWords } from '../words/why-words.ts';

type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;
type Stock = Readonly<Record<string, number>>;

/** Bricks of one kind, handled at one place in one go. */
export type Visit = {
  readonly order: CheckedOrder;
  readonly between: StepBetween;
  readonly step: BrickStep;
  /** Loose on the gallery before and after; null where nobody counted that kind. */
  readonly looseBefore: number | null;
  readonly looseAfter: number | null;
};

const bricksOf = ({ step }: StepBetween): BrickStep | null =>
  step.act === 'add' || step.act === 'remove' ? step : null;

/** A set that is not on the sheet, and why. */
export type LeftOut = { readonly set: string; readonly why: string };

export type Call = {
  readonly visits: readonly Visit[];
  /** Orders of the sheet, in their order. */
  readonly orders: readonly CheckedOrder[];
  readonly left: readonly LeftOut[];
  /** To be brought there and counted before the first visit. */
  readonly brought: readonly CountOfKind[];
};

const keptAt = (gallery: string, { assumed }: CheckedOrder): readonly CountOfKind[] =>
  assumed.flatMap((each) => (each.is === 'stockKept' && each.gallery === gallery ? each.kept : []));

export const countOf = (kind: string, bricks: readonly CountOfKind[]): number =>
  bricks.filter((each) => each.kind === kind).reduce((sum, { count }) => sum + count, 0);

/** What an order takes at a gallery beyond what it puts there, at its most. */
const mostTaken = (kind: string, gallery: string, order: CheckedOrder): number => {
  let [taken, most] = [0, 0];
  for (const between of stepsBetween(order)) {
    const step = bricksOf(between);
    if (step === null || step.gallery !== gallery || step.kind !== kind) continue;
    taken += (step.act === 'add' ? 1 : -1) * step.count;
    most = Math.max(most, taken);
  }
  return most;
};

/**
 * Bricks that the record has on the arbor of a bare set, shared out over the galleries that take
 * them, each no more than it takes and all together no more than there are.
 */
const broughtTo = (
  gallery: string,
  order: CheckedOrder,
  { galleries }: Pick<House, 'galleries'>,
): readonly CountOfKind[] => {
  const before = galleries.slice(
    0,
    galleries.findIndex(({ id }) => id === gallery),
  );
  return order.assumed
    .flatMap((each) => (each.is === 'bricksBack' ? each.bricks : []))
    .flatMap(({ kind, count }): readonly CountOfKind[] => {
      const others = before.reduce((sum, { id }) => sum + mostTaken(kind, id, order), 0);
      const brought = Math.min(mostTaken(kind, gallery, order), Math.max(0, count - others));
      return brought === 0 ? [] : [{ kind, count: brought }];
    });
};

const withMore = (stock: Stock, bricks: readonly CountOfKind[]): Stock => {
  const more: Record<string, number> = { ...stock };
  for (const { kind, count } of bricks) more[kind] = (more[kind] ?? 0) + count;
  return more;
};

/** The visits of one order with what is loose running along. */
const visitsOf = (gallery: string, order: CheckedOrder, stock: Stock): readonly Visit[] => {
  const loose = new Map(Object.entries(stock));
  return stepsBetween(order).flatMap((between): readonly Visit[] => {
    const step = bricksOf(between);
    if (step === null || step.gallery !== gallery) return [];
    const before = loose.get(step.kind) ?? null;
    const after = before === null ? null : before + (step.act === 'add' ? -1 : 1) * step.count;
    if (after !== null) loose.set(step.kind, after);
    return [{ order, between, step, looseBefore: before, looseAfter: after }];
  });
};

/** Into what is kept, or fewer than none: it cannot be worked after the orders before it. */
const shortOf = (gallery: string, visits: readonly Visit[], house: House): string | null => {
  const short = visits.find(
    ({ order, step, looseAfter }) =>
      looseAfter !== null && looseAfter < countOf(step.kind, keptAt(gallery, order)),
  );
  if (short === undefined) return null;
  const { order, between, step, looseBefore } = short;
  const wanted = bricksWords(step.count, step.kind, house);
  const free = Math.max(0, (looseBefore ?? 0) - countOf(step.kind, keptAt(gallery, order)));
  return phrase(house, 'step {number} wants {wanted}, and {free} may be taken', {
    number: between.number,
    wanted,
    free,
  });
};

/**
 * In the order of the orders, each from what the one before it left. One that may not be printed,
 * or for which the bricks do not last, is left out and named: it takes nothing. What is brought
 * for the orders of the sheet lies there from the first visit on.
 */
export const callOf = (
  gallery: string,
  { state, house }: Pick<SheetContext, 'state' | 'house'>,
  orders: readonly CheckedOrder[],
): Call => {
  const left: LeftOut[] = [];
  const kept: CheckedOrder[] = [];
  let stock: Stock = { ...state?.galleries[gallery]?.stock };
  for (const order of orders) {
    const there = withMore(stock, broughtTo(gallery, order, house));
    const own = visitsOf(gallery, order, there);
    const why = whyNotPrinted(order) ?? shortOf(gallery, own, house);
    if (why !== null) left.push({ set: order.set, why: whyWords(why, house) });
    if (why !== null || own.length === 0) continue;
    kept.push(order);
    stock = afterVisits(there, own);
  }
  const brought = kept.flatMap((order) => broughtTo(gallery, order, house));
  return { visits: runningVisits(gallery, { state }, kept, brought), orders: kept, left, brought };
};

const afterVisits = (stock: Stock, visits: readonly Visit[]): Stock => ({
  ...stock,
  ...Object.fromEntries(
    visits.flatMap(({ step, looseAfter }) =>
      looseAfter === null ? [] : [[step.kind, looseAfter] as const],
    ),
  ),
});

/** As the loaders see it: all that was brought lies there, and it goes down visit by visit. */
const runningVisits = (
  gallery: string,
  { state }: Pick<SheetContext, 'state'>,
  orders: readonly CheckedOrder[],
  brought: readonly CountOfKind[],
): readonly Visit[] => {
  let stock = withMore({ ...state?.galleries[gallery]?.stock }, brought);
  return orders.flatMap((order) => {
    const visits = visitsOf(gallery, order, stock);
    stock = afterVisits(stock, visits);
    return visits;
  });
};

export const platesThen = ({ after }: StepBetween): number =>
  after.standing.stack
    .filter(({ tag }) => tag !== 'spreader')
    .reduce((sum, { count }) => sum + count, 0);
