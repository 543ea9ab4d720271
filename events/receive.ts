/**
 * What becomes of a command, and of what the server itself says: looked up, judged, chained, and
 * written with its answer in one transaction. A command is answered once; whoever sends it again
 * gets the same answer.
 */
import { fail, ok, type Result } from '#outcome';
import { sealed, sha256OfValue } from './chain.ts';
import type { Command, CommandAnswer, Current } from './command.ts';
import type { EventDraft, Head, HouseEvent } from './event.ts';
import { headOf, NOTHING_YET } from './event.ts';
import type { EventLog, LogFault, StoredAnswer } from './event-log.ts';
import { REFUSALS, type RefusalName } from './refusal-codes.ts';
import { RESTS_ON_STATE } from './rests-on-state.ts';

/** Who speaks, when by the clock on the wall, and a new id each time it is asked for. */
export type Speaker = {
  readonly by: string | null;
  readonly nowMs: number;
  readonly newId: () => string;
};

/** Why a person may not do this, as a code and words; null where they may. */
export type Judge = (command: Command) => { readonly code: string; readonly words: string } | null;

/** What the server says itself, in the same batch, on what a command became; in its order. */
export type Follow = (event: HouseEvent) => readonly EventDraft[];

export type Reception = {
  readonly answer: CommandAnswer;
  /** What was recorded now; empty for a refusal and for a command that was answered before. */
  readonly events: readonly HouseEvent[];
  readonly isRepeat: boolean;
};

/**
 * Takes one command. The fault of a log is no answer: it is not kept, and the device may send the
 * same command again.
 */
export const receiveCommand = (
  log: EventLog,
  command: Command,
  speaker: Speaker,
  mayDo: Judge,
  follow: Follow = NOTHING_MORE,
): Result<Reception, LogFault> => {
  const bodyHash = sha256OfValue(command);
  const stored = log.answerTo(command.commandId);
  if (stored !== null) return ok(answeredBefore(log, command, { stored, bodyHash }));
  const refused = whyNot(log, command, mayDo);
  const { commandId, device } = command;
  const said =
    refused === null ? chained(log, [draftOf(command)], { speaker, commandId, device }) : [];
  const events = withWhatFollows(said, { speaker, follow });
  const answer: CommandAnswer = refused ?? {
    outcome: 'accepted',
    commandId,
    // The alarm about the clock is the server's own word and no part of the answer.
    seqs: events.filter((event) => event.commandId === commandId).map(({ seq }) => seq),
  };
  const written = log.commit({ events, answer: { bodyHash, answer } });
  return written.ok ? ok({ answer, events, isRepeat: false }) : written;
};

const NOTHING_MORE: Follow = () => [];

const withWhatFollows = (
  said: readonly HouseEvent[],
  { speaker, follow }: { readonly speaker: Speaker; readonly follow: Follow },
): readonly HouseEvent[] => {
  const last = said.at(-1);
  if (last === undefined) return said;
  const own = { by: null, commandId: null, device: null };
  const drafts = follow(last).map((draft) => ({ ...draft, ...own }));
  return [...said, ...placed(drafts, headOf(last), { atMs: last.atMs, newId: speaker.newId })];
};

/**
 * Gives a command up for who gave it: what became of it before, or, from now on, that it is never
 * recorded. It may still be on its way, and its giver must hear one last word on it.
 */
export const giveUpCommand = (
  log: EventLog,
  commandId: string,
): Result<CommandAnswer, LogFault> => {
  const stored = log.answerTo(commandId);
  if (stored !== null) return ok(stored.answer);
  const { code, meaning } = REFUSALS.givenUp;
  const answer = { outcome: 'refused', commandId, code, words: meaning, current: null } as const;
  // No body has this hash, as none has come.
  const written = log.commit({ events: [], answer: { bodyHash: NOTHING_YET.hash, answer } });
  return written.ok ? ok(answer) : written;
};

const isGivenUp = ({ answer }: StoredAnswer): boolean =>
  answer.outcome === 'refused' && answer.code === REFUSALS.givenUp.code;

/** Records what the server itself says: a person joined, a record was made. */
export const recordEvents = (
  log: EventLog,
  drafts: readonly EventDraft[],
  speaker: Speaker & { readonly device?: string },
): Result<readonly HouseEvent[], LogFault> => {
  const device = speaker.device ?? null;
  const events = chained(log, drafts, { speaker, commandId: null, device });
  const written = log.commit({ events, answer: null });
  return written.ok ? ok(events) : fail(written.error);
};

const answeredBefore = (
  log: EventLog,
  command: Command,
  was: { readonly stored: StoredAnswer; readonly bodyHash: string },
): Reception => ({
  answer:
    was.stored.bodyHash === was.bodyHash || isGivenUp(was.stored)
      ? was.stored.answer
      : refusedAs('anotherBody', command, currentOf(log, command.target)),
  events: [],
  isRepeat: true,
});

const draftOf = ({ kind, target, payload }: Command): EventDraft =>
  // Kind and payload come from one command, so they belong to each other.
  ({ kind, target, payload }) as EventDraft;

const whyNot = (log: EventLog, command: Command, mayDo: Judge): CommandAnswer | null => {
  const current = currentOf(log, command.target);
  const byRights = mayDo(command);
  if (byRights !== null) {
    return { outcome: 'refused', commandId: command.commandId, ...byRights, current };
  }
  const name = bySight(log, command) ?? byPayload(log, command);
  return name === null ? null : refusedAs(name, command, current);
};

/** A command that rests on the state is taken only from who has seen the last of it. */
const bySight = (log: EventLog, command: Command): RefusalName | null => {
  if (command.seen !== null && command.seen > log.head().seq) return 'ahead';
  if (!RESTS_ON_STATE[command.kind]) return null;
  return command.seen === log.lastOn(command.target) ? null : 'stale';
};

const byPayload = (log: EventLog, command: Command): RefusalName | null => {
  if (command.kind === 'withdrawn') {
    const { seq, event: id } = command.payload;
    const [event] = log.after(seq - 1, 1);
    if (event?.id !== id || event.target !== command.target) return 'noSuchEvent';
    if (event.kind !== 'note written' && event.kind !== 'signed') return 'notWithdrawable';
    return log.withdrawalOf(seq) === null ? null : 'withdrawnAlready';
  }
  if (command.kind === 'signed') {
    const { basis, restsOn } = command.payload;
    if (basis > log.head().seq) return 'ahead';
    const last = Math.max(log.lastOn(command.target), ...restsOn.map(log.lastOn));
    return basis < last ? 'stale' : null;
  }
  return null;
};

const currentOf = (log: EventLog, target: string): Current => {
  const seq = log.lastOn(target);
  return { seq, event: seq === 0 ? null : (log.after(seq - 1, 1)[0] ?? null) };
};

const refusedAs = (name: RefusalName, command: Command, current: Current): CommandAnswer => ({
  outcome: 'refused',
  commandId: command.commandId,
  code: REFUSALS[name].code,
  words: REFUSALS[name].meaning,
  current,
});

/** A clock is set right by less than this every day; more is a fault that a person must know. */
const CLOCK_ALARM_MS = 1000;

const chained = (
  log: Pick<EventLog, 'head' | 'lastOn' | 'after'>,
  drafts: readonly EventDraft[],
  from: {
    readonly speaker: Speaker;
    readonly commandId: string | null;
    readonly device: string | null;
  },
): readonly HouseEvent[] => {
  const { speaker, commandId, device } = from;
  const head = log.head();
  const atMs = Math.max(speaker.nowMs, head.atMs);
  const said = { by: speaker.by, commandId, device };
  const server = { by: null, commandId: null, device: null };
  const alarm = clockAlarm(log, head, speaker.nowMs);
  const unplaced = [
    ...(alarm === null ? [] : [{ ...alarm, ...server }]),
    ...drafts.map((draft) => ({ ...draft, ...said })),
  ];
  return placed(unplaced, head, { atMs, newId: speaker.newId });
};

type Unplaced = EventDraft & Pick<HouseEvent, 'by' | 'commandId' | 'device'>;

const placed = (
  unplaced: readonly Unplaced[],
  head: Head,
  { atMs, newId }: { readonly atMs: number; readonly newId: () => string },
): readonly HouseEvent[] => {
  let last = head;
  return unplaced.map((each) => {
    const { seq, hash: previous } = last;
    const event = sealed({ ...each, seq: seq + 1, id: newId(), atMs, previous });
    last = headOf(event);
    return event;
  });
};

/** Once for each time the clock went back: while it is held, the last alarm has this very time. */
const clockAlarm = (
  log: Pick<EventLog, 'lastOn' | 'after'>,
  head: Head,
  wallMs: number,
): EventDraft<'clock held'> | null => {
  if (wallMs > head.atMs - CLOCK_ALARM_MS) return null;
  const [before] = log.after(log.lastOn('clock') - 1, 1);
  const isHeld = before?.kind === 'clock held' && before.payload.heldMs === head.atMs;
  return isHeld
    ? null
    : { kind: 'clock held', target: 'clock', payload: { wallMs, heldMs: head.atMs } };
};
