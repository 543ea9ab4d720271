/**
 * A device in false weather: the real machine of its state and its real outbox, run over the air.
 * What is kept over a restart is kept here; all else is forgotten with the page.
 */
import {
  type Command,
  type CommandAnswer,
  type DeviceEffect,
  type DeviceInput,
  type DeviceState,
  deviceStanding,
  deviceStep,
  type Heartbeat,
  type HouseEvent,
  newDevice,
  type Outbox,
  type OutboxEffect,
  type OutboxInput,
  type Outcome,
  outboxStep,
  type Pinned,
  TICK_MS,
} from '#events';
import { unreachable } from '#outcome';
import type { Chance } from './chance.ts';
import type { Hands } from './hands.ts';
import type { AtRead, House, Standing } from './house.ts';
import type { Line, Network } from './network.ts';
import type { Timeline } from './timeline.ts';
import type { Weather } from './weather.ts';
import type { Witness } from './witness.ts';

type Parts = {
  readonly name: string;
  readonly standing: Standing;
  readonly hands: Hands;
  readonly timeline: Timeline;
  readonly chance: Chance;
  readonly weather: () => Weather;
  readonly network: Network;
  readonly house: House;
  readonly witness: Witness;
};

export class Tablet {
  readonly #parts: Parts;
  readonly name: string;
  /** Kept on the device. */
  #pinned: Pinned | null = null;
  readonly #kept = new Map<string, Command>();
  #clockOffsetMs: number;
  #commands = 0;
  /** Of the page. */
  #page = 0;
  #state: DeviceState;
  #outbox: Outbox = [];
  #seenOn = new Map<string, number>();
  /** All targets are known up to here; null before the first reading. */
  #readTo: number | null = null;
  #reading = 0;
  #line: Line | null = null;
  #stopTicks: (() => void) | null = null;
  #tickedMs: number | null = null;
  #isFrozen: boolean;

  constructor(parts: Parts) {
    this.#parts = parts;
    this.name = parts.name;
    const { chance } = parts;
    this.#clockOffsetMs = chance.isIn(0.5) ? 0 : chance.between(-86_400_000, 3_600_000);
    this.#isFrozen = false;
    this.#state = newDevice(null);
    this.#step({ kind: 'woke', nowMs: this.#nowMs });
    parts.timeline.every(1000, () => this.#suffer());
  }

  get #nowMs(): number {
    return Date.UTC(2026, 10, 28, 8) + this.#parts.timeline.nowMs + this.#clockOffsetMs;
  }

  get #isLive(): boolean {
    return deviceStanding(this.#state, this.#nowMs).is === 'live';
  }

  get pinned(): Pinned | null {
    return this.#pinned;
  }

  get isIdle(): boolean {
    return this.#outbox.length === 0;
  }

  get state(): DeviceState {
    return this.#state;
  }

  /** The page is looked at again: nothing sleeps on. */
  wake(): void {
    this.#isFrozen = false;
    this.#step({ kind: 'woke', nowMs: this.#nowMs });
  }

  /** One thing that a person does; sometimes with two taps. */
  act(): void {
    if (this.#isFrozen || this.#state.isHidden) return;
    const { chance, witness } = this.#parts;
    const isLive = this.#isLive;
    const command = this.#make(isLive);
    if (command === null) return;
    witness.made(this.name, command, isLive);
    this.#put({ kind: 'made', command, isLive, nowMs: this.#nowMs });
    if (chance.isIn(0.05)) this.#put({ kind: 'made', command, isLive, nowMs: this.#nowMs });
  }

  #make(isLive: boolean): Command | null {
    this.#commands += 1;
    const around = {
      commandId: `${this.name}-${String(this.#commands).padStart(8, '0')}`,
      device: this.name,
      clientMs: Math.max(0, Math.round(this.#nowMs)),
    };
    return this.#parts.hands.next({
      ...{ number: this.#commands, around, isLive },
      pinnedSeq: this.#pinned?.seq ?? 0,
      seenOn: (target) => this.#seenOn.get(target) ?? 0,
    });
  }

  /** Sleep, a reload, a frozen page, a clock set by hand. */
  #suffer(): void {
    const { chance, weather, timeline } = this.#parts;
    const { sleeps, restarts, freezes, clockJumps } = weather();
    if (chance.isIn(clockJumps)) {
      this.#clockOffsetMs += chance.oneOf([-3_600_000, -60_000, 60_000, 3_600_000]);
    }
    if (this.#isFrozen || this.#state.isHidden) return;
    if (chance.isIn(sleeps)) {
      this.#step({ kind: 'wentAway' });
      timeline.in(chance.between(100, 60_000), () => this.wake());
    } else if (chance.isIn(freezes)) {
      // Without a word: the connection dies, and time is missing when the page goes on.
      this.#isFrozen = true;
      this.#line?.close();
      timeline.in(chance.between(1000, 90_000), () => {
        this.#isFrozen = false;
      });
    } else if (chance.isIn(restarts)) this.#restart();
  }

  #restart(): void {
    this.#page += 1;
    this.#line?.close();
    this.#line = null;
    this.#stopTicks?.();
    this.#stopTicks = null;
    this.#outbox = [];
    this.#state = newDevice(this.#pinned);
    this.#seenOn = new Map();
    this.#readsAnew();
    for (const command of this.#kept.values()) {
      this.#put({ kind: 'found', command, nowMs: this.#nowMs });
    }
    this.#step({ kind: 'woke', nowMs: this.#nowMs });
  }

  /** Only what belongs to the page that is there. */
  #ofPage<A extends readonly unknown[]>(call: (...args: A) => void): (...args: A) => void {
    const page = this.#page;
    return (...args) => {
      if (page === this.#page) call(...args);
    };
  }

  #step(input: DeviceInput<HouseEvent>): void {
    const [state, effects] = deviceStep(this.#state, input);
    this.#state = state;
    for (const effect of effects) this.#do(effect);
    this.#parts.witness.stood(this.name, this.#state, this.#nowMs);
  }

  #do(effect: DeviceEffect<HouseEvent>): void {
    switch (effect.kind) {
      case 'openStream':
        this.#open(effect.stream, effect.after);
        return;
      case 'closeStream':
        this.#line?.close();
        this.#line = null;
        return;
      case 'fetch':
        this.#fetch(effect.after);
        return;
      case 'apply':
        this.#apply(effect.events);
        return;
      case 'reload':
        this.#parts.witness.adopted(this.name, this.#state.pinned?.seq ?? 0);
        this.#readsAnew();
        return;
      case 'keep':
        this.#pinned = effect.pinned;
        return;
      case 'startTicks':
        this.#stopTicks ??= this.#parts.timeline.every(
          TICK_MS,
          this.#ofPage(() => this.#tick()),
        );
        return;
      case 'stopTicks':
        this.#stopTicks?.();
        this.#stopTicks = null;
        return;
      default:
        unreachable(effect);
    }
  }

  #tick(): void {
    if (this.#isFrozen) return;
    const { timeline, chance } = this.#parts;
    const passedMs = timeline.nowMs - (this.#tickedMs ?? timeline.nowMs);
    this.#tickedMs = timeline.nowMs;
    this.#step({ kind: 'tick', nowMs: this.#nowMs, passedMs, chance: chance.next() });
    const isReachable = this.#state.streamIs === 'heard';
    this.#put({ kind: 'tick', nowMs: this.#nowMs, isReachable });
    if (this.#readTo === null) this.#read();
    if (this.#isLive) this.#decide();
  }

  /** Somebody looks at what was held on the device: most of it is sent, some is dropped. */
  #decide(): void {
    const { chance } = this.#parts;
    for (const { command, way } of this.#outbox) {
      if (way !== 'held' || !chance.isIn(0.3)) continue;
      const kind = chance.isIn(0.1) ? 'dropped' : 'released';
      this.#put({ kind, commandId: command.commandId, nowMs: this.#nowMs });
    }
  }

  #open(stream: number, after: number | null): void {
    const { network, house } = this.#parts;
    const failed = this.#ofPage(() => this.#streamFailed(stream));
    const line = network.line({
      hear: this.#ofPage((text: string) => this.#hear(stream, text)),
      broke: failed,
    });
    this.#line = line;
    network.ask(() => house.listen(line, this.name, after), {
      heard: (isTaken) => {
        if (!isTaken) failed();
      },
      gaveUp: () => undefined,
    });
  }

  #streamFailed(stream: number): void {
    if (this.#isFrozen) return;
    const chance = this.#parts.chance.next();
    this.#step({ kind: 'streamFailed', stream, nowMs: this.#nowMs, chance });
  }

  #hear(stream: number, text: string): void {
    if (this.#isFrozen) return;
    const [, kind = 'message', data = ''] = HEARD.exec(text) ?? [];
    const nowMs = this.#nowMs;
    if (kind === 'leave') this.#streamFailed(stream);
    else if (kind === 'heartbeat') {
      this.#step({ kind: 'heartbeat', stream, heartbeat: JSON.parse(data) as Heartbeat, nowMs });
    } else this.#step({ kind: 'event', stream, event: JSON.parse(data) as HouseEvent, nowMs });
  }

  #fetch(asked: number): void {
    const { network, house, chance } = this.#parts;
    const askedMs = this.#nowMs;
    network.ask(() => house.page(asked), {
      heard: this.#ofPage((text: string) => {
        if (this.#isFrozen) return;
        const page = JSON.parse(text) as { events: HouseEvent[]; heartbeat: Heartbeat };
        this.#step({ kind: 'page', asked, ...page, askedMs, nowMs: this.#nowMs });
      }),
      gaveUp: this.#ofPage(() =>
        this.#step({ kind: 'pageFailed', nowMs: this.#nowMs, chance: chance.next() }),
      ),
    });
  }

  /** What was read before is of another page, or of a record that was begun anew. */
  #readsAnew(): void {
    this.#readTo = null;
    this.#reading += 1;
    this.#parts.hands.read(null);
    this.#read();
  }

  /** Reads how things stand, as the page reads the documents and what was said of a set. */
  #read(): void {
    const { network, house } = this.#parts;
    const reading = this.#reading;
    network.ask(() => house.standing(), {
      heard: this.#ofPage((at: AtRead) => {
        if (reading !== this.#reading) return;
        this.#readTo = at.seq;
        for (const [target, last] of at.lastOn) this.#sawOn(target, last);
        this.#parts.hands.read(at);
      }),
      gaveUp: () => undefined,
    });
  }

  #sawOn(target: string, seq: number): void {
    this.#seenOn.set(target, Math.max(seq, this.#seenOn.get(target) ?? 0));
  }

  #apply(events: readonly HouseEvent[]): void {
    for (const event of events) {
      this.#parts.witness.applied(this.name, event);
      this.#sawOn(event.target, event.seq);
      this.#parts.hands.applied(event);
    }
  }

  #put(input: OutboxInput): void {
    const [outbox, effects] = outboxStep(this.#outbox, input);
    this.#outbox = outbox;
    for (const effect of effects) this.#doOut(effect);
  }

  #doOut(effect: OutboxEffect): void {
    switch (effect.kind) {
      case 'keep':
        this.#kept.set(effect.command.commandId, effect.command);
        return;
      case 'forget':
        this.#kept.delete(effect.commandId);
        return;
      case 'send':
        this.#send(effect.command);
        return;
      case 'ask':
        this.#askOf(effect.commandId);
        return;
      case 'giveUp':
        this.#giveUp(effect.commandId);
        return;
      case 'told':
        this.#told(effect.outcome);
        return;
      default:
        unreachable(effect);
    }
  }

  #told(outcome: Outcome): void {
    this.#parts.witness.told(this.name, outcome);
    this.#parts.hands.told(outcome);
  }

  #send(command: Command): void {
    const { network, house, standing } = this.#parts;
    const { commandId } = command;
    const body = JSON.stringify(command);
    const lost = this.#ofPage(() => this.#put({ kind: 'lost', commandId, nowMs: this.#nowMs }));
    network.ask(() => house.post(body, standing), {
      heard: this.#ofPage((taken: NonNullable<ReturnType<House['post']>>) => {
        if (taken.kind === 'answered') this.#put({ kind: 'answered', answer: taken.answer });
        else if (taken.kind === 'fault') lost();
        else throw new Error(`a sound command was not read: ${JSON.stringify(taken)}`);
      }),
      gaveUp: lost,
    });
  }

  #giveUp(commandId: string): void {
    const { network, house } = this.#parts;
    network.ask(() => house.giveUp(commandId), {
      heard: this.#ofPage((answer: CommandAnswer) => this.#put({ kind: 'answered', answer })),
      gaveUp: () => undefined,
    });
  }

  #askOf(commandId: string): void {
    const { network, house } = this.#parts;
    network.ask(() => house.answerTo(commandId), {
      heard: this.#ofPage(({ stored }: NonNullable<ReturnType<House['answerTo']>>) => {
        if (stored !== null) this.#put({ kind: 'answered', answer: stored });
        else {
          const isLive = this.#isLive;
          this.#put({ kind: 'notThere', commandId, nowMs: this.#nowMs, isLive });
        }
      }),
      gaveUp: this.#ofPage(() => this.#put({ kind: 'lost', commandId, nowMs: this.#nowMs })),
    });
  }
}

/** A text of the stream: its kind, where it says one, and its one line of data. */
const HEARD = /^(?:event: (\w+)\n|id: \d+\n)data: (.*)\n\n$/;
