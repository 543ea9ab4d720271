/** The order of a pair as each of its sets has it, replayed by the judge of one set. */
import type { PairStep, Standing, Step, WorkZone } from '#state';
import { isSameHeight } from '../../limits.ts';
import { type Impossible, impossible, listed } from '../impossible.ts';
import type { OrderOptions, OrderVerdict } from '../verdict.ts';
import { verifyOrder } from '../verify-order.ts';
import { type PairToJudge, SIDES, type Side } from './pair-verdict.ts';

type OwnStep = { readonly step: Step; readonly of: number };

export type Replay = {
  readonly verdicts: Readonly<Record<Side, OrderVerdict>>;
  /** Which step of the pair each own step is. */
  readonly own: Readonly<Record<Side, readonly OwnStep[]>>;
  /** Steps of the pair that both replays have come through. */
  readonly replayed: number;
};

const isZone = ({ act }: Step): boolean => act === 'close' || act === 'reopen';

const ownSteps = (pair: PairToJudge, side: Side, steps: readonly PairStep[]): readonly OwnStep[] =>
  steps.flatMap((each, of): readonly OwnStep[] => {
    const { set } = pair[side].physics;
    if ('together' in each) {
      return each.together
        .filter((move) => move.set === set)
        .map(({ to }) => ({ of, step: { act: 'fly', to } }));
    }
    return each.set === set || isZone(each.step) ? [{ of, step: each.step }] : [];
  });

const isSameZone = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'drop' && other.zone === 'drop'
    ? one.gallery === other.gallery
    : one.zone === other.zone;

/** A zone that is closed for one is closed for the other. */
const withBothZones = (pair: PairToJudge, side: Side): Standing => {
  const zones = SIDES.flatMap((each) => pair[each].start.closed);
  const closed = zones.filter(
    (zone, index) => zones.findIndex((each) => isSameZone(each, zone)) === index,
  );
  return { ...pair[side].start, closed };
};

/** A step that is for neither of the two, or for one of them twice. */
export const strangeStep = (
  pair: PairToJudge,
  step: PairStep,
  index: number,
): Impossible | null => {
  const sets = SIDES.map((side) => pair[side].physics.set);
  const named = 'together' in step ? step.together.map(({ set }) => set) : [step.set];
  const isRight = named.every((set) => sets.includes(set)) && new Set(named).size === named.length;
  return isRight ? null : impossible('notOfPair', index, listed(named), listed(sets));
};

/** Where one set cannot be replayed any more, neither is: the work stops for both. */
export const replayed = (
  pair: PairToJudge,
  steps: readonly PairStep[],
  options: OrderOptions,
): Replay => {
  const strange = steps.findIndex((step, index) => strangeStep(pair, step, index) !== null);
  const known = strange < 0 ? steps : steps.slice(0, strange);
  const own = { first: ownSteps(pair, 'first', known), second: ownSteps(pair, 'second', known) };
  const judge = (side: Side, until: number): OrderVerdict =>
    verifyOrder(
      pair[side].physics,
      withBothZones(pair, side),
      own[side].filter(({ of }) => of < until).map(({ step }) => step),
      options,
    );
  const whole = { first: judge('first', known.length), second: judge('second', known.length) };
  const endOf = (side: Side): number => {
    const { refused } = whole[side];
    return refused === null ? known.length : Math.max(0, pairStepOf(own[side], refused.step));
  };
  const end = Math.min(endOf('first'), endOf('second'));
  const until = (side: Side): OrderVerdict =>
    endOf(side) === end ? whole[side] : judge(side, end);
  return { verdicts: { first: until('first'), second: until('second') }, own, replayed: end };
};

/** The step of the pair that an own step is; the start stays the start. */
export const pairStepOf = (own: readonly OwnStep[], step: number): number =>
  step < 0 ? -1 : (own[step]?.of ?? -1);

/** How a set stands before a step of the pair. */
export const standingBefore = (
  { verdicts, own }: Replay,
  side: Side,
  pairStep: number,
): Standing | null => {
  const done = own[side].filter(({ of }) => of < pairStep).length;
  return verdicts[side].states[done]?.standing ?? null;
};

export type Both = Readonly<Record<Side, Standing>>;

export const bothBefore = (replay: Replay, pairStep: number): Both | null => {
  const first = standingBefore(replay, 'first', pairStep);
  const second = standingBefore(replay, 'second', pairStep);
  return first === null || second === null ? null : { first, second };
};

export const hasMoved = (before: Standing, after: Standing): boolean =>
  !isSameHeight(before.height, after.height);
