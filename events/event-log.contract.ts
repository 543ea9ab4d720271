import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sealed, verifyChain } from './chain.ts';
import type { Command } from './command.ts';
import { type HouseEvent, NOTHING_YET } from './event.ts';
import type { EventLog } from './event-log.ts';
import { memoryLog } from './memory-log.ts';
import { receiveCommand, recordEvents, type Speaker } from './receive.ts';

const SEED = 20_261_129;

let ids = 0;
const speaker = (nowMs = 1000): Speaker => ({
  by: 'person-1',
  nowMs,
  newId: () => {
    ids += 1;
    return `event-${ids}`;
  },
});

const note = (commandId: string, target = 'set:11', text = 'rope worn at the lock'): Command => ({
  commandId,
  device: 'tablet-1',
  kind: 'note written',
  target,
  seen: null,
  clientMs: 900,
  payload: { text, writtenMs: null },
});

const everyone = () => null;

const take = (log: EventLog, command: Command, nowMs?: number) => {
  const done = receiveCommand(log, command, speaker(nowMs), everyone);
  if (!done.ok) throw new Error(done.error.detail);
  return done.value;
};

/** The event that would follow on a head, made as whoever writes it would. */
const next = (log: EventLog, changes: Partial<HouseEvent> = {}): HouseEvent => {
  const { seq, hash: previous } = log.head();
  const event = {
    ...{ id: `made-${seq}`, by: null, device: null, commandId: null, atMs: 5000 },
    ...{ kind: 'note written' as const, target: 'house', payload: { text: 'x', writtenMs: null } },
    ...{ seq: seq + 1, previous },
  };
  return { ...sealed(event), ...changes } as HouseEvent;
};

/** What every event log must do, whatever keeps it. */
export const eventLogContract = (name: string, open: () => EventLog): void => {
  describe(`event log: ${name}`, () => {
    let log: EventLog;
    beforeEach(() => {
      log = open();
    });
    afterEach(() => log.close());

    describe('looked up', () => answersWhatIsAsked(() => log));
    describe('written', () => writesWholeOrNot(() => log));
  });
};

const answersWhatIsAsked = (logOf: () => EventLog): void => {
  it('has nothing at first', () => {
    const log = logOf();
    expect(log.head()).toEqual(NOTHING_YET);
    expect(log.after(0, 10)).toEqual([]);
    expect(log.lastOn('set:11')).toBe(0);
    expect(log.answerTo('command-1')).toBeNull();
    expect(log.withdrawalOf(1)).toBeNull();
  });

  it('gives back each event as it was, in order, chained from nothing', () => {
    const log = logOf();
    const written = ['command-1', 'command-2', 'command-3'].flatMap(
      (id) => take(log, note(id)).events,
    );
    expect(log.after(0, 10)).toEqual(written);
    expect(log.after(1, 1)).toEqual([written[1]]);
    expect(log.after(3, 10)).toEqual([]);
    expect(log.after(-1, 1)).toEqual([written[0]]);
    expect(verifyChain(log.after(0, 10))).toEqual({ ok: true, value: log.head() });
  });

  it('knows the events on a target, the last of it, and what was withdrawn', () => {
    const log = logOf();
    take(log, note('command-1', 'set:11'));
    take(log, note('command-2', 'set:12'));
    take(log, note('command-3', 'set:11'));
    expect(log.lastOn('set:11')).toBe(3);
    expect(log.on('set:11', 0, 10).map(({ seq }) => seq)).toEqual([1, 3]);
    expect(log.on('set:11', 1, 10).map(({ seq }) => seq)).toEqual([3]);
    expect(log.on('set:11', 0, 1).map(({ seq }) => seq)).toEqual([1]);
    const [first] = log.after(0, 1);
    take(log, {
      ...note('command-4'),
      kind: 'withdrawn',
      seen: 3,
      payload: { seq: 1, event: String(first?.id), why: 'the wrong set' },
    });
    expect(log.withdrawalOf(1)?.seq).toBe(4);
    expect(log.withdrawalOf(3)).toBeNull();
    expect(log.lastOf('note written')).toBe(3);
    expect(log.lastOf('withdrawn')).toBe(4);
    expect(log.lastOf('signed')).toBe(0);
  });

  it('keeps text that would end a statement of its own language', () => {
    const log = logOf();
    const text = "'); DROP TABLE event; -- 😀 \u0000";
    take(log, note('command-1', 'set:"\'', text));
    expect(log.on('set:"\'', 0, 1)[0]?.payload).toEqual({ text, writtenMs: null });
  });
};

const writesWholeOrNot = (logOf: () => EventLog): void => {
  it('answers a command once: the same again gets the same answer and writes nothing', () => {
    const log = logOf();
    const first = take(log, note('command-1'));
    const again = take(log, note('command-1'), 99_000);
    expect(again).toEqual({ answer: first.answer, events: [], isRepeat: true });
    expect(log.head().seq).toBe(1);
    expect(log.answerTo('command-1')?.answer).toEqual(first.answer);
  });

  it('keeps a refusal as an answer too', () => {
    const log = logOf();
    take(log, note('command-1'));
    const stale: Command = {
      ...note('command-2'),
      kind: 'withdrawn',
      seen: 0,
      payload: { seq: 1, event: 'x', why: 'y' },
    };
    const refused = take(log, stale).answer;
    expect(refused).toMatchObject({ outcome: 'refused', code: 'EVT-003', current: { seq: 1 } });
    expect(log.answerTo('command-2')?.answer).toEqual(refused);
    expect(log.head().seq).toBe(1);
  });

  it('refuses as a defect a batch that does not follow, and writes nothing of it', () => {
    const log = logOf();
    take(log, note('command-1'));
    const good = next(log);
    const wrong: readonly HouseEvent[] = [
      { ...good, seq: 3 },
      { ...good, seq: 1 },
      { ...good, previous: '1'.repeat(64) },
      { ...good, payload: { text: 'other', writtenMs: null } } as HouseEvent,
      next(log, { atMs: 0 }),
    ];
    for (const event of wrong) {
      expect(() => log.commit({ events: [event], answer: null })).toThrow('defect');
      expect(() => log.commit({ events: [good, event], answer: null })).toThrow('defect');
    }
    expect(log.head().seq).toBe(1);
    expect(log.commit({ events: [good], answer: null }).ok).toBe(true);
  });

  it('refuses as a defect an event whose payload is not of its kind', () => {
    const log = logOf();
    const { hash: _hash, ...event } = next(log);
    const odd = sealed({ ...event, payload: { text: '', writtenMs: null } } as HouseEvent);
    expect(() => log.commit({ events: [odd], answer: null })).toThrow('defect');
    expect(log.head()).toEqual(NOTHING_YET);
  });

  it('refuses as a defect a second answer to one command, and writes nothing with it', () => {
    const log = logOf();
    take(log, note('command-1'));
    const stored = log.answerTo('command-1');
    expect(() => log.commit({ events: [next(log)], answer: stored })).toThrow('defect');
    expect(log.head().seq).toBe(1);
  });

  it('writes what the server says, all of it at once', () => {
    const log = logOf();
    const device = { revoked: 'tablet-1', why: 'left in a cab' };
    const said = recordEvents(
      log,
      [
        { kind: 'person joined', target: 'person:p1', payload: { name: 'A. Lead', role: 'run' } },
        { kind: 'device revoked', target: 'device:tablet-1', payload: device },
      ],
      { ...speaker(), device: 'desk' },
    );
    expect(said.ok && said.value.map(({ seq, device: from }) => [seq, from])).toEqual([
      [1, 'desk'],
      [2, 'desk'],
    ]);
    expect(log.after(0, 10)).toHaveLength(2);
  });

  it(`does as the memory log does, whatever is sent (seed ${SEED})`, () => {
    // One log through all runs: commands of one run find what others wrote.
    const log = logOf();
    const model = memoryLog();
    const one = fc.record({
      id: fc.integer({ min: 1, max: 40 }),
      target: fc.constantFrom('set:1', 'set:2', 'house'),
      nowMs: fc.integer({ min: 0, max: 100_000 }),
      seen: fc.integer({ min: 0, max: 60 }),
      isNote: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 12 }), (sent) => {
        for (const { id, target, nowMs, seen, isNote } of sent) {
          const base = note(`command-${id}`, target);
          const [event] = model.after(seen - 1, 1);
          const payload = { seq: Math.max(1, seen), event: event?.id ?? 'none', why: 'wrong' };
          const command: Command = isNote ? base : { ...base, kind: 'withdrawn', seen, payload };
          const sameIds = () => {
            let n = model.head().seq;
            return () => {
              n += 1;
              return `e-${n}`;
            };
          };
          const [first, again] = [0, 1].map(() => ({ by: null, nowMs, newId: sameIds() }));
          if (first === undefined || again === undefined) throw new Error('two speakers');
          const done = receiveCommand(log, command, first, everyone);
          expect(done).toEqual(receiveCommand(model, command, again, everyone));
        }
        expect(log.head()).toEqual(model.head());
        expect(log.after(0, 1000)).toEqual(model.after(0, 1000));
        expect(verifyChain(log.after(0, 1000)).ok).toBe(true);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });
};
