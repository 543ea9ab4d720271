/** One number that goes into a take-off, with what it may be off by, or why it is missing. */
import type { MeasureKind, Term } from '#findings';
import { measure } from '#findings';
import type { Basis, HouseRules, Known } from '#house';
import { known } from '#house';
import type { Refusal } from '#outcome';
import { refuse } from './refusal-codes.ts';

export type FigureName = {
  readonly symbol: string;
  readonly meaning: string;
  readonly kind: MeasureKind;
  /** Path of the field below the item: `takeoff.members[2].length`. */
  readonly field: string;
  /** What to write where there is none: nothing is taken for zero because it was left out. */
  readonly ifNone?: string;
};

export type Figure = FigureName & {
  readonly value: number | null;
  /** Half width in the unit of the value; null where nobody has said. */
  readonly tolerance: number | null;
  readonly basis: Basis | null;
  readonly source: string | null;
  /** Why the value is missing, in words; empty where it is not. */
  readonly needs: readonly string[];
  readonly toleranceNeeds: readonly string[];
  readonly faults: readonly Refusal[];
};

export type ToleranceByBasis = HouseRules['toleranceByBasis'];

/** At 3 a share is three times the cloth itself: somebody has written per cent as a number. */
const SHARE_LIMIT = 3;

const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  weighed: 'weighed',
  measured: 'measured',
  published: 'published',
  calculated: 'calculated',
  estimated: 'estimated',
  houseRule: 'house rule',
  commonPractice: 'common practice',
  assumption: 'assumption',
  invented: 'invented',
};

/**
 * Reads a value with its tolerance: its own where it has one, else the share that the house sets
 * for its basis, else none. A value out of its range is missing, and its refusal says why.
 */
export const figureOf = (
  given: Known<number>,
  name: FigureName,
  toleranceByBasis: ToleranceByBasis,
): Figure => {
  if (!given.known) return missing(name, [needOf(name, given.why)], []);
  const fault = valueFault(name, given.value);
  if (fault !== null) return missing(name, [needOfFault(name, fault)], [fault]);
  const { basis, source } = given.provenance;
  return {
    ...name,
    value: given.value,
    basis,
    source: source ?? null,
    needs: [],
    ...toleranceOf(given, name, toleranceByBasis),
  };
};

/** A number of parts as it stands on the list: it is what it is. */
export const countOf = (count: number, field: string, meaning: string): Figure => {
  const name: FigureName = { symbol: 'n', meaning, kind: 'count', field };
  const figure = figureOf(known(count, { basis: 'measured' }, 0), name, {});
  return { ...figure, basis: null };
};

/** The figure as a symbol of a formula, with who says so. */
export const termOf = ({ symbol, meaning, kind, value, basis, source }: Figure): Term => ({
  symbol,
  meaning,
  value: value === null ? null : measure(value, kind),
  ...(basis === null ? {} : { source: withBasis(basis, source) }),
});

const withBasis = (basis: Basis, source: string | null): string =>
  source === null ? BASIS_WORDS[basis] : `${BASIS_WORDS[basis]}: ${source}`;

const missing = (
  name: FigureName,
  needs: readonly string[],
  faults: readonly Refusal[],
): Figure => ({
  ...name,
  value: null,
  tolerance: null,
  basis: null,
  source: null,
  needs,
  toleranceNeeds: [],
  faults,
});

const needOf = ({ meaning, field, ifNone }: FigureName, why = 'not given'): string => {
  const hint = ifNone === undefined ? '' : `; write ${ifNone} if there is none`;
  return `${meaning} (${field}): ${why}${hint}`;
};

const needOfFault = ({ meaning, field }: FigureName, { found, accepted }: Refusal): string =>
  `${meaning} (${field}): found ${found}, wanted ${accepted}`;

const valueFault = ({ kind, field }: FigureName, value: number): Refusal | null => {
  const found = String(value);
  if (!Number.isFinite(value) || value < 0) {
    const accepted = 'a finite number, 0 or more';
    return refuse('notMagnitude', field, { found, accepted });
  }
  if (kind === 'count' && !Number.isInteger(value)) {
    return refuse('notCount', field, { found, accepted: 'a whole number, 0 or more' });
  }
  if (kind === 'ratio' && value >= SHARE_LIMIT) {
    return refuse('shareTooLarge', field, { found, accepted: 'a share under 3, as 0.5 for 50 %' });
  }
  return null;
};

const toleranceOf = (
  given: Known<number> & { readonly known: true },
  { meaning, field, kind }: FigureName,
  toleranceByBasis: ToleranceByBasis,
): Pick<Figure, 'tolerance' | 'toleranceNeeds' | 'faults'> => {
  const { basis } = given.provenance;
  // A count that is wrong is a mistake and no tolerance: it is exact unless somebody says not.
  const share = kind === 'count' ? 0 : toleranceByBasis[basis];
  const tolerance = given.tolerance ?? (share === undefined ? undefined : share * given.value);
  const of = `tolerance of the ${meaning} (${field})`;
  if (tolerance === undefined) {
    const why = `none given, and the house sets none for what is ${BASIS_WORDS[basis]}`;
    return { tolerance: null, toleranceNeeds: [`${of}: ${why}`], faults: [] };
  }
  if (Number.isFinite(tolerance) && tolerance >= 0) {
    return { tolerance, toleranceNeeds: [], faults: [] };
  }
  const said = { found: String(tolerance), accepted: 'a finite half width, 0 or more' };
  const need = `${of}: found ${said.found}, wanted ${said.accepted}`;
  return {
    tolerance: null,
    toleranceNeeds: [need],
    faults: [refuse('tolerance', `${field}.tolerance`, said)],
  };
};
