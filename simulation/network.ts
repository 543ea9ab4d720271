/**
 * The air between the devices and the house: what is sent comes late, twice, or not at all. A
 * stream keeps its order, as a connection does, and may die without a word.
 */
import type { Chance } from './chance.ts';
import type { Timeline } from './timeline.ts';
import type { Weather } from './weather.ts';

/** A browser gives a request up after this; the house may still get it. */
const TIMEOUT_MS = 10_000;
const SLOW_MS = 60_000;

export class Network {
  readonly #timeline: Timeline;
  readonly #chance: Chance;
  readonly #weather: () => Weather;

  constructor(timeline: Timeline, chance: Chance, weather: () => Weather) {
    this.#timeline = timeline;
    this.#chance = chance;
    this.#weather = weather;
  }

  #delayMs(): number {
    const isSlow = this.#chance.isIn(this.#weather().slow);
    return isSlow ? this.#chance.between(500, SLOW_MS) : this.#chance.between(1, 60);
  }

  /** `handle` null: nobody answers. One of `heard` and `gaveUp` is called, once. */
  ask<A>(
    handle: () => A | null,
    then: { readonly heard: (answer: A) => void; readonly gaveUp: () => void },
  ): void {
    let isOver = false;
    const stop = this.#timeline.in(TIMEOUT_MS, () => {
      isOver = true;
      then.gaveUp();
    });
    const hear = (answer: A): void => {
      if (isOver) return;
      isOver = true;
      stop();
      then.heard(answer);
    };
    const sendOnce = (): void => {
      if (this.#chance.isIn(this.#weather().lost)) return;
      this.#timeline.in(this.#delayMs(), () => {
        const answer = handle();
        if (answer === null || this.#chance.isIn(this.#weather().lost)) return;
        this.#timeline.in(this.#delayMs(), () => hear(answer));
      });
    };
    sendOnce();
    if (this.#chance.isIn(this.#weather().doubled)) sendOnce();
  }

  /** A way for a stream: its texts in their order, until it dies or breaks. */
  line(to: { readonly hear: (text: string) => void; readonly broke: () => void }): Line {
    return new Line(this.#timeline, this.#chance, this.#weather, to);
  }
}

/** One connection, from the house to a device. */
export class Line {
  readonly #timeline: Timeline;
  readonly #chance: Chance;
  readonly #weather: () => Weather;
  readonly #to: { readonly hear: (text: string) => void; readonly broke: () => void };
  #lastMs = 0;
  #waiting = 0;
  #is: 'open' | 'dead' | 'over' = 'open';

  constructor(
    timeline: Timeline,
    chance: Chance,
    weather: () => Weather,
    to: { readonly hear: (text: string) => void; readonly broke: () => void },
  ) {
    this.#timeline = timeline;
    this.#chance = chance;
    this.#weather = weather;
    this.#to = to;
  }

  get waitingBytes(): number {
    return this.#waiting;
  }

  write(text: string): void {
    if (this.#is === 'over') return;
    this.#waiting += text.length;
    const { streamDies, streamBreaks, slow } = this.#weather();
    if (this.#chance.isIn(streamDies)) this.#is = 'dead';
    if (this.#is === 'dead') return;
    if (this.#chance.isIn(streamBreaks)) {
      this.break();
      return;
    }
    const delayMs = this.#chance.isIn(slow)
      ? this.#chance.between(500, SLOW_MS)
      : this.#chance.between(1, 60);
    // What follows cannot come before: that is what a connection promises.
    this.#lastMs = Math.max(this.#lastMs, this.#timeline.nowMs + delayMs);
    this.#timeline.in(this.#lastMs - this.#timeline.nowMs, () => {
      this.#waiting -= text.length;
      if (this.#is !== 'over') this.#to.hear(text);
    });
  }

  /** The device hears that it is over, a moment later. */
  break(): void {
    if (this.#is === 'over') return;
    const isDead = this.#is === 'dead';
    this.#is = 'over';
    if (!isDead) this.#timeline.in(this.#chance.between(1, 60), () => this.#to.broke());
  }

  /** From the device's side: it hears nothing more. */
  close(): void {
    this.#is = 'over';
  }
}
