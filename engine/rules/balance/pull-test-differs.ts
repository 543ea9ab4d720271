import { type Finding, type Measure, measure } from '#findings';
import { GRAVITY } from '#quantities';
import type { Item } from '#show';
import { lack } from '../known-values.ts';
import { isAbove, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { type PlannedCase, whenFlown } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { readCurve } from './curve-reading.ts';

/**
 * BAL-011: the imbalance that two pulls on the hand line give agrees with the listed masses
 * within their tolerance. The list is taken with the bricks that were on the arbor at the test.
 */
export const pullTestDiffers = whenFlown((the) => {
  const { pull, state, arborMass } = the.set.recorded;
  if (state.pullTest === null || pull === null || !pull.known) return [];
  if (hangsInPart(the)) return [lack('what hung at the pull test, as recorded', PULL_TEST)];
  if (!arborMass.known) return [lack('the stack at the pull test, as counted', PULL_TEST)];
  const compared = comparePull(the);
  if (compared === null) return [];
  const { differenceN, toleranceN } = compared;
  return isAbove(Math.abs(differenceN), toleranceN) ? [foundBy(the, compared)] : [];
});

const PULL_TEST = 'pull test against the list';

/** The list holds for the test only where the record says that all of the hang was up. */
const hangsInPart = ({ hang, set: { recorded } }: PlannedCase): boolean => {
  const flying = (recorded.state.items ?? [])
    .filter(({ phase }) => phase === 'flying' || phase === 'attachedResting')
    .map(({ item }) => item);
  return hang.items.some(({ id }) => !flying.includes(id));
};

export type Compared = {
  readonly heightM: number;
  readonly measuredN: number;
  readonly imbalanceN: number;
  readonly toleranceN: number;
  readonly differenceN: number;
};

/** A pull test beside the list, the recorded arbor in place of the planned; null without either. */
export const comparePull = (the: PlannedCase): Compared | null => {
  const { plan, set } = the;
  const { pull, state, arborMass } = set.recorded;
  if (state.pullTest === null || pull === null || !pull.known || hangsInPart(the)) return null;
  const heightM = state.pullTest.height;
  const reading = readCurve(plan.curve, heightM, 'above');
  if (reading === null || !arborMass.known) return null;
  const moreKg = plan.stack.arborMass - arborMass.value;
  const imbalanceN = reading.imbalanceN + (GRAVITY * moreKg) / plan.set.purchase;
  const measuredN = pull.value.imbalance;
  const differenceN = measuredN - imbalanceN;
  return { heightM, measuredN, imbalanceN, toleranceN: reading.toleranceN, differenceN };
};

/** Whether all that hangs was in the air, so that the hand line felt the whole of it. */
export const isInTheAir = ({ plan: { liftOff } }: PlannedCase, heightM: number): boolean =>
  liftOff === null || heightM > liftOff || isSameHeight(heightM, liftOff);

const foundBy = (the: PlannedCase, compared: Compared): Finding => {
  const { heightM, measuredN, imbalanceN, toleranceN, differenceN } = compared;
  return raise('BAL-011', {
    at: { set: the.set.lineSet.id, heightM },
    measured: measure(measuredN, 'imbalance'),
    limit: measure(toleranceN, 'force'),
    limitSource: 'tolerances of all masses of the set, linear',
    facts: {
      height: measure(heightM, 'length'),
      listed: measure(imbalanceN, 'imbalance'),
      difference: measure(Math.abs(differenceN), 'force'),
      ...suggestion(the, compared),
    },
    working: workedOut(
      'Pull test against the list',
      '|U_p − U|',
      [
        term('U_p', 'imbalance by pull test', measuredN, 'imbalance'),
        term('U', 'imbalance by the list', imbalanceN, 'imbalance'),
      ],
      term('difference', 'difference', Math.abs(differenceN), 'force'),
      {
        source: 'trade formula C25',
        limit: { value: measure(toleranceN, 'force'), source: 'tolerances, linear' },
        omits: 'friction that differs with direction: half the difference goes into U',
      },
    ),
  });
};

/**
 * What the hang would weigh if the list is wrong in what hangs and right in all else. An item on
 * the deck cannot be weighed by its rope, so below lift-off nothing is suggested.
 */
const suggestion = (
  the: PlannedCase,
  { heightM, differenceN }: Compared,
): Readonly<Record<string, Measure | string>> => {
  const { hang, set } = the;
  if (!isInTheAir(the, heightM) || !set.hung.known) {
    return { suspect: 'what lies on the deck', suggested: 'what no pull can tell' };
  }
  const listedKg = set.hung.value.withoutLoom;
  return {
    suspect: soleItem(hang.items)?.name ?? 'all that hangs, without loom',
    suggested: measure(listedKg + differenceN / GRAVITY, 'mass'),
    was: measure(listedKg, 'mass'),
  };
};

const soleItem = (items: readonly Item[]): Item | undefined => {
  const solid = items.filter(({ kind }) => kind !== 'loom' && kind !== 'deckLoom');
  return solid.length === 1 ? solid[0] : undefined;
};
