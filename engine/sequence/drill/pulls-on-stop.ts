/** How hard to pull on the stop, and with how many bricks on, so that each answer is of use. */
import type { StopLoad } from './stop-loads.ts';

export type Pulled = {
  /** Bricks with which the set is batten heavy with every mass at its lightest. */
  readonly base: number;
  /** Bricks with which even the heaviest lifts. */
  readonly most: number;
  /** N on the hand line, and what that is at the batten. */
  readonly callN: number;
  readonly pullN: number;
};

type Rules = {
  readonly frictionN: number;
  readonly handLinePerBatten: number;
  readonly callN: number;
};

/** The most bricks after which the lightest that it may be is still batten heavy; −1 for none. */
export const baseLoad = (loads: readonly StopLoad[]): number => {
  const first = loads.findIndex(({ listedN, doubtN }) => listedN - doubtN < 0);
  return first < 0 ? loads.length - 1 : first - 1;
};

/**
 * The pull that proves room for one more brick, and the bricks after which the heaviest lifts.
 *
 *     P ≥ b + Δ_b + f         it stayed under P:  U ≥ P − f ≥ b + Δ_b, so one more brick leaves
 *                             the lightest batten heavy
 *     U_n + Δ_n ≤ P − f       even the heaviest lifts with n on
 *
 *     b    N  by how much one more brick lowers the imbalance, a spreader plate with it
 *     Δ_b  N  what that brick may be off by
 *     f    N  friction at most: it helps the set to stay
 *
 * Rounded up to a figure that is called on the rail. A pull for each brick of the drill serves,
 * so the largest is taken.
 *
 * Source  statics of the hand line; the-job.md R8, S10; procedure.md, the lift test
 * Holds   friction is no more than is reckoned with: else a stay says less than is taken from it
 */
export const pulledOnStop = (loads: readonly StopLoad[], rules: Rules): Pulled | null => {
  const base = baseLoad(loads);
  // A pull for the first brick alone finds the most bricks; those bricks then ask for theirs.
  const first = called(loads, { from: base, to: base + 1 }, rules);
  const far = mostBricks(loads, base, first.pullN - rules.frictionN);
  if (far === null) return null;
  const pull = called(loads, { from: base, to: Math.max(far, base + 1) }, rules);
  const most = mostBricks(loads, base, pull.pullN - rules.frictionN);
  return most === null ? null : { base, most, ...pull };
};

const called = (
  loads: readonly StopLoad[],
  { from, to }: { readonly from: number; readonly to: number },
  { frictionN, handLinePerBatten, callN }: Rules,
): Pick<Pulled, 'callN' | 'pullN'> => {
  const roomsN = loads.slice(from, to).map((load, index) => roomN(load, loads[from + index + 1]));
  const neededN = (Math.max(0, ...roomsN) + frictionN) / handLinePerBatten;
  const upN = Math.ceil(neededN / callN) * callN;
  return { callN: upN, pullN: upN * handLinePerBatten };
};

const roomN = (load: StopLoad, next: StopLoad | undefined): number =>
  next === undefined ? 0 : load.listedN - next.listedN + Math.abs(next.doubtN - load.doubtN);

const mostBricks = (loads: readonly StopLoad[], base: number, liftsN: number): number | null => {
  const most = loads.findIndex(
    ({ listedN, doubtN }, count) => count >= base && listedN + doubtN <= liftsN,
  );
  return most < 0 ? null : most;
};
