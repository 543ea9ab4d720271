/**
 * One stream for all tabs of a device: a browser opens six connections to a server without HTTPS,
 * and a seventh tab with a stream of its own would wait for ever. One tab leads and tells the
 * others; by a channel between tabs, which needs no HTTPS. Two leaders for a moment do no harm. A
 * tab that hears of no leader asks the server now and then, and tries to lead.
 */
import type { Heartbeat, HouseEvent } from '#events';
import { unreachable } from '#outcome';
import type { EventsPage, StreamEars } from './server.ts';

export type Ears = {
  readonly heartbeat: (heartbeat: Heartbeat) => void;
  readonly event: (event: HouseEvent) => void;
  readonly page: (asked: number, page: EventsPage, askedMs: number) => void;
  readonly failed: () => void;
  /** Last event that this tab has applied. */
  readonly position: () => number | null;
};

type Said =
  | { readonly kind: 'who' | 'lead' | 'gone'; readonly tab: string }
  | { readonly kind: 'heartbeat'; readonly tab: string; readonly heartbeat: Heartbeat }
  | { readonly kind: 'event'; readonly tab: string; readonly event: HouseEvent };

export type Channel = {
  readonly post: (said: Said) => void;
  readonly hear: (call: (said: Said) => void) => void;
};

export type TabParts = {
  readonly tab: string;
  /** Null where the browser has none: every tab leads. */
  readonly channel: Channel | null;
  readonly openEvents: (after: number | null, ears: StreamEars) => () => void;
  readonly askPage: (after: number | null) => Promise<EventsPage | null>;
  readonly later: (call: () => void, milliseconds: number) => () => void;
  readonly nowMs: () => number;
  readonly chance: () => number;
};

const ANSWER_MS = 250;
const POLL_MS = 5000;
/** One heartbeat and a little: then the leader is asleep or gone. */
const SILENT_MS = 7000;
const LOOK_MS = 1000;

type Part = 'none' | 'looking' | 'leading' | 'following' | 'polling';

export class TabStream {
  readonly #parts: TabParts;
  #part: Part = 'none';
  #ears: Ears | null = null;
  #closeEvents = (): void => undefined;
  #stopTimer = (): void => undefined;
  #toldMs = 0;
  /** Whether this tab has asked by itself: only then may another's word be taken. */
  #isIn = false as boolean;

  constructor(parts: TabParts) {
    this.#parts = parts;
    parts.channel?.hear(this.#hear);
  }

  open = (after: number | null, ears: Ears): void => {
    this.#rest();
    this.#ears = ears;
    this.#look(after);
  };

  close = (): void => {
    this.#rest();
    this.#ears = null;
  };

  #rest = (): void => {
    const wasLeading = this.#part === 'leading';
    this.#stopTimer();
    this.#closeEvents();
    this.#part = 'none';
    this.#isIn = false;
    if (wasLeading) this.#say('gone');
  };

  #say = (kind: 'who' | 'lead' | 'gone'): void =>
    this.#parts.channel?.post({ kind, tab: this.#parts.tab });

  #later = (call: () => void, milliseconds: number): void => {
    this.#stopTimer();
    this.#stopTimer = this.#parts.later(call, milliseconds);
  };

  #look = (after: number | null): void => {
    if (this.#parts.channel === null) {
      this.#lead(after);
      return;
    }
    this.#part = 'looking';
    this.#say('who');
    this.#later(() => this.#lead(after), ANSWER_MS);
  };

  #lead = (after: number | null): void => {
    const ears = this.#ears;
    if (ears === null) return;
    this.#stopTimer();
    this.#part = 'leading';
    this.#say('lead');
    const { tab, channel } = this.#parts;
    this.#closeEvents = this.#parts.openEvents(after, {
      heartbeat: (heartbeat) => {
        ears.heartbeat(heartbeat);
        channel?.post({ kind: 'heartbeat', tab, heartbeat });
      },
      event: (event) => {
        ears.event(event);
        channel?.post({ kind: 'event', tab, event });
      },
      crowded: () => {
        this.#part = 'polling';
        this.#say('gone');
        void this.#poll();
      },
      failed: () => {
        this.#rest();
        ears.failed();
      },
    });
  };

  #follow = (): void => {
    this.#stopTimer();
    this.#closeEvents();
    this.#part = 'following';
    this.#toldMs = this.#parts.nowMs();
    void this.#poll();
  };

  /** Asks by itself once, and again where nobody leads; looks whether the leader is silent. */
  #poll = async (): Promise<void> => {
    const ears = this.#ears;
    const asked = ears?.position() ?? null;
    const askedMs = this.#parts.nowMs();
    const isOwn = !this.#isIn || this.#part === 'polling';
    const page = isOwn ? await this.#parts.askPage(asked) : null;
    if (ears === null || ears !== this.#ears) return;
    if (this.#part !== 'following' && this.#part !== 'polling') return;
    if (page !== null) {
      this.#isIn = true;
      if (asked !== null) ears.page(asked, page, askedMs);
      ears.heartbeat(page.heartbeat);
    } else if (isOwn && this.#part === 'polling') {
      this.#rest();
      ears.failed();
      return;
    }
    this.#later(this.#next, this.#part === 'polling' ? POLL_MS : LOOK_MS);
  };

  #next = (): void => {
    const silentMs = this.#parts.nowMs() - this.#toldMs;
    if (this.#part === 'following' && silentMs > SILENT_MS) this.#again();
    else void this.#poll();
  };

  /** Without a leader every follower looks for one, not all in the same instant. */
  #again = (): void => {
    const position = this.#ears?.position() ?? null;
    this.#isIn = false;
    this.#look(position);
  };

  #hear = (said: Said): void => {
    if (said.tab === this.#parts.tab) return;
    switch (said.kind) {
      case 'who':
        if (this.#part === 'leading') this.#say('lead');
        return;
      case 'lead':
        this.#heardLeader(said.tab);
        return;
      case 'gone':
        if (this.#part !== 'following') return;
        this.#later(this.#again, this.#parts.chance() * ANSWER_MS);
        return;
      case 'heartbeat':
      case 'event':
        this.#told(said);
        return;
      default:
        unreachable(said);
    }
  };

  #heardLeader = (other: string): void => {
    if (this.#part === 'looking') this.#follow();
    else if (this.#part === 'following') this.#toldMs = this.#parts.nowMs();
    else if (this.#part === 'leading') {
      // Of two leaders the one with the lower name stays, and says so.
      if (other < this.#parts.tab) this.#follow();
      else this.#say('lead');
    }
  };

  #told = (said: Extract<Said, { readonly kind: 'heartbeat' | 'event' }>): void => {
    if (this.#part !== 'following') return;
    this.#toldMs = this.#parts.nowMs();
    if (!this.#isIn) return;
    if (said.kind === 'event') this.#ears?.event(said.event);
    else this.#ears?.heartbeat(said.heartbeat);
  };
}
