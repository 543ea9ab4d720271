import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EVENT_KINDS } from './kinds.ts';
import { memoryLog } from './memory-log.ts';
import { readAnswer, readCommand, readEvent } from './read.ts';
import { receiveCommand, recordEvents } from './receive.ts';

const SEED = 20_261_131;
const HASH = 'b'.repeat(64);

const speaker = { by: 'p1', nowMs: 1000, newId: () => 'e1' };

const COMMAND = {
  ...{ commandId: 'command-1', device: 'd1', target: 'set:11', seen: 0, clientMs: 12 },
  kind: 'signed',
  payload: {
    ...{ statement: 'balance confirmed', shown: HASH, basis: 0, restsOn: ['document:show:a'] },
    ...{ role: 'lead', second: null },
  },
};

const faultsOf = (change: object) => {
  const read = readCommand({ ...COMMAND, ...change });
  return read.ok ? [] : read.error.map(({ path, found, accepted }) => [path, found, accepted]);
};

describe('a command from the wire', () => {
  it('is taken as it is', () => {
    expect(readCommand(COMMAND)).toEqual({ ok: true, value: COMMAND });
  });

  it.each([
    [{ commandId: 'x' }, 'commandId', '"x"', 'an id of 8 to 64 letters'],
    [{ target: 'set:' }, 'target', '"set:"', 'house, clock, or set:'],
    [{ target: 'set: 11' }, 'target', '"set: 11"', 'house, clock, or set:'],
    [{ target: 'lamp:1' }, 'target', '"lamp:1"', 'house, clock, or set:'],
    [{ seen: null }, 'seen', 'null', 'the last number seen, never null'],
    [{ seen: 1.5 }, 'seen', '1.5', 'a whole number from 0'],
    [{ clientMs: '12' }, 'clientMs', '"12"', 'milliseconds since'],
    [{ payload: [] }, 'payload', 'a list of 0', 'an object with statement, shown'],
    [{ payload: { ...COMMAND.payload, shown: 'B' } }, 'payload.shown', '"B"', 'a SHA-256'],
    [{ payload: { ...COMMAND.payload, restsOn: ['x'] } }, 'payload.restsOn[0]', '"x"', 'house, '],
    [{ payload: { ...COMMAND.payload, statement: '\ud83d' } }, 'payload.statement', '"', 'a text '],
    [{ by: 'somebody else' }, 'by', 'a field of this name', 'no such field'],
    [{ kind: 'clock held' }, 'kind', '"clock held"', 'one of note written, signed, withdrawn'],
    [{ kind: 'document saved' }, 'kind', '"document saved"', 'one of note written'],
    [{ kind: undefined }, 'kind', 'nothing', 'one of note written'],
  ])('[EVT-001] is refused with where, found and accepted: %j', (change, path, found, accepted) => {
    const faults = faultsOf(change);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.[0]).toBe(path);
    expect(faults[0]?.[1]).toContain(found);
    expect(faults[0]?.[2]).toContain(accepted);
  });

  it(`[EVT-001] is never taken from what is no command, and never throws (seed ${SEED})`, () => {
    const odd = fc.oneof(
      fc.anything(),
      fc.record(
        { kind: fc.constantFrom('signed', 'withdrawn', '__proto__'), payload: fc.anything() },
        { requiredKeys: [] },
      ),
    );
    fc.assert(
      fc.property(odd, (value) => {
        expect(readCommand(value).ok).toBe(false);
        expect(readEvent(value).ok).toBe(false);
        expect(readAnswer(value).ok).toBe(false);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe('events and answers', () => {
  it('come over the wire as they went', () => {
    const log = memoryLog();
    const read = readCommand(COMMAND);
    if (!read.ok) throw new Error('refused');
    receiveCommand(log, read.value, speaker, () => null);
    const stale = receiveCommand(
      log,
      { ...read.value, commandId: 'command-2' },
      speaker,
      () => null,
    );
    for (const event of log.after(0, 10)) {
      expect(readEvent(JSON.parse(JSON.stringify(event)))).toEqual({ ok: true, value: event });
    }
    const answers = [log.answerTo('command-1')?.answer, stale.ok && stale.value.answer];
    for (const answer of answers) {
      expect(readAnswer(JSON.parse(JSON.stringify(answer)))).toEqual({ ok: true, value: answer });
    }
  });

  it('[EVT-001] are refused where a payload is not of the kind', () => {
    const log = memoryLog();
    const payload = { wallMs: 1, heldMs: 2 };
    recordEvents(log, [{ kind: 'clock held', target: 'clock', payload }], speaker);
    const [event] = log.after(0, 1);
    for (const kind of EVENT_KINDS) {
      expect(readEvent({ ...event, kind }).ok).toBe(kind === 'clock held');
    }
    const current = { seq: 1, event: { ...event, seq: 'one' } };
    expect(
      readAnswer({ outcome: 'refused', commandId: 'command-1', code: 'X', words: 'y', current }).ok,
    ).toBe(false);
  });
});
