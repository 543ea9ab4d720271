/**
 * The demo houses as a call is opened on them, read as the server loads them; and the same with
 * what the demo has no case of: a piece that carries a person, a volume that a batten can enter.
 */
import { join } from 'node:path';
import { assessSet, orderPhysicsOf, standingOf } from '#assessment';
import type { CallDocuments } from '#call';
import { readHouse, readShow, readState } from '#documents';
import type { EventDraft } from '#events';
import type { House, LineSet } from '#house';
import { demoDocuments } from '#server';
import type { Hang } from '#show';
import type { OrderPhysics } from '#state';
import { unknownSetState } from '#state';

const EXAMPLES = join(import.meta.dirname, '..', '..', 'examples');

/** `person`: the shop sign on set 17 carries one. `keepOut`: a cable tray over set 15. */
export type DemoCase = 'asItIs' | 'person' | 'keepOut' | 'regatta';

export type DemoSet = {
  readonly id: string;
  readonly lineSet: LineSet;
  readonly hang: Hang | null;
  /** Null where something is not known of it: it is only ever looked at. */
  readonly physics: OrderPhysics | null;
};

export type Demo = {
  readonly which: DemoCase;
  readonly documents: CallDocuments;
  readonly sets: ReadonlyMap<string, DemoSet>;
  readonly opened: EventDraft<'call opened'>;
};

const must = <T>(
  answer:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: unknown },
): T => {
  if (answer.ok) return answer.value;
  throw new Error(`an example does not read: ${JSON.stringify(answer.error)}`);
};

const written = demoDocuments(EXAMPLES);

const textOf = (id: string): string => {
  const found = written.find((each) => each.id === id);
  if (found === undefined) throw new Error(`the examples have no ${id}`);
  return found.text;
};

type Written = Readonly<Record<string, unknown>>;
type Hangs = readonly { readonly set: string; readonly items: readonly Written[] }[];

/** Below where the batten of set 15 plays: whoever flies it in meets it. */
const TRAY = { id: 'tray', name: 'Cable tray', y: ['150 in', '156 in'], z: ['20 ft', '22 ft'] };

const changedHouse = (text: string, which: DemoCase): string => {
  if (which !== 'keepOut') return text;
  const read: { keepOuts: readonly Written[] } = JSON.parse(text);
  return JSON.stringify({ ...read, keepOuts: [...read.keepOuts, TRAY] });
};

const changedShow = (text: string, which: DemoCase): string => {
  if (which !== 'person') return text;
  const read: { hangs: Hangs } = JSON.parse(text);
  const hangs = read.hangs.map((hang) =>
    hang.set === '17'
      ? { ...hang, items: hang.items.map((item) => ({ ...item, carriesPerson: true })) }
      : hang,
  );
  return JSON.stringify({ ...read, hangs });
};

const documentsOf = (which: DemoCase): CallDocuments => {
  const [name, play] = which === 'regatta' ? ['skelderwick', 'regatta'] : ['kestlemere', 'vell'];
  const { house } = must(readHouse(changedHouse(textOf(`house:${name}`), which)));
  const { show } = must(readShow(changedShow(textOf(`show:${play}`), which), house));
  const { state } = must(readState(textOf(`state:${name}`), house, show));
  return { house, show, state };
};

const setOf = ({ house, show, state }: CallDocuments, lineSet: LineSet): DemoSet => {
  const assessed = assessSet(house, show, state, lineSet);
  const physics = orderPhysicsOf(assessed, house, state);
  const { hang } = assessed;
  return { id: lineSet.id, lineSet, hang, physics: physics.known ? physics.value : null };
};

/** A set stands on its stop where it is recorded a hand past it. */
const openingOf = ({ state }: CallDocuments, { id }: DemoSet) => {
  const record = state.sets[id] ?? unknownSetState;
  const standing = standingOf(record);
  return {
    standing: standing.known ? standing.value : null,
    doubt: standing.known ? null : standing.needs.join(', ').slice(0, 400),
    knowledge: record.knowledge,
    tag: record.tag,
  };
};

const openedOn = (
  documents: CallDocuments,
  sets: ReadonlyMap<string, DemoSet>,
): EventDraft<'call opened'> => {
  const { house, show, state } = documents;
  const galleries = house.galleries.map(({ id }) => {
    const found = state.galleries[id];
    const countedMs = found?.countedAt == null ? null : Date.parse(found.countedAt);
    return [id, { stock: found?.stock ?? {}, countedMs, by: found?.countedBy ?? null }] as const;
  });
  return {
    kind: 'call opened',
    target: 'house',
    payload: {
      ...{ call: 'call-1', house: house.id, show: show.id, isDrill: false, documents: [] },
      sets: Object.fromEntries([...sets].map(([id, set]) => [id, openingOf(documents, set)])),
      galleries: Object.fromEntries(galleries),
    },
  };
};

const made = new Map<DemoCase, Demo>();

/** Read and assessed once for all worlds. */
export const demoOf = (which: DemoCase): Demo => {
  const before = made.get(which);
  if (before !== undefined) return before;
  const documents = documentsOf(which);
  const sets = new Map(
    documents.house.lineSets.map((lineSet) => [lineSet.id, setOf(documents, lineSet)]),
  );
  const demo = { which, documents, sets, opened: openedOn(documents, sets) };
  made.set(which, demo);
  return demo;
};

export const galleriesOf = ({ documents }: { readonly documents: { readonly house: House } }) =>
  documents.house.galleries.map(({ id }) => id);
