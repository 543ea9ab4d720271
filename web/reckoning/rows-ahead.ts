/**
 * Rows of a list that are answered before the rest of the page: what an edit comes to on its own
 * set stands on the screen in the next picture, and the house, the wall and the totals follow.
 */
import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Open } from '../keeping/kept.ts';
import { type Documents, type Reckoning, reckonAhead, type SetReckoning } from './reckon.ts';

/** What the page shows as a whole, and by which documents it came to it. */
export type Shown = {
  readonly reckoning: Reckoning;
  readonly ids: Readonly<Record<'house' | 'show', string>> & { readonly state: string | null };
};

export class RowsAhead {
  #shown: Shown | null = null;
  readonly #rows = new Map<string, SetReckoning>();
  readonly #listeners = new Set<() => void>();

  row = (id: string): SetReckoning | null => this.#rows.get(id) ?? null;

  /** Rows of the page as they stand on the screen now: what is copied or filled is what is seen. */
  over = (sets: readonly SetReckoning[]): readonly SetReckoning[] =>
    sets.map((each) => this.#rows.get(each.id) ?? each);

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** The page as a whole has come up with these; null where it shows no rows. */
  settle = (shown: Shown | null): void => {
    this.#shown = shown;
    for (const [id, { written }] of this.#rows) {
      const own = shown?.reckoning.sets.find((each) => each.id === id);
      if (own === undefined || own.written === written) this.#rows.delete(id);
    }
  };

  /** True where all that was changed stands on rows already; else the page must follow at once. */
  answer = (open: Open): boolean => {
    const rows = this.#shown && reckonAhead(documentsIn(open, this.#shown), this.#shown.reckoning);
    if (rows === null) this.#rows.clear();
    else for (const row of rows) this.#rows.set(row.id, row);
    for (const listener of this.#listeners) listener();
    return rows !== null;
  };
}

const documentsIn = ({ documents }: Open, { ids, reckoning }: Shown): Documents => ({
  house: documents[ids.house]?.document ?? reckoning.documents.house,
  show: documents[ids.show]?.document ?? reckoning.documents.show,
  state: ids.state === null ? null : (documents[ids.state]?.document ?? null),
});

export const RowsAheadContext = createContext(new RowsAhead());

/** A row as it is now: ahead of the page where an edit has just changed it. */
export const useRow = (each: SetReckoning): SetReckoning => {
  const rows = useContext(RowsAheadContext);
  return useSyncExternalStore(rows.subscribe, () => rows.row(each.id)) ?? each;
};
