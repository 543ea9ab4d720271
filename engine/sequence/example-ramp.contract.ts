/**
 * A set made up so that it can be reckoned in the head: U = 60 − 10 h newtons over 12 m and what
 * hangs on top, a lock of 50 N, bricks of 20 N, and stops that hold nothing.
 */
import { metres } from '#quantities';
import type { OrderNode, OrderPhysics, Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { bare, setWith } from './example-jobs.contract.ts';
import type { Rated } from './held.ts';
import { type Load, type LoadChange, type Loads, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { siteOf } from './site.ts';
import type { Span } from './span.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

/** What each item weighs at the batten, N. */
const WEIGHTS: Readonly<Record<string, number>> = { lamp: 12, heavy: 30 };

export const rampNode = (heightM: number, valueN: number, doubtN = 0): OrderNode => ({
  heightM,
  belowN: valueN,
  aboveN: valueN,
  contact: { lowN: valueN, highN: valueN },
  doubtN,
});

const hangingN = (items: Standing['items']): number =>
  Object.entries(items).reduce(
    (sum, [id, phase]) => sum + (phase === 'flying' ? (WEIGHTS[id] ?? 0) : 0),
    0,
  );

const curve: OrderPhysics['curve'] = ({ items }) => {
  const moreN = hangingN(items);
  return [rampNode(0, 60 + moreN), rampNode(12, -60 + moreN)];
};

const rampPhysics = (more: Partial<OrderPhysics>): OrderPhysics => {
  const example = examplePhysics(setWith({}));
  const [brick] = example.bricks;
  return {
    ...example,
    lowStop: { heightM: 0, ratedN: 0 },
    highStop: { heightM: 12, ratedN: 0 },
    lockLimitN: 50,
    bricks: brick === undefined ? [] : [{ ...brick, atBattenN: 20 }],
    curve,
    itemMostN: (id) => (WEIGHTS[id] ?? 0) + 30,
    itemLeastN: (id) => (WEIGHTS[id] ?? 0) - 30,
    ...more,
  };
};

export type RampAsked = {
  readonly physics?: Partial<OrderPhysics>;
  readonly start?: Partial<Standing>;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
  readonly change?: LoadChange;
};

export const rampLoad = (asked: RampAsked): { readonly loads: Loads; readonly load: Load } => {
  const { physics = {}, start = {}, goal = {}, options = {}, change = {} } = asked;
  const stands: Standing = { ...bare, height: metres(5), ...start };
  const wanted = { items: {}, bricks: {}, height: null, service: 'in' as const, ...goal };
  const usual = { ...USUAL, restAtM: 4, ...options };
  const loads = loadsOf(siteOf(rampPhysics(physics), stands, wanted, usual));
  return { loads, load: loads.changed(loads.first, change) };
};

/** Made fast, 60 N either way over all of the travel. */
export const SIXTY: Rated = { resists: 'both', ratedN: 60, span: { lo: 0, hi: 12 } };

/** To a tenth of a millimetre, far above what rounding of forces does here. */
export const rounded = ({ lo, hi }: Span): readonly number[] =>
  [lo, hi].map((heightM) => Number(heightM.toFixed(4)));
