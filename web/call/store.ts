/**
 * The call on this device: folded from the events that the page applies, asked for from where the
 * call was opened when there is a gap, and kept, so that a page which lost the server shows what
 * was known last and since when.
 */
import { targetOfSet } from '#call';
import {
  type CallCommandKind,
  type DeviceStanding,
  type HouseEvent,
  type Payload,
  type Pinned,
  RESTS_ON_STATE,
} from '#events';
import type { HouseNow, PostId } from '#state';
import type { Moment } from '../keeping/copies.ts';
import type { Live } from '../live/live.ts';
import type { EventsPage } from '../live/server.ts';
import { type CallFold, foldFrom, foldOn, isOfRecord } from './call-fold.ts';
import type { CallBox } from './kept-call.ts';

/** Where the open call begins in the record; null where none is open. */
export type CallBegin = { readonly from: number | null };

export type CallParts = {
  readonly live: {
    readonly view: () => { readonly standing: DeviceStanding; readonly seq: number };
    readonly record: () => Pinned | null;
    readonly subscribe: (listener: () => void) => () => void;
    readonly hear: (ear: (events: readonly HouseEvent[]) => void) => () => void;
    readonly give: Live['give'];
  };
  readonly askPage: (after: number | null) => Promise<EventsPage | null>;
  readonly askBegin: () => Promise<CallBegin | null>;
  /** Number of the last event on a target, from before the call too. */
  readonly askSeen: (target: string) => Promise<number | null>;
  readonly box: CallBox;
  readonly device: string;
  readonly moment: () => Moment;
  readonly later: (call: () => void, milliseconds: number) => () => void;
};

export type CallSeen = {
  /** Null where this device knows nothing of a call, nor that none is open. */
  readonly now: HouseNow | null;
  /** What is shown is what the house has recorded, to the last event. */
  readonly isLive: boolean;
  /** When what is shown was known to be so. */
  readonly asOf: Moment | null;
  /** Posts that are held from this device. */
  readonly posts: readonly PostId[];
};

/** What a person says in a call; of one set, or of the house where `set` is null. */
export type CallSaid = {
  [K in CallCommandKind]: {
    readonly kind: K;
    readonly set: string | null;
    readonly payload: Omit<Payload<K>, 'call'>;
  };
}[CallCommandKind];

const NOTHING: CallSeen = { now: null, isLive: false, asOf: null, posts: [] };
const KEEP_MS = 400;
/** Nothing happens for hours, and what is shown is still known to be so. */
const CONFIRM_MS = 5000;
const KEEP_AGE_MS = 30_000;
const AGAIN_MS = 1500;
/** Of a device that was away longer the whole call is asked for, which is no more. */
const BEHIND_MAX = 5000;
/** More than a call of a long day; reaching it is told as not live. */
const PAGES_MAX = 400;

export class CallStore {
  readonly #parts: CallParts;
  #fold: CallFold | null = null;
  #seen: CallSeen = NOTHING;
  #isAsking = false;
  #keptMs = 0;
  #stopKeeping: (() => void) | null = null;
  #stopAgain: (() => void) | null = null;
  readonly #listeners = new Set<() => void>();

  constructor(parts: CallParts) {
    this.#parts = parts;
  }

  seen = (): CallSeen => this.#seen;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  start = (): void => {
    const { live, box } = this.#parts;
    this.#fold = box.kept();
    live.hear(this.#heard);
    live.subscribe(this.#look);
    this.#look();
    this.#confirm();
  };

  /** Writes down at once what waits to be kept: the page goes away. */
  leaving = (): void => {
    this.#stopKeeping?.();
    if (this.#stopKeeping !== null) this.#keep();
  };

  /** The id under which its outcome is told; null where no call is open here. */
  give = async (said: CallSaid): Promise<string | null> => {
    const call = this.#fold?.now.call ?? null;
    if (call === null) return null;
    const { kind, set, payload } = said;
    const target = set === null ? 'house' : targetOfSet(call.house, set);
    const seen = RESTS_ON_STATE[kind] ? await this.#seenOn(target) : null;
    const whole = { ...payload, call: call.id };
    // Kind and payload come from one thing said, so they belong to each other.
    return this.#parts.live.give({ kind, target, payload: whole as Payload<typeof kind>, seen });
  };

  #seenOn = async (target: string): Promise<number> => {
    const known = this.#fold?.lastOn[target];
    if (known !== undefined) return known;
    // Not heard: it is refused as too old, and nothing is recorded.
    const asked = (await this.#parts.askSeen(target)) ?? 0;
    return Math.max(asked, this.#fold?.lastOn[target] ?? 0);
  };

  #heard = (events: readonly HouseEvent[]): void => {
    // While more is being asked for, what comes by the stream is in one of the pages.
    if (this.#fold === null || this.#isAsking) return;
    if (!isOfRecord(this.#fold, this.#parts.live.record())) return;
    const next = foldOn(this.#fold, events, this.#parts.moment());
    // A gap is not filled by guessing: it is asked for, at the next look.
    if (next !== null) this.#take(next);
  };

  #take = (fold: CallFold): void => {
    this.#fold = fold;
    this.#show();
    this.#keepLater();
  };

  #keepLater = (): void => {
    this.#stopKeeping?.();
    this.#stopKeeping = this.#parts.later(this.#keep, KEEP_MS);
  };

  #keep = (): void => {
    this.#stopKeeping = null;
    if (this.#fold === null) return;
    this.#keptMs = this.#parts.moment().deviceMs;
    this.#parts.box.keep(this.#fold);
  };

  /** Whatever changed on the live side: is what is here all that it knows? */
  #look = (): void => {
    const { live, box, moment } = this.#parts;
    const record = live.record();
    // Without a record of its own a device takes what the server has, and nothing from before.
    if (this.#fold !== null && !isOfRecord(this.#fold, record)) {
      this.#fold = null;
      box.drop();
    }
    const { standing, seq } = live.view();
    const isBehind = record !== null && (this.#fold === null || this.#fold.now.seq < seq);
    if (isBehind && !this.#isAsking && this.#stopAgain === null) void this.#ask();
    if (this.#fold !== null && !isBehind && standing.is === 'live') {
      const read = moment();
      this.#fold = { ...this.#fold, read };
      if (Math.abs(read.deviceMs - this.#keptMs) >= KEEP_AGE_MS) this.#keepLater();
    }
    this.#show();
  };

  #confirm = (): void => {
    this.#parts.later(() => {
      this.#look();
      this.#confirm();
    }, CONFIRM_MS);
  };

  #ask = async (): Promise<void> => {
    this.#isAsking = true;
    const fold = (await this.#goOn()) ?? (await this.#anew());
    this.#isAsking = false;
    if (fold === null) this.#againLater();
    else this.#take(fold);
    this.#look();
  };

  #againLater = (): void => {
    this.#stopAgain = this.#parts.later(() => {
      this.#stopAgain = null;
      this.#look();
    }, AGAIN_MS);
  };

  /** From where this device had come to; null where that is too far back, or another history. */
  #goOn = async (): Promise<CallFold | null> => {
    const fold = this.#fold;
    const { seq } = this.#parts.live.view();
    return fold === null || seq - fold.now.seq > BEHIND_MAX ? null : this.#pages(fold);
  };

  /** From where the open call begins. The head is asked first, so that nothing falls between. */
  #anew = async (): Promise<CallFold | null> => {
    const { askPage, askBegin, moment } = this.#parts;
    const head = await askPage(null);
    const begin = head && (await askBegin());
    if (head === null || begin === null) return null;
    const { heartbeat } = head;
    if (!isOfRecord(heartbeat, this.#parts.live.record())) return null;
    if (begin.from === null) return this.#pages(foldFrom(heartbeat, heartbeat, moment()));
    const first = await askPage(begin.from - 1);
    const [event] = first?.events ?? [];
    if (event === undefined) return null;
    const at = { seq: begin.from - 1, hash: event.previous };
    return this.#pages(foldFrom(heartbeat, at, moment()));
  };

  /** Page after page until nothing is left and nothing came in by the stream meanwhile. */
  #pages = async (from: CallFold): Promise<CallFold | null> => {
    const { askPage, moment, live } = this.#parts;
    let fold = from;
    for (let page = 0; page < PAGES_MAX; page++) {
      const answer = await askPage(fold.now.seq);
      if (answer === null || !isOfRecord(answer.heartbeat, live.record())) return null;
      if (answer.events.length === 0) {
        if (answer.heartbeat.seq === fold.now.seq && answer.heartbeat.hash !== fold.hash)
          return null;
        if (fold.now.seq >= live.view().seq) return fold;
        continue;
      }
      const next = foldOn(fold, answer.events, moment());
      if (next === null) return null;
      fold = next;
    }
    return null;
  };

  #show = (): void => {
    const fold = this.#fold;
    if (fold === null) {
      this.#tell(NOTHING);
      return;
    }
    const { standing, seq } = this.#parts.live.view();
    const { now, read } = fold;
    const isAll = isOfRecord(fold, this.#parts.live.record()) && now.seq >= seq;
    const posts = now === this.#seen.now ? this.#seen.posts : this.#postsOf(now);
    this.#tell({ now, isLive: isAll && standing.is === 'live', asOf: read, posts });
  };

  #postsOf = (now: HouseNow): readonly PostId[] => {
    const held = Object.entries(now.posts).filter(
      ([, { device }]) => device === this.#parts.device,
    );
    return now.call === null ? [] : held.map(([post]) => post);
  };

  #tell = (seen: CallSeen): void => {
    const before = this.#seen;
    const isSame =
      before.now === seen.now && before.isLive === seen.isLive && before.posts === seen.posts;
    this.#seen = seen;
    // Its age alone is read when something else is drawn.
    if (isSame) return;
    for (const listener of this.#listeners) listener();
  };
}
