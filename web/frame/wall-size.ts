import { useSyncExternalStore } from 'react';

export type WallSize = {
  readonly columnWidth: number;
  readonly height: number;
  readonly letter: number;
  readonly margin: number;
};

/** A monitor sees the whole house; on a touch screen a column is as wide as a finger. */
const SIZES = [
  { query: '(max-width: 700px)', columnWidth: 48, height: 264, letter: 14, margin: 88 },
  { query: '(pointer: coarse)', columnWidth: 48, height: 340, letter: 15, margin: 92 },
  { query: '(max-width: 1200px)', columnWidth: 28, height: 264, letter: 13, margin: 84 },
  { query: 'all', columnWidth: 28, height: 290, letter: 13, margin: 84 },
] as const;

const lists = SIZES.map(({ query }) => window.matchMedia(query));

const subscribe = (listener: () => void): (() => void) => {
  for (const list of lists) list.addEventListener('change', listener);
  return () => {
    for (const list of lists) list.removeEventListener('change', listener);
  };
};

const current = (): number => lists.findIndex(({ matches }) => matches);

export const useWallSize = (): WallSize =>
  SIZES[useSyncExternalStore(subscribe, current)] ?? SIZES[3];
