/** A set in the middle of an order, as the judge sees it. */
import type { OrderPhysics, Standing } from '#state';
import { isAbove } from '../limits.ts';
import { engagedAt, type Hold, planningLimitN, restingHold } from './holds.ts';
import type { OrderOptions, OrderState } from './verdict.ts';

/** How far the imbalance may lie from what is listed, N. */
export type Doubt = { readonly leastN: number; readonly mostN: number };

export type Scene = {
  readonly physics: OrderPhysics;
  readonly options: OrderOptions;
  readonly step: number;
  readonly standing: Standing;
  /** Loose bricks by gallery and kind. */
  readonly stock: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** What pulls on a stop have shown of the doubt; null where nothing was pulled. */
  readonly seen: Doubt | null;
};

/** What the set may choose between, and what nature may have chosen. */
export type Load = {
  readonly lowN: number;
  readonly highN: number;
  readonly doubt: Doubt;
};

export const NO_DOUBT: Doubt = { leastN: 0, mostN: 0 };

export const boundsOf = (doubtN: number, seen: Doubt | null): Doubt => ({
  leastN: Math.max(-doubtN, seen?.leastN ?? -doubtN),
  mostN: Math.min(doubtN, seen?.mostN ?? doubtN),
});

/** Items that hang on dead-hang steel rather than on the batten. */
const onSteel = ({ service, items }: Standing): readonly string[] =>
  service === 'deadHung' ? Object.keys(items).filter((id) => items[id] === 'heldElsewhere') : [];

/** The same set with all that its steel carries on the batten again. */
export const offSteel = (standing: Standing): Standing => ({
  ...standing,
  service: 'in',
  restraints: standing.restraints.filter(({ kind }) => kind !== 'deadHangSteel'),
  items: {
    ...standing.items,
    ...Object.fromEntries(onSteel(standing).map((id) => [id, 'flying' as const])),
  },
});

/**
 * Steel that is there takes any share of what hangs on it, so that is a contact like a deck. Steel
 * that nobody has in the register, or not with a rating at this height, carries nothing.
 */
export const imbalanceOf = (physics: OrderPhysics, standing: Standing): OrderState['imbalance'] => {
  const { lowN, highN, doubtN } = physics.at(standing);
  if (onSteel(standing).length === 0) return { lowN, highN, doubtN };
  const off = physics.at(offSteel(standing));
  if (steelAt(standing) === null) {
    return { lowN: off.lowN, highN: off.highN, doubtN: off.doubtN };
  }
  return {
    lowN: Math.min(lowN, off.lowN),
    highN: Math.max(highN, off.highN),
    doubtN: Math.max(doubtN, off.doubtN),
  };
};

/** The rating of the steel where the batten is, N; null where there is none. */
export const steelAt = (standing: Standing): number | null =>
  engagedAt(standing, standing.height)
    .filter(({ kind }) => kind === 'deadHangSteel')
    .reduce<number | null>((most, { rating }) => Math.max(most ?? 0, rating), null);

export const loadOf = ({ physics, options, standing, seen }: Scene): Load => {
  const { lowN, highN, doubtN } = imbalanceOf(physics, standing);
  return { lowN, highN, doubt: options.doubt === 'none' ? NO_DOUBT : boundsOf(doubtN, seen) };
};

/** An imbalance that nothing holds: which way, by what it is short, and what there is. */
export type Shortfall = {
  readonly imbalanceN: number;
  readonly byN: number;
  readonly hold: Hold;
};

/**
 * What fails to hold a set at rest; null where all is held.
 *
 *     for all δ in the doubt there is a u in [low + δ, high + δ] with −K_out ≤ u ≤ K_in
 *
 * The worst δ each way is an end of the doubt, so two comparisons decide.
 *
 * Source  the-job.md 4.3: doubt is "for all", contact is "there exists", and the two never mix
 * Omits   whether the contact itself is rated and manned; the verdict says so
 */
export const shortOf = (
  { physics, standing }: Pick<Scene, 'physics' | 'standing'>,
  { lowN, highN, doubt }: Load,
  lockN: number,
): Shortfall | null => {
  const holdIn = restingHold(physics, standing, 'in', lockN);
  const holdOut = restingHold(physics, standing, 'out', lockN);
  const inN = lowN + doubt.mostN;
  const outN = highN + doubt.leastN;
  const short: Shortfall[] = [];
  if (isAbove(inN, holdIn.limitN)) {
    short.push({ imbalanceN: inN, byN: inN - holdIn.limitN, hold: holdIn });
  }
  if (isAbove(-outN, holdOut.limitN)) {
    short.push({ imbalanceN: outN, byN: -outN - holdOut.limitN, hold: holdOut });
  }
  const [first, second] = short;
  if (first === undefined) return null;
  return second !== undefined && second.byN > first.byN ? second : first;
};

/** What a set at rest leans on: the strongest hold each way, and how much of the lock it needs. */
export const leaningOf = (
  scene: Scene,
): Pick<OrderState, 'heldBy' | 'limit' | 'holdInN' | 'holdOutN'> => {
  const { physics, standing } = scene;
  const { lowN, highN, doubt } = loadOf(scene);
  const needs = [
    { way: 'in', needN: lowN + doubt.mostN },
    { way: 'out', needN: -(highN + doubt.leastN) },
  ] as const;
  const leans = needs.map(({ way, needN }) => {
    const hold = restingHold(physics, standing, way, physics.lockLimitN);
    return { way, hold, isNeeded: isAbove(needN, 0), needN };
  });
  const needed = leans.filter(({ isNeeded }) => isNeeded);
  const locks = needed.filter(({ hold }) => hold.isLock);
  const isNominal = locks.some(({ needN }) => isAbove(needN, planningLimitN(physics)));
  const words = needed.map(({ way, hold }) => `against going ${way}: ${hold.what}`);
  const balanced = isAbove(highN, lowN) ? 'the rest that carries a share of it' : 'its balance';
  const [holdIn, holdOut] = leans;
  return {
    heldBy: words.length === 0 ? balanced : words.join('; '),
    limit: locks.length === 0 ? null : isNominal ? 'nominal' : 'planning',
    holdInN: holdIn?.hold.limitN ?? 0,
    holdOutN: holdOut?.hold.limitN ?? 0,
  };
};
