/**
 * Commands on their way: made with an id and kept before they are sent, sent again under the same
 * id until they are answered, asked for by id where the answer was lost. What rests on a state is
 * refused where the device is not live, and never waits; a note may wait, for a person's word.
 * What came too late is given up with the server's word, since it may still be on its way and
 * would be recorded then.
 */
import { unreachable } from '#outcome';
import type { Command, CommandAnswer } from './command.ts';
import { mayWait as kindMayWait } from './rests-on-state.ts';

/**
 * `held`: written while the house was not heard, or by a page that is gone; a person looks at it
 * again and sends it or drops it. `waiting`: to be sent at the next occasion.
 * `asking`: it was sent and no answer came; whether it arrived is being asked. `givingUp`: it did
 * not, in time, and the server is asked never to record it.
 */
export type Way = 'held' | 'waiting' | 'sending' | 'asking' | 'givingUp';

export type Pending = {
  readonly command: Command;
  readonly way: Way;
  readonly madeMs: number;
  readonly tries: number;
  readonly nextMs: number;
};

export type Outbox = readonly Pending[];

export type OutboxInput =
  | {
      readonly kind: 'made';
      readonly command: Command;
      readonly isLive: boolean;
      readonly nowMs: number;
    }
  /** Kept on the device by an earlier page, and not answered as far as that one knew. */
  | { readonly kind: 'found'; readonly command: Command; readonly nowMs: number }
  | { readonly kind: 'answered'; readonly answer: CommandAnswer }
  /** The server read it and will not take it under this form: another body, an old build. */
  | { readonly kind: 'rejected'; readonly commandId: string; readonly why: Rejected }
  /** No answer, or one that says nothing of the command: the network, a full disk. */
  | { readonly kind: 'lost'; readonly commandId: string; readonly nowMs: number }
  /** Asked by id: the server has no such command. */
  | {
      readonly kind: 'notThere';
      readonly commandId: string;
      readonly nowMs: number;
      readonly isLive: boolean;
    }
  /** A person's word on what is held: it is to be sent, or never to be recorded. */
  | {
      readonly kind: 'released' | 'dropped';
      readonly commandId: string;
      readonly nowMs: number;
    }
  | { readonly kind: 'tick'; readonly nowMs: number; readonly isReachable: boolean };

export type Rejected = 'buildTooOld' | 'notAllowed' | 'notUnderstood';

/** What became of a command, for the person who gave it. */
export type Outcome =
  | CommandAnswer
  | {
      readonly outcome: 'notSent';
      readonly commandId: string;
      readonly why: 'notLive' | 'tooMany' | Rejected;
    };

export type OutboxEffect =
  /** Before it is sent. */
  | { readonly kind: 'keep'; readonly command: Command }
  | { readonly kind: 'forget'; readonly commandId: string }
  | { readonly kind: 'send'; readonly command: Command }
  | { readonly kind: 'ask'; readonly commandId: string }
  /** The answer to it is the last word: what was recorded before, or that it never will be. */
  | { readonly kind: 'giveUp'; readonly commandId: string }
  | { readonly kind: 'told'; readonly outcome: Outcome };

export type OutboxStep = readonly [outbox: Outbox, effects: readonly OutboxEffect[]];

/** A device in a drawer for a week holds this much and says so; nobody writes more by hand. */
export const WAITING_MAX = 200;
/** What rests on a state means the state of that moment: later it is a new decision. */
export const STATE_HOLDS_MS = 15_000;
const AGAIN_MS = [500, 1000, 2000, 4000, 10_000] as const;

const mayWait = ({ kind }: Command): boolean => kindMayWait(kind);

export const outboxStep = (outbox: Outbox, input: OutboxInput): OutboxStep => {
  switch (input.kind) {
    case 'made':
      return made(outbox, input);
    case 'found':
      return found(outbox, input);
    case 'answered':
      return ended(outbox, input.answer);
    case 'rejected':
      return ended(outbox, { outcome: 'notSent', commandId: input.commandId, why: input.why });
    case 'lost':
      return [outbox.map((each) => (isOf(each, input) ? later(each, input.nowMs) : each)), []];
    case 'notThere':
      return notThere(outbox, input);
    case 'released':
      return [said(outbox, input, 'waiting'), []];
    case 'dropped':
      return [said(outbox, input, 'givingUp'), []];
    case 'tick':
      return input.isReachable ? tried(outbox, input.nowMs) : [outbox, []];
    default:
      return unreachable(input);
  }
};

const isOf = ({ command }: Pending, { commandId }: { readonly commandId: string }): boolean =>
  command.commandId === commandId;

type Made = Extract<OutboxInput, { readonly kind: 'made' }>;

const made = (outbox: Outbox, { command, isLive, nowMs }: Made): OutboxStep => {
  const { commandId } = command;
  // A doubled tap that made no new id is the same command.
  if (outbox.some((each) => isOf(each, { commandId }))) return [outbox, []];
  const no = (why: 'notLive' | 'tooMany'): OutboxStep => [
    outbox,
    [{ kind: 'told', outcome: { outcome: 'notSent', commandId, why } }],
  ];
  if (!isLive && !mayWait(command)) return no('notLive');
  if (outbox.length >= WAITING_MAX) return no('tooMany');
  const keep = { kind: 'keep', command } as const;
  const pending = { command, madeMs: nowMs, tries: 0, nextMs: nowMs };
  if (!isLive) return [[...outbox, { ...pending, way: 'held' }], [keep]];
  return [
    [...outbox, { ...pending, way: 'sending' }],
    [keep, { kind: 'send', command }],
  ];
};

const found = (
  outbox: Outbox,
  { command, nowMs }: Extract<OutboxInput, { readonly kind: 'found' }>,
): OutboxStep => {
  if (outbox.some((each) => isOf(each, command))) return [outbox, []];
  // It may have been sent by the page that is gone: what rests on a state is only asked about.
  const way = mayWait(command) ? 'held' : 'asking';
  const madeMs = Math.min(command.clientMs, nowMs);
  return [[...outbox, { command, way, madeMs, tries: 0, nextMs: nowMs }], []];
};

/** What is dropped may have been sent by a page that is gone, so the server has the last word. */
const said = (
  outbox: Outbox,
  { commandId, nowMs }: { readonly commandId: string; readonly nowMs: number },
  way: 'waiting' | 'givingUp',
): Outbox =>
  outbox.map((each) =>
    isOf(each, { commandId }) && each.way === 'held' ? { ...each, way, nextMs: nowMs } : each,
  );

const ended = (outbox: Outbox, outcome: Outcome): OutboxStep => {
  const { commandId } = outcome;
  // An answer that comes twice is told once.
  if (!outbox.some((each) => isOf(each, outcome))) return [outbox, []];
  return [
    outbox.filter((each) => !isOf(each, outcome)),
    [
      { kind: 'forget', commandId },
      { kind: 'told', outcome },
    ],
  ];
};

const later = (pending: Pending, nowMs: number): Pending => {
  const waitMs = AGAIN_MS[Math.min(pending.tries, AGAIN_MS.length - 1)] ?? AGAIN_MS[0];
  const way = pending.way === 'givingUp' ? 'givingUp' : 'asking';
  return { ...pending, way, tries: pending.tries + 1, nextMs: nowMs + waitMs };
};

const notThere = (
  outbox: Outbox,
  { commandId, nowMs, isLive }: Extract<OutboxInput, { readonly kind: 'notThere' }>,
): OutboxStep => {
  const pending = outbox.find((each) => isOf(each, { commandId }));
  // Only what asks by id hears of it: a second answer to the same question is late.
  if (pending?.way !== 'asking') return [outbox, []];
  const ageMs = nowMs - pending.madeMs;
  const isInTime = isLive && ageMs >= 0 && ageMs < STATE_HOLDS_MS;
  if (!mayWait(pending.command) && !isInTime) {
    const givingUp = { ...pending, way: 'givingUp' as const, nextMs: nowMs + AGAIN_MS[4] };
    return [
      outbox.map((each) => (each === pending ? givingUp : each)),
      [{ kind: 'giveUp', commandId }],
    ];
  }
  const sending = outbox.map((each) =>
    each === pending ? { ...each, way: 'sending' as const } : each,
  );
  return [sending, [{ kind: 'send', command: pending.command }]];
};

/** What waits is sent, what is in doubt is asked about; a clock put back is no reason to wait. */
const tried = (outbox: Outbox, nowMs: number): OutboxStep => {
  const isDue = ({ way, nextMs }: Pending): boolean =>
    way !== 'sending' && way !== 'held' && (nowMs >= nextMs || nextMs - nowMs > 2 * WAIT_MAX_MS);
  const due = outbox.filter(isDue);
  const next = outbox.map((each): Pending => {
    if (!isDue(each)) return each;
    if (each.way === 'waiting') return { ...each, way: 'sending' };
    return later(each, nowMs);
  });
  const effects = due.map(({ way, command }): OutboxEffect => {
    const { commandId } = command;
    if (way === 'waiting') return { kind: 'send', command };
    return { kind: way === 'givingUp' ? 'giveUp' : 'ask', commandId };
  });
  return [next, effects];
};

const WAIT_MAX_MS = AGAIN_MS[4];
