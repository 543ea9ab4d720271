/**
 * Documents never change in place, so each is read once: an edit is read before it is taken, and
 * the reckoning that follows need not read it again.
 */
import { type ReadMemory, readHouseValue, readShowValue, readStateValue } from '#documents';
import type { House } from '#house';
import type { JsonObject } from '../keeping/json.ts';

const once = <T>(read: (raw: JsonObject, house: House) => T) => {
  const known = new WeakMap<JsonObject, { readonly house: House; readonly answer: T }>();
  return (raw: JsonObject, house: House): T => {
    const before = known.get(raw);
    if (before !== undefined && before.house === house) return before.answer;
    const answer = read(raw, house);
    known.set(raw, { house, answer });
    return answer;
  };
};

const housesRead = new WeakMap<JsonObject, ReturnType<typeof readHouseValue>>();

export const readHouseOnce = (raw: JsonObject): ReturnType<typeof readHouseValue> => {
  const answer = housesRead.get(raw) ?? readHouseValue(raw);
  housesRead.set(raw, answer);
  return answer;
};

/** Hangs that an edit did not touch are the same objects, and need no second reading. */
const hangsRead: ReadMemory = new WeakMap();

export const readShowOnce = once((raw, house) => readShowValue(raw, house, hangsRead));

export const readStateOnce = once((raw, house) => readStateValue(raw, house));
