/** The documents that a call is opened on, and those that an open one rests on. */
import type { CallDocuments } from '#call';
import { blankState, readHouse, readShow, readState, writeDocument } from '#documents';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { CallNow } from '#state';
import type { DocumentStore, StoredDocument } from '../log/index.ts';

/** Ids as they stand in the store. */
export type CallIds = {
  readonly house: string;
  readonly show: string;
  /** Null where nothing was recorded: every set is unknown. */
  readonly state: string | null;
};

type Texts = Readonly<Record<'house' | 'show', string>> & { readonly state: string | null };

/** Read against each other, as the screens read them; else the faults of the first with some. */
export const readCallDocuments = (
  { house: houseText, show: showText, state: stateText }: Texts,
  moment: string,
): Result<CallDocuments, readonly Refusal[]> => {
  const house = readHouse(houseText);
  if (!house.ok) return house;
  const show = readShow(showText, house.value.house);
  if (!show.ok) return show;
  const { id, demo } = house.value.house;
  const nothing = blankState({ house: id, demo, at: moment, by: 'nobody' });
  const text = stateText ?? writeDocument(nothing);
  const state = readState(text, house.value.house, show.value.show);
  if (!state.ok) return state;
  return ok({ house: house.value.house, show: show.value.show, state: state.value.state });
};

/** As they are now, with their revisions; the id of one that there is not. */
export const currentOf = (
  store: DocumentStore,
  { house, show, state }: CallIds,
): Result<{ readonly found: readonly StoredDocument[]; readonly texts: Texts }, string> => {
  const ids = [house, show, ...(state === null ? [] : [state])];
  const inUse = new Set(store.list().map(({ id }) => id));
  const found = ids.flatMap((id) => (inUse.has(id) ? (store.current(id) ?? []) : []));
  const [houseNow, showNow, stateNow] = found;
  if (houseNow === undefined || showNow === undefined || found.length < ids.length) {
    return fail(ids.find((id) => !inUse.has(id)) ?? house);
  }
  const texts = { house: houseNow.text, show: showNow.text, state: stateNow?.text ?? null };
  return ok({ found, texts });
};

/** At the revisions that the call was opened on; null where one cannot be read any more. */
export const documentsOfCall = (
  store: DocumentStore,
  { documents, openedMs }: CallNow,
): CallDocuments | null => {
  const textOf = (kind: string): string | null => {
    const named = documents.find(({ id }) => id.startsWith(`${kind}:`));
    return named === undefined ? null : (store.revision(named.id, named.revision)?.text ?? null);
  };
  const [house, show, state] = [textOf('house'), textOf('show'), textOf('state')];
  if (house === null || show === null) return null;
  const read = readCallDocuments({ house, show, state }, new Date(openedMs).toISOString());
  return read.ok ? read.value : null;
};
