/** Gathers every refusal of one reading, so that a person mends a file once and not ten times. */
import type { Refusal } from '#outcome';
import { refusal } from '#outcome';
import type { RefusalName } from './refusal-codes.ts';
import { REFUSALS } from './refusal-codes.ts';

export type Faults = {
  readonly refuse: (
    name: RefusalName,
    path: string,
    words: { readonly found: string; readonly accepted: string },
  ) => void;
  /** Takes the refusal of another room as it is, at this path. */
  readonly pass: (refused: Omit<Refusal, 'path'>, path: string) => void;
  /** Whether nothing was refused at these paths, inside them or around them. */
  readonly sound: (...paths: readonly string[]) => boolean;
  /** Whether something was refused at this very path. */
  readonly refusedAt: (path: string) => boolean;
  /** How many there are, the untold ones included. */
  readonly count: () => number;
  readonly list: () => readonly Refusal[];
};

/** Nobody reads further, and a spiteful file could fill the memory with them. */
export const FAULTS_TOLD = 1000;

export const newFaults = (): Faults => {
  const told = new Map<string, Refusal>();
  let untold = 0;
  const paths = new Set<string>();
  /** Every path around one of `paths`. */
  const around = new Set<string>();
  const add = (fault: Refusal): void => {
    const key = `${fault.code} ${fault.path}`;
    if (told.has(key)) return;
    if (told.size < FAULTS_TOLD) told.set(key, fault);
    else untold += 1;
    paths.add(fault.path);
    for (const outer of pathsAround(fault.path)) around.add(outer);
  };
  const isSound = (path: string): boolean =>
    !paths.has(path) && !around.has(path) && !pathsAround(path).some((outer) => paths.has(outer));
  return {
    refuse: (name, path, words) => add(refusal(REFUSALS[name].code, path, words)),
    pass: ({ code, found, accepted }, path) => add(refusal(code, path, { found, accepted })),
    sound: (...asked) => asked.every(isSound),
    refusedAt: (path) => paths.has(path),
    count: () => told.size + untold,
    list: () => (untold === 0 ? [...told.values()] : [...told.values(), endOfList(untold)]),
  };
};

/** `''`, `a` and `a[3]` around `a[3].b`. */
const pathsAround = (path: string): readonly string[] => {
  const outer = path === '' ? [] : [''];
  for (let at = 1; at < path.length; at += 1) {
    if (path[at] === '.' || path[at] === '[') outer.push(path.slice(0, at));
  }
  return outer;
};

const endOfList = (untold: number): Refusal =>
  refusal(REFUSALS.moreFaults.code, '', {
    found: `${untold} more faults than are told here`,
    accepted: `the first ${FAULTS_TOLD} mended; then the rest is told`,
  });
