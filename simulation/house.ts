/**
 * The house's server in false weather: the real reception of commands and the real hub over a real
 * log, which fails and crashes at its interface.
 */
import {
  type Batch,
  type EventDraft,
  type EventLog,
  giveUpCommand,
  type HouseEvent,
  type LogFault,
  recordEvents,
  type Speaker,
  verifyChain,
} from '#events';
import { fail } from '#outcome';
import { type Hub, openHub, type takeCommand } from '#server';
import type { Chance } from './chance.ts';
import { RuleBroken } from './delivery-rules.ts';
import type { Line } from './network.ts';
import type { Timeline } from './timeline.ts';
import type { Weather } from './weather.ts';

/** Where the log is kept over a crash: opened anew each time. */
export type Storage = { readonly open: () => EventLog; readonly remove: () => void };

/** Who stands at a device, as far as the house is told. */
export type Standing = { readonly by: string; readonly mayNote: boolean };

type Taken = ReturnType<typeof takeCommand>;
type Take = (
  record: Parameters<typeof takeCommand>[0],
  body: unknown,
  speaker: Speaker,
  standing: Standing,
) => Taken;

export type Own = {
  readonly drafts: readonly EventDraft[];
  readonly by: string | null;
  readonly device?: string;
};

/** What is worked at in a house: notes and sign-offs, or a call with the crew. */
export type Work = {
  /** Called at each start of the server: what it knew before is gone. */
  readonly open: (log: EventLog) => Take;
  /** Whether devices fold the events themselves, and so are given them all. */
  readonly isFolded: boolean;
  /** Whose last events a device reads anew. */
  readonly targets: readonly string[];
  /** What somebody does at the house's own screen, or at another that is set up anew. */
  readonly own: (log: EventLog) => Own;
  /** Told of every batch that was committed. */
  readonly committed: (events: readonly HouseEvent[]) => void;
};

/** How things stand up to `seq`, and what led to it for who asks. */
export type AtRead = {
  readonly seq: number;
  readonly lastOn: ReadonlyMap<string, number>;
  readonly events: readonly HouseEvent[];
};

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
  readonly #work: Work;
  #take: Take;
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
    readonly work: Work;
  }) {
    this.#timeline = parts.timeline;
    this.#chance = parts.chance;
    this.#weather = parts.weather;
    this.#storage = parts.storage;
    this.#work = parts.work;
    this.isQuiet = false;
    this.#log = this.#open();
    this.#take = this.#work.open(this.#log);
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
      this.#take = this.#work.open(this.#log);
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
    const written = log.commit(batch);
    if (written.ok) this.#work.committed(batch.events);
    return written;
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

  #save(): void {
    this.#guarded(() => {
      this.#record(this.#faultyNow(), this.#work.own(this.#log));
      return true;
    });
  }

  /** Before the first command, in clear weather: what the day begins with. */
  begin(own: Own): void {
    if (!this.#record(this.#log, own)) throw new Error('the day did not begin');
  }

  #record(log: EventLog, { drafts, by, device }: Own): boolean {
    const speaker = { ...this.#speaker(by), ...(device === undefined ? {} : { device }) };
    const done = recordEvents(log, drafts, speaker);
    if (done.ok && log === this.#log) this.#work.committed(done.value);
    this.#hub?.look();
    return done.ok;
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
  post(body: string, standing: Standing) {
    return this.#guarded(() => {
      const record = { log: this.#faultyNow(), ...KEYS };
      const taken = this.#take(record, JSON.parse(body), this.#speaker(standing.by), standing);
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
  standing(): AtRead | null {
    return this.#guarded(() => {
      const lastOn = new Map(this.#work.targets.map((each) => [each, this.#log.lastOn(each)]));
      const { seq } = this.#log.head();
      return { seq, lastOn, events: this.#work.isFolded ? this.#log.after(0, seq) : [] };
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

const PAGE = 100;
