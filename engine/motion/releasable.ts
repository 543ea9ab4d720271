import { type Joules, joules, type Metres, metres, type Newtons, newtons } from '#quantities';
import {
  driveOver,
  heightAfter,
  type Straight,
  type Stretch,
  stretchesAlong,
  workOver,
} from './along.ts';
import { isSameHeight, sidesAt } from './broken-line.ts';
import type { ImbalanceNode, Travel, Way } from './types.ts';

/** The energy that is free at one height of the way. */
export type EnergyAt = { readonly height: Metres; readonly energy: Joules };

export type Released = {
  /** Null where it is in balance. */
  readonly way: Way | null;
  /** Largest over the way that it can go. */
  readonly most: EnergyAt;
  /** Free when it meets each height where a piece lands or is picked up. */
  readonly contacts: readonly EnergyAt[];
  /** Where it ends: at the stop, or where all that was set free is used up again. */
  readonly end: EnergyAt & { readonly at: 'stop' | 'onTheWay' };
};

export type Start = {
  readonly side: 'here' | 'justBelow' | 'justAbove';
  readonly imbalance: Newtons;
  readonly free: Released;
  /** With a hold that drags and does not stop it; only where a hold is given. */
  readonly againstHold?: Released & { readonly holds: boolean };
};

export type Releasable = {
  readonly imbalance: { readonly low: Newtons; readonly high: Newtons };
  /** One, or two where the height itself is a contact: a hair below it and a hair above. */
  readonly starts: readonly Start[];
  /** The largest of all starts. */
  readonly energy: Joules;
  readonly energyAgainstHold?: Joules;
};

/**
 * The energy that a set would set free if nothing held it: the worst over the way that it can go.
 *
 *     E = max over s of ∫ D dx from 0 to s        D = U going in, D = −U going out
 *
 *     U  N  curve   imbalance at the batten, positive batten heavy
 *     x  m          travelled by the batten from where it is, to the stop at most
 *     H  N  hold    what a hold drags with: D − H in place of D
 *
 * The way is that of U where the set stands. Each piece of the curve is straight, so its integral
 * and the place where the sum turns are exact; the sum ends at the stop, or where it comes back to
 * zero and the set would stand again.
 *
 * Source  work and energy; calculations.md section 6, the-job.md C51 and C52
 * Holds   the curve covers the travel; H ≥ 0; a hold that is not overcome at the start holds
 * Omits   friction and what is lost where pieces land or are picked up (each makes it less)
 * Check   VAL-MOT-03 (closed forms); 816 lb over 1 ft against 50 lb: 1.04 kJ
 */
export const releasable = (travel: Travel, holdN?: number): Releasable => {
  const starts = startsOf(travel).map(({ side, imbalanceN }): Start => {
    const way = wayOf(imbalanceN);
    const free = releasedAlong(travel, way, 0);
    return {
      side,
      imbalance: newtons(imbalanceN),
      free,
      ...(holdN === undefined
        ? {}
        : { againstHold: againstHold(travel, { way, imbalanceN, holdN }) }),
    };
  });
  const node = travel.curve.find(({ height }) => isSameHeight(height, travel.height));
  const values = [
    ...starts.map(({ imbalance }) => imbalance),
    ...(node?.contact === undefined ? [] : [node.contact.low, node.contact.high]),
  ];
  return {
    imbalance: { low: newtons(Math.min(...values)), high: newtons(Math.max(...values)) },
    starts,
    energy: joules(Math.max(...starts.map(({ free }) => free.most.energy))),
    ...(holdN === undefined
      ? {}
      : {
          energyAgainstHold: joules(
            Math.max(...starts.map((one) => one.againstHold?.most.energy ?? 0)),
          ),
        }),
  };
};

const wayOf = (imbalanceN: number): Way | null => {
  if (imbalanceN === 0) return null;
  return imbalanceN > 0 ? 'in' : 'out';
};

const startsOf = ({
  curve,
  height,
  lowStop,
  highStop,
}: Travel): readonly { readonly side: Start['side']; readonly imbalanceN: number }[] => {
  const { below, above } = sidesAt(curve, height);
  if (below === above) return [{ side: 'here', imbalanceN: above }];
  // On a stop there is only one side to be on.
  if (isSameHeight(height, lowStop)) return [{ side: 'here', imbalanceN: above }];
  if (isSameHeight(height, highStop)) return [{ side: 'here', imbalanceN: below }];
  return [
    { side: 'justBelow', imbalanceN: below },
    { side: 'justAbove', imbalanceN: above },
  ];
};

const againstHold = (
  travel: Travel,
  asked: { readonly way: Way | null; readonly imbalanceN: number; readonly holdN: number },
): Released & { readonly holds: boolean } => {
  const { way, imbalanceN, holdN } = asked;
  const holds = Math.abs(imbalanceN) <= holdN;
  if (!holds) return { ...releasedAlong(travel, way, holdN), holds };
  return { ...stays(travel, way), holds };
};

const stays = (travel: Travel, way: Way | null): Released => {
  const nothing = { height: metres(travel.height), energy: joules(0) };
  return { way, most: nothing, contacts: [], end: { ...nothing, at: endAt(travel, way) } };
};

const endAt = ({ height, lowStop, highStop }: Travel, way: Way | null): 'stop' | 'onTheWay' => {
  if (way === null) return 'onTheWay';
  return isSameHeight(height, way === 'in' ? lowStop : highStop) ? 'stop' : 'onTheWay';
};

const releasedAlong = (travel: Travel, way: Way | null, holdN: number): Released => {
  if (way === null) return stays(travel, way);
  const { height, curve } = travel;
  let sumJ = 0;
  let most: EnergyAt = { height: metres(height), energy: joules(0) };
  const contacts: EnergyAt[] = [];
  for (const stretch of stretchesAlong(travel, way, [curve])) {
    if (jumpsAt(curve, stretch.fromM) && !isSameHeight(stretch.fromM, height)) {
      contacts.push({ height: metres(stretch.fromM), energy: joules(sumJ) });
    }
    const drive = less(driveOver(curve, stretch, way), holdN);
    const at = (lengthM: number): Metres => metres(heightAfter(stretch, lengthM));
    const emptyM = emptyAfter(drive, stretch, sumJ);
    for (const turnM of turnsOf(drive, stretch)) {
      if (emptyM !== null && turnM > emptyM) continue;
      const energyJ = sumJ + workOver(drive, stretch, turnM);
      if (energyJ > most.energy) most = { height: at(turnM), energy: joules(energyJ) };
    }
    if (emptyM !== null) {
      return {
        way,
        most,
        contacts,
        end: { height: at(emptyM), energy: joules(0), at: 'onTheWay' },
      };
    }
    sumJ += workOver(drive, stretch, stretch.lengthM);
  }
  const stopM = way === 'in' ? travel.lowStop : travel.highStop;
  return {
    way,
    most,
    contacts,
    end: { height: metres(stopM), energy: joules(Math.max(0, sumJ)), at: 'stop' },
  };
};

const jumpsAt = (curve: readonly ImbalanceNode[], heightM: number): boolean => {
  const { below, above } = sidesAt(curve, heightM);
  return below !== above;
};

const less = ({ first, last }: Straight, holdN: number): Straight => ({
  first: first - holdN,
  last: last - holdN,
});

/** Where the sum may be largest: where the drive turns against the set, and the end. */
const turnsOf = ({ first, last }: Straight, { lengthM }: Stretch): readonly number[] =>
  first > 0 && last < 0 ? [(lengthM * first) / (first - last), lengthM] : [lengthM];

/**
 * How far along a stretch the sum has come back to zero; null where it has not by the end. Of the
 * two roots of E + F·x + S·x²/2 it is the one where the sum falls.
 */
const emptyAfter = (drive: Straight, stretch: Stretch, sumJ: number): number | null => {
  const { lengthM } = stretch;
  const slope = (drive.last - drive.first) / lengthM;
  if (drive.first >= 0 && drive.last >= 0) return null;
  if (sumJ <= 0 && drive.first <= 0) return 0;
  const under = drive.first ** 2 - 2 * slope * sumJ;
  // With a slope upward the sum may turn before it is used up.
  if (under < 0) return null;
  const root = Math.sqrt(under);
  const xM = drive.first > 0 ? (-drive.first - root) / slope : (2 * sumJ) / (root - drive.first);
  return Number.isFinite(xM) && xM >= 0 && xM <= lengthM ? xM : null;
};
