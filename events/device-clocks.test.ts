/** How old a word of the server is, whatever the clocks and the buffers on the way do. */
import { describe, expect, it } from 'vitest';
import { type DeviceEffect, type DeviceInput, deviceStep } from './device.ts';
import { type DeviceState, deviceStanding, newDevice, type Sequenced } from './device-state.ts';

const T = 1_790_000_000_000;
const HASH = 'h10';
const PINNED = { houseKey: 'house-1', recordKey: 'record-1', seq: 10, hash: HASH };

const device = () => {
  let state: DeviceState = newDevice(PINNED);
  const put = (input: DeviceInput<Sequenced>): readonly DeviceEffect<Sequenced>[] => {
    const [next, effects] = deviceStep(state, input);
    state = next;
    return effects;
  };
  return {
    put,
    /** A heartbeat of the server's time, heard at a time of the device. */
    beat: (serverMs: number, nowMs: number) => {
      const { stream } = state;
      const heartbeat = { ...PINNED, serverMs, build: null };
      return put({ kind: 'heartbeat', stream, heartbeat, nowMs });
    },
    tick: (nowMs: number) => put({ kind: 'tick', nowMs, passedMs: null, chance: 0.5 }),
    is: (nowMs: number) => deviceStanding(state, nowMs).is,
  };
};

describe('the first word on a stream', () => {
  it('may have lain in a buffer since it was asked for, and counts as that old', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.beat(T + 100, T + 14_000);
    expect(it.is(T + 14_000)).toBe('live');
    expect(it.is(T + 15_000)).toBe('stale');
  });

  it('after which all lie as long in it', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.beat(T + 100, T + 14_000);
    it.beat(T + 5100, T + 19_000);
    expect(it.is(T + 19_999)).toBe('live');
    expect(it.is(T + 20_000)).toBe('stale');
  });
});

describe('a clock that is set', () => {
  it('on the server, forward: a word from later than now opens the stream anew', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.beat(T, T);
    expect(it.beat(T + 3_600_000, T + 5000).map(({ kind }) => kind)).toEqual([
      'closeStream',
      'openStream',
    ]);
    it.beat(T + 3_600_100, T + 5100);
    expect(it.is(T + 5100)).toBe('live');
  });

  it('on the device, back: what was heard before has no age, and no stream waits on it', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.tick(T);
    it.beat(T, T);
    expect(it.is(T)).toBe('live');
    // Forty seconds back: the last word would seem to come from the future for so long.
    const setMs = T - 40_000;
    expect(it.tick(setMs).map(({ kind }) => kind)).toContain('openStream');
    for (let second = 1; second < 15; second++) {
      expect(it.tick(setMs + second * 1000)).toEqual([]);
      expect(it.is(setMs + second * 1000)).toBe('stale');
    }
    expect(it.tick(setMs + 15_000)).toEqual([{ kind: 'closeStream' }]);
  });

  it('on the device, back by as long as the page was frozen, is told by one nobody sets', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.tick(T);
    it.beat(T, T);
    const late = { kind: 'tick', nowMs: T + 1000, passedMs: 61_000, chance: 0.5 } as const;
    expect(it.put(late).map(({ kind }) => kind)).toContain('openStream');
    expect(it.is(T + 1000)).toBe('stale');
  });
});
