/** What is still unknown, part by part of the form, and where each is entered. */
import type { Asked } from '#documents';
import { ENGLISH, phrase, type Voice } from '#texts';
import type { Place } from '../address/address.ts';
import { at, isList, isObject, type Json } from '../keeping/json.ts';
import { keysOf } from './entry-path.ts';
import { type Part, partOf } from './parts.ts';

export type PartCount = { readonly unknown: number; readonly asked: number };

export const countsOf = (asked: readonly Asked[]): ReadonlyMap<string, PartCount> => {
  const counts = new Map<string, PartCount>();
  for (const { path, isUnknown } of asked) {
    const part = partOf(keysOf(path));
    if (part === null) continue;
    const before = counts.get(part.id) ?? { unknown: 0, asked: 0 };
    counts.set(part.id, {
      unknown: before.unknown + (isUnknown ? 1 : 0),
      asked: before.asked + 1,
    });
  }
  return counts;
};

const entered = (value: Json | undefined): number => {
  if (isList(value)) return value.length;
  return isObject(value) ? Object.keys(value).length : 0;
};

/** Of a part whose values are asked by nothing, how many entries it has. */
export const countWords = (
  part: Part,
  counts: ReadonlyMap<string, PartCount>,
  root: Json,
  voice: Voice = ENGLISH,
): string => {
  const count = counts.get(part.id);
  if (count === undefined) {
    if (part.lists.length === 0) return phrase(voice, 'nothing is asked');
    const entries = part.lists.reduce((sum, list) => sum + entered(at(root, [list.at])), 0);
    return entries === 0
      ? phrase(voice, 'nothing entered yet')
      : phrase(voice, '{count} entered', { count: entries });
  }
  return count.unknown === 0
    ? phrase(voice, 'all {asked} known', count)
    : phrase(voice, '{unknown} of {asked} unknown', count);
};

/** Where a value is entered: a field of the form, or the set on which something hangs. */
export const placeOfValue = (path: string): Place => {
  const keys = keysOf(path);
  const part = partOf(keys);
  if (part !== null) {
    return { kind: 'house', part: 'enter', at: null, inside: part.id, field: path };
  }
  const [, set = ''] = keys;
  return { kind: 'set', set };
};

/** What most sets wait for; of as many, what stands first in the order of the house. */
export const mostWaitedFor = (asked: readonly Asked[]): Asked | null =>
  asked
    .filter(({ isUnknown }) => isUnknown)
    .reduce<Asked | null>(
      (most, each) => (most === null || each.sets > most.sets ? each : most),
      null,
    );
