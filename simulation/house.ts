/**
 * The house's server in false weather: the real reception of commands and the real hub over a real
 * log, which fails and crashes at its interface.
 */
import {
  type Batch,
  type EventLog,
  giveUpCommand,
  type HouseEvent,
  type LogFault,
  recordEvents,
  verifyChain,
} from '#events';
import { fail } from '#outcome';
import { type Hub, openHub, takeCommand } from '#server';
import type { Chance } from './chance.ts';
import { RuleBroken } from './delivery-rules.ts';
import type { Line } from './network.ts';
import type { Timeline } from './timeline.ts';
import type { Weather } from './weather.ts';

/** Where the log is kept over a crash: opened anew each time. */
export type Storage = { readonly open: () => EventLog; readonly remove: () => void };

class Crash extends Error {}

const DOWN_MS = { least: 200, most: 20_000 } as const;
/** The disk stays full for a while, as it does until somebody makes room. */
const FULL_MS = 8000;
const KEYS = { houseKey: 'house-1', recordKey: 'record-1' } as const;
const FIRST_MS = Date.UTC(2026, 10, 28, 8);

export class House {
  readonly #timeline: Timeline;
  readonly #chance: Chance;
  readonly #weather: () => Weather;
  readonly #storage: Storage;
  #log: EventLog;
  #hub: Hub | null = null;
  #lines = new Set<Line>();
  #wallOffsetMs = FIRST_MS;
  #fullUntilMs = 0;
  #ids = 0;
  crashes = 0;
  faults = 0;
  /** Nobody saves at the house's own screen any more. */
  isQuiet: boolean;

  constructor(parts: {
    readonly timeline: Timeline;
    readonly chance: Chance;
    readonly weather: () => Weather;
    readonly storage: Storage;
  }) {
    this.#timeline = parts.timeline;
    this.#chance = parts.chance;
    this.#weather = parts.weather;
    this.#storage = parts.storage;
    this.isQuiet = false;
    this.#log = this.#open();
    this.#start();
    this.#timeline.every(1000, () => this.#atRest());
  }

  get log(): EventLog {
    return this.#log;
  }

  get isUp(): boolean {
    return this.#hub !== null;
  }

  get nowMs(): number {
    return Math.round(this.#timeline.nowMs + this.#wallOffsetMs);
  }

  #open(): EventLog {
    const log = this.#storage.open();
    const chain = verifyChain(this.#all(log));
    if (!chain.ok) throw new RuleBroken('chain', `event ${chain.error.seq}: ${chain.error.what}`);
    return log;
  }

  *#all(log: EventLog): Generator<HouseEvent> {
    for (let seq = 0; ; ) {
      const page = log.after(seq, 1000);
      yield* page;
      const last = page.at(-1);
      if (last === undefined) return;
      seq = last.seq;
    }
  }

  #start(): void {
    const log = this.#faulty(this.#log);
    this.#hub = openHub({
      record: () => ({ log, ...KEYS }),
      build: () => 'build-1',
      nowMs: () => this.nowMs,
      every: (call, ms) => this.#timeline.every(ms, call),
    });
  }

  /** What is in memory is gone; what was committed stays. */
  #crash(): void {
    this.crashes += 1;
    this.#hub?.close();
    this.#hub = null;
    for (const line of this.#lines) line.break();
    this.#lines.clear();
    this.#log.close();
    this.#timeline.in(this.#chance.between(DOWN_MS.least, DOWN_MS.most), () => {
      this.#log = this.#open();
      this.#start();
    });
  }

  /** The faults of a disk, at the log's interface. */
  #faulty(log: EventLog): EventLog {
    return {
      ...log,
      commit: (batch) => {
        const weather = this.#weather();
        if (this.#chance.isIn(weather.diskFull)) this.#fullUntilMs = this.#timeline.nowMs + FULL_MS;
        if (this.#timeline.nowMs < this.#fullUntilMs) return this.#fault('diskFull');
        if (this.#chance.isIn(weather.writeFails)) return this.#fault('writeFailed');
        if (this.#chance.isIn(weather.crashBeforeCommit)) throw new Crash();
        const done = this.#written(log, batch);
        if (this.#chance.isIn(weather.crashAfterCommit)) throw new Crash();
        return done;
      },
    };
  }

  /** A log takes no batch that does not follow: here that is a rule of the delivery broken. */
  #written(log: EventLog, batch: Batch): ReturnType<EventLog['commit']> {
    const follows = verifyChain(batch.events, log.head());
    if (!follows.ok) {
      throw new RuleBroken('chain', `event ${follows.error.seq}: ${follows.error.what}`);
    }
    return log.commit(batch);
  }

  #fault(kind: LogFault['kind']) {
    this.faults += 1;
    return fail({ kind, detail: 'in false weather' } as const);
  }

  /** Crashes and clocks that owe nothing to a command, and people at the house's own screen. */
  #atRest(): void {
    const { crashAtRest, clockJumps } = this.#weather();
    if (!this.isUp) return;
    if (this.#chance.isIn(crashAtRest)) {
      this.#crash();
      return;
    }
    if (this.#chance.isIn(clockJumps)) {
      this.#wallOffsetMs += this.#chance.between(-3_600_000, 3_600_000);
    }
    if (!this.isQuiet && this.#chance.isIn(0.05)) this.#save();
  }

  /** A document is saved from the house's own screen, so that what rests on it changes. */
  #save(): void {
    const target = this.#chance.oneOf(['document:show:a', 'set:1', 'set:2', 'set:3']);
    this.#guarded(() => {
      recordEvents(
        this.#faultyNow(),
        [{ kind: 'document saved', target, payload: SAVED }],
        this.#speaker(),
      );
      this.#hub?.look();
      return true;
    });
  }

  #faultyNow(): EventLog {
    return this.#faulty(this.#log);
  }

  #speaker(by: string | null = null) {
    return {
      by,
      nowMs: this.nowMs,
      newId: () => {
        this.#ids += 1;
        return `e-${this.#ids}`;
      },
    };
  }

  /** Null where the house does not answer: it is down, or went down over this. */
  #guarded<T>(work: () => T): T | null {
    if (!this.isUp) return null;
    try {
      return work();
    } catch (fault) {
      if (!(fault instanceof Crash)) throw fault;
      this.#crash();
      return null;
    }
  }

  /** As `POST /api/commands`: answered after the commit; told to all before or after the answer. */
  post(body: string, mayNote: boolean) {
    return this.#guarded(() => {
      const sender = { ...this.#speaker('person-1'), ...RIGHTS, mayNote };
      const record = { log: this.#faultyNow(), ...KEYS };
      const taken = takeCommand(record, JSON.parse(body), sender, { signOffs: true });
      if (this.#chance.isIn(0.5)) this.#hub?.look();
      else this.#timeline.in(this.#chance.between(0, 5), () => this.#hub?.look());
      return taken;
    });
  }

  /** As `GET /api/commands/:id`. */
  answerTo(commandId: string) {
    return this.#guarded(() => ({ stored: this.#log.answerTo(commandId)?.answer ?? null }));
  }

  /** As `POST /api/commands/:id/give-up`; null also where the disk does not take it. */
  giveUp(commandId: string) {
    return this.#guarded(() => {
      const given = giveUpCommand(this.#faultyNow(), commandId);
      return given.ok ? given.value : null;
    });
  }

  /** As `GET /api/events?after=N`, a page as JSON. */
  page(after: number): string | null {
    return this.#guarded(() => JSON.stringify(this.#hub?.page(after, PAGE)));
  }

  /** What a device reads anew when it begins from how things stand. */
  standing(): { readonly seq: number; readonly lastOn: ReadonlyMap<string, number> } | null {
    return this.#guarded(() => {
      const lastOn = new Map(TARGETS.map((target) => [target, this.#log.lastOn(target)]));
      return { seq: this.#log.head().seq, lastOn };
    });
  }

  /** As the stream: true where the house took it. */
  listen(line: Line, device: string, after: number | null): boolean {
    const heard = this.#guarded(() => {
      const stop = this.#hub?.listen(
        {
          write: (text) => line.write(text),
          waitingBytes: () => line.waitingBytes,
          end: () => line.break(),
          mayRead: () => true,
        },
        { device, after },
      );
      this.#lines.add(line);
      return stop !== undefined;
    });
    return heard === true;
  }
}

const SAVED = {
  document: 'show:a',
  kind: 'show',
  revision: 1,
  savedBy: 'TD',
  why: 'edited',
  sha256: 'a'.repeat(64),
} as const;
const PAGE = 100;
const RIGHTS = { role: 'lead', maySign: true, provedAtMs: null } as const;
export const TARGETS = ['set:1', 'set:2', 'set:3', 'set:4', 'document:show:a', 'house'] as const;
