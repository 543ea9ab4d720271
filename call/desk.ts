/** The desk of a call: what may be asked, what follows, and how the house is held, by the rules. */
import type { Finding } from '#findings';
import { type CallFacts, judgeCall, judgeNow, judgeSet } from '#rules';
import type { HouseNow } from '#state';
import { openPhysics } from './desk-physics.ts';
import type { CallDesk, CallDocuments } from './desk-types.ts';
import { followEvent } from './follow.ts';
import { judgeCommand } from './judge-command.ts';

/**
 * What rules of the plan say nothing about: how the record says that a set stands, which the call
 * knows better, and values that nobody has given, which the step itself is judged for.
 */
const NOT_OF_PLAN: readonly string[] = ['STA', 'UNK', 'PER', 'KIN', 'COU'];

const isOfPlan = ({ code, level }: Finding): boolean =>
  level === 'stop' && !NOT_OF_PLAN.includes(code.slice(0, 3));

/** Opens the desk of one call on the documents that it was opened on. */
export const openDesk = (documents: CallDocuments): CallDesk => {
  const { house, show, state } = documents;
  const physics = openPhysics(documents);
  const hangs = new Map(show.hangs.map((hang) => [hang.set, hang]));
  const memory: Parameters<typeof judgeSet>[2] = new WeakMap();
  const factsOf = (now: HouseNow, set: string, nowMs: number): CallFacts => {
    const found = physics.of(now, set);
    const planStops =
      found.job === null
        ? []
        : judgeSet(found.job.set, { house, show, state, nowMs: null }, memory).filter(isOfPlan);
    const hang = hangs.get(set) ?? null;
    return { house, hang, physics: found.physics, needs: found.needs, planStops, nowMs };
  };
  const judgeLeave: CallDesk['judgeLeave'] = (now, asked, nowMs) =>
    judgeCall(now, asked, factsOf(now, asked.set, nowMs));
  const desk = {
    house,
    judgeLeave,
    physicsOf: (now: HouseNow, set: string) => physics.of(now, set).physics,
    judgeSet: (now: HouseNow, set: string, nowMs: number) =>
      judgeNow(now, set, factsOf(now, set, nowMs)),
    pullSaid: physics.pullSaid,
  };
  return {
    judge: (now, command, sender) => judgeCommand(desk, now, command, sender),
    follow: (now, event) => followEvent(desk, now, event),
    judgeLeave,
    physicsOf: desk.physicsOf,
  };
};
