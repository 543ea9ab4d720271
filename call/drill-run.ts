/**
 * A call of its own in memory, with a crew of whom each has a device: the same log, desk and fold
 * as in the house, and nothing of it leaves this run. For drills, and to measure a whole load-in.
 */
import {
  type Command,
  type CommandAnswer,
  type EventDraft,
  type HouseEvent,
  memoryLog,
  type Payload,
  RESTS_ON_STATE,
  receiveCommand,
  recordEvents,
} from '#events';
import { assert } from '#outcome';
import type { HouseNow, PostId } from '#state';
import { openDesk } from './desk.ts';
import type { CallDesk, CallDocuments } from './desk-types.ts';
import { foldAll, NOTHING_OPEN, targetOfSet } from './fold.ts';
import { openingOf } from './opening.ts';

/** What a post says; of one set, or of the house where `set` is null. */
export type RunSaid = {
  [K in Command['kind'] & keyof CallPayloadsOf]: {
    readonly kind: K;
    readonly set: string | null;
    readonly payload: Omit<Payload<K>, 'call'>;
  };
}[Command['kind'] & keyof CallPayloadsOf];

/** Kinds whose payload names the call. */
type CallPayloadsOf = {
  [K in Command['kind'] as Payload<K> extends { readonly call: string } ? K : never]: true;
};

export type DrillRun = {
  readonly desk: CallDesk;
  readonly now: () => HouseNow;
  readonly events: () => readonly HouseEvent[];
  readonly nowMs: () => number;
  /** Says it from a post; the answer is the house's, as it would be in a call. */
  readonly say: (post: PostId, said: RunSaid) => CommandAnswer;
};

type RunParts = {
  readonly documents: CallDocuments;
  readonly posts: readonly PostId[];
  /** When it begins; each thing said takes a second. */
  readonly startMs: number;
  readonly isDrill: boolean;
};

const CALL = 'drill';
const SECOND_MS = 1000;
const EVENTS_MOST = 1_000_000;

const personAt = (post: PostId): string => `person.${post}`;
const deviceAt = (post: PostId): string => `device.${post}`;

const openedDraft = ({ documents, startMs, isDrill }: RunParts): EventDraft<'call opened'> => {
  const { house, show } = documents;
  return {
    kind: 'call opened',
    target: 'house',
    payload: {
      ...{ call: CALL, house: house.id, show: show.id, isDrill, documents: [] },
      ...openingOf(documents, startMs),
    },
  };
};

/** Opens the call, with somebody at each post. */
export const openRun = (parts: RunParts): DrillRun => {
  const { documents, posts, startMs } = parts;
  const desk = openDesk(documents);
  const log = memoryLog();
  let [now, clockMs, ids] = [NOTHING_OPEN, startMs, 0];
  const newId = (): string => {
    ids += 1;
    return `run-${String(ids).padStart(8, '0')}`;
  };
  const record = (drafts: readonly EventDraft[], by: string | null, device?: string): void => {
    const speaker = { by, nowMs: clockMs, newId, ...(device === undefined ? {} : { device }) };
    const written = recordEvents(log, drafts, speaker);
    assert(written.ok, 'a log in memory takes what is sound');
    for (const event of written.value) {
      const before = now;
      now = foldAll([event], now);
      const more = desk.follow(before, event);
      if (more.length > 0) record(more, null);
    }
  };
  record([openedDraft(parts)], null);
  for (const post of posts) {
    const payload = { call: CALL, post, name: post, answeredBy: null };
    record([{ kind: 'post taken', target: 'house', payload }], personAt(post), deviceAt(post));
  }
  const say = (post: PostId, { kind, set, payload }: RunSaid): CommandAnswer => {
    clockMs += SECOND_MS;
    const [by, device] = [personAt(post), deviceAt(post)];
    const target = set === null ? 'house' : targetOfSet(documents.house.id, set);
    const around = { commandId: newId(), device, clientMs: clockMs };
    const seen = RESTS_ON_STATE[kind] ? log.lastOn(target) : null;
    // Kind and payload come from one thing said, so they belong to each other.
    const command = {
      kind,
      target,
      payload: { ...payload, call: CALL },
      seen,
      ...around,
    } as Command;
    const sender = { by, role: 'this machine', tasks: [], nowMs: clockMs } as const;
    const received = receiveCommand(
      log,
      command,
      { by, nowMs: clockMs, newId },
      () => desk.judge(now, command, sender),
      (event) => desk.follow(now, event),
    );
    assert(received.ok, 'a log in memory takes what is sound');
    now = foldAll(received.value.events, now);
    return received.value.answer;
  };
  return {
    ...{ desk, say },
    now: () => now,
    events: () => log.after(0, EVENTS_MOST),
    nowMs: () => clockMs,
  };
};
