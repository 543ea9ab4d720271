/** What every screen works on: the documents in view, what the engine makes of them, and edits. */
import { createContext, useContext } from 'react';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import type { Edit } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import type { Keeper } from '../keeping/keeper.ts';
import type { Kept } from '../keeping/kept.ts';
import { readShowOnce } from './read-once.ts';
import type { Reckoning, SetReckoning } from './reckon.ts';

export type Work = Reckoning & {
  readonly kept: { readonly house: Kept; readonly show: Kept; readonly state: Kept | null };
};

/** Takes an edit, or says what was not understood and changes nothing. */
export type Editing = { readonly change: (edit: Edit) => readonly Refusal[] };

const absent = (what: string) => (): never => {
  throw new Error(`defect: no ${what} above this component`);
};

export const WorkContext = createContext<Work | null>(null);
export const EditingContext = createContext<Editing>({ change: absent('editing') });

export const useWork = (): Work => useContext(WorkContext) ?? absent('work')();

export const useEditing = (): Editing => useContext(EditingContext);

export const useSet = (id: string): SetReckoning | undefined =>
  useWork().sets.find((each) => each.id === id);

/** Edits of one show, read against its house before the keeper takes them. */
export const editingOf = (keeper: Keeper, showId: string, house: () => House | null): Editing => ({
  change: ({ write, what }) => {
    const state = keeper.state();
    const kept = state.phase === 'open' ? state.documents[showId] : undefined;
    if (kept === undefined) return [];
    const next: JsonObject = write(kept.document);
    const place = house();
    if (place === null) return [];
    const read = readShowOnce(next, place);
    if (!read.ok) return read.error;
    keeper.edit(showId, next, what);
    return [];
  },
});
