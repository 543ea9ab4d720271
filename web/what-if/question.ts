/** A what-if as it stands in the address: what is changed in one hang, and nothing of the rest. */
import { hangPath, writtenHang } from '../editing/show-edits.ts';
import { type Change, changesBetween, withChanges } from '../keeping/changes.ts';
import {
  isList,
  isObject,
  type Json,
  type JsonObject,
  type JsonPath,
  withAt,
} from '../keeping/json.ts';

/** Longer than this no browser and no printed label takes. */
const LONGEST = 6000;

/** [path, value] puts; [path] takes away; [path, at, removed, added] works in a list. */
const packed = (change: Change): Json => {
  if (change.kind === 'splice') {
    return [[...change.path], change.at, change.removed.length, [...change.added]];
  }
  return change.after === undefined ? [[...change.path]] : [[...change.path], change.after];
};

const isPath = (value: Json | undefined): value is JsonPath & Json =>
  isList(value) && value.every((key) => typeof key === 'string' || Number.isInteger(key));

const unpacked = (value: Json): Change | null => {
  if (!isList(value) || !isPath(value[0]) || value[0].length === 0) return null;
  const [path, second, removed, added] = value;
  if (!isPath(path)) return null;
  if (value.length === 1) return { kind: 'put', path };
  if (value.length === 2) return { kind: 'put', path, after: second ?? null };
  if (value.length !== 4 || !isList(added)) return null;
  if (!Number.isInteger(second) || !Number.isInteger(removed)) return null;
  const count = Math.min(Math.max(0, Number(removed)), LONGEST);
  return {
    kind: 'splice',
    path,
    at: Math.max(0, Number(second)),
    removed: Array.from({ length: count }, () => null),
    added,
  };
};

/** Null where nothing is changed; undefined where there is more than an address can say. */
export const writeQuestion = (
  plan: JsonObject,
  asked: JsonObject,
  set: string,
): string | null | undefined => {
  const [before, after] = [writtenHang(plan, set), writtenHang(asked, set)];
  if (before === null || after === null) return null;
  const changes = changesBetween(before, after);
  if (changes.length === 0) return null;
  const text = JSON.stringify(changes.map(packed));
  return text.length > LONGEST ? undefined : text;
};

/** The show as it would be; null where the address says nothing that can be read. */
export const readQuestion = (
  plan: JsonObject,
  set: string,
  text: string | null,
): JsonObject | null => {
  if (text === null) return plan;
  const changes = changesIn(text);
  const path = hangPath(plan, set);
  const hang = writtenHang(plan, set);
  if (changes === null || path === null || hang === null) return null;
  const fresh = withChanges(hang, changes);
  // Another set is another question: no address may hang this one over it.
  if (!isObject(fresh) || fresh['set'] !== set) return null;
  return withAt(plan, path, fresh) as JsonObject;
};

const changesIn = (text: string): readonly Change[] | null => {
  if (text.length > LONGEST) return null;
  try {
    const value = JSON.parse(text) as Json;
    if (!isList(value)) return null;
    const changes = value.map(unpacked);
    return changes.some((change) => change === null)
      ? null
      : changes.filter((change) => change !== null);
  } catch {
    return null;
  }
};
