/** What a crew that does as it is told does next on one set: one thing said, by one post. */
import type { CommandAnswer } from '#events';
import { unreachable } from '#outcome';
import { postOf } from '#rules';
import type { AskedNow, HouseNow, LeaveNow, OverrideNow, PostId, SetNow, Step } from '#state';
import type { DrillRun } from './drill-run.ts';
import { isBrickStep, platesOf } from './plates.ts';

export type CrewTurn = { readonly set: string; readonly post: PostId } & (
  | /** Out of the drop zone, hands off; or back at the work. */ {
      readonly does: 'clear' | 'back';
    }
  | { readonly does: 'ask'; readonly step: Step }
  | {
      readonly does: 'second';
      readonly asked: AskedNow;
      /** As the record has the arbor; null where no count is asked for. */
      readonly plates: number | null;
    }
  | { readonly does: 'count'; readonly leave: LeaveNow; readonly count: number }
  | { readonly does: 'report'; readonly leave: LeaveNow }
);

/** The lead, the caller and the marshals stand elsewhere. */
const isElsewhere = (post: PostId): boolean =>
  post === 'headFly' || post === 'caller' || post.startsWith('marshal:');

const isMove = ({ act }: Step): boolean => act === 'fly' || act === 'ease';

/** Who has to say first that they are out of it, or that they are back. */
const wayTurn = ({ posts }: HouseNow, set: string, step: Step): CrewTurn | null => {
  const own = postOf(step);
  const working = isMove(step) ? [own, 'watcher'] : [own];
  const away = working.find((post) => posts[post]?.isClear === true && !isElsewhere(post));
  if (away !== undefined) return { set, post: away, does: 'back' };
  if (!isBrickStep(step)) return null;
  const under = Object.entries(posts).find(
    ([post, { isClear }]) => !isClear && post !== own && !isElsewhere(post),
  );
  return under === undefined ? null : { set, post: under[0], does: 'clear' };
};

const leaveTurn = (set: string, leave: LeaveNow): CrewTurn => {
  const { step, plates, post } = leave;
  return isBrickStep(step) && plates < step.count
    ? { set, post, does: 'count', leave, count: plates + 1 }
    : { set, post, does: 'report', leave };
};

const secondTurn = (set: string, asked: AskedNow, { changed, standing }: SetNow): CrewTurn => {
  const isCounted = changed && isMove(asked.step) && standing !== null;
  const plates = isCounted ? platesOf(standing.stack) : null;
  return { set, post: asked.secondOf, does: 'second', asked, plates };
};

/** Null where the order is done, or nothing can go on: a STOP, or a set that is not known. */
export const crewTurn = (now: HouseNow, set: string): CrewTurn | null => {
  const here = now.sets[set];
  const isStopped = now.stops.some((stop) => stop.set === null || stop.set === set);
  if (here === undefined || here.standing === null || isStopped) return null;
  if (here.leave !== null) return leaveTurn(set, here.leave);
  if (here.asked !== null) return secondTurn(set, here.asked, here);
  const step = here.plan?.steps[here.plan.done];
  if (step === undefined) return null;
  return wayTurn(now, set, step) ?? { set, post: postOf(step), does: 'ask', step };
};

/** Says it from the post whose turn it is; what two may set aside they do, and say why. */
export const takeTurn = (
  run: Pick<DrillRun, 'desk' | 'now' | 'nowMs' | 'say'>,
  turn: CrewTurn,
): CommandAnswer => said(run, turn, turn.does === 'ask' ? overrideFor(run, turn) : null);

/** Null where nothing is broken, or what is broken is covered by nobody's word. */
const overrideFor = (
  { desk, now, nowMs }: Pick<DrillRun, 'desk' | 'now' | 'nowMs'>,
  turn: Extract<CrewTurn, { readonly does: 'ask' }>,
): OverrideNow | null => {
  const { findings } = desk.judgeLeave(now(), turn, nowMs());
  const rules = findings.map(({ rule }) => rule);
  return rules.length === 0 || findings.some(({ isHold }) => isHold)
    ? null
    : { why: 'looked at by two, as the masses are written', rules };
};

const said = (
  { say }: Pick<DrillRun, 'say'>,
  turn: CrewTurn,
  override: OverrideNow | null,
): CommandAnswer => {
  const { set, post } = turn;
  switch (turn.does) {
    case 'clear':
    case 'back': {
      const payload = { post, isClear: turn.does === 'clear' };
      return say(post, { kind: 'post said', set: null, payload });
    }
    case 'ask': {
      const payload = { post, step: turn.step, paper: null, override: writable(override) };
      return say(post, { kind: 'leave asked', set, payload });
    }
    case 'second': {
      const payload = { post, asked: turn.asked.seq, plates: turn.plates };
      return say(post, { kind: 'leave seconded', set, payload });
    }
    case 'count': {
      const payload = { post, leave: turn.leave.seq, count: turn.count };
      return say(post, { kind: 'plates counted', set, payload });
    }
    case 'report': {
      const { seq, step, expects } = turn.leave;
      const payload = {
        ...{ post, leave: seq, as: 'done' as const, words: '' },
        plates: isBrickStep(step) ? step.count : null,
        height: isMove(step) ? expects.height : null,
      };
      return say(post, { kind: 'step reported', set, payload });
    }
    default:
      return unreachable(turn);
  }
};

const writable = (override: OverrideNow | null) =>
  override === null ? null : { why: override.why, rules: [...override.rules] };
