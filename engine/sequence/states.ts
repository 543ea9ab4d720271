/** How the set stands after a step, what holds it and by whose limit. */
import { metres, newtons } from '#quantities';
import type { OrderPhysics, Restraint, Standing } from '#state';
import type { Site } from './site.ts';
import { SAME_M } from './span.ts';
import type { Hold, Holder, OrderState } from './types.ts';

type Engaged = { readonly by: Holder; readonly ratedN: number };

/** The planning limit: what the lock is worth where one brick may have been miscounted. */
export const planningLockN = ({ lockLimitN, bricks }: OrderPhysics): number =>
  Math.max(0, lockLimitN - Math.max(0, ...bricks.map(({ atBattenN }) => atBattenN)));

export const stateOf = (site: Site, standing: Standing): OrderState => {
  const { physics, options } = site;
  const imbalance = imbalanceOf(site, standing);
  const doubtN = options.doubtShare * imbalance.doubtN;
  const planningN = planningLockN(physics);
  const needIn = Math.max(0, imbalance.lowN + doubtN);
  const needOut = Math.max(0, doubtN - imbalance.highN);
  const [inBy, outBy] = [best(site, standing, 'in'), best(site, standing, 'out')];
  const isOnLock = (needN: number, { ratedN }: Engaged): boolean => needN > ratedN + 1e-6;
  const onLock = isOnLock(needIn, inBy) || isOnLock(needOut, outBy);
  const isNominal =
    isOnLock(needIn, inBy) && needIn > planningN + 1e-6
      ? true
      : isOnLock(needOut, outBy) && needOut > planningN + 1e-6;
  const lockN = isNominal ? physics.lockLimitN : planningN;
  const withLock = ({ by, ratedN }: Engaged): Hold =>
    ratedN >= lockN ? { by, ratedN: newtons(ratedN) } : { by: 'lock', ratedN: newtons(lockN) };
  return {
    standing,
    imbalance: {
      lowN: newtons(imbalance.lowN),
      highN: newtons(imbalance.highN),
      doubtN: newtons(imbalance.doubtN),
    },
    holds: { in: withLock(inBy), out: withLock(outBy) },
    lockUsed: onLock ? (isNominal ? 'nominal' : 'planning') : null,
  };
};

/** On steel the set chooses between what the batten weighs alone and with all that hangs on it. */
const imbalanceOf = (site: Site, standing: Standing): ReturnType<OrderPhysics['at']> => {
  const { physics } = site;
  const at = physics.at(standing);
  if (standing.service !== 'deadHung') return at;
  const items = Object.fromEntries(
    Object.entries(standing.items).map(([id, phase]) => [
      id,
      phase === 'heldElsewhere' ? ('flying' as const) : phase,
    ]),
  );
  const hung = physics.at({ ...standing, items });
  return { lowN: at.lowN, highN: hung.highN, doubtN: hung.doubtN };
};

/** The best single thing that is engaged beside the lock. */
const best = (site: Site, standing: Standing, way: 'in' | 'out'): Engaged => {
  const { lowStop, highStop } = site.physics;
  const all: Engaged[] = [];
  const isAt = (heightM: number): boolean => Math.abs(standing.height - heightM) <= SAME_M;
  if (way === 'in' && isAt(lowStop.heightM)) all.push({ by: 'lowStop', ratedN: lowStop.ratedN });
  if (way === 'out' && isAt(highStop.heightM)) {
    all.push({ by: 'highStop', ratedN: highStop.ratedN });
  }
  for (const restraint of standing.restraints) {
    const ratedN = ratingAt(restraint, standing.height, way);
    if (ratedN !== null) all.push({ by: restraint.kind, ratedN });
  }
  if (way === 'in' && standing.service === 'deadHung' && site.steelN !== null) {
    all.push({ by: 'steel', ratedN: site.steelN });
  }
  return all.reduce((one, other) => (other.ratedN > one.ratedN ? other : one), NOTHING);
};

const NOTHING: Engaged = { by: 'lock', ratedN: 0 };

const ratingAt = (
  { kind, resists, rating, from, to }: Restraint,
  heightM: number,
  way: 'in' | 'out',
): number | null => {
  if (rating === null || from === null || to === null || kind === 'deadHangSteel') return null;
  if (resists !== way && resists !== 'both') return null;
  return heightM >= from - SAME_M && heightM <= to + SAME_M ? rating : null;
};

/** Heights in metres, restraints and zones as they are: a standing as the judge reads it. */
export const standingAt = (heightM: number, parts: Omit<Standing, 'height'>): Standing => ({
  height: metres(heightM),
  ...parts,
});
