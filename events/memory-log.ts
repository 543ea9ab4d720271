import { assert, ok } from '#outcome';
import { verifyChain } from './chain.ts';
import { type HouseEvent, headOf, NOTHING_YET } from './event.ts';
import type { Batch, EventLog, StoredAnswer } from './event-log.ts';
import type { EventKind } from './kinds.ts';
import { readEvent } from './read.ts';

/** A log that lasts as long as the program: for simulations, tests, and what a device has seen. */
export const memoryLog = (): EventLog => {
  const events: HouseEvent[] = [];
  const answers = new Map<string, StoredAnswer>();
  const withdrawals = new Map<number, HouseEvent>();
  const byTarget = new Map<string, HouseEvent[]>();
  const lastOfKinds = new Map<EventKind, number>();
  const head = () => {
    const last = events.at(-1);
    return last === undefined ? NOTHING_YET : headOf(last);
  };
  const write = (event: HouseEvent): void => {
    events.push(event);
    const onTarget = byTarget.get(event.target) ?? [];
    onTarget.push(event);
    byTarget.set(event.target, onTarget);
    lastOfKinds.set(event.kind, event.seq);
    if (event.kind === 'withdrawn') withdrawals.set(event.payload.seq, event);
  };
  return {
    head,
    after: (seq, limit) => events.slice(Math.max(0, seq), Math.max(0, seq) + limit),
    answerTo: (commandId) => answers.get(commandId) ?? null,
    lastOn: (target) => byTarget.get(target)?.at(-1)?.seq ?? 0,
    on: (target, after, limit) =>
      (byTarget.get(target) ?? []).filter(({ seq }) => seq > after).slice(0, limit),
    withdrawalOf: (seq) => withdrawals.get(seq) ?? null,
    lastOf: (kind) => lastOfKinds.get(kind) ?? 0,
    commit: (batch) => {
      assertFollows(batch, head(), (id) => answers.has(id));
      for (const event of batch.events) write(event);
      if (batch.answer !== null) answers.set(batch.answer.answer.commandId, batch.answer);
      return ok(head());
    },
    close: () => undefined,
  };
};

/** What every log asserts of a batch before it writes any of it. */
export const assertFollows = (
  batch: Batch,
  head: ReturnType<EventLog['head']>,
  isAnswered: (commandId: string) => boolean,
): void => {
  for (const event of batch.events) {
    assert(readEvent(event).ok, `an event is of its kind (${event.kind})`);
  }
  assert(verifyChain(batch.events, head).ok, 'the events of a batch follow on the head');
  const id = batch.answer?.answer.commandId;
  assert(id === undefined || !isAnswered(id), 'a command is answered once');
};
