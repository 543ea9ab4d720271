/**
 * The demo house grown larger for measuring: the same house behind itself, as often as asked, with
 * every set, bay, hang, cue and record again. Sets beyond `most` are left out with all that is
 * theirs.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** in; the sets of one copy stand this far upstage of those of the copy before. */
const DEPTH = 432;

type Json = Record<string, unknown>;
export type HouseTexts = { readonly house: string; readonly show: string; readonly state: string };

const FOLDER = join(import.meta.dirname, '..', 'examples', 'kestlemere');
export const demoTexts = (): HouseTexts => ({
  house: readFileSync(join(FOLDER, 'house.json'), 'utf8'),
  show: readFileSync(join(FOLDER, 'clockmaker.show.json'), 'utf8'),
  state: readFileSync(join(FOLDER, 'state.json'), 'utf8'),
});

const named = (id: unknown, copy: number): string => (copy === 0 ? String(id) : `${id}-${copy}`);
const listOf = (of: Json, key: string): readonly Json[] => (of[key] ?? []) as readonly Json[];

/** Copies of a list or of a record by set, of which only those are taken that `isTaken` names. */
const copier = (copies: number, isTaken: (set: string) => boolean) => {
  const numbers = Array.from({ length: copies }, (_, copy) => copy);
  return {
    list: (list: readonly Json[], make: (one: Json, copy: number) => Json) =>
      numbers.flatMap((copy) => list.map((one) => make(one, copy))),
    bySet: (of: unknown): Json =>
      Object.fromEntries(
        numbers
          .flatMap((copy) =>
            Object.entries(of as Json).map(([id, each]) => [named(id, copy), each]),
          )
          .filter(([id]) => isTaken(String(id))),
      ),
    ids: (ids: unknown, copy: number) =>
      (ids as readonly string[]).map((id) => named(id, copy)).filter(isTaken),
  };
};

const showOf = (show: Json, copies: number, isTaken: (set: string) => boolean): Json => {
  const { list, bySet, ids } = copier(copies, isTaken);
  const hangs = list(listOf(show, 'hangs'), (one, copy) => ({
    ...one,
    set: named(one['set'], copy),
    ...('coupledWith' in one ? { coupledWith: ids(one['coupledWith'], copy) } : {}),
  }));
  const cues = list(listOf(show, 'cues'), (one, copy) => ({
    ...one,
    set: named(one['set'], copy),
  }));
  return {
    ...show,
    hangs: hangs.filter(({ set }) => isTaken(String(set))),
    cues: cues.filter(({ set }) => isTaken(String(set))),
    keptEmpty: bySet(show['keptEmpty']),
  };
};

/** `copies` of the demo behind one another, of at most `most` sets in all. */
export const largerHouse = (texts: HouseTexts, copies: number, most: number): HouseTexts => {
  const [house, show, state] = [texts.house, texts.show, texts.state].map(
    (text) => JSON.parse(text) as Json,
  ) as [Json, Json, Json];
  const lineSets = copier(copies, () => true)
    .list(
      listOf(house, 'lineSets'),
      (one, copy): Json => ({
        ...one,
        id: named(one['id'], copy),
        y: `${Number.parseFloat(String(one['y'])) + DEPTH * copy} in`,
      }),
    )
    .slice(0, most);
  const taken = new Set(lineSets.map(({ id }) => String(id)));
  const { list, bySet, ids } = copier(copies, (set) => taken.has(set));
  const bays = list(listOf(house, 'bays'), (one, copy) => ({
    ...one,
    id: named(one['id'], copy),
    sets: ids(one['sets'], copy),
  })).filter(({ sets }) => (sets as readonly string[]).length > 0);
  return {
    house: JSON.stringify({ ...house, lineSets, bays }),
    show: JSON.stringify(showOf(show, copies, (set) => taken.has(set))),
    state: JSON.stringify({ ...state, sets: bySet(state['sets']) }),
  };
};
