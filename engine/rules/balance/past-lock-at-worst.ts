import { measure } from '#findings';
import { isAbove, isBelow, isPastEitherWay } from '../limits.ts';
import { raise } from '../raise.ts';
import { type PlannedCase, whenFlown } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { byLock } from './by-lock.ts';
import { type Reading, readCurve, readingsBetween } from './curve-reading.ts';
import { comparePull, isInTheAir } from './pull-test-differs.ts';

/**
 * BAL-004: where the listed masses are within the lock, they are so too with every mass off by
 * its whole tolerance at once (C86: linear; root-sum-square would call this rare, and a set has
 * only one truth). A set that is past the lock as listed is BAL-001 or BAL-002 already.
 *
 * A two-way pull test of the set in the air, with the bricks of the plan on, has added all errors
 * up: what it found the list to be off by then stands in place of the tolerances.
 */
export const pastLockAtWorst = whenFlown((the) =>
  byLock(the, (lockN, source) => {
    const readings = freeReadings(the);
    if (readings.some(({ imbalanceN }) => isPastEitherWay(imbalanceN, lockN))) return [];
    const [worst] = readings.toSorted((one, other) => sizeOf(other) - sizeOf(one));
    if (worst === undefined || !isPastEitherWay(sizeOf(worst), lockN)) return [];
    const side = worst.imbalanceN < 0 ? -1 : 1;
    const limit = measure(lockN, 'force');
    return [
      raise('BAL-004', {
        at: { set: the.set.lineSet.id, heightM: worst.heightM },
        measured: measure(side * sizeOf(worst), 'imbalance'),
        limit,
        limitSource: source,
        facts: {
          height: measure(worst.heightM, 'length'),
          nominal: measure(worst.imbalanceN, 'imbalance'),
          tolerance: measure(worst.toleranceN, 'force'),
        },
        working: workedOut(
          'Imbalance with every mass at its worst',
          '|U| + Δ',
          [
            term('U', 'imbalance as listed', worst.imbalanceN, 'imbalance'),
            term('Δ', 'all tolerances together, as they act there', worst.toleranceN, 'force'),
          ],
          term('worst', 'imbalance at its worst', side * sizeOf(worst), 'imbalance'),
          { source: 'trade formula C86', limit: { value: limit, source } },
        ),
      }),
    ];
  }),
);

const sizeOf = ({ imbalanceN, toleranceN }: Reading): number => Math.abs(imbalanceN) + toleranceN;

/** The whole free travel, and the trims wherever they are. */
const freeReadings = (the: PlannedCase): readonly Reading[] => {
  const { curve, freeRange, trims } = the.plan;
  const pulledN = foundByPull(the);
  return [
    ...readingsBetween(curve, freeRange.from, freeRange.to),
    ...trims.map(({ height }) => readCurve(curve, height, 'above')),
  ]
    .filter((reading) => reading !== null)
    .map((reading) => (pulledN === null ? reading : { ...reading, toleranceN: pulledN }));
};

/** How far a pull test found the list off, N; null where none says so for the bricks planned. */
const foundByPull = (the: PlannedCase): number | null => {
  const compared = comparePull(the);
  const { arborMass } = the.set.recorded;
  if (compared === null || !arborMass.known || !isInTheAir(the, compared.heightM)) return null;
  const plannedKg = the.plan.stack.arborMass;
  const hasOthers = isAbove(arborMass.value, plannedKg) || isBelow(arborMass.value, plannedKg);
  return hasOthers ? null : Math.abs(compared.differenceN);
};
