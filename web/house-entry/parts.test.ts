import { describe, expect, it } from 'vitest';
import { schemaOf } from '#documents';
import { documentForm, type Form, fieldAt, leavesBelow } from './form.ts';
import { hasLabel } from './labels.ts';
import { PARTS, partOf } from './parts.ts';

type Node = Readonly<Record<string, unknown>>;

/**
 * Every place in the published schema where a value is written, read from the schema itself and not
 * by the code of the forms. A sourced value is one place; a list and its entries are one.
 */
const leavesOfSchema = (node: Node, path: string): readonly string[] => {
  const properties = node['properties'] as Readonly<Record<string, Node>> | undefined;
  if (properties !== undefined) {
    return Object.entries(properties).flatMap(([key, inner]) =>
      leavesOfSchema(inner, path === '' ? key : `${path}.${key}`),
    );
  }
  const kinds = (node['oneOf'] ?? node['anyOf']) as readonly Node[] | undefined;
  if (kinds !== undefined) {
    // `{ unknown: why }` is a way of writing the list beside it.
    const whole = kinds.filter(({ properties: inner }) => !Object.hasOwn(inner ?? {}, 'unknown'));
    return [...new Set(whole.flatMap((kind) => leavesOfSchema(kind, path)))];
  }
  const entry = (node['items'] || node['additionalProperties']) as Node | false | undefined;
  return entry ? leavesOfSchema(entry, path) : [path];
};

const whole = documentForm('house');

/** The same, as the forms have them: part by part, group by group. */
const leavesOfForms = (): readonly string[] =>
  PARTS.flatMap(({ groups, lists }) => [
    ...groups.flatMap(({ paths }) =>
      paths.flatMap((path) => leavesBelow(fieldAt(whole, path).form, path)),
    ),
    ...lists.flatMap(({ at, groups: own }) => leavesOfList(at, fieldAt(whole, at).form, own)),
  ]);

const leavesOfList = (
  at: string,
  form: Form,
  groups: (typeof PARTS)[number]['groups'] | undefined,
): readonly string[] =>
  groups === undefined
    ? leavesBelow(form, at)
    : groups.flatMap(({ paths }) =>
        paths.flatMap((path) => leavesBelow(fieldAt(form, path).form, `${at}.${path}`)),
      );

const byText = (one: string, other: string): number => (one < other ? -1 : 1);

describe('the forms of a house', () => {
  const leaves = [...new Set(leavesOfSchema(schemaOf('house'), ''))];

  it('ask for everything that a house document may hold, each once', () => {
    expect(leaves.length).toBeGreaterThan(150);
    expect(leavesOfForms().toSorted(byText)).toEqual(leaves.toSorted(byText));
  });

  it('call every field by a word of the trade', () => {
    expect(leaves.filter((path) => !hasLabel(path))).toEqual([]);
  });

  it('know in which part a field stands', () => {
    expect(partOf(['rules', 'lockLimit'])?.id).toBe('rules');
    expect(partOf(['spreader', 'mass'])?.id).toBe('bricks');
    expect(partOf(['lineSets', '11', 'y'])?.id).toBe('sets');
    expect(partOf(['hangs', '9'])).toBe(null);
  });
});
