import { describe, expect, it } from 'vitest';
import { HOUSE_PROVOCATIONS } from './provocations/house.ts';
import { ORDER_PROVOCATIONS } from './provocations/orders.ts';
import { SHOW_PROVOCATIONS, STATE_PROVOCATIONS } from './provocations/show-and-state.ts';
import type { Provocation, Provocations } from './provocations/spoil.ts';
import { STRUCTURE_PROVOCATIONS, VALUE_PROVOCATIONS } from './provocations/structure-and-values.ts';
import { ENVELOPE_PROVOCATIONS, TEXT_PROVOCATIONS } from './provocations/text-and-envelope.ts';
import { DOCUMENT_REFUSALS } from './refusal-codes.ts';

const GATHERED = [
  TEXT_PROVOCATIONS,
  ENVELOPE_PROVOCATIONS,
  STRUCTURE_PROVOCATIONS,
  VALUE_PROVOCATIONS,
  HOUSE_PROVOCATIONS,
  SHOW_PROVOCATIONS,
  STATE_PROVOCATIONS,
  ORDER_PROVOCATIONS,
];

/** One code may be provoked by documents of several kinds. */
const CODES = [...new Set(GATHERED.flatMap((some) => Object.keys(some)))];

const ALL: Provocations = Object.fromEntries(
  CODES.map((code) => [code, GATHERED.flatMap((some) => some[code] ?? [])]),
);

/** Freezes all of a value, so that a reader which changed its input would throw. */
const frozen = (value: unknown): unknown => {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const inner of Object.values(value)) frozen(inner);
  return value;
};

const inOrder = (codes: readonly string[]): readonly string[] =>
  codes.toSorted((one, other) => (one < other ? -1 : 1));

const refusalsOf = ({ read, input }: Provocation) => {
  const answer = read(frozen(input));
  return answer.ok ? [] : answer.error;
};

for (const [code, provocations] of Object.entries(ALL)) {
  describe(`[${code}]`, () => {
    it.each(provocations.map((one) => ({ ...one, name: one.title })))(
      `[${code}] $name`,
      (provocation) => {
        const refusals = refusalsOf(provocation);
        const there = refusals.find((one) => one.code === code && one.path === provocation.path);
        expect(there, JSON.stringify(refusals.slice(0, 5))).toBeDefined();
        const silent = refusals.filter(({ found, accepted }) => !found.trim() || !accepted.trim());
        expect(silent).toEqual([]);
        expect(inOrder(refusals.map((one) => one.code))).toEqual(
          inOrder([code, ...provocation.with]),
        );
      },
    );
  });
}

describe('the list of refusals', () => {
  it('has each code once, in order', () => {
    const codes = DOCUMENT_REFUSALS.map(({ code }) => code);
    expect(codes).toEqual(inOrder([...new Set(codes)]));
    expect(codes.length).toBeGreaterThanOrEqual(45);
  });

  it('has three documents or more against each code', () => {
    const few = DOCUMENT_REFUSALS.filter(({ code }) => (ALL[code]?.length ?? 0) < 3);
    expect(few).toEqual([]);
  });

  it('knows every code of its own that is provoked', () => {
    const known = new Set(DOCUMENT_REFUSALS.map(({ code }) => code));
    const own = Object.keys(ALL).filter((code) => code.startsWith('DOC-'));
    expect(own.filter((code) => !known.has(code))).toEqual([]);
  });
});
