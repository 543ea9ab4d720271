/** What zod says against an input, told in our codes and our words, each with its path. */
import type { z } from 'zod';
import type { Faults } from '../faults.ts';
import { describe, isObject, pathTo } from '../json.ts';
import { nearestName } from '../nearest-name.ts';
import type { RefusalName } from '../refusal-codes.ts';

type Issue = z.core.$ZodIssue;
type Keys = readonly PropertyKey[];

export const refuseIssues = (
  issues: readonly Issue[],
  input: unknown,
  faults: Faults,
  around: Keys = [],
): void => {
  for (const issue of issues) {
    const keys = [...around, ...issue.path];
    const told: Told = { issue, input, keys, value: valueAt(input, keys) };
    if (issue.code === 'invalid_union' && issue.errors.length > 0) {
      refuseIssues(branchFor(issue.errors, told.value), input, faults, keys);
    } else refuseIssue(told, faults);
  }
};

type Told = {
  readonly issue: Issue;
  readonly input: unknown;
  readonly keys: Keys;
  readonly value: unknown;
};

const valueAt = (input: unknown, keys: Keys): unknown =>
  keys.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );

const pathOf = (keys: Keys): string =>
  keys.reduce<string>((path, key) => pathTo(path, typeof key === 'number' ? key : String(key)), '');

/**
 * Of the ways in which a value may be written, the one that it comes nearest to: the one of its own
 * type, and of these the one with the fewest faults.
 */
const branchFor = (branches: readonly (readonly Issue[])[], value: unknown): readonly Issue[] => {
  const isWrongType = (issues: readonly Issue[]): boolean =>
    issues.some(({ code, path }) => code === 'invalid_type' && path.length === 0);
  const ofType = branches.filter((issues) => isObject(value) && !isWrongType(issues));
  const [nearest] = [...(ofType.length > 0 ? ofType : branches)].sort(
    (one, other) => one.length - other.length,
  );
  return nearest ?? [];
};

const refuseIssue = (told: Told, faults: Faults): void => {
  const { issue, keys, value, input } = told;
  if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys) {
      const fields = Object.keys(valueAt(input, keys) as object).filter(
        (name) => !issue.keys.includes(name),
      );
      faults.refuse('fieldUnknown', pathOf([...keys, key]), {
        found: `the field ${describe(key)}`,
        accepted: `only the fields of the schema${beside(fields)}`,
      });
    }
    return;
  }
  const isAbsent = value === undefined && keys.length > 0;
  const name = isAbsent ? 'fieldMissing' : nameOf(issue, value);
  faults.refuse(name, pathOf(keys), { found: describe(value), accepted: acceptedBy(told) });
};

const beside = (fields: readonly string[]): string =>
  fields.length === 0 ? '' : `, such as ${fields.slice(0, 4).join(', ')} here`;

const nameOf = (issue: Issue, value: unknown): RefusalName => {
  switch (issue.code) {
    case 'invalid_type':
      if (value === null) return 'nullWritten';
      return issue.expected === 'int' && typeof value === 'number' ? 'notWhole' : 'wrongType';
    case 'too_small':
      return tooSmall(issue.origin, value);
    case 'too_big':
      return tooBig(issue.origin);
    case 'invalid_value':
    case 'invalid_union':
    case 'invalid_key':
      return typeof value === 'string' || typeof value === 'number' ? 'badChoice' : 'wrongType';
    default:
      return 'wrongType';
  }
};

const tooSmall = (origin: string, value: unknown): RefusalName => {
  if (origin === 'string') return 'textBlank';
  if (origin === 'array') return 'tooFew';
  if (value === 0) return 'zero';
  return typeof value === 'number' && value < -1e4 ? 'beyondReason' : 'negative';
};

const tooBig = (origin: string): RefusalName => {
  if (origin === 'string') return 'textTooLong';
  return origin === 'array' ? 'tooMany' : 'beyondReason';
};

const acceptedBy = ({ issue, value }: Told): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'int' ? 'a whole number' : `a value of type ${issue.expected}`;
    case 'too_small':
      return `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}${of(issue.origin)}`;
    case 'too_big':
      return `at most ${issue.maximum}${of(issue.origin)}`;
    case 'invalid_value':
      return choices(issue.values.map(String), value);
    case 'invalid_union':
      return choices('options' in issue ? (issue.options ?? []).map(String) : [], value);
    default:
      return 'what the schema says';
  }
};

const of = (origin: string): string => {
  if (origin === 'array') return ' in the list';
  return origin === 'string' ? ' characters' : '';
};

const choices = (list: readonly string[], value: unknown): string => {
  const near = typeof value === 'string' ? nearestName(value, list) : undefined;
  return `one of ${list.join(', ')}${near === undefined ? '' : `; perhaps ${near}`}`;
};
