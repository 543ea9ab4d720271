/**
 * A second look at an order, for the tests only: it walks the travel in small steps and asks the
 * set how it stands there. It shares nothing with the judge but the physics, so that a slip in the
 * judge's straight lines and its two comparisons shows.
 */
import { FOOT, metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';

type Holds = { readonly inN: number; readonly outN: number };

const STEP_M = 0.25 * FOOT;
const SAME_M = 1e-6;

const spans = (
  { from, to }: { readonly from: number | null; readonly to: number | null },
  heightM: number,
): boolean => from !== null && to !== null && heightM >= from - SAME_M && heightM <= to + SAME_M;

const holdsAt = (
  physics: OrderPhysics,
  { restraints }: Standing,
  heightM: number,
  isMoving: boolean,
): Holds => {
  let [inN, outN] = [physics.lockLimitN, physics.lockLimitN];
  if (!isMoving && heightM <= physics.lowStop.heightM + SAME_M) {
    inN = Math.max(inN, physics.lowStop.ratedN);
  }
  if (!isMoving && heightM >= physics.highStop.heightM - SAME_M) {
    outN = Math.max(outN, physics.highStop.ratedN);
  }
  for (const each of restraints) {
    if (each.rating === null || !spans(each, heightM)) continue;
    if (isMoving && each.kind !== 'bullLine') continue;
    if (each.resists === 'in') inN = Math.max(inN, each.rating);
    if (each.resists === 'out') outN = Math.max(outN, each.rating);
  }
  return { inN, outN };
};

/** By how much the best share that a rest can take still misses what holds, N; zero where held. */
const missed = (lowN: number, highN: number, { inN, outN }: Holds): number => {
  const count = highN > lowN ? 1001 : 1;
  const shares = Array.from(
    { length: count },
    (_, index) => lowN + ((highN - lowN) * index) / 1000,
  );
  return Math.min(...shares.map((shareN) => Math.max(0, shareN - inN, -shareN - outN)));
};

/** The worst that nothing holds at rest, N. Steel takes any share of what hangs on it. */
export const missedAtRest = (physics: OrderPhysics, standing: Standing): number => {
  const { lowN, highN } = physics.at(standing);
  const steelN =
    standing.service === 'deadHung'
      ? Object.entries(standing.items)
          .filter(([, phase]) => phase === 'heldElsewhere')
          .reduce((sum, [id]) => sum + physics.itemMostN(id), 0)
      : 0;
  return missed(lowN, highN + steelN, holdsAt(physics, standing, standing.height, false));
};

/** The worst that nothing could hold on the way from one height to another, N. */
export const missedOnTheWay = (physics: OrderPhysics, from: Standing, to: Standing): number => {
  const wayM = to.height - from.height;
  const count = Math.ceil(Math.abs(wayM) / STEP_M);
  if (count === 0) return 0;
  let worstN = 0;
  for (let index = 0; index <= count; index += 1) {
    // Inside the way by a hair at both ends: there the far side of a contact counts.
    const share = Math.min(1 - 1e-4, Math.max(1e-4, index / count));
    const heightM = from.height + wayM * share;
    const { lowN, highN } = physics.at({ ...to, height: metres(heightM) });
    worstN = Math.max(worstN, missed(lowN, highN, holdsAt(physics, to, heightM, true)));
  }
  return worstN;
};
