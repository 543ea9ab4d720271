/** Whether a command of a call is taken: whose word it is, and for a request what the rules say. */
import type { Command, Payload } from '#events';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { CallFinding } from '#rules';
import type { Actor, HouseNow, OverrideNow, PostId, SetNow } from '#state';
import type { CallDesk, CallSender, WhyNot } from './desk-types.ts';
import { setOfTarget } from './fold.ts';
import { judgePlan } from './judge-plan.ts';
import { refused, whyNotOf } from './say-why.ts';
import { holds, isAnother, isCompetent, isSameName, isTheirs, nameIn, taskOf } from './who.ts';

type Desk = Pick<CallDesk, 'judgeLeave' | 'physicsOf'> & { readonly house: House };

type Asking = {
  readonly desk: Desk;
  readonly now: HouseNow;
  readonly who: Actor;
  readonly sender: CallSender;
};

type OnSet = Asking & { readonly id: string; readonly set: SetNow };

/** Null where the command may be recorded; else the rule or the reason, and what is accepted. */
export const judgeCommand = (
  desk: Desk,
  now: HouseNow,
  command: Command,
  sender: CallSender,
): WhyNot | null => {
  const who = { by: sender.by, device: command.device };
  const asking = { desk, now, who, sender };
  switch (command.kind) {
    case 'note written':
    case 'signed':
    case 'withdrawn':
    case 'set doubted':
    case 'lock doubted':
    case 'leave returned':
    case 'stop called':
    case 'stop agreed':
    case 'tag placed':
      return null;
    case 'post left':
    case 'post said':
    case 'plates counted':
    case 'step reported':
    case 'set found':
    case 'gallery counted':
    case 'pull tested':
    case 'item weighed':
    case 'stop heard':
      return reportedFrom(asking, command.payload);
    case 'stop lifted':
      return isOpen(now, command.payload.call)
        ? stopLifted(asking, command.payload)
        : refused('noCall');
    case 'plan told':
    case 'leave asked':
    case 'leave seconded':
    case 'tag returned':
    case 'note settled':
      return isOpen(now, command.payload.call) ? onSet(asking, command) : refused('noCall');
    default:
      return unreachable(command);
  }
};

/** A report is refused to nobody but who gives it from a post that is not theirs. */
const reportedFrom = (
  { now, who }: Asking,
  { call, post }: { readonly call: string; readonly post: PostId },
): WhyNot | null =>
  isOpen(now, call) && !isTheirs(now, post, who) ? refused('notYourPost', postWords(post)) : null;

const isOpen = ({ call }: HouseNow, id: string): boolean => call?.id === id;

const postWords = (post: PostId): string => `The post is ${post}.`;

type SetRequest = Extract<
  Command,
  {
    readonly kind: 'plan told' | 'leave asked' | 'leave seconded' | 'tag returned' | 'note settled';
  }
>;

const onSet = (asking: Asking, command: SetRequest): WhyNot | null => {
  const { now } = asking;
  const { target } = command;
  const id = setOfTarget(target, now.call?.house ?? '');
  const set = id === null ? undefined : now.sets[id];
  if (id === null || set === undefined) return refused('nothingWaits', `No set is ${target}.`);
  const on: OnSet = { ...asking, id, set };
  switch (command.kind) {
    case 'plan told':
      return planTold(on, command.payload);
    case 'leave asked':
      return leaveAsked(on, command.payload);
    case 'leave seconded':
      return leaveSeconded(on, command.payload);
    case 'tag returned':
      return tagReturned(on, command.payload);
    case 'note settled':
      return noteSettled(on, command.payload);
    default:
      return unreachable(command);
  }
};

/** Whether somebody has the post on this device, and is signed off for it. */
const atPost = ({ now, who, sender }: Asking, post: PostId): WhyNot | null => {
  const held = holds(now, post, who);
  if (held === null) return refused('notYourPost', postWords(post));
  return isCompetent(sender, post, held)
    ? null
    : refused('notSignedOff', `The post ${post} needs: ${taskOf(post)}.`);
};

/** What of a step is left when an override has covered what it may and names. */
const uncovered = (
  findings: readonly CallFinding[],
  override: OverrideNow | null,
): readonly CallFinding[] =>
  findings.filter(
    ({ rule, isHold }) => isHold || override === null || !override.rules.includes(rule),
  );

const byRules = (
  { desk }: Asking,
  findings: readonly CallFinding[],
  override: OverrideNow | null,
): WhyNot | null => {
  const [first, ...others] = uncovered(findings, override);
  if (first === undefined) return null;
  // Of several the one that no word covers is said.
  const gravest = [first, ...others].find(({ isHold }) => isHold) ?? first;
  const rest = [first, ...others].filter((each) => each !== gravest);
  return whyNotOf([gravest, ...rest], desk.house);
};

const planTold = (on: OnSet, { steps }: Payload<'plan told'>): WhyNot | null => {
  const { now, who, id, set, desk } = on;
  if (!isTheirs(now, 'headFly', who)) return refused('notHeadFly');
  const broken = steps.length === 0 ? null : judgePlan(set, desk.physicsOf(now, id), steps);
  return broken === null ? null : refused('planBroken', broken);
};

const leaveAsked = (on: OnSet, payload: Payload<'leave asked'>): WhyNot | null => {
  const { now, id, desk, sender, who } = on;
  const { post, step, override, paper } = payload;
  const notAt = atPost(on, post);
  if (notAt !== null) return notAt;
  const own = nameIn(now, who);
  if (paper !== null && own !== null && isSameName(paper, own)) return refused('onePerson');
  if (override !== null && override.why.trim() === '') return refused('overrideShort');
  const { findings } = desk.judgeLeave(now, { set: id, post, step }, sender.nowMs);
  return byRules(on, findings, override);
};

const leaveSeconded = (on: OnSet, payload: Payload<'leave seconded'>): WhyNot | null => {
  const { now, id, set, desk, sender, who } = on;
  const { asked } = set;
  if (asked === null || asked.seq !== payload.asked || asked.secondOf !== payload.post) {
    return refused('nothingWaits');
  }
  const notAt = atPost(on, payload.post);
  if (notAt !== null) return notAt;
  if (!isAnother(asked, who)) return refused('onePerson');
  if (needsCount(set) && payload.plates === null) return refused('countMissing');
  // The house may have changed since it was asked.
  const { post, step, override } = asked;
  const before = { ...now, sets: { ...now.sets, [id]: { ...set, asked: null } } };
  const { findings } = desk.judgeLeave(before, { set: id, post, step }, sender.nowMs);
  return byRules(on, findings, override);
};

/** Before a set is unlocked again, the count of the second is that of the record (6.3, 2). */
const needsCount = ({ asked, changed }: SetNow): boolean =>
  changed && (asked?.step.act === 'fly' || asked?.step.act === 'ease');

const stopLifted = (
  asking: Asking,
  { stop: seq, substitute }: Payload<'stop lifted'>,
): WhyNot | null => {
  const { now, who } = asking;
  const notAt = holds(now, 'headFly', who) === null;
  if (notAt) return refused('notHeadFly');
  const stop = now.stops.find((each) => each.seq === seq);
  if (stop === undefined) return refused('nothingWaits');
  if (stop.isAgreed && isAnother(stop, who)) return null;
  if (substitute === null || substitute.why.trim() === '') return refused('stopStands');
  const own = nameIn(now, who);
  return own !== null && isSameName(own, substitute.name) ? refused('onePerson') : null;
};

const tagReturned = (
  { now, who, set, sender }: OnSet,
  { number, repairedBy }: Payload<'tag returned'>,
): WhyNot | null => {
  if (set.tag?.number !== number) return refused('noSuchTag');
  const own = nameIn(now, who);
  if (own === null) return refused('notYourPost', 'Any post will do.');
  const isInspector = sender.role === 'this machine' || sender.tasks.includes('inspector');
  if (!isInspector && holds(now, 'headFly', who) === null) {
    return refused('notSignedOff', 'An inspector, or the head flyman, gives a tag back.');
  }
  return isSameName(own, repairedBy) || who.by === repairedBy ? refused('onePerson') : null;
};

const noteSettled = (
  { now, who, set }: OnSet,
  { note }: Payload<'note settled'>,
): WhyNot | null => {
  if (!set.notes.includes(note)) return refused('noSuchNote');
  if (nameIn(now, who) === null) return refused('notYourPost', 'Any post will do.');
  const writer = set.noteBy[note];
  return writer === undefined || !isAnother(writer, who)
    ? refused('onePerson', 'Whoever wrote the note does not settle it alone.')
    : null;
};
