/**
 * One of a pair stops and the other goes on: one of them has all that they share, and the other
 * nothing of it. That is held, or nobody is in its path; then it is an assumption with its number.
 */
import { type Measure, measure } from '#findings';
import { assert } from '#outcome';
import { metres, newtons } from '#quantities';
import { isAbove } from '../../limits.ts';
import { worstBy } from '../../worst.ts';
import { unheld } from '../breach.ts';
import { gravest } from '../done.ts';
import { type Direction, isRunClosed, movingHold } from '../holds.ts';
import type { Scene } from '../scene.ts';
import { piecesOf } from '../travel-line.ts';
import type { Breach } from '../verdict.ts';
import { outBy } from './band.ts';
import { coupledIn, type Moment, sceneOf, setOf, wholeOf } from './moment.ts';
import { type OneStops, otherOf, SIDES, type Side } from './pair-verdict.ts';

export type OneStopsAnswer = {
  readonly numbers: readonly OneStops[];
  readonly breaches: readonly Breach[];
  /** It is not held, while nobody is in its path. */
  readonly leansOnZone: boolean;
};

const NOTHING: OneStopsAnswer = { numbers: [], breaches: [], leansOnZone: false };

export const oneStops = (moment: Moment): OneStopsAnswer => {
  const { pair, step, before, options } = moment;
  if (step === null || !('together' in step)) return NOTHING;
  if (coupledIn(pair, before).onBoth.length === 0) return NOTHING;
  const worst = SIDES.map((side) => ({ side, ...extremesOf(moment, side) }));
  const numbers = worst.map(({ side, all, nothing }): OneStops => {
    const number = ({ imbalanceN, heightM }: Extreme) => ({
      imbalance: newtons(imbalanceN),
      at: metres(heightM),
    });
    return {
      step: moment.index,
      set: setOf(moment, side),
      all: number(all),
      nothing: number(nothing),
      lag: metres(lagOf(moment)),
    };
  });
  if (options.faults === 'skip') return { ...NOTHING, numbers };
  const loose = worst.flatMap(({ side, all, nothing }) =>
    gravest([...looseAt(moment, side, all, 'in'), ...looseAt(moment, side, nothing, 'out')]),
  );
  return SIDES.every((side) => isRunClosed(before[side]))
    ? { numbers, breaches: [], leansOnZone: loose.length > 0 }
    : {
        numbers,
        breaches: loose,
        leansOnZone: false,
      };
};

type Extreme = { readonly imbalanceN: number; readonly heightM: number };

/**
 * Over the whole way, with nothing of the pieces on the set, and with all of them:
 *
 *     U_nothing = U without them,   U_all = U without them + their whole weight
 */
const extremesOf = (
  moment: Moment,
  side: Side,
): { readonly all: Extreme; readonly nothing: Extreme } => {
  const { pair, before, after } = moment;
  const pieces = coupledIn(pair, before).onBoth;
  const away = Object.fromEntries(pieces.map((piece) => [piece[side], 'away' as const]));
  const items = { ...after[side].items, ...away };
  const scene = sceneOf(moment, side, before);
  const ends = endsOf(scene, items, after[side].height);
  const wholeN = wholeOf(moment, pieces);
  const heaviest = worstBy(ends, ({ atN, doubtN }) => atN + doubtN);
  const lightest = worstBy(ends, ({ atN, doubtN }) => doubtN - atN);
  assert(heaviest !== undefined && lightest !== undefined, 'a way has two ends');
  return {
    all: {
      imbalanceN: wholeN + heaviest.atN + heaviest.doubtN,
      heightM: heaviest.heightM,
    },
    nothing: { imbalanceN: lightest.atN - lightest.doubtN, heightM: lightest.heightM },
  };
};

type End = { readonly heightM: number; readonly atN: number; readonly doubtN: number };

/** Both ends of each straight piece of the way; a set that stands still has the one height. */
const endsOf = (scene: Scene, items: Scene['standing']['items'], toM: number): readonly End[] => {
  const { physics, standing, options } = scene;
  if (toM !== standing.height) {
    return piecesOf(scene, items, toM).flatMap(({ start, end }) => [start, end]);
  }
  const { lowN, highN, doubtN } = physics.at({ ...standing, items });
  const heightM: number = standing.height;
  const doubt = options.doubt === 'none' ? 0 : doubtN;
  return [lowN, highN].map((atN) => ({ heightM, atN, doubtN: doubt }));
};

const looseAt = (
  moment: Moment,
  side: Side,
  { imbalanceN, heightM }: Extreme,
  direction: Direction,
): readonly Breach[] => {
  const scene = sceneOf(moment, side, moment.before);
  const hold = movingHold(scene.standing, heightM, direction, scene.physics.lockLimitN);
  const sizeN = direction === 'in' ? imbalanceN : -imbalanceN;
  if (!isAbove(sizeN, hold.limitN)) return [];
  const short = { imbalanceN, byN: sizeN - hold.limitN, hold };
  const facts: Readonly<Record<string, Measure | string>> = {
    partner: setOf(moment, otherOf(side)),
    share: direction === 'in' ? 'all' : 'none',
    height: measure(heightM, 'length'),
  };
  return [unheld(scene, 'ORD-045', short, { heightM, facts })];
};

/** How far one may fall behind before the band is left, at the tighter end of the way. */
const lagOf = ({ pair, before, after }: Moment): number => {
  const { leastM, mostM } = pair.band;
  const margins = [before, after].map(({ first, second }) => {
    const apartM = second.height - first.height;
    return outBy(pair.band, apartM) === null ? Math.min(apartM - leastM, mostM - apartM) : 0;
  });
  return Math.max(0, Math.min(...margins));
};
