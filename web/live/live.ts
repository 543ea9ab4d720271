/**
 * Runs the machine of the device in this page: its stream, its clock, its commands; and tells the
 * documents when another device has saved.
 */
import {
  type Alarm,
  alarmsOf,
  type Command,
  type CommandAnswer,
  type DeviceEffect,
  type DeviceInput,
  type DeviceStanding,
  type DeviceState,
  deviceStanding,
  deviceStep,
  type HouseEvent,
  newDevice,
  type Outbox,
  type OutboxInput,
  type Outcome,
  outboxStep,
  type Pinned,
} from '#events';
import { unreachable } from '#outcome';
import type { Boxes } from './boxes.ts';
import type { Asked, Sent } from './server.ts';
import type { TabStream } from './tabs.ts';

export type LiveParts = {
  readonly stream: Pick<TabStream, 'open' | 'close'>;
  readonly askPage: TabAsk;
  readonly send: (command: Command) => Promise<Sent>;
  readonly askAnswer: (commandId: string) => Promise<Asked>;
  readonly giveUp: (commandId: string) => Promise<CommandAnswer | null>;
  readonly boxes: Boxes;
  readonly device: string;
  readonly newId: () => string;
  readonly nowMs: () => number;
  /** A clock that nobody sets. */
  readonly steadyMs: () => number;
  readonly chance: () => number;
  readonly ticks: (call: () => void) => () => void;
  /** Revision of a document that this page holds; null where it holds none such. */
  readonly revisionOf: (document: string) => number | null;
  readonly refresh: () => Promise<void>;
  readonly heardBuild: (build: string | null) => void;
};

type TabAsk = (
  after: number,
) => Promise<Pick<Extract<Input, { readonly kind: 'page' }>, 'events' | 'heartbeat'> | null>;
type Input = DeviceInput<HouseEvent>;
type Ear = (events: readonly HouseEvent[]) => void;

export type LiveView = {
  readonly standing: DeviceStanding;
  readonly alarms: readonly Alarm[];
  /** Last event that was applied; 0 before any. */
  readonly seq: number;
  readonly outbox: Outbox;
  /** What became of commands of this page, by id. */
  readonly outcomes: Readonly<Record<string, Outcome>>;
};

const OUTCOMES_MAX = 50;
/** Documents that another device saved are looked for again after so many ticks. */
const AGAIN_TICKS = 5;

export class Live {
  readonly #parts: LiveParts;
  #state: DeviceState;
  #outbox: Outbox = [];
  #outcomes: Readonly<Record<string, Outcome>> = {};
  #view: LiveView;
  #stopTicks = (): void => undefined;
  readonly #listeners = new Set<() => void>();
  readonly #ears = new Set<Ear>();
  /** Newest revision of each document that was told of. */
  readonly #revisions = new Map<string, number>();
  #refreshing = 0;
  #tickCount = 0;
  #tickedMs: number | null = null;

  constructor(parts: LiveParts) {
    this.#parts = parts;
    this.#state = newDevice(parts.boxes.pinned());
    this.#view = this.#viewNow();
  }

  view = (): LiveView => this.#view;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Calls with what this page has applied, in its order and nothing twice. */
  hear = (ear: Ear): (() => void) => {
    this.#ears.add(ear);
    return () => this.#ears.delete(ear);
  };

  /** Whose record this page follows, and how far it has come in it. */
  record = (): Pinned | null => this.#state.pinned;

  start = (): void => {
    const nowMs = this.#parts.nowMs();
    for (const command of this.#parts.boxes.unsent()) {
      this.#putOut({ kind: 'found', command, nowMs });
    }
    this.woke();
  };

  woke = (): void => this.#put({ kind: 'woke', nowMs: this.#parts.nowMs() });
  wentAway = (): void => this.#put({ kind: 'wentAway' });
  /** A person takes the record that the server has now, or took another database in hand. */
  taken = (): void => this.#put({ kind: 'taken', nowMs: this.#parts.nowMs() });

  /** Whether what this page shows is all that it was told of. */
  isSettled = (): boolean =>
    this.#refreshing === 0 && [...this.#revisions.keys()].every((id) => !this.#isBehind(id));

  /** The answer is the id under which its outcome will be told. */
  give = (
    command: Pick<Command, 'kind' | 'target' | 'payload'> & { readonly seen: number | null },
  ): string => {
    const commandId = this.#parts.newId();
    const nowMs = this.#parts.nowMs();
    const whole = { ...command, commandId, device: this.#parts.device, clientMs: nowMs };
    const isLive = deviceStanding(this.#state, nowMs).is === 'live';
    // Kind and payload come from one caller, who has them of one kind.
    this.#putOut({ kind: 'made', command: whole as Command, isLive, nowMs });
    return commandId;
  };

  /** A person's word on what was held on this device. */
  decide = (commandId: string, word: 'released' | 'dropped'): void =>
    this.#putOut({ kind: word, commandId, nowMs: this.#parts.nowMs() });

  #viewNow = (): LiveView => ({
    standing: deviceStanding(this.#state, this.#parts.nowMs()),
    alarms: alarmsOf(this.#state),
    seq: this.#state.pinned?.seq ?? 0,
    outbox: this.#outbox,
    outcomes: this.#outcomes,
  });

  #show = (): void => {
    const next = this.#viewNow();
    // A tick that changes nothing draws nothing.
    if (JSON.stringify(next) === JSON.stringify(this.#view)) return;
    this.#view = next;
    for (const listener of this.#listeners) listener();
  };

  #put = (input: Input): void => {
    const [state, effects] = deviceStep(this.#state, input);
    this.#state = state;
    for (const effect of effects) this.#do(effect);
    this.#show();
  };

  #tick = (): void => {
    const { nowMs, steadyMs, chance } = this.#parts;
    const passedMs = this.#tickedMs === null ? null : steadyMs() - this.#tickedMs;
    this.#tickedMs = steadyMs();
    this.#put({ kind: 'tick', nowMs: nowMs(), passedMs, chance: chance() });
    const isReachable = this.#view.standing.is === 'live';
    this.#putOut({ kind: 'tick', nowMs: nowMs(), isReachable });
    this.#tickCount += 1;
    const isDue = this.#tickCount % AGAIN_TICKS === 0 && this.#refreshing === 0;
    if (isReachable && isDue && !this.isSettled()) void this.#refresh();
  };

  #do = (effect: DeviceEffect<HouseEvent>): void => {
    const { stream, boxes, ticks } = this.#parts;
    switch (effect.kind) {
      case 'openStream':
        this.#open(effect.stream, effect.after);
        return;
      case 'closeStream':
        stream.close();
        return;
      case 'fetch':
        void this.#fetch(effect.after);
        return;
      case 'apply':
        this.#applied(effect.events);
        return;
      case 'reload':
        void this.#refresh();
        return;
      case 'keep':
        boxes.keepPinned(effect.pinned);
        return;
      case 'startTicks':
        this.#stopTicks();
        this.#stopTicks = ticks(this.#tick);
        return;
      case 'stopTicks':
        this.#stopTicks();
        return;
      default:
        unreachable(effect);
    }
  };

  #open = (stream: number, after: number | null): void => {
    const { nowMs, chance, heardBuild } = this.#parts;
    this.#parts.stream.open(after, {
      heartbeat: (heartbeat) => {
        heardBuild(heartbeat.build);
        this.#put({ kind: 'heartbeat', stream, heartbeat, nowMs: nowMs() });
      },
      event: (event) => this.#put({ kind: 'event', stream, event, nowMs: nowMs() }),
      page: (asked, page, askedMs) =>
        this.#put({ kind: 'page', asked, ...page, askedMs, nowMs: nowMs() }),
      failed: () => this.#put({ kind: 'streamFailed', stream, nowMs: nowMs(), chance: chance() }),
      position: () => this.#state.pinned?.seq ?? null,
    });
  };

  #fetch = async (asked: number): Promise<void> => {
    const { askPage, nowMs, chance } = this.#parts;
    const askedMs = nowMs();
    const page = await askPage(asked);
    if (page === null) this.#put({ kind: 'pageFailed', nowMs: nowMs(), chance: chance() });
    else this.#put({ kind: 'page', asked, ...page, askedMs, nowMs: nowMs() });
  };

  #isBehind = (document: string): boolean => {
    const held = this.#parts.revisionOf(document);
    return held !== null && held < (this.#revisions.get(document) ?? 0);
  };

  #applied = (events: readonly HouseEvent[]): void => {
    for (const ear of this.#ears) ear(events);
    let isNews = false;
    for (const event of events) {
      if (event.kind === 'document saved') {
        const { document, revision } = event.payload;
        this.#revisions.set(document, revision);
        isNews ||= this.#parts.revisionOf(document) === null || this.#isBehind(document);
      }
      // Lists of documents change with these.
      isNews ||= event.kind === 'document set aside' || event.kind === 'document taken back';
    }
    if (isNews) void this.#refresh();
  };

  #refresh = async (): Promise<void> => {
    this.#refreshing += 1;
    await this.#parts.refresh();
    this.#refreshing -= 1;
    this.#show();
  };

  #putOut = (input: OutboxInput): void => {
    const [outbox, effects] = outboxStep(this.#outbox, input);
    this.#outbox = outbox;
    const { boxes } = this.#parts;
    for (const effect of effects) {
      if (effect.kind === 'keep') boxes.keepUnsent(effect.command);
      if (effect.kind === 'forget') boxes.forgetUnsent(effect.commandId);
      if (effect.kind === 'send') void this.#send(effect.command);
      if (effect.kind === 'ask') void this.#ask(effect.commandId);
      if (effect.kind === 'giveUp') void this.#giveUp(effect.commandId);
      if (effect.kind === 'told') this.#told(effect.outcome);
    }
    this.#show();
  };

  #told = (outcome: Outcome): void => {
    const all = [...Object.entries(this.#outcomes), [outcome.commandId, outcome] as const];
    this.#outcomes = Object.fromEntries(all.slice(-OUTCOMES_MAX));
  };

  #send = async (command: Command): Promise<void> => {
    const { commandId } = command;
    const sent = await this.#parts.send(command);
    if (sent.is === 'answered') this.#putOut({ kind: 'answered', answer: sent.answer });
    else if (sent.is === 'rejected') this.#putOut({ kind: 'rejected', commandId, why: sent.why });
    else this.#putOut({ kind: 'lost', commandId, nowMs: this.#parts.nowMs() });
  };

  #ask = async (commandId: string): Promise<void> => {
    const asked = await this.#parts.askAnswer(commandId);
    // It is asked again by itself, later and later.
    if (asked === 'unheard') return;
    const nowMs = this.#parts.nowMs();
    const isLive = deviceStanding(this.#state, nowMs).is === 'live';
    if (asked === 'notThere') this.#putOut({ kind: 'notThere', commandId, nowMs, isLive });
    else this.#putOut({ kind: 'answered', answer: asked });
  };

  /** Until there is an answer it is asked again by itself. */
  #giveUp = async (commandId: string): Promise<void> => {
    const answer = await this.#parts.giveUp(commandId);
    if (answer !== null) this.#putOut({ kind: 'answered', answer });
  };
}
