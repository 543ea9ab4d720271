/** What a desk is given and what it answers. */
import type { Command, EventDraft, HouseEvent, Role, Task } from '#events';
import type { House } from '#house';
import type { CallFinding } from '#rules';
import type { Show } from '#show';
import type { HouseNow, HouseState, OrderPhysics, PostId, Step } from '#state';

export type CallDocuments = {
  readonly house: House;
  readonly show: Show;
  /** What the order of work is asked with; how the sets stand comes from the call. */
  readonly state: HouseState;
};

/** Who sends a command, as far as a call asks. */
export type CallSender = {
  readonly by: string | null;
  readonly role: Role | 'this machine';
  /** Tasks they are signed off for at this moment, and that have not lapsed. */
  readonly tasks: readonly Task[];
  readonly nowMs: number;
};

/** Why a command is not taken: the code of a rule, and what a person reads. */
export type WhyNot = { readonly code: string; readonly words: string };

/** What the rules say of one step from how a set stands now. */
export type LeaveJudged = {
  readonly findings: readonly CallFinding[];
  /** How it stands after the step; null where the step cannot be worked out. */
  readonly expects: HouseNow['sets'][string]['standing'];
  /** Post whose word is needed besides; null where one person is enough. */
  readonly secondOf: PostId | null;
};

export type CallDesk = {
  /** Null where it may be recorded. Reports are never refused but for whom they name. */
  readonly judge: (now: HouseNow, command: Command, sender: CallSender) => WhyNot | null;
  /** What the server says in the same batch. `now` has not folded the event in yet. */
  readonly follow: (now: HouseNow, event: HouseEvent) => readonly EventDraft[];
  readonly judgeLeave: (
    now: HouseNow,
    asked: { readonly set: string; readonly post: PostId; readonly step: Step },
    nowMs: number,
  ) => LeaveJudged;
  /** The physics of a set with the bricks that lie loose now; null where something is unknown. */
  readonly physicsOf: (now: HouseNow, set: string) => OrderPhysics | null;
};
