/**
 * A server that grows, an air that loses, doubles, delays and reorders, a device that sleeps and
 * whose clock is wrong: in the end the device has every event once and in its order, and is live.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alarmsOf,
  type Command,
  type DeviceEffect,
  type DeviceInput,
  type DeviceState,
  deviceStanding,
  deviceStep,
  type Heartbeat,
  newDevice,
  type Outbox,
  type Outcome,
  outboxStep,
  type Sequenced,
  TICK_MS,
} from './index.ts';

const SEED = 20261128;
const T = 1_790_000_000_000;
const hashOf = (seq: number): string => `h${seq}`;
const one = (seq: number): Sequenced => ({ seq, previous: hashOf(seq - 1), hash: hashOf(seq) });

type Act = 'grow' | 'beat' | 'tick' | 'lose' | 'double' | 'deliver' | 'swap' | 'sleep' | 'cut';
const act = fc.constantFrom<Act>(
  'grow',
  'grow',
  'beat',
  'tick',
  'tick',
  'lose',
  'double',
  'deliver',
  'deliver',
  'deliver',
  'swap',
  'sleep',
  'cut',
);

/** The device, the server, and what is on its way between them. */
class World {
  state: DeviceState;
  head = 5;
  nowMs = T;
  readonly applied: number[] = [];
  /** Streams that the server has open, and how far each was told. */
  stream: { readonly number: number; told: number } | null = null;
  air: DeviceInput<Sequenced>[] = [];
  readonly offsetMs: number;

  constructor(offsetMs: number) {
    this.offsetMs = offsetMs;
    const pinned = { houseKey: 'house', recordKey: 'record', seq: 5, hash: hashOf(5) };
    this.state = newDevice(pinned);
    this.put({ kind: 'woke', nowMs: this.deviceMs() });
  }

  deviceMs = (): number => this.nowMs + this.offsetMs;

  heartbeat = (): Heartbeat => ({
    seq: this.head,
    hash: hashOf(this.head),
    serverMs: this.nowMs,
    build: 'one',
    houseKey: 'house',
    recordKey: 'record',
  });

  put = (input: DeviceInput<Sequenced>): void => {
    // What comes over the air is heard when it comes.
    const heard = 'nowMs' in input ? { ...input, nowMs: this.deviceMs() } : input;
    const [next, effects] = deviceStep(this.state, heard);
    this.state = next;
    for (const effect of effects) this.do(effect);
  };

  do = (effect: DeviceEffect<Sequenced>): void => {
    if (effect.kind === 'closeStream') this.stream = null;
    if (effect.kind === 'apply') this.applied.push(...effect.events.map(({ seq }) => seq));
    if (effect.kind === 'openStream') {
      this.stream = { number: effect.stream, told: effect.after ?? this.head };
      this.beat();
    }
    if (effect.kind === 'fetch') {
      const events = Array.from({ length: Math.min(3, this.head - effect.after) }, (_, index) =>
        one(effect.after + 1 + index),
      );
      const [heartbeat, askedMs] = [this.heartbeat(), this.deviceMs()];
      this.air.push({ kind: 'page', asked: effect.after, events, heartbeat, askedMs, nowMs: 0 });
    }
  };

  beat = (): void => {
    if (this.stream === null) return;
    const { number } = this.stream;
    while (this.stream.told < this.head) {
      this.stream.told += 1;
      this.air.push({ kind: 'event', stream: number, event: one(this.stream.told), nowMs: 0 });
    }
    this.air.push({ kind: 'heartbeat', stream: number, heartbeat: this.heartbeat(), nowMs: 0 });
  };

  act = (which: Act, chance: number): void => {
    this.nowMs += Math.floor(chance * 900);
    const place = Math.floor(chance * this.air.length);
    const [first, picked] = [this.air[0], this.air[place]];
    if (which === 'grow') this.head += 1;
    if (which === 'beat') this.beat();
    if (which === 'lose') this.lose(place, chance);
    if (which === 'double' && picked !== undefined) this.air.splice(place, 0, picked);
    if (which === 'swap' && picked !== undefined) {
      this.air.splice(place, 1);
      this.air.unshift(picked);
    }
    if (which === 'deliver' && first !== undefined) {
      this.air.shift();
      this.put(first);
    }
    if (which === 'tick') this.tick(chance);
    if (which === 'sleep') this.put({ kind: 'wentAway' });
    if (which === 'cut') this.cut(chance);
  };

  tick = (chance: number): void => {
    this.nowMs += TICK_MS;
    if (this.state.isHidden) this.put({ kind: 'woke', nowMs: 0 });
    else this.put({ kind: 'tick', nowMs: 0, passedMs: null, chance });
  };

  /** A page that is lost is known to be: its request fails. */
  lose = (place: number, chance: number): void => {
    const [lost] = this.air.splice(place, 1);
    if (lost?.kind === 'page') this.put({ kind: 'pageFailed', nowMs: 0, chance });
  };

  cut = (chance: number): void => {
    if (this.stream === null) return;
    const { number } = this.stream;
    this.stream = null;
    this.put({ kind: 'streamFailed', stream: number, nowMs: 0, chance });
  };

  /** The air is clear again: everything arrives, the server beats, the clock goes on. */
  settle = (): void => {
    for (let second = 0; second < 60; second++) {
      this.tick(0.5);
      this.beat();
      for (let count = 0; this.air.length > 0 && count < 200; count++) {
        const next = this.air.shift();
        if (next !== undefined) this.put(next);
      }
    }
  };
}

const acts = fc.array(fc.tuple(act, fc.double({ min: 0, max: 0.999, noNaN: true })), {
  maxLength: 120,
});

describe(`a device in bad air (seed ${SEED})`, () => {
  it('has each event once, in order and without a gap, at every moment', () => {
    fc.assert(
      fc.property(acts, fc.integer({ min: -86_400_000, max: 3_600_000 }), (list, offsetMs) => {
        const world = new World(offsetMs);
        for (const [which, chance] of list) {
          world.act(which, chance);
          const wanted = world.applied.map((_, index) => 6 + index);
          expect(world.applied).toEqual(wanted);
          if (deviceStanding(world.state, world.deviceMs()).is === 'live') {
            expect(world.state.pinned?.seq).toBeGreaterThanOrEqual(world.state.head);
          }
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  it('is live with all of it when the air clears, and never cries for nothing', () => {
    fc.assert(
      fc.property(acts, (list) => {
        const world = new World(0);
        for (const [which, chance] of list) world.act(which, chance);
        world.settle();
        expect(alarmsOf(world.state)).toEqual([]);
        expect(deviceStanding(world.state, world.deviceMs()).is).toBe('live');
        expect(world.applied.length).toBe(world.head - 5);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

type Fate = 'answered' | 'lostReply' | 'lostCommand' | 'tick' | 'down';

const GIVEN_UP = { outcome: 'refused', code: 'EVT-013', words: 'late', current: null } as const;

const commandOf = (isNote: boolean, clientMs: number): Command => {
  const around = { target: 'set:11', commandId: 'command-1', device: 'd1', seen: 1, clientMs };
  return isNote
    ? { ...around, kind: 'note written', payload: { text: 'a note', writtenMs: null } }
    : { ...around, kind: 'withdrawn', payload: { seq: 1, event: 'e1', why: 'wrong set' } };
};

describe(`commands in bad air (seed ${SEED})`, () => {
  it('are recorded at most once and told exactly once; none that rests on a state waits', () => {
    const fate = fc.constantFrom<Fate>('answered', 'lostReply', 'lostCommand', 'tick', 'down');
    fc.assert(
      fc.property(fc.array(fate, { maxLength: 60 }), fc.boolean(), (fates, isNote) => {
        const recorded: string[] = [];
        const told: Outcome[] = [];
        let [outbox, nowMs, sent]: [Outbox, number, number] = [[], T, 0];
        let isUp = true;
        const queue = [...fates];
        const put = (input: Parameters<typeof outboxStep>[1]): void => {
          const [next, effects] = outboxStep(outbox, input);
          outbox = next;
          for (const effect of effects) {
            if (effect.kind === 'told') told.push(effect.outcome);
            if (effect.kind === 'send') sendIt(effect.command.commandId);
            if (effect.kind === 'ask') askIt(effect.commandId);
            if (effect.kind === 'giveUp') giveItUp(effect.commandId);
          }
        };
        const answer = (commandId: string) =>
          put({ kind: 'answered', answer: { outcome: 'accepted', commandId, seqs: [1] } });
        const sendIt = (commandId: string): void => {
          sent += 1;
          const what = isUp ? (queue.shift() ?? 'answered') : 'lostCommand';
          if (what !== 'lostCommand' && !recorded.includes(commandId)) recorded.push(commandId);
          if (what === 'answered') answer(commandId);
          else put({ kind: 'lost', commandId, nowMs });
        };
        const askIt = (commandId: string): void => {
          if (!isUp) return;
          if (recorded.includes(commandId)) answer(commandId);
          else put({ kind: 'notThere', commandId, nowMs, isLive: true });
        };
        const giveItUp = (commandId: string): void => {
          if (!isUp) return;
          if (recorded.includes(commandId)) answer(commandId);
          else put({ kind: 'answered', answer: { ...GIVEN_UP, commandId } });
        };
        put({ kind: 'made', command: commandOf(isNote, nowMs), isLive: true, nowMs });
        for (let turn = 0; turn < 80; turn++) {
          isUp = turn > 60 || queue.shift() !== 'down';
          nowMs += 1000;
          put({ kind: 'tick', nowMs, isReachable: isUp });
        }
        expect(outbox).toEqual([]);
        expect(told).toHaveLength(1);
        expect(recorded.length).toBeLessThanOrEqual(1);
        // What the person is told is what the record holds.
        expect(told[0]?.outcome).toBe(recorded.length === 1 ? 'accepted' : 'refused');
        if (isNote) expect(recorded).toHaveLength(1);
        expect(sent).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
