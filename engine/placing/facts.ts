/** What the engine found of the piece on one set, in the few numbers that a choice needs. */
import type { Assessment, SetAssessment } from '#assessment';
import { blocked, type Reckoned, reckoned } from '#findings';
import { type House, type Known, lockHoldOf } from '#house';
import type { BayFacts, BrickFacts, TrimFact } from './types.ts';

const fromKnown = <T>(value: Known<T>, what: string): Reckoned<T> =>
  value.known ? reckoned(value.value) : blocked([what]);

/** Batten heights of the trims, as the plan has them; without a plan, those read at the batten. */
const trimHeights = ({ plan, hang }: SetAssessment): Reckoned<readonly [string, number][]> => {
  if (plan.known) {
    return reckoned(plan.value.trims.map(({ trim, height }) => [trim.name, height]));
  }
  const trims = hang?.trims ?? [];
  const needs = trims.flatMap(({ name, height, reference }) =>
    height.known && reference === 'batten' ? [] : [`batten height of trim ${name}`],
  );
  return needs.length > 0
    ? blocked(needs)
    : reckoned(trims.flatMap(({ name, height }) => (height.known ? [[name, height.value]] : [])));
};

/** A foot turned into metres differs from one typed in metres in the last binary place. */
const SAME_HEIGHT_M = 1e-6;

/** TRV-003 judges the same; here each trim is named, so that a table can say which. */
export const trimFacts = (set: SetAssessment): Reckoned<readonly TrimFact[]> => {
  const { lowStop, highStop } = set.lineSet;
  const heights = trimHeights(set);
  const needs = [
    ...(lowStop.height.known ? [] : ['height of the low stop']),
    ...(highStop.height.known ? [] : ['height of the high stop']),
    ...(heights.known ? [] : heights.needs),
  ];
  if (!lowStop.height.known || !highStop.height.known || !heights.known) return blocked(needs);
  const [lowM, highM] = [lowStop.height.value - SAME_HEIGHT_M, highStop.height.value];
  return reckoned(
    heights.value.map(([name, heightM]) => ({
      name,
      heightM,
      isOnTravel: heightM >= lowM && heightM <= highM + SAME_HEIGHT_M,
    })),
  );
};

/** Null where nothing is put on an arbor: there is none, or steel holds the piece. */
export const brickFacts = (set: SetAssessment, house: House): Reckoned<BrickFacts> | null => {
  const { plan, lineSet, hang } = set;
  if (lineSet.arbor === null || (hang !== null && hang.deadHungAt !== null)) return null;
  if (!plan.known) return plan;
  const { stack, trims } = plan.value;
  return reckoned({
    counts: stack.show,
    showMassKg: stack.showMass,
    arborMassKg: stack.arborMass,
    stackHeightM: stack.height,
    worstN: trims.reduce((worst, { imbalance }) => Math.max(worst, Math.abs(imbalance)), 0),
    lockN: fromKnown<number>(lockHoldOf(lineSet, house.rules), 'what the rope lock holds'),
    reachedFrom: reachOf(set),
  });
};

const reachOf = ({ windows }: SetAssessment): BrickFacts['reachedFrom'] => {
  if (windows.length === 0) return blocked(['a loading gallery']);
  const reached = windows.find(({ window }) => window.known && window.value !== null);
  if (reached !== undefined) return reckoned(reached.gallery);
  const needs = windows.flatMap(({ window }) => (window.known ? [] : window.needs));
  return needs.length > 0 ? blocked([...new Set(needs)]) : reckoned(null);
};

/** The bay of a set with everything in it as planned. */
export const bayFacts = (
  house: House,
  { totals }: Pick<Assessment, 'totals'>,
  set: string,
): BayFacts | null => {
  const bay = house.bays.find(({ sets }) => sets.includes(set));
  const total = totals.bays.find((each) => each.bay === bay?.id && each.when === 'planned');
  if (bay === undefined || total === undefined) return null;
  const { vertical, horizontal } = total;
  return {
    bay: bay.id,
    vertical: vertical.known ? reckoned(vertical.value.value) : vertical,
    verticalLimit: fromKnown(bay.verticalLimit, `vertical limit of bay ${bay.id}`),
    horizontal: horizontal.known ? reckoned(horizontal.value.value) : horizontal,
    horizontalLimit: fromKnown(bay.horizontalLimit, `horizontal limit of bay ${bay.id}`),
  };
};
