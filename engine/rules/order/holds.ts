/**
 * What holds a set, in one direction at a time. Restraints do not share a load: the stiffest takes
 * it all, so the hold is the largest single rating and never a sum (the-job.md 4.3).
 */
import type { OrderPhysics, Restraint, Standing } from '#state';
import { isSameHeight } from '../limits.ts';
import { worstBy } from '../worst.ts';

export type Direction = 'in' | 'out';

export type Hold = { readonly what: string; readonly limitN: number; readonly isLock: boolean };

const RESTRAINT_WORDS: Readonly<Record<Restraint['kind'], string>> = {
  bullLine: 'the bull line',
  arborSling: 'the sling on the arbor',
  stands: 'the stands under the batten',
  winch: 'the winch on the hand line',
  choke: 'the choke on the hand line',
  deadHangSteel: 'the dead-hang steel',
  pinnedPiece: 'the pinned piece',
};

export const restraintWords = ({ kind }: Pick<Restraint, 'kind'>): string => RESTRAINT_WORDS[kind];

export const isRunClosed = ({ closed }: Pick<Standing, 'closed'>): boolean =>
  closed.some(({ zone }) => zone === 'run');

/** The change of U for the largest brick of the house, N. */
export const largestBrickN = ({ bricks }: OrderPhysics): number =>
  bricks.reduce((largest, { atBattenN }) => Math.max(largest, atBattenN), 0);

/**
 * What the lock counts for with people in its path: one miscounted brick must still leave it
 * within its limit.
 *
 * Source  the-job.md 4.5, nominal and planning limits
 */
export const planningLimitN = (physics: OrderPhysics): number =>
  Math.max(0, physics.lockLimitN - largestBrickN(physics));

type Spanned = Restraint & {
  readonly rating: number;
  readonly from: number;
  readonly to: number;
};

export const isSpanned = (restraint: Restraint): restraint is Restraint & Spanned =>
  restraint.rating !== null && restraint.from !== null && restraint.to !== null;

const reaches = ({ from, to }: Spanned, heightM: number): boolean =>
  (heightM >= from || isSameHeight(heightM, from)) && (heightM <= to || isSameHeight(heightM, to));

export const engagedAt = (
  { restraints }: Pick<Standing, 'restraints'>,
  heightM: number,
): readonly (Restraint & Spanned)[] =>
  restraints.filter(isSpanned).filter((each) => reaches(each, heightM));

/** What a kind can resist at all, whatever is written of it: a rope pulls, and stands push. */
const ONE_WAY: Readonly<Partial<Record<Restraint['kind'], Direction>>> = {
  bullLine: 'out',
  stands: 'in',
  deadHangSteel: 'in',
};

const resists = ({ kind, resists: way }: Restraint, direction: Direction): boolean =>
  (way === direction || way === 'both') && (ONE_WAY[kind] ?? direction) === direction;

/** A winch on the hand line moves a set, it does not hold one (X5 relaxes the hands only). */
const holdsAtRest = ({ kind }: Restraint): boolean => kind !== 'winch';

const asHold = ({ kind, rating }: Restraint & Spanned): Hold => ({
  what: RESTRAINT_WORDS[kind],
  limitN: rating,
  isLock: false,
});

const lockOf = (lockN: number): Hold => ({ what: 'the rope lock', limitN: lockN, isLock: true });

const largest = (holds: readonly Hold[], lockN: number): Hold =>
  worstBy([...holds, lockOf(lockN)], ({ limitN }) => limitN) ?? lockOf(lockN);

/** The largest single hold against the batten going one way, at rest with the lock closed. */
export const restingHold = (
  physics: OrderPhysics,
  standing: Standing,
  direction: Direction,
  lockN: number,
): Hold => {
  const stop = direction === 'in' ? physics.lowStop : physics.highStop;
  const name = direction === 'in' ? 'the low stop' : 'the high stop';
  const holds = engagedAt(standing, standing.height)
    .filter((each) => resists(each, direction) && holdsAtRest(each))
    .map(asHold);
  const stops = isSameHeight(standing.height, stop.heightM)
    ? [{ what: name, limitN: stop.ratedN, isLock: false }]
    : [];
  return largest([...stops, ...holds], lockN);
};

/**
 * What could be engaged at a height once a moving set has stopped there: the lock within its
 * limit, or a bull line that is led through a device that holds by itself. The rest is tied.
 */
export const movingHold = (
  standing: Standing,
  heightM: number,
  direction: Direction,
  lockN: number,
): Hold =>
  largest(
    engagedAt(standing, heightM)
      .filter((each) => each.kind === 'bullLine' && resists(each, direction))
      .map(asHold),
    lockN,
  );

/** What can haul against an imbalance that way: hands, or one hauling line; never both. */
export const haulOf = (
  physics: OrderPhysics,
  standing: Standing,
  heightM: number,
  direction: Direction,
): Hold => {
  const hauls = engagedAt(standing, heightM)
    .filter(({ kind }) => kind === 'bullLine' || kind === 'winch')
    .filter((each) => resists(each, direction))
    .map(asHold);
  const hands = { what: 'hands on the hand line', limitN: physics.handsBriefN, isLock: false };
  return worstBy([hands, ...hauls], ({ limitN }) => limitN) ?? hands;
};
