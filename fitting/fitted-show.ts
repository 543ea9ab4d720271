/** The show document for the other house: hangs on their new sets, cues as far as they reach. */
import type { Json, JsonObject } from '#documents';
import type { Cue, Hang, Show } from '#show';
import { fitHang, heightText, reached } from './fit-hang.ts';
import { isList, isObject } from './json.ts';
import type { FitAsked, FitChange, Mapping } from './types.ts';

export type Named = { readonly id: string; readonly name: string };

export type FittedShow = {
  readonly document: JsonObject;
  /** By the set that the piece leaves. */
  readonly changes: ReadonlyMap<string, readonly FitChange[]>;
};

/** A document holds no more of either. */
const REMARKS_MAX = 200;
const REMARK_MAX = 2000;

const byOldSet = (document: JsonObject): ReadonlyMap<string, JsonObject> => {
  const hangs = document['hangs'];
  return new Map(
    (isList(hangs) ? hangs : []).filter(isObject).map((hang) => [String(hang['set']), hang]),
  );
};

const fitHangs = ({ from, to }: FitAsked, mapping: Mapping) => {
  const written = byOldSet(from.document);
  const changes = new Map<string, FitChange[]>();
  const hangs = to.house.lineSets.flatMap((lineSet): readonly JsonObject[] => {
    const hang = from.show.hangs.find(({ set }) => mapping[set] === lineSet.id);
    const raw = hang && written.get(hang.set);
    if (hang === undefined || raw === undefined) return [];
    const fitted = fitHang(raw, hang, { lineSet, from: from.house });
    const coupled = couplingOf(hang, from.show, mapping);
    changes.set(hang.set, [...fitted.changes, ...coupled.changes]);
    if (raw['coupledWith'] === undefined) return [fitted.written];
    return [{ ...fitted.written, coupledWith: coupled.sets }];
  });
  return { hangs, changes };
};

/** Two that move together still do, unless one of them hangs nowhere. */
const couplingOf = ({ coupledWith }: Hang, { hangs }: Show, mapping: Mapping) => {
  const placed = (set: string): string | null =>
    hangs.some((each) => each.set === set) ? (mapping[set] ?? null) : null;
  return {
    sets: coupledWith.map(placed).filter((set) => set !== null),
    changes: coupledWith
      .filter((set) => placed(set) === null)
      .map((withSet): FitChange => ({ is: 'coupling', withSet })),
  };
};

const fitCue = (raw: JsonObject, cue: Cue, { to }: FitAsked, mapping: Mapping) => {
  const set = mapping[cue.set] ?? null;
  const lineSet = to.house.lineSets.find(({ id }) => id === set);
  if (lineSet === undefined) return { written: null, change: null };
  const [fromM, toM] = [reached(cue.from, lineSet), reached(cue.to, lineSet)];
  if (fromM === toM && !cue.releases) {
    return { written: null, change: { is: 'cue', number: cue.number, how: 'gone' } as const };
  }
  const written: JsonObject = {
    ...raw,
    set: lineSet.id,
    ...(fromM === cue.from ? {} : { from: heightText(fromM) }),
    ...(toM === cue.to ? {} : { to: heightText(toM) }),
  };
  const isSame = fromM === cue.from && toM === cue.to;
  return {
    written,
    change: isSame ? null : ({ is: 'cue', number: cue.number, how: 'nearer' } as const),
  };
};

const fitCues = (asked: FitAsked, mapping: Mapping, changes: Map<string, FitChange[]>) => {
  const raw = asked.from.document['cues'];
  return (isList(raw) ? raw : []).flatMap((each, index): readonly JsonObject[] => {
    const cue = asked.from.show.cues[index];
    if (!isObject(each) || cue === undefined) return [];
    const { written, change } = fitCue(each, cue, asked, mapping);
    if (change !== null) changes.set(cue.set, [...(changes.get(cue.set) ?? []), change]);
    return written === null ? [] : [written];
  });
};

/** A release called by a cue that is gone is still a release; nothing calls it. */
const withCallsKept = (hang: JsonObject, numbers: ReadonlySet<string>): JsonObject => {
  const { items } = hang;
  if (!isList(items)) return hang;
  const isGone = (release: Json): boolean =>
    isObject(release) && release['cue'] !== undefined && !numbers.has(String(release['cue']));
  const kept = items.map((item): Json => {
    if (!isObject(item) || !isList(item['releases']) || !item['releases'].some(isGone)) return item;
    const releases = item['releases'].map((release): Json => {
      if (!isObject(release) || !isGone(release)) return release;
      const { cue: _gone, ...rest } = release;
      return rest;
    });
    return { ...item, releases };
  });
  return { ...hang, items: kept };
};

const remarksOf = ({ from }: FitAsked, mapping: Mapping): readonly string[] => {
  const left = from.show.hangs.filter(({ set }) => (mapping[set] ?? null) === null);
  const names = left.map(({ set, name }) => `${name} (set ${set})`).join(', ');
  return [
    `Fitted from ${from.show.name} at ${from.house.name}.`,
    ...(left.length === 0 ? [] : [`Hangs nowhere here: ${names}.`.slice(0, REMARK_MAX)]),
  ];
};

/** What sets were kept empty for belongs to the house that the show leaves. */
export const fittedShow = (asked: FitAsked, mapping: Mapping, { id, name }: Named): FittedShow => {
  const { from, to } = asked;
  const { hangs, changes } = fitHangs(asked, mapping);
  const cues = fitCues(asked, mapping, changes);
  const numbers = new Set(cues.map((cue) => String(cue['number'])));
  const { keptEmpty: _old, remarks, ...rest } = from.document;
  const said = [...remarksOf(asked, mapping), ...(isList(remarks) ? remarks : [])];
  const document: JsonObject = {
    ...rest,
    id,
    name,
    house: to.house.id,
    hangs: hangs.map((hang) => withCallsKept(hang, numbers)),
    cues,
    remarks: said.slice(0, REMARKS_MAX),
  };
  return { document, changes };
};
