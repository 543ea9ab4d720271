/** What the server says itself in the same batch as what it has taken. */
import type { EventDraft, EventOf, HouseEvent } from '#events';
import type { SetJudged } from '#rules';
import type { HouseNow, OverrideNow, SecondNow } from '#state';
import { message } from '#texts';
import type { PullSaid } from './desk-physics.ts';
import type { CallDesk } from './desk-types.ts';
import { foldEvent, setOfTarget, targetOfSet } from './fold.ts';
import { isBrickStep } from './plates.ts';

export type Followed = Pick<CallDesk, 'judgeLeave'> & {
  readonly judgeSet: (now: HouseNow, set: string, nowMs: number) => SetJudged;
  readonly pullSaid: (now: HouseNow, set: string) => PullSaid | null;
};

/** Leave where the rules give it, doubt where two things said contradict, and what is held now. */
export const followEvent = (
  desk: Followed,
  now: HouseNow,
  event: HouseEvent,
): readonly EventDraft[] => {
  const after = foldEvent(now, event);
  const { call } = after;
  if (call === null) return [];
  const set = setOfTarget(event.target, call.house);
  if (set !== null && event.kind === 'leave asked') return onAsked(desk, now, { event, set });
  const given =
    set !== null && event.kind === 'leave seconded'
      ? onSeconded(desk, { now, after }, { event, set })
      : [];
  const doubts = set !== null && event.kind === 'pull tested' ? pullDoubt(desk, after, set) : [];
  const told = [...given, ...doubts].reduce((each, draft) => foldDraft(each, draft, event), after);
  return [...given, ...doubts, ...judgedAnew(desk, { before: now, after: told, event })];
};

/** As the fold sees a draft before it has its place: of place it reads the number and the time. */
const foldDraft = (now: HouseNow, draft: EventDraft, { seq, atMs }: HouseEvent): HouseNow => {
  const place = { id: '', by: null, device: null, commandId: null, previous: '', hash: '' };
  return foldEvent(now, { ...draft, ...place, seq: seq + 1, atMs });
};

type AskedOn = { readonly event: EventOf<'leave asked'>; readonly set: string };

const onAsked = (desk: Followed, now: HouseNow, { event, set }: AskedOn): readonly EventDraft[] => {
  const { call, post, step, paper, override } = event.payload;
  const { expects, secondOf } = desk.judgeLeave(now, { set, post, step }, event.atMs);
  if (expects === null) return [];
  const { target } = event;
  // An override is the word of two, whatever the step.
  const waitsFor = secondOf ?? (override === null ? null : 'headFly');
  if (waitsFor !== null && paper === null) {
    const payload = { call, asked: event.seq, secondOf: waitsFor };
    return [{ kind: 'leave waits', target, payload }];
  }
  const second: SecondNow | null = paper === null ? null : { is: 'paper', name: paper };
  const payload = { call, post, asked: event.seq, step, expects, second, override };
  return [{ kind: 'leave given', target, payload }];
};

/** The word of the second is leave, unless what they counted has put the set in doubt. */
const onSeconded = (
  desk: Followed,
  { now, after }: { readonly now: HouseNow; readonly after: HouseNow },
  { event, set }: { readonly event: EventOf<'leave seconded'>; readonly set: string },
): readonly EventDraft[] => {
  const asked = after.sets[set]?.asked ?? null;
  const was = now.sets[set];
  const { call, asked: seq, post: secondPost } = event.payload;
  if (asked === null || was === undefined || asked.seq !== seq) return [];
  const { post, step } = asked;
  const before = { ...now, sets: { ...now.sets, [set]: { ...was, asked: null } } };
  const { expects } = desk.judgeLeave(before, { set, post, step }, event.atMs);
  if (expects === null) return [];
  const { by, device, target } = event;
  const second: SecondNow = { is: 'device', by, device, post: secondPost };
  const override = asked.override === null ? null : copyOf(asked.override);
  const payload = { call, post, asked: seq, step, expects, second, override };
  return [{ kind: 'leave given', target, payload }];
};

const copyOf = ({ why, rules }: OverrideNow): { why: string; rules: string[] } => ({
  why,
  rules: [...rules],
});

/** A pull that no tolerance of the masses explains: something is on it that nobody has counted. */
const pullDoubt = (desk: Followed, after: HouseNow, set: string): readonly EventDraft[] => {
  const said = desk.pullSaid(after, set);
  const { call } = after;
  if (said === null || call === null) return [];
  if (Math.abs(said.measuredN - said.listedN) <= said.mostN) return [];
  const why = message('a pull test contradicts its list. Count bricks and items again');
  const target = targetOfSet(call.house, set);
  return [{ kind: 'set doubted', target, payload: { call: call.id, why } }];
};

type Changed = { readonly before: HouseNow; readonly after: HouseNow; readonly event: HouseEvent };

/** Sets of which what was said may change how the rules judge them. */
const touchedBy = ({ before, after, event }: Changed): readonly string[] => {
  if (event.kind === 'call opened') return Object.keys(after.sets);
  const isAboutPosts =
    event.kind === 'post said' || event.kind === 'post left' || event.kind === 'post taken';
  return Object.entries(after.sets)
    .filter(([id, set]) =>
      isAboutPosts ? set.leave !== null && isBrickStep(set.leave.step) : set !== before.sets[id],
    )
    .map(([id]) => id);
};

const judgedAnew = (desk: Followed, changed: Changed): readonly EventDraft[] => {
  const { after, event } = changed;
  const { call } = after;
  if (call === null) return [];
  return touchedBy(changed).flatMap((id): readonly EventDraft[] => {
    const set = after.sets[id];
    const { held, rule } = desk.judgeSet(after, id, event.atMs);
    if (set === undefined || (set.held === held && set.rule === rule)) return [];
    const payload = { call: call.id, held, rule };
    return [{ kind: 'set judged', target: targetOfSet(call.house, id), payload }];
  });
};
