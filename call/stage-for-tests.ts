/** A call on a demo house with its crew, on a log in memory: commands in, answers and state out. */
import {
  type Command,
  type CommandKind,
  type EventDraft,
  type EventLog,
  type HouseEvent,
  memoryLog,
  type Payload,
  receiveCommand,
  recordEvents,
  type Task,
} from '#events';
import { FOOT, metres } from '#quantities';
import type { HouseNow, PostId, SetNow, Standing, Step } from '#state';
import type { CallDesk, CallDocuments, CallSender } from './desk-types.ts';
import { foldEvent, NOTHING_OPEN, openDesk, openingOf, targetOfSet } from './index.ts';

export const CALL = 'call-1';
export const START_MS = Date.UTC(2026, 10, 28, 16);

/** Whoever speaks: a person on a device of theirs, with what they are signed off for. */
export type Speaks = {
  readonly by: string | null;
  readonly device: string;
  readonly tasks: readonly Task[];
  readonly role?: CallSender['role'];
};

const person = (name: string, ...tasks: readonly Task[]): Speaks => ({
  by: `pers_${name}`,
  device: `dev_${name}`,
  tasks,
});

/** One for each post of a whole crew, and each signed off for no more than that post needs. */
export const CREW: Readonly<Record<PostId, Speaks>> = {
  headFly: person('head', 'headFly'),
  caller: person('caller', 'induct'),
  rail: person('rail', 'rail'),
  watcher: person('watcher', 'induct'),
  deck: person('deck', 'deck'),
  'gallery:upper': person('upper', 'loader'),
  'gallery:mid': person('mid', 'loader'),
  'marshal:run': person('run', 'deck'),
  'marshal:drop:upper': person('dropUpper', 'deck'),
  'marshal:drop:mid': person('dropMid', 'deck'),
  bullLine: person('bull', 'outOfBalance'),
};

export const who = (post: PostId): Speaks => {
  const speaks = CREW[post];
  if (speaks === undefined) throw new Error(`the crew has nobody for ${post}`);
  return speaks;
};

export type Stage = ReturnType<typeof openStage>;

/** What was answered: `taken`, or the code that it was refused by, with its words. */
export type Said = {
  readonly code: 'taken' | string;
  readonly words: string;
  readonly seq: number;
};

/** A desk keeps nothing but what it has worked out of its documents, so that tests share one. */
const desks = new WeakMap<CallDocuments, CallDesk>();

const deskOf = (documents: CallDocuments): CallDesk => {
  const desk = desks.get(documents) ?? openDesk(documents);
  desks.set(documents, desk);
  return desk;
};

type Inside = {
  readonly log: EventLog;
  readonly desk: CallDesk;
  readonly now: () => HouseNow;
  readonly see: (events: readonly HouseEvent[]) => void;
  readonly clockMs: () => number;
  readonly tick: () => void;
  readonly newId: () => string;
};

const insideOf = (desk: CallDesk): Inside => {
  let now = NOTHING_OPEN;
  let clockMs = START_MS;
  let ids = 0;
  return {
    ...{ log: memoryLog(), desk, now: () => now, clockMs: () => clockMs },
    see: (events) => {
      for (const event of events) now = foldEvent(now, event);
    },
    tick: () => {
      clockMs += 1000;
    },
    newId: () => {
      ids += 1;
      return `id_${ids}`;
    },
  };
};

/** What the server says, with what follows from it. */
const recordIn = (inside: Inside, drafts: readonly EventDraft[], speaks: Speaks | null): void => {
  const { log, desk, clockMs, newId } = inside;
  const speaker = { by: speaks?.by ?? null, nowMs: clockMs(), newId };
  const device = speaks === null ? {} : { device: speaks.device };
  const done = recordEvents(log, drafts, { ...speaker, ...device });
  if (!done.ok) throw new Error('the log of a test takes everything');
  for (const event of done.value) {
    const before = inside.now();
    inside.see([event]);
    const more = desk.follow(before, event);
    if (more.length > 0) recordIn(inside, more, null);
  }
};

/** A second later than what was said last. */
const sendIn = <K extends CommandKind>(
  inside: Inside,
  said: { readonly kind: K; readonly target: string; readonly payload: Payload<K> },
  { by, device, tasks, role = 'run' }: Speaks,
): Said => {
  inside.tick();
  const { log, desk, newId, now } = inside;
  const clockMs = inside.clockMs();
  const place = { commandId: `cmd_${newId()}_000000000000`, device, clientMs: clockMs };
  // Kind and payload come together from whoever calls.
  const command = { ...said, ...place, seen: log.lastOn(said.target) } as unknown as Command;
  const sender: CallSender = { by, role, tasks, nowMs: clockMs };
  const received = receiveCommand(
    log,
    command,
    { by, nowMs: clockMs, newId },
    (each) => desk.judge(now(), each, sender),
    (event) => desk.follow(now(), event),
  );
  if (!received.ok) throw new Error('the log of a test takes everything');
  const { answer, events } = received.value;
  inside.see(events);
  return answer.outcome === 'accepted'
    ? { code: 'taken', words: '', seq: answer.seqs[0] ?? 0 }
    : { code: answer.code, words: answer.words, seq: 0 };
};

const openingDraft = (documents: CallDocuments): EventDraft => ({
  kind: 'call opened',
  target: 'house',
  payload: {
    ...{ call: CALL, house: documents.house.id, show: documents.show.id, isDrill: false },
    ...{ documents: [], ...openingOf(documents, START_MS) },
  },
});

export const openStage = (documents: CallDocuments) => {
  const desk = deskOf(documents);
  const inside = insideOf(desk);
  recordIn(inside, [openingDraft(documents)], who('headFly'));
  return {
    desk,
    log: inside.log,
    now: inside.now,
    clockMs: inside.clockMs,
    send: <K extends CommandKind>(
      kind: K,
      target: string,
      payload: Payload<K>,
      speaks: Speaks,
    ): Said => sendIn(inside, { kind, target, payload }, speaks),
    on: (set: string): string => targetOfSet(documents.house.id, set),
    set: (set: string): SetNow => {
      const found = inside.now().sets[set];
      if (found === undefined) throw new Error(`the house has no set ${set}`);
      return found;
    },
    take: (post: PostId, speaks: Speaks = who(post), answeredBy: string | null = null): void => {
      const payload = { call: CALL, post, name: speaks.by ?? speaks.device, answeredBy };
      recordIn(inside, [{ kind: 'post taken', target: 'house', payload }], speaks);
    },
  };
};

/** The whole crew at its posts, and everybody out of every drop zone. */
export const crewed = (documents: CallDocuments): Stage => {
  const stage = openStage(documents);
  for (const post of Object.keys(CREW)) stage.take(post);
  allClear(stage);
  return stage;
};

export const allClear = ({ now, send }: Stage): void => {
  for (const [post, { isClear }] of Object.entries(now().posts)) {
    if (!isClear) send('post said', 'house', { call: CALL, post, isClear: true }, who(post));
  }
};

export const feet = (n: number) => metres(n * FOOT);

/** A set found as somebody counted it. */
export const find = (
  { send, on, set }: Stage,
  id: string,
  change: Partial<Standing> = {},
  more: Partial<Payload<'set found'>> = {},
): Said => {
  const last = set(id).last;
  if (last === null) throw new Error(`set ${id} has a last standing`);
  return send(
    'set found',
    on(id),
    {
      ...{ call: CALL, post: 'deck', standing: { ...last, ...change } },
      ...{ lock: 'closed', ring: 'on', collar: 'secured', basis: 'counted' },
      ...{ second: 'head flyman', settles: [], ...more },
    },
    who('deck'),
  );
};

export const ask = (
  { send, on }: Stage,
  id: string,
  post: PostId,
  step: Step,
  more: Partial<Payload<'leave asked'>> & { readonly speaks?: Speaks } = {},
): Said => {
  const { speaks = who(post), ...rest } = more;
  const payload = { call: CALL, post, step, paper: null, override: null, ...rest };
  return send('leave asked', on(id), payload, speaks);
};

/** The second word, with the count where it is wanted, by whoever it waits for. */
export const second = (
  { send, on, set }: Stage,
  id: string,
  plates: number | null = null,
): Said => {
  const { asked } = set(id);
  if (asked === null) throw new Error(`nothing waits on set ${id}`);
  const { seq, secondOf: post } = asked;
  return send('leave seconded', on(id), { call: CALL, post, asked: seq, plates }, who(post));
};

export const report = (
  { send, on, set }: Stage,
  id: string,
  more: Partial<Payload<'step reported'>> = {},
): Said => {
  const { leave } = set(id);
  if (leave === null) throw new Error(`no leave is open on set ${id}`);
  const { seq, post, step } = leave;
  const plates = 'count' in step ? step.count : null;
  const payload = {
    call: CALL,
    post,
    leave: seq,
    as: 'done',
    plates,
    height: null,
    words: '',
  } as const;
  return send('step reported', on(id), { ...payload, ...more }, who(post));
};

export const count = ({ send, on, set }: Stage, id: string, so: number): Said => {
  const { leave } = set(id);
  if (leave === null) throw new Error(`no leave is open on set ${id}`);
  const { seq, post } = leave;
  return send('plates counted', on(id), { call: CALL, post, leave: seq, count: so }, who(post));
};

const ZONES = [{ zone: 'run' }, { zone: 'drop', gallery: 'upper' }] as const;
const PIPE = [{ kind: 'O', count: 3, tag: 'pipe' }] as const;
/** One full brick more than balances the bare batten at working height, which is 49 lb heavy. */
export const LADEN = [...PIPE, { kind: 'F', count: 3, tag: 'show' }] as const;

/** Set 4 of the demo, empty, on its low stop, counted, with both zones closed. */
export const empty = (documents: CallDocuments): Stage => {
  const stage = crewed(documents);
  find(stage, '4', { height: feet(3), stack: LADEN, items: {}, closed: [...ZONES] });
  return stage;
};

export const OFF = { act: 'remove', kind: 'F', count: 1, gallery: 'upper' } as const;
export const FLY = { act: 'fly', to: feet(10) } as const;

/** The brick off again, so that the set is within its lock everywhere, and has changed. */
export const unloaded = (documents: CallDocuments): Stage => {
  const stage = empty(documents);
  ask(stage, '4', 'gallery:upper', OFF);
  second(stage, '4');
  report(stage, '4');
  return stage;
};
