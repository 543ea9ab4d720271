/**
 * Documents never change in place, so each is read once: an edit is read before it is taken, and
 * the reckoning that follows need not read it again.
 */
import { readShowValue, readStateValue } from '#documents';
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

export const readShowOnce = once(readShowValue);

export const readStateOnce = once((raw, house) => readStateValue(raw, house));
