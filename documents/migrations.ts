/**
 * Brings a document of an older form to the current one, step by step, before anything in it is
 * read. A step is a pure function on raw JSON from version N to N + 1. It moves and renames what it
 * knows, leaves all else where it is for the reading to judge, and invents no value.
 *
 * Version 0 is the draft form, from before the first release.
 */

import type { Json, JsonObject } from './json.ts';
import { isObject } from './json.ts';

export const CURRENT_VERSION = 1;

type Step = (raw: JsonObject) => JsonObject;

/** Steps in order; the last leads to the current version. */
const STEPS: Readonly<Record<Migrated, readonly Step[]>> = {
  house: [(raw) => houseFrom0(raw)],
  show: [(raw) => showFrom0(raw)],
  state: [(raw) => stateFrom0(raw)],
  order: [],
};

type Migrated = 'house' | 'show' | 'state' | 'order';

/** The first version in which a document was ever written; orders began after the draft. */
export const oldestVersion = (kind: Migrated): number => CURRENT_VERSION - STEPS[kind].length;

export const migrate = (kind: Migrated, version: number, raw: JsonObject): JsonObject =>
  STEPS[kind]
    .slice(version - oldestVersion(kind))
    .reduce((older, step, index) => ({ ...step(older), version: version + index + 1 }), raw);

const isJsonObject = (value: Json | undefined): value is JsonObject => isObject(value);

const isJsonList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

/** Changes the value of a key where there is one; the order of keys stays. */
const changed = (raw: JsonObject, key: string, change: (value: Json) => Json): JsonObject =>
  Object.fromEntries(
    Object.entries(raw).map(([name, value]) => [name, name === key ? change(value) : value]),
  );

/** Renames a key, unless the new name is taken: then both stay, and the reading refuses one. */
const renamed = (raw: JsonObject, key: string, into: string): JsonObject =>
  Object.hasOwn(raw, into)
    ? raw
    : Object.fromEntries(
        Object.entries(raw).map(([name, value]) => [name === key ? into : name, value]),
      );

const eachEntry = (value: Json, change: (entry: JsonObject) => JsonObject): Json => {
  if (isJsonList(value)) return value.map((entry) => (isJsonObject(entry) ? change(entry) : entry));
  if (!isJsonObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, entry]) => [
      name,
      isJsonObject(entry) ? change(entry) : entry,
    ]),
  );
};

/** In the draft a stop was a height alone, and the limit of the lock was that of a brake. */
const houseFrom0: Step = (raw) => {
  const rules = changed(raw, 'rules', (value) =>
    isJsonObject(value) ? renamed(value, 'brakeLimit', 'lockLimit') : value,
  );
  const types = changed(rules, 'setTypes', (value) => eachEntry(value, setFrom0));
  return changed(types, 'lineSets', (value) => eachEntry(value, setFrom0));
};

const setFrom0 = (set: JsonObject): JsonObject =>
  stopFrom0(stopFrom0(set, 'lowTrim', 'lowStop'), 'highTrim', 'highStop');

const stopFrom0 = (set: JsonObject, key: string, into: string): JsonObject =>
  Object.hasOwn(set, key) && !Object.hasOwn(set, into)
    ? changed(renamed(set, key, into), into, (height) => ({ height }))
    : set;

/** In the draft, bricks were a list of kinds with their counts, the reason beside it. */
const showFrom0: Step = (raw) =>
  changed(raw, 'hangs', (value) =>
    eachEntry(value, (hang) => {
      const { brickReason, ...rest } = hang;
      const bricks = hang['bricks'];
      if (!isJsonList(bricks)) return hang;
      const reason = brickReason === undefined ? {} : { reason: brickReason };
      return changed(rest, 'bricks', () => ({ counts: countsOf(bricks), ...reason }));
    }),
  );

const countsOf = (bricks: readonly Json[]): JsonObject => {
  const counts: Record<string, Json> = {};
  for (const run of bricks) {
    if (!isJsonObject(run)) continue;
    const { kind, count } = run;
    if (typeof kind !== 'string' || count === undefined) continue;
    const before = counts[kind];
    counts[kind] = typeof before === 'number' && typeof count === 'number' ? before + count : count;
  }
  return counts;
};

/** In the draft the lock was a brake, and how a set is known stood among its other fields. */
const stateFrom0: Step = (raw) =>
  changed(raw, 'sets', (value) =>
    eachEntry(value, (set) => {
      const { knownBy, knownAt, basis, ...rest } = renamed(set, 'brake', 'lock');
      const parts = Object.entries({ basis, at: knownAt, by: knownBy });
      const said = parts.flatMap(([key, part]) => (part === undefined ? [] : [[key, part]]));
      return said.length === 0 || Object.hasOwn(set, 'knowledge')
        ? renamed(set, 'brake', 'lock')
        : { ...rest, knowledge: Object.fromEntries(said) };
    }),
  );
