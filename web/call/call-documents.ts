/**
 * The documents that a call was opened on, at the very revisions that it names: those of the page
 * where they are the same, else as the server kept them. With others nothing is worked out.
 */
import { useEffect, useState } from 'react';
import type { CallDocuments } from '#call';
import type { CallNow, HouseState } from '#state';
import type { JsonObject } from '../keeping/json.ts';
import type { KeeperState } from '../keeping/kept.ts';
import { useKeeperState } from '../keeping/use-keeper.ts';
import { readHouseOnce, readShowOnce, readStateOnce } from '../reckoning/read-once.ts';
import { askRevision } from './call-server.ts';

export type DocumentsOfCall =
  | { readonly is: 'here'; readonly documents: CallDocuments }
  | { readonly is: 'asking' }
  /** This device has other revisions, and the server did not give those of the call. */
  | { readonly is: 'otherRevisions' }
  /** They are here, and this build does not understand them. */
  | { readonly is: 'notRead' };

type Named = CallNow['documents'][number];
type Fetched = Readonly<Record<string, JsonObject | 'refused'>>;

const keyOf = ({ id, revision }: Named): string => `${id}@${revision}`;

const ofPage = (state: KeeperState, { id, revision }: Named): JsonObject | null => {
  const kept = state.phase === 'open' ? state.documents[id] : undefined;
  return kept?.server.revision === revision ? kept.server.document : null;
};

/** Nobody has recorded anything: every set is unknown until it is found. */
const noState = (houseId: string, demo: boolean): HouseState => ({
  ...{ houseId, demo, at: '', by: '' },
  ...{ sets: {}, galleries: {}, remarks: [] },
});

const readAll = (raws: readonly JsonObject[]): DocumentsOfCall => {
  const [house, show, state] = (['house', 'show', 'state'] as const).map((kind) =>
    raws.find((raw) => raw['format'] === `counterpoise-${kind}`),
  );
  if (house === undefined || show === undefined) return { is: 'notRead' };
  const aHouse = readHouseOnce(house);
  if (!aHouse.ok) return { is: 'notRead' };
  const ours = aHouse.value.house;
  const aShow = readShowOnce(show, ours);
  const aState = state === undefined ? null : readStateOnce(state, ours);
  if (!aShow.ok || aState?.ok === false) return { is: 'notRead' };
  const documents: CallDocuments = {
    house: ours,
    show: aShow.value.show,
    state: aState?.value.state ?? noState(ours.id, ours.demo),
  };
  return { is: 'here', documents };
};

/** Of the same documents there is one reading, so that one desk serves the whole page. */
let last: { readonly raws: readonly JsonObject[]; readonly answer: DocumentsOfCall } | null = null;

const readOnce = (raws: readonly JsonObject[]): DocumentsOfCall => {
  const isSame =
    last !== null &&
    last.raws.length === raws.length &&
    last.raws.every((raw, index) => raw === raws[index]);
  if (!isSame || last === null) last = { raws, answer: readAll(raws) };
  return last.answer;
};

const ASKING = { is: 'asking' } as const;

/** Once for the page, however many components look. */
let fetched: Fetched = {};
const underWay = new Set<string>();
const waiting = new Set<() => void>();

const fetchOnce = async (named: Named): Promise<void> => {
  const key = keyOf(named);
  if (underWay.has(key) || key in fetched) return;
  underWay.add(key);
  const raw = await askRevision(named.id, named.revision);
  underWay.delete(key);
  // What was not given now may be given once the server is heard again.
  fetched = { ...fetched, [key]: raw ?? 'refused' };
  for (const call of waiting) call();
};

const forgetRefused = (): void => {
  fetched = Object.fromEntries(Object.entries(fetched).filter(([, raw]) => raw !== 'refused'));
};

export const useDocumentsOf = (call: CallNow | null, isLive: boolean): DocumentsOfCall => {
  const state = useKeeperState();
  const [, redraw] = useState(0);
  const names = call?.documents ?? [];
  const missing = names.filter((named) => ofPage(state, named) === null);
  const asked = missing.map(keyOf).join(' ');
  useEffect(() => {
    const call = (): void => redraw((count) => count + 1);
    waiting.add(call);
    return () => void waiting.delete(call);
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is missing follows from its keys
  useEffect(() => {
    if (!isLive) return;
    forgetRefused();
    for (const named of missing) void fetchOnce(named);
  }, [asked, isLive]);
  if (call === null || state.phase !== 'open') return ASKING;
  const raws = names.map((named) => ofPage(state, named) ?? fetched[keyOf(named)]);
  if (raws.some((raw) => raw === undefined)) return isLive ? ASKING : { is: 'otherRevisions' };
  if (raws.some((raw) => raw === 'refused')) return { is: 'otherRevisions' };
  return readOnce(raws.filter((raw) => raw !== undefined && raw !== 'refused'));
};
