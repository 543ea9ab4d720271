/** What holds one of the pair where its own order did not ask: off its heights, or half laden. */
import { metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { heldSpans, type Rated } from '../held.ts';
import { SAME_M } from '../span.ts';

export type Holding = { readonly physics: OrderPhysics; readonly doubtShare: number };

/** Lines led through a device that holds stay on in a flight; whatever else is rigged ties it. */
const linesOf = ({ restraints }: Standing): readonly Rated[] | null => {
  const lines: Rated[] = [];
  for (const { kind, rating, from, to } of restraints) {
    if (kind !== 'bullLine') return null;
    if (rating === null || from === null || to === null) return null;
    lines.push({ resists: 'out', ratedN: rating, span: { lo: from, hi: to } });
  }
  return lines;
};

/**
 * Whether a set can be flown to a height as it is laden, and held wherever it stops on the way:
 * by its lock with the run closed, as far as hands can move it, or by a line that stays on.
 *
 * Omits   stops at the two ends of the travel, which hold more than the lock: stricter
 */
export const canFlyTo = (
  { physics, doubtShare }: Holding,
  standing: Standing,
  toM: number,
): boolean => {
  const { handsBriefN, lockLimitN } = physics;
  const phases = Object.values(standing.items);
  // What lies slack or rests would be lifted on the way: that is for its own order to say.
  if (phases.includes('attachedSlack') || phases.includes('attachedResting')) return false;
  const lines = linesOf(standing);
  if (standing.service !== 'in' || lines === null) return false;
  const handsN = Math.max(0, handsBriefN - physics.frictionN(standing.items));
  const [lo, hi] = [Math.min(standing.height, toM), Math.max(standing.height, toM)];
  const lockN = Math.min(lockLimitN, handsN);
  const spans = heldSpans(physics.curve(standing), lines, lockN, doubtShare);
  return spans.some((span) => span.lo <= lo + SAME_M && span.hi >= hi - SAME_M);
};

/**
 * Whether a set at rest is held with all of pieces that it shares, and where nobody knows its
 * share also with none of them.
 *
 * Omits   slings, stands and lines that hold it too: stricter
 */
export const isHeldWithShare = (
  { physics, doubtShare }: Holding,
  standing: Standing,
  {
    items,
    wholeN,
    share,
  }: {
    readonly items: readonly string[];
    readonly wholeN: number;
    readonly share: 'all' | 'any';
  },
): boolean => {
  const away = Object.fromEntries(items.map((id) => [id, 'away' as const]));
  const bare = physics.at({ ...standing, items: { ...standing.items, ...away } });
  const { lowStop, highStop, lockLimitN } = physics;
  const isAt = (heightM: number): boolean => Math.abs(standing.height - heightM) <= SAME_M;
  const inN = isAt(lowStop.heightM) ? Math.max(lockLimitN, lowStop.ratedN) : lockLimitN;
  const outN = isAt(highStop.heightM) ? Math.max(lockLimitN, highStop.ratedN) : lockLimitN;
  const doubtN = doubtShare * physics.at(standing).doubtN;
  const leastN = share === 'any' ? 0 : wholeN;
  return bare.lowN + wholeN + doubtN <= inN && bare.highN + leastN - doubtN >= -outN;
};

export const raised = (standing: Standing, heightM: number): Standing => ({
  ...standing,
  height: metres(heightM),
});
