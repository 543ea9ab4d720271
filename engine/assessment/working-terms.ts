/** Terms and limits of the workings of a structure, from the values of the house. */
import { type Measure, type MeasureKind, measure, type Term, type Working } from '#findings';
import type { House, Known, LineSet } from '#house';
import type { SetStructure } from './structure-types.ts';

export type StructureCase = {
  readonly lineSet: LineSet;
  readonly house: House;
  readonly structure: SetStructure;
  readonly arborKg: number | null;
};

export const term = (
  symbol: string,
  meaning: string,
  value: Measure | null,
  source?: string,
): Term => ({
  symbol,
  meaning,
  value,
  ...(source === undefined ? {} : { source }),
});

export const numberOf = (value: Known<number>): number | null => (value.known ? value.value : null);

export const knownTerm = (
  symbol: string,
  meaning: string,
  value: Known<number>,
  kind: MeasureKind,
): Term =>
  value.known
    ? term(symbol, meaning, measure(value.value, kind), sourceOf(value))
    : term(symbol, meaning, null);

export const sourceOf = (value: Known<number>): string | undefined =>
  value.known ? (value.provenance.source ?? value.provenance.basis) : undefined;

export const limitOf = (value: Known<number>, kind: MeasureKind): Working['limit'] =>
  value.known
    ? { value: measure(value.value, kind), source: sourceOf(value) ?? value.provenance.basis }
    : null;

/** For what is left out: a limit that nobody has given is said, and nothing is held against it. */
export const heldAgainst = (limit: Known<number>, name: string, omits: string): string =>
  limit.known ? omits : `${omits}; ${name} is not known, so that it is held against nothing`;
