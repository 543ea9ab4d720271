import { measure } from '#findings';
import type { Restraint } from '#state';
import { byLock } from '../balance/by-lock.ts';
import { sourceOf } from '../known-values.ts';
import { isAbove, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetCase, SetRule } from '../rule.ts';

/**
 * STA-004: something rated holds a recorded set each way. What holds is the strongest of lock,
 * stop and restraints that resist that way at that height; they are never added (the stiffest
 * takes it all). A lock that was not recorded as closed counts no more than one that was.
 *
 * Where the height was measured, a piece on the deck leaves the system a choice, and it is held
 * if any of it is held. Where the height was not, the truth is one of them, and all must be held.
 */
export const pastWhatHolds: SetRule = (the) => {
  const { imbalance, state } = the.set.recorded;
  if (!imbalance.known || state.height === null || state.service === 'deadHung') return [];
  const { low, high } = imbalance.value;
  const isMeasured = state.height.low === state.height.high;
  const [comingInN, goingOutN] = isMeasured ? [low, -high] : [high, -low];
  return byLock(the, (lockN, source) => {
    const lock = { name: 'the rope lock', ratingN: lockN, source };
    const holdsIn = strongest([lock, ...holders(the, 'in')]);
    const holdsOut = strongest([lock, ...holders(the, 'out')]);
    if (isAbove(comingInN, holdsIn.ratingN)) return [found(the, comingInN, holdsIn)];
    if (isAbove(goingOutN, holdsOut.ratingN)) return [found(the, -goingOutN, holdsOut)];
    return [];
  });
};

type Holder = { readonly name: string; readonly ratingN: number; readonly source: string };

const strongest = (holders: readonly [Holder, ...Holder[]]): Holder =>
  holders.reduce((one, other) => (other.ratingN > one.ratingN ? other : one));

const RESTRAINT_WORDS: Readonly<Record<Restraint['kind'], string>> = {
  bullLine: 'the bull line',
  arborSling: 'the sling on the arbor',
  stands: 'the stands',
  winch: 'the winch',
  choke: 'the choke on the hand line',
  deadHangSteel: 'the dead-hang steel',
  pinnedPiece: 'the pinned piece',
};

/** Stop and restraints that resist one way where the batten was recorded. */
const holders = (the: SetCase, way: 'in' | 'out'): readonly Holder[] => [
  ...stopAt(the, way),
  ...(the.set.recorded.state.restraints ?? [])
    .filter(({ resists }) => resists === way || resists === 'both')
    .filter((restraint) => isAtHeight(the, restraint))
    // A restraint without a rating may hold, and is not counted on.
    .flatMap(({ kind, rating }) =>
      rating === null
        ? []
        : [{ name: RESTRAINT_WORDS[kind], ratingN: rating, source: 'rating, as recorded' }],
    ),
];

const stopAt = ({ set: { lineSet, recorded } }: SetCase, way: 'in' | 'out'): readonly Holder[] => {
  const { height, rated } = way === 'in' ? lineSet.lowStop : lineSet.highStop;
  const at = recorded.state.height;
  if (!height.known || !rated.known || at === null) return [];
  const furthestM = way === 'in' ? at.high : at.low;
  const isOnStop =
    isSameHeight(furthestM, height.value) ||
    (way === 'in' ? furthestM < height.value : furthestM > height.value);
  const name = way === 'in' ? 'the low stop' : 'the high stop';
  return isOnStop ? [{ name, ratingN: rated.value, source: sourceOf(rated) }] : [];
};

/** A bound that was not recorded is none: the restraint was recorded as it is now. */
const isAtHeight = ({ set: { recorded } }: SetCase, { from, to }: Restraint): boolean => {
  const at = recorded.state.height;
  return at !== null && (from === null || at.low >= from) && (to === null || at.high <= to);
};

const found = ({ set: { lineSet, recorded } }: SetCase, imbalanceN: number, holder: Holder) => {
  const at = recorded.state.height;
  return raise('STA-004', {
    at: { set: lineSet.id, ...(at === null ? {} : { heightM: at.low }) },
    measured: measure(imbalanceN, 'imbalance'),
    limit: measure(holder.ratingN, 'force'),
    limitSource: holder.source,
    facts: {
      holder: holder.name,
      height: at === null ? 'an unknown height' : measure(at.low, 'length'),
    },
  });
};
