import { metres } from '#quantities';
import type { WorkZone } from '#state';
import { planOrder, USUAL } from '../plan-order.ts';
import { SAME_M } from '../span.ts';
import type { HeightRange, OrderOptions, OrderPlan } from '../types.ts';
import { apartOf, couplingOf, isInBand, SIDES, type Side } from './coupling.ts';
import { type Course, courseOf } from './course.ts';
import { type Matched, matched } from './match.ts';
import { type Match, type Spot, standingsAt } from './moves.ts';
import { stockLess } from './stock.ts';
import { isSameZone, pairTold } from './tell.ts';
import type { Pair, PairJob, PairNone, PairPlan, PairState } from './types.ts';

export type PairOptions = Partial<OrderOptions>;

/**
 * The order of work on two coupled sets: the order that each has by itself, matched so that both
 * battens go together wherever a piece hangs on both, and stay within the band on the whole way.
 *
 *     leastM <= h2 - h1 <= mostM     at both ends of a flight, so everywhere between: each batten
 *                                    is at the same share of its way at every moment
 *
 * A set goes along to a height where it has nothing to do when the other one needs a stop there.
 * A piece goes on the two one after the other, and nothing else is done while it is half on.
 *
 * Source  the-job.md V6, V9, R10, C23
 * Holds   the shares of the piece are what the lists say anywhere in the band; bricks are handled
 *         at one gallery at a time; the galleries are the same house for both
 * Omits   other orders of one set than its best, but for where riggers reach it: so none found is
 *         not none, and what is found is not claimed to be the best
 */
export const planPair = (pair: Pair, options: PairOptions = {}): PairPlan => {
  const wrong = wrongPair(pair);
  if (wrong !== null) return { none: { ...wrong, searched: 0 } };
  const first = tried(pair, options, {});
  if (first.hands === null || !('none' in first.plan)) return first.plan;
  // Riggers may reach one batten where it suits the other.
  let { searched } = first.plan.none;
  for (const works of worksNear(pair, options, first.hands)) {
    const again = tried(pair, options, works);
    if ('found' in again.plan) {
      const { found } = again.plan;
      return { found: { ...found, searched: found.searched + searched } };
    }
    searched += 'none' in again.plan ? again.plan.none.searched : again.plan.stopped.searched;
  }
  return { none: { ...placed('hands', first.hands), searched } };
};

type Heights = Readonly<Record<Side, number>>;
type Works = Partial<Readonly<Record<Side, readonly HeightRange[]>>>;

const placed = (at: 'start' | 'hands' | 'goal', { first, second }: Heights) =>
  ({
    why: 'band',
    at,
    first: metres(first),
    second: metres(second),
    apartM: second - first,
  }) as const;

/** What no search is needed for. */
const wrongPair = ({ first, second, shared, band }: Pair): PairNone | null => {
  const { leastM, mostM } = band;
  if (!(Number.isFinite(leastM) && Number.isFinite(mostM) && leastM <= mostM)) {
    return { why: 'asked', what: 'band' };
  }
  const start: PairState = { first: first.start, second: second.start };
  const isOut = (heights: Heights): boolean => !isInBand(band, heights.second - heights.first);
  if (couplingOf(shared, start).on.length > 0 && !isInBand(band, apartOf(start))) {
    return placed('start', { first: first.start.height, second: second.start.height });
  }
  const end = couplingOf(shared, { first: atGoal(first), second: atGoal(second) });
  if (end.half.length > 0) return { why: 'asked', what: 'oneSided' };
  const heights = { first: first.goal.height, second: second.goal.height };
  const { first: firstM, second: secondM } = heights;
  if (end.on.length === 0 || firstM === null || secondM === null) return null;
  return isOut({ first: firstM, second: secondM })
    ? placed('goal', { first: firstM, second: secondM })
    : null;
};

const atGoal = ({ start, goal }: PairJob): PairJob['start'] => ({
  ...start,
  items: {
    ...start.items,
    ...Object.fromEntries(
      Object.entries(goal.items).map(([id, wanted]) => [id, wanted === 'on' ? 'flying' : wanted]),
    ),
  },
});

/** A zone that is closed for one is closed for the other. */
const closedAtStart = ({ first, second }: Pair): readonly WorkZone[] => [
  ...first.start.closed,
  ...second.start.closed.filter(
    (zone) => !first.start.closed.some((each) => isSameZone(each, zone)),
  ),
];

type Tried = {
  readonly plan: PairPlan;
  /** Where a shared piece is handled on each, where that is out of the band. */
  readonly hands: Heights | null;
};

type Alone =
  | { readonly course: Course; readonly searched: number }
  | { readonly plan: PairPlan; readonly searched: number };

/** What was searched for the other set before counts as well. */
const alone = (
  job: PairJob,
  options: PairOptions,
  closed: readonly WorkZone[],
  before: number,
): Alone => {
  const plan: OrderPlan = planOrder(job.physics, { ...job.start, closed }, job.goal, options);
  if ('found' in plan) {
    return { course: courseOf(plan.found), searched: before + plan.found.searched };
  }
  const searched = before + ('none' in plan ? plan.none.searched : plan.stopped.searched);
  if ('stopped' in plan) return { plan: { stopped: { searched } }, searched };
  const none = { why: 'alone', set: job.physics.set, none: plan.none, searched } as const;
  return { plan: { none }, searched };
};

const tried = (pair: Pair, options: PairOptions, works: Works): Tried => {
  const closed = closedAtStart(pair);
  const asked = (side: Side): PairOptions =>
    works[side] === undefined ? options : { ...options, work: works[side] };
  const first = alone(pair.first, asked('first'), closed, 0);
  if ('plan' in first) return { plan: first.plan, hands: null };
  const taken = first.course.deeds.map(({ step }) => step);
  const left = { ...pair.second, physics: stockLess(pair.second.physics, taken) };
  const second = alone(left, asked('second'), closed, first.searched);
  if ('plan' in second) return { plan: second.plan, hands: null };
  const match: Match = {
    courses: { first: first.course, second: second.course },
    physics: { first: pair.first.physics, second: pair.second.physics },
    shared: pair.shared,
    band: pair.band,
    doubtShare: options.doubtShare ?? USUAL.doubtShare,
  };
  const start: Spot = {
    done: { first: 0, second: 0 },
    heightM: { first: pair.first.start.height, second: pair.second.start.height },
  };
  const answer = matched(match, start, options.statesMost ?? USUAL.statesMost);
  const searched = second.searched + answer.searched;
  if (answer.is === 'none')
    return { plan: { none: noneOf(match, answer, searched) }, hands: handsOut(match) };
  if (answer.is === 'stopped') return { plan: { stopped: { searched } }, hands: null };
  const restraints = { first: first.course.restraint, second: second.course.restraint };
  const told = pairTold(match, start, answer.path, closed);
  return { plan: { found: { ...told, restraints, searched, optimal: false } }, hands: null };
};

const noneOf = (
  match: Match,
  { furthest }: Extract<Matched, { readonly is: 'none' }>,
  searched: number,
) => {
  const { first, second } = standingsAt(match, furthest);
  return {
    why: 'unmatched',
    first: first.height,
    second: second.height,
    apartM: second.height - first.height,
    searched,
  } as const;
};

/** Heights at which the two orders put a shared piece on or take it off, where they do not fit. */
const handsOut = ({ courses, shared, band }: Match): Heights | null => {
  const [first, second] = SIDES.map((side) => {
    const { deeds, points } = courses[side];
    const ids = shared.map((piece) => piece[side]);
    const at = deeds.findIndex(
      ({ step }) => (step.act === 'attach' || step.act === 'release') && ids.includes(step.item),
    );
    return points[at]?.standing.height;
  });
  if (first === undefined || second === undefined) return null;
  return isInBand(band, second - first) ? null : { first, second };
};

/** Windows of one batten from which the other one is within the band, as far as riggers reach. */
const worksNear = (
  { first, second, band }: Pair,
  options: PairOptions,
  hands: Heights,
): readonly Works[] => {
  const { leastM, mostM } = band;
  const near = ({ physics }: PairJob, fromM: number, toM: number): readonly HeightRange[] => {
    const usual = [{ fromM: physics.lowStop.heightM as number, toM: physics.workingM }];
    return (options.work ?? usual).flatMap((range) => {
      const [lo, hi] = [Math.max(range.fromM, fromM), Math.min(range.toM, toM)];
      return lo <= hi + SAME_M ? [{ fromM: lo, toM: Math.max(lo, hi) }] : [];
    });
  };
  const works: readonly Works[] = [
    { second: near(second, hands.first + leastM, hands.first + mostM) },
    { first: near(first, hands.second - mostM, hands.second - leastM) },
  ];
  return works.filter((each) => Object.values(each).some((ranges) => ranges.length > 0));
};
