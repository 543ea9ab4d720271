/**
 * Edits of the record of how things stand: each takes the document and gives the next one, with who
 * looked and when. They only write; `#documents` reads every result before it is taken.
 */
import { at, type Json, type JsonObject, withAt } from '../keeping/json.ts';

export type StateEdit = {
  readonly write: (state: JsonObject) => JsonObject;
  readonly what: string;
};

/** ISO date and time, and by whom. */
export type Looked = { readonly at: string; readonly by: string };

/** What was written down of one set; undefined takes it away: nobody knows it then. */
export type Found = Readonly<Record<string, Json | undefined>>;

/** A record is made as late as its newest part. */
const looked = (state: JsonObject, { at: moment, by }: Looked): JsonObject => {
  const before = state['at'];
  const isOlder = typeof before !== 'string' || new Date(before) < new Date(moment);
  return isOlder ? { ...state, at: moment, by } : state;
};

export const withFound = (
  state: JsonObject,
  set: string,
  found: Found,
  who: Looked,
): JsonObject => {
  const written = Object.entries(found).reduce<Json>(
    (next, [key, value]) => withAt(next, ['sets', set, key], value),
    state,
  );
  return looked(written as JsonObject, who);
};

/** Loose bricks on a gallery; undefined where they were not counted. */
export const withStock = (
  state: JsonObject,
  gallery: string,
  stock: Readonly<Record<string, Json | undefined>>,
  who: Looked,
): JsonObject => {
  const written = Object.entries(stock).reduce<Json>(
    (next, [kind, count]) => withAt(next, ['galleries', gallery, 'stock', kind], count),
    state,
  );
  const counted = withAt(written, ['galleries', gallery, 'countedAt'], who.at);
  return looked(withAt(counted, ['galleries', gallery, 'countedBy'], who.by) as JsonObject, who);
};

/** Without anything that was written down of a set. */
export const withoutFound = (state: JsonObject, set: string): JsonObject =>
  at(state, ['sets', set]) === undefined
    ? state
    : (withAt(state, ['sets', set], undefined) as JsonObject);
