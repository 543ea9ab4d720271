/**
 * What an edit changed, as small steps that can be taken and taken back. They are what undo keeps,
 * so that a long afternoon of edits fits into the few megabytes that a browser gives a page.
 */
import { unreachable } from '#outcome';
import { at, isList, isObject, isSame, type Json, type JsonPath, withAt } from './json.ts';

/** A field that is absent before or after is not in the step. */
export type Change =
  | {
      readonly kind: 'put';
      readonly path: JsonPath;
      readonly before?: Json;
      readonly after?: Json;
    }
  | {
      readonly kind: 'splice';
      readonly path: JsonPath;
      readonly at: number;
      readonly removed: readonly Json[];
      readonly added: readonly Json[];
    };

/** The steps from one document to the other. What both share is not looked into. */
export const changesBetween = (
  before: Json,
  after: Json,
  path: JsonPath = [],
): readonly Change[] => {
  if (before === after) return [];
  if (isList(before) && isList(after)) return listChanges(before, after, path);
  if (isObject(before) && isObject(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...keys].flatMap((key) => {
      const [old, fresh] = [before[key], after[key]];
      if (old === undefined || fresh === undefined) return [put([...path, key], old, fresh)];
      return changesBetween(old, fresh, [...path, key]);
    });
  }
  return [put(path, before, after)];
};

const put = (path: JsonPath, before: Json | undefined, after: Json | undefined): Change => ({
  kind: 'put',
  path,
  ...(before === undefined ? {} : { before }),
  ...(after === undefined ? {} : { after }),
});

const listChanges = (
  before: readonly Json[],
  after: readonly Json[],
  path: JsonPath,
): readonly Change[] => {
  if (before.length === after.length) {
    return before.flatMap((value, index) =>
      changesBetween(value, after[index] ?? null, [...path, index]),
    );
  }
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && isSame(before[head], after[head])) head += 1;
  let tail = 0;
  while (tail < shorter - head && isSame(before.at(-1 - tail), after.at(-1 - tail))) tail += 1;
  const removed = before.slice(head, before.length - tail);
  const added = after.slice(head, after.length - tail);
  return [{ kind: 'splice', path, at: head, removed, added }];
};

const take = (root: Json, change: Change): Json => {
  switch (change.kind) {
    case 'put':
      return withAt(root, change.path, change.after);
    case 'splice': {
      const list = at(root, change.path);
      const fresh = [...(isList(list) ? list : [])];
      fresh.splice(change.at, change.removed.length, ...change.added);
      return withAt(root, change.path, fresh);
    }
    default:
      return unreachable(change);
  }
};

const reversed = (change: Change): Change => {
  switch (change.kind) {
    case 'put':
      return put(change.path, change.after, change.before);
    case 'splice':
      return { ...change, removed: change.added, added: change.removed };
    default:
      return unreachable(change);
  }
};

/** The document after the steps. */
export const withChanges = (root: Json, changes: readonly Change[]): Json =>
  changes.reduce(take, root);

/** The document before the steps, given the one after them. */
export const withoutChanges = (root: Json, changes: readonly Change[]): Json =>
  changes.toReversed().map(reversed).reduce(take, root);
