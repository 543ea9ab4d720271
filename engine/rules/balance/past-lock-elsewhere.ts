import { type Finding, type Level, measure } from '#findings';
import { isPastEitherWay, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { cueHeights, type RestHeight } from '../rest-heights.ts';
import { type Opinion, type PlannedCase, type SetCase, type SetRule, whenFlown } from '../rule.ts';
import { byLock } from './by-lock.ts';
import { type Curve, furthest, type Reading, readCurve, readingsBetween } from './curve-reading.ts';
import { imbalanceWorking } from './imbalance-working.ts';

/**
 * BAL-002: on the rest of its free travel the lock holds the set. Where it comes to rest, at the
 * working height or at the end of a cue, past the lock is stop; on the way, caution. An empty set
 * is judged over its whole travel; where it stands nobody has planned.
 */
export const pastLockElsewhere: SetRule = (the) => [...hungElsewhere(the), ...bareSet(the)];

const hungElsewhere = whenFlown((the) =>
  byLock(the, (lockN, source) => {
    const { plan } = the;
    const trims = plan.trims.map(({ height }) => height as number);
    const isTrim = (heightM: number): boolean =>
      trims.some((trimM) => isSameHeight(trimM, heightM));
    const rests = restsWithin(the).filter(({ heightM }) => !isTrim(heightM));
    const resting = furthest(
      rests
        .map(({ heightM }) => readCurve(plan.curve, heightM, 'above'))
        .filter((reading) => reading !== null)
        .filter(({ imbalanceN }) => isPastEitherWay(imbalanceN, lockN)),
    );
    if (resting !== null) {
      const name = rests.find(({ heightM }) => heightM === resting.heightM)?.name ?? '';
      return [found(the, plan.set, resting, { level: 'stop', where: name, lockN, source })];
    }
    const { from, to } = plan.freeRange;
    const passing = furthest(readingsBetween(plan.curve, from, to));
    if (passing === null || !isPastEitherWay(passing.imbalanceN, lockN)) return [];
    if (isTrim(passing.heightM)) return [];
    return [
      found(the, plan.set, passing, { level: 'caution', where: 'on the way', lockN, source }),
    ];
  }),
);

/**
 * Where the batten comes to rest free of the deck, beside its trims. A cue may end above them all.
 * Below lift-off it is BAL-003.
 */
const restsWithin = (the: PlannedCase): readonly RestHeight[] => {
  const { freeRange, working } = the.plan;
  const lowestM = freeRange.from;
  return [
    ...(working === null ? [] : [{ name: 'working height', heightM: working.height as number }]),
    ...cueHeights(the),
  ].filter(({ heightM }) => heightM > lowestM || isSameHeight(heightM, lowestM));
};

const bareSet: SetRule = (the) => {
  const { hang, bare } = the.set;
  if (hang !== null || !bare.known) return [];
  const { set, curve } = bare.value;
  return byLock(the, (lockN, source): readonly Opinion[] => {
    const worst = furthest(travelOf(curve));
    if (worst === null || !isPastEitherWay(worst.imbalanceN, lockN)) return [];
    return [found(the, set, worst, { level: 'caution', where: 'empty', lockN, source })];
  });
};

const travelOf = (curve: Curve): readonly Reading[] => {
  const [first, last] = [curve.nodes[0], curve.nodes.at(-1)];
  return first === undefined || last === undefined
    ? []
    : readingsBetween(curve, first.height, last.height);
};

const found = (
  { set: { lineSet } }: SetCase,
  plant: PlannedCase['plan']['set'],
  reading: Reading,
  {
    level,
    where,
    lockN,
    source,
  }: {
    readonly level: Level;
    readonly where: string;
    readonly lockN: number;
    readonly source: string;
  },
): Finding => {
  const limit = measure(lockN, 'force');
  return raise('BAL-002', {
    at: { set: lineSet.id, heightM: reading.heightM },
    level,
    measured: measure(reading.imbalanceN, 'imbalance'),
    limit,
    limitSource: source,
    facts: { height: measure(reading.heightM, 'length'), where },
    working: imbalanceWorking(plant, reading, { value: limit, source }),
  });
};
