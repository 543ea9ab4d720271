import { describe, expect, it } from 'vitest';
import type { Command } from './command.ts';
import type { EventOf } from './event.ts';
import type { EventLog } from './event-log.ts';
import { memoryLog } from './memory-log.ts';
import { giveUpCommand, receiveCommand, recordEvents } from './receive.ts';
import { standingOf } from './signature.ts';

const HASH = 'a'.repeat(64);

const speakerAt = (nowMs: number) => {
  let n = 0;
  return {
    by: 'p1',
    nowMs,
    newId: () => {
      n += 1;
      return `e-${nowMs}-${n}`;
    },
  };
};

const around = (commandId: string, seen: number | null) => ({
  ...{ commandId, device: 'd1', target: 'set:11', seen, clientMs: 1 },
});

const note = (commandId: string, seen: number | null = null): Command => ({
  ...around(commandId, seen),
  kind: 'note written',
  payload: { text: 'worn', writtenMs: null },
});

const sign = (commandId: string, seen: number, basis = seen, restsOn: string[] = []): Command => ({
  ...around(commandId, seen),
  kind: 'signed',
  payload: {
    ...{ statement: 'balance confirmed', shown: HASH, basis, restsOn },
    role: 'lead',
    second: null,
  },
});

const withdraw = (commandId: string, seen: number, of: { seq: number; id: string }): Command => ({
  ...around(commandId, seen),
  kind: 'withdrawn',
  payload: { seq: of.seq, event: of.id, why: 'the wrong set' },
});

const take = (log: EventLog, command: Command, nowMs = 1000) => {
  const done = receiveCommand(log, command, speakerAt(nowMs), () => null);
  if (!done.ok) throw new Error(done.error.detail);
  return done.value;
};

const saved = (log: EventLog, target: string): void => {
  recordEvents(
    log,
    [
      {
        kind: 'document saved',
        target,
        payload: {
          ...{ document: 'show:a', kind: 'show', revision: 1, savedBy: 'TD', why: 'edited' },
          sha256: HASH,
        },
      },
    ],
    speakerAt(2000),
  );
};

describe('a command', () => {
  it('[EVT-002] with the id of another is refused, and the first answer stays', () => {
    const log = memoryLog();
    const first = take(log, note('command-1'));
    const other = { ...note('command-1'), target: 'set:12' };
    expect(take(log, other).answer).toMatchObject({ outcome: 'refused', code: 'EVT-002' });
    expect(take(log, note('command-1')).answer).toEqual(first.answer);
    expect(log.head().seq).toBe(1);
  });

  it('[EVT-003] that rests on the state is refused to who has not seen the last of it', () => {
    const log = memoryLog();
    take(log, note('command-1'));
    const late = take(log, sign('command-2', 0)).answer;
    expect(late).toMatchObject({ code: 'EVT-003', current: { seq: 1, event: { seq: 1 } } });
    expect(take(log, sign('command-3', 1)).answer.outcome).toBe('accepted');
    // Two devices sign the same step from the same sight: the second is told.
    expect(take(log, sign('command-4', 1)).answer).toMatchObject({ code: 'EVT-003' });
    expect(take(log, note('command-5', 0)).answer.outcome).toBe('accepted');
  });

  it('[EVT-003] to sign is refused where a document of its figures was saved since', () => {
    const log = memoryLog();
    take(log, note('command-1'));
    saved(log, 'document:show:a');
    expect(take(log, sign('command-2', 1, 1, ['document:show:a'])).answer).toMatchObject({
      code: 'EVT-003',
    });
    expect(take(log, sign('command-3', 1, 2, ['document:show:a'])).answer.outcome).toBe('accepted');
  });

  it('[EVT-004] of a device that has seen more than the record holds is refused', () => {
    const log = memoryLog();
    take(log, note('command-1'));
    expect(take(log, note('command-2', 2)).answer).toMatchObject({ code: 'EVT-004' });
    expect(take(log, sign('command-3', 1, 2)).answer).toMatchObject({ code: 'EVT-004' });
    expect(take(log, note('command-4', 1)).answer.outcome).toBe('accepted');
  });

  it('[EVT-005] to withdraw names an event of the target by number and id', () => {
    const log = memoryLog();
    const [event] = take(log, note('command-1')).events;
    const id = String(event?.id);
    for (const [n, of] of [
      { seq: 1, id: 'other' },
      { seq: 2, id },
    ].entries()) {
      expect(take(log, withdraw(`command-2${n}`, 1, of)).answer).toMatchObject({ code: 'EVT-005' });
    }
    const elsewhere = { ...withdraw('command-3', 0, { seq: 1, id }), target: 'set:12' };
    expect(take(log, elsewhere).answer).toMatchObject({ code: 'EVT-005' });
  });

  it('[EVT-006] to withdraw is taken once', () => {
    const log = memoryLog();
    const [event] = take(log, note('command-1')).events;
    const of = { seq: 1, id: String(event?.id) };
    expect(take(log, withdraw('command-2', 1, of)).answer.outcome).toBe('accepted');
    expect(take(log, withdraw('command-3', 2, of)).answer).toMatchObject({ code: 'EVT-006' });
  });

  it('[EVT-007] withdraws notes and sign-offs only', () => {
    const log = memoryLog();
    saved(log, 'set:11');
    const [event] = log.after(0, 1);
    const of = { seq: 1, id: String(event?.id) };
    expect(take(log, withdraw('command-1', 1, of)).answer).toMatchObject({ code: 'EVT-007' });
  });

  it('is refused by who judges rights, with the words of the judge', () => {
    const log = memoryLog();
    const refusal = { code: 'AUTH-004', words: 'Only a lead signs.' };
    const done = receiveCommand(log, sign('command-1', 0), speakerAt(1), () => refusal);
    expect(done.ok && done.value.answer).toMatchObject({ outcome: 'refused', ...refusal });
    expect(log.head().seq).toBe(0);
  });

  it('keeps no answer where the log has a fault: the same command is taken later', () => {
    const log = memoryLog();
    const fault = { ok: false, error: { kind: 'diskFull', detail: 'no space' } } as const;
    const faulty: EventLog = { ...log, commit: () => fault };
    expect(receiveCommand(faulty, note('command-1'), speakerAt(1), () => null)).toEqual(fault);
    expect(log.answerTo('command-1')).toBeNull();
    expect(take(log, note('command-1')).answer.outcome).toBe('accepted');
  });
});

describe('a command that is given up', () => {
  it('[EVT-013] is never recorded, though it comes later', () => {
    const log = memoryLog();
    expect(giveUpCommand(log, 'command-1')).toMatchObject({ value: { code: 'EVT-013' } });
    expect(take(log, note('command-1')).answer).toMatchObject({ code: 'EVT-013' });
    expect(giveUpCommand(log, 'command-1')).toMatchObject({ value: { code: 'EVT-013' } });
    expect(log.head().seq).toBe(0);
  });

  it('has the answer that it was given where it came before', () => {
    const log = memoryLog();
    const { answer } = take(log, note('command-1'));
    expect(giveUpCommand(log, 'command-1')).toEqual({ ok: true, value: answer });
  });

  it('is not given up where the log has a fault', () => {
    const log = memoryLog();
    const fault = { ok: false, error: { kind: 'diskFull', detail: 'no space' } } as const;
    expect(giveUpCommand({ ...log, commit: () => fault }, 'command-1')).toEqual(fault);
    expect(log.answerTo('command-1')).toBeNull();
  });
});

describe('the time of the server', () => {
  it('never goes back, and one event says so each time the clock does', () => {
    const log = memoryLog();
    const at = (n: number, nowMs: number) => take(log, note(`command-${n}`), nowMs);
    at(1, 100_000);
    const held = at(2, 40_000);
    expect(held.events.map(({ kind, atMs }) => [kind, atMs])).toEqual([
      ['clock held', 100_000],
      ['note written', 100_000],
    ]);
    expect(held.answer).toMatchObject({ seqs: [3] });
    expect(held.events[0]).toMatchObject({
      by: null,
      payload: { wallMs: 40_000, heldMs: 100_000 },
    });
    expect(at(3, 41_000).events).toHaveLength(1);
    expect(at(4, 30_000).events).toHaveLength(1);
    expect(at(5, 120_000).events.map(({ atMs }) => atMs)).toEqual([120_000]);
    expect(at(6, 50_000).events.map(({ kind }) => kind)).toEqual(['clock held', 'note written']);
  });

  it('is held without an alarm for less than a second, as a clock is set right every day', () => {
    const log = memoryLog();
    take(log, note('command-1'), 10_000);
    expect(take(log, note('command-2'), 9001).events.map(({ atMs }) => atMs)).toEqual([10_000]);
    expect(take(log, note('command-3'), 9000).events).toHaveLength(2);
  });
});

describe('a sign-off', () => {
  const signedOn = (log: EventLog, restsOn: string[] = []): EventOf<'signed'> => {
    const [event] = take(
      log,
      sign('sign-0001', log.lastOn('set:11'), log.head().seq, restsOn),
    ).events;
    if (event?.kind !== 'signed') throw new Error('it was refused');
    return event;
  };

  it('stands while notes and other sign-offs come, however many', () => {
    const log = memoryLog();
    const signed = signedOn(log);
    for (let n = 0; n < 130; n += 1) take(log, note(`command-${n}`));
    take(log, sign('sign-0002', log.lastOn('set:11')));
    expect(standingOf(log, signed)).toEqual({ stands: true });
    saved(log, 'set:11');
    expect(standingOf(log, signed)).toMatchObject({ stands: false, because: 'changed' });
  });

  it('is void when a document that its figures rest on is saved', () => {
    const log = memoryLog();
    const signed = signedOn(log, ['document:show:a']);
    saved(log, 'document:house:b');
    expect(standingOf(log, signed).stands).toBe(true);
    saved(log, 'document:show:a');
    expect(standingOf(log, signed)).toMatchObject({ because: 'changed', event: { seq: 3 } });
  });

  it('is void when it is withdrawn, and is still there', () => {
    const log = memoryLog();
    const signed = signedOn(log);
    take(log, withdraw('command-9', signed.seq, signed));
    expect(standingOf(log, signed)).toMatchObject({ because: 'withdrawn', event: { seq: 2 } });
    expect(log.after(0, 1)).toEqual([signed]);
  });
});
