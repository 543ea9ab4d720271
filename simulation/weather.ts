/** What goes wrong, and how often. Shares are of messages, of ticks or of commits. */
import type { Chance } from './chance.ts';

export type Weather = {
  readonly lost: number;
  readonly doubled: number;
  readonly slow: number;
  readonly streamDies: number;
  readonly streamBreaks: number;
  readonly diskFull: number;
  readonly writeFails: number;
  readonly crashBeforeCommit: number;
  readonly crashAfterCommit: number;
  readonly crashAtRest: number;
  readonly sleeps: number;
  readonly restarts: number;
  readonly freezes: number;
  readonly clockJumps: number;
};

export const CLEAR: Weather = {
  lost: 0,
  doubled: 0,
  slow: 0,
  streamDies: 0,
  streamBreaks: 0,
  diskFull: 0,
  writeFails: 0,
  crashBeforeCommit: 0,
  crashAfterCommit: 0,
  crashAtRest: 0,
  sleeps: 0,
  restarts: 0,
  freezes: 0,
  clockJumps: 0,
};

/** The same weather, so much milder. */
export const milder = (weather: Weather, share: number): Weather => {
  const names = Object.keys(CLEAR) as readonly (keyof Weather)[];
  return { ...CLEAR, ...Object.fromEntries(names.map((name) => [name, share * weather[name]])) };
};

/** Each house has weather of its own: in some little goes wrong, in some most things do. */
export const weatherBy = (chance: Chance): Weather => {
  const share = (most: number): number => (chance.isIn(0.3) ? 0 : chance.next() * most);
  return {
    lost: share(0.2),
    doubled: share(0.1),
    slow: share(0.25),
    streamDies: share(0.02),
    streamBreaks: share(0.02),
    diskFull: share(0.02),
    writeFails: share(0.02),
    crashBeforeCommit: share(0.004),
    crashAfterCommit: share(0.004),
    crashAtRest: share(0.003),
    sleeps: share(0.01),
    restarts: share(0.005),
    freezes: share(0.005),
    clockJumps: share(0.003),
  };
};
