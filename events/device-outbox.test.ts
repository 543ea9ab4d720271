import { describe, expect, it } from 'vitest';
import { type Command, type Outbox, type OutboxInput, outboxStep } from './index.ts';

const T = 1_790_000_000_000;
const note = (commandId: string): Command => ({
  kind: 'note written',
  target: 'set:11',
  payload: { text: 'a frayed hand line', writtenMs: T },
  commandId,
  device: 'device-1',
  seen: null,
  clientMs: T,
});
const withdrawal: Command = {
  kind: 'withdrawn',
  target: 'set:11',
  payload: { seq: 4, event: 'e4', why: 'wrong set' },
  commandId: 'command-w',
  device: 'device-1',
  seen: 4,
  clientMs: T,
};

const box = () => {
  let outbox: Outbox = [];
  return {
    put: (input: OutboxInput) => {
      const [next, effects] = outboxStep(outbox, input);
      outbox = next;
      return effects;
    },
    now: () => outbox,
  };
};

const made = (command: Command, isLive = true) =>
  ({ kind: 'made', command, isLive, nowMs: T }) as const;
const tick = (nowMs: number, isReachable = true) => ({ kind: 'tick', nowMs, isReachable }) as const;

describe('a command', () => {
  it('is kept before it is sent, forgotten when it is answered, and told once', () => {
    const it = box();
    expect(it.put(made(note('command-1'))).map(({ kind }) => kind)).toEqual(['keep', 'send']);
    const answer = { outcome: 'accepted', commandId: 'command-1', seqs: [7] } as const;
    expect(it.put({ kind: 'answered', answer })).toEqual([
      { kind: 'forget', commandId: 'command-1' },
      { kind: 'told', outcome: answer },
    ]);
    expect(it.put({ kind: 'answered', answer })).toEqual([]);
  });

  it('is one command when it is tapped twice under one id', () => {
    const it = box();
    it.put(made(note('command-1')));
    expect(it.put(made(note('command-1')))).toEqual([]);
  });

  it('is asked for by id when its answer was lost, and sent again only if it is not there', () => {
    const it = box();
    it.put(made(note('command-1')));
    it.put({ kind: 'lost', commandId: 'command-1', nowMs: T });
    expect(it.put(tick(T + 400))).toEqual([]);
    expect(it.put(tick(T + 1000))).toEqual([{ kind: 'ask', commandId: 'command-1' }]);
    const notThere = { kind: 'notThere', commandId: 'command-1', nowMs: T, isLive: true } as const;
    expect(it.put(notThere)).toEqual([{ kind: 'send', command: note('command-1') }]);
    expect(it.put(notThere)).toEqual([]);
  });

  it('is held while nothing is reached, if it is a note, until a person sends it', () => {
    const it = box();
    expect(it.put(made(note('command-1'), false)).map(({ kind }) => kind)).toEqual(['keep']);
    expect(it.now()[0]?.way).toBe('held');
    expect(it.put(tick(T + 1000))).toEqual([]);
    it.put({ kind: 'released', commandId: 'command-1', nowMs: T + 2000 });
    expect(it.put(tick(T + 2000, false))).toEqual([]);
    expect(it.put(tick(T + 3000)).map(({ kind }) => kind)).toEqual(['send']);
  });

  it('is dropped with the last word of the server, should it have been sent before', () => {
    const it = box();
    it.put(made(note('command-1'), false));
    it.put({ kind: 'dropped', commandId: 'command-1', nowMs: T });
    expect(it.put(tick(T))).toEqual([{ kind: 'giveUp', commandId: 'command-1' }]);
    // A word that comes after it changes nothing.
    it.put({ kind: 'released', commandId: 'command-1', nowMs: T });
    expect(it.now()[0]?.way).toBe('givingUp');
  });

  it('is refused and never waits, if it rests on a state and the device is not live', () => {
    const it = box();
    expect(it.put(made(withdrawal, false))).toEqual([
      { kind: 'told', outcome: { outcome: 'notSent', commandId: 'command-w', why: 'notLive' } },
    ]);
    expect(it.now()).toEqual([]);
  });

  it('is given up after 15 s if it rests on a state and did not arrive', () => {
    const late = (nowMs: number, isLive: boolean) => {
      const it = box();
      it.put(made(withdrawal));
      it.put({ kind: 'lost', commandId: 'command-w', nowMs: T });
      return it
        .put({ kind: 'notThere', commandId: 'command-w', nowMs, isLive })
        .map(({ kind }) => kind);
    };
    expect(late(T + 14_999, true)).toEqual(['send']);
    expect(late(T + 14_999, false)).toEqual(['giveUp']);
    expect(late(T + 15_000, true)).toEqual(['giveUp']);
    expect(late(T - 1, true)).toEqual(['giveUp']);
  });

  it('is given up again and again until the server has said its last word on it', () => {
    const it = box();
    it.put(made(withdrawal));
    it.put({ kind: 'lost', commandId: 'command-w', nowMs: T });
    it.put({ kind: 'notThere', commandId: 'command-w', nowMs: T + 20_000, isLive: true });
    expect(it.put(tick(T + 29_999))).toEqual([]);
    expect(it.put(tick(T + 30_000))).toEqual([{ kind: 'giveUp', commandId: 'command-w' }]);
    const answer = {
      ...{ outcome: 'refused', commandId: 'command-w', code: 'EVT-013', words: 'late' },
      current: null,
    } as const;
    expect(it.put({ kind: 'answered', answer })).toEqual([
      { kind: 'forget', commandId: 'command-w' },
      { kind: 'told', outcome: answer },
    ]);
  });

  it('of a page that is gone is held if it is a note, and else only asked about', () => {
    const it = box();
    it.put({ kind: 'found', command: note('command-1'), nowMs: T });
    it.put({ kind: 'found', command: withdrawal, nowMs: T });
    it.put({ kind: 'found', command: withdrawal, nowMs: T });
    expect(it.put(tick(T))).toEqual([{ kind: 'ask', commandId: 'command-w' }]);
    expect(it.now()[0]).toMatchObject({ way: 'held', command: note('command-1') });
  });

  it('is told as not sent where the server will not take it', () => {
    const it = box();
    it.put(made(note('command-1')));
    expect(it.put({ kind: 'rejected', commandId: 'command-1', why: 'buildTooOld' })).toContainEqual(
      {
        kind: 'told',
        outcome: { outcome: 'notSent', commandId: 'command-1', why: 'buildTooOld' },
      },
    );
  });

  it('is refused when 200 wait', () => {
    const it = box();
    for (let count = 0; count < 200; count++) it.put(made(note(`command-${count}`), false));
    expect(it.put(made(note('command-200'), false))).toContainEqual({
      kind: 'told',
      outcome: { outcome: 'notSent', commandId: 'command-200', why: 'tooMany' },
    });
  });
});
