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
  readonly list: () => readonly Refusal[];
};

export const newFaults = (): Faults => {
  const found = new Map<string, Refusal>();
  const paths = new Set<string>();
  const add = (fault: Refusal): void => {
    const key = `${fault.code} ${fault.path}`;
    if (found.has(key)) return;
    found.set(key, fault);
    paths.add(fault.path);
  };
  return {
    refuse: (name, path, words) => add(refusal(REFUSALS[name].code, path, words)),
    pass: ({ code, found: what, accepted }, path) =>
      add(refusal(code, path, { found: what, accepted })),
    sound: (...asked) =>
      paths.size === 0 || asked.every((path) => ![...paths].some((bad) => touches(bad, path))),
    list: () => [...found.values()],
  };
};

const touches = (one: string, other: string): boolean =>
  one === other || isInside(one, other) || isInside(other, one);

const isInside = (inner: string, outer: string): boolean =>
  outer === '' || inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);
