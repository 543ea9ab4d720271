/**
 * Whether a set is held, in the witness's own words of the-job.md 4.3: in each direction the
 * largest single rating, never a sum; doubt is for all, contact is there exists.
 */
import type { OrderPhysics, Restraint, Standing } from '#state';
import { afterStep, isSame, offSteel } from './steps-done.ts';

/** Numbers that were added up in other orders differ by less than this. */
const SLACK_N = 0.5;

export type Seen = { readonly leastN: number; readonly mostN: number };

export type Reckoning = {
  readonly physics: OrderPhysics;
  /** What the lock counts for: nothing where it is doubted. */
  readonly lockN: number;
  /** Without doubt every mass is as it is written: so the true world is. */
  readonly isWorst: boolean;
  /** What pulls on a stop have shown. */
  readonly seen: Seen | null;
};

const WAY: Readonly<Partial<Record<Restraint['kind'], 'in' | 'out'>>> = {
  bullLine: 'out',
  stands: 'in',
  deadHangSteel: 'in',
};

const ratedAt = (
  { restraints }: Pick<Standing, 'restraints'>,
  heightM: number,
  way: 'in' | 'out',
  isUsed: (kind: Restraint['kind']) => boolean,
): number => {
  let most = 0;
  for (const { kind, rating, from, to, resists } of restraints) {
    if (rating === null || from === null || to === null || !isUsed(kind)) continue;
    if (heightM < from - 1e-6 || heightM > to + 1e-6) continue;
    const goes = resists === 'both' || resists === way;
    if (goes && (WAY[kind] ?? way) === way) most = Math.max(most, rating);
  }
  return most;
};

const stopN = ({ lowStop, highStop }: OrderPhysics, heightM: number, way: 'in' | 'out'): number => {
  const stop = way === 'in' ? lowStop : highStop;
  return isSame(stop.heightM, heightM) ? stop.ratedN : 0;
};

const steelN = (standing: Standing): number =>
  ratedAt(standing, standing.height, 'in', (kind) => kind === 'deadHangSteel');

type Range = { readonly lowN: number; readonly highN: number; readonly doubtN: number };

/** Steel takes any share of what hangs on it; without steel all that hangs is on the batten. */
const rangeOf = (physics: OrderPhysics, standing: Standing): Range => {
  const here = physics.at(standing);
  if (standing.service !== 'deadHung') return here;
  const off = physics.at(offSteel(standing));
  if (steelN(standing) === 0) return off;
  return {
    lowN: Math.min(here.lowN, off.lowN),
    highN: Math.max(here.highN, off.highN),
    doubtN: Math.max(here.doubtN, off.doubtN),
  };
};

const doubtOf = (doubtN: number, { isWorst, seen }: Reckoning): Seen => {
  if (!isWorst) return { leastN: 0, mostN: 0 };
  return {
    leastN: Math.max(-doubtN, seen?.leastN ?? -doubtN),
    mostN: Math.min(doubtN, seen?.mostN ?? doubtN),
  };
};

/** Why a set at rest is not held; null where it is. */
export const whyUnheld = (standing: Standing, reckoning: Reckoning): string | null => {
  const { physics, lockN } = reckoning;
  const { lowN, highN, doubtN } = rangeOf(physics, standing);
  const { leastN, mostN } = doubtOf(doubtN, reckoning);
  const holds = (way: 'in' | 'out'): number => {
    const tied = ratedAt(standing, standing.height, way, (kind) => kind !== 'winch');
    return Math.max(lockN, tied, stopN(physics, standing.height, way));
  };
  const comesIn = lowN + mostN - holds('in');
  const goesOut = -(highN + leastN) - holds('out');
  if (comesIn > SLACK_N) return `${comesIn.toFixed(1)} N more going in than anything holds`;
  if (goesOut > SLACK_N) return `${goesOut.toFixed(1)} N more going out than anything holds`;
  return null;
};

/** A tenth of a metre: between the places where the curve breaks it is a straight line. */
const SAMPLE_M = 0.5;
const INSIDE_M = 1e-4;

/** Heights on the way, just inside each straight piece and along it. */
const onTheWay = (heights: readonly number[], lowM: number, highM: number): readonly number[] => {
  const ends = [lowM, ...heights.filter((each) => each > lowM && each < highM), highM];
  const sorted = ends.toSorted((one, other) => one - other);
  return sorted.slice(1).flatMap((toM, index) => {
    const fromM = sorted[index] ?? lowM;
    if (toM - fromM < 3 * INSIDE_M) return [];
    const between: number[] = [];
    for (let atM = fromM + SAMPLE_M; atM < toM - INSIDE_M; atM += SAMPLE_M) between.push(atM);
    return [fromM + INSIDE_M, ...between, toM - INSIDE_M];
  });
};

/** Where and why a move passes a height at which nothing could hold it; null where none. */
export const whyUnheldOnWay = (
  standing: Standing,
  toM: number,
  reckoning: Reckoning,
): string | null => {
  const { physics, lockN } = reckoning;
  const end = afterStep(physics, standing, { act: 'fly', to: toM as Standing['height'] });
  if (end === null || isSame(toM, standing.height)) return null;
  const moving = { ...standing, items: end.items };
  const nodes = physics.curve({ stack: standing.stack, items: end.items });
  const ties = standing.restraints.flatMap(({ from, to }) => [from ?? 0, to ?? 0]);
  const heights = [...nodes.map(({ heightM }) => heightM), ...ties];
  const [lowM, highM] = [Math.min(standing.height, toM), Math.max(standing.height, toM)];
  for (const heightM of onTheWay(heights, lowM, highM)) {
    const { lowN, highN, doubtN } = physics.at({
      ...moving,
      height: heightM as Standing['height'],
    });
    const { leastN, mostN } = doubtOf(doubtN, { ...reckoning, seen: null });
    const bullN = ratedAt(standing, heightM, 'out', (kind) => kind === 'bullLine');
    const [inN, outN] = [lowN + mostN - lockN, -(highN + leastN) - Math.max(lockN, bullN)];
    const worst = Math.max(inN, outN);
    if (worst > SLACK_N) return `${worst.toFixed(1)} N too much at ${heightM.toFixed(3)} m`;
  }
  return null;
};

/** What is out of balance as the lock is opened, past what holds it then; null where nothing. */
export const whyNotUnlocked = (standing: Standing, reckoning: Reckoning): string | null => {
  const { physics, lockN } = reckoning;
  const { lowN, highN, doubtN } = rangeOf(physics, standing);
  const { leastN, mostN } = doubtOf(doubtN, reckoning);
  const bullN = ratedAt(standing, standing.height, 'out', (kind) => kind === 'bullLine');
  const worst = Math.max(lowN + mostN - lockN, -(highN + leastN) - Math.max(lockN, bullN));
  return worst > SLACK_N ? `${worst.toFixed(1)} N past the lock as it is opened` : null;
};
