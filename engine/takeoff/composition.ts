/** What a kind of take-off is made of, before the masses are added up. */
import type { Term, Working } from '#findings';
import { measure } from '#findings';
import type { Refusal } from '#outcome';
import type { Figure } from './figure.ts';
import { countOf } from './figure.ts';
import type { Draft, Factor, TakenMass } from './line.ts';
import { lineOf } from './line.ts';
import { refuse } from './refusal-codes.ts';

/** A working without its result. */
export type WorkingDraft = {
  readonly title: string;
  readonly formula: string;
  readonly terms: readonly Term[];
  readonly source: string;
  readonly omits?: string;
};

export type Composition = {
  readonly drafts: readonly Draft[];
  /** Pipe or chain in the hem, which arrives all at once; null where there is none. */
  readonly hemDrafts: readonly Draft[] | null;
  /** What is wrong with the take-off as a whole. */
  readonly faults: readonly Refusal[];
  readonly working: WorkingDraft;
  readonly hemWorking: WorkingDraft | null;
};

export const ONE: Figure = countOf(1, 'one', 'number');

/** A line of one part that is a single product. */
export const single = (name: string, ...factors: readonly Factor[]): Draft => ({
  name,
  count: ONE,
  products: [factors],
  xs: null,
  isHem: false,
});

/** A take-off that is a list must list something. */
export const emptyListFaults = (drafts: readonly Draft[], field: string): readonly Refusal[] =>
  drafts.length > 0
    ? []
    : [refuse('nothingListed', field, { found: 'no line', accepted: 'one line or more' })];

/** Lines as the terms of a sum, m1 + m2 + …: the sheet has the product behind each. */
export const sumTerms = (
  drafts: readonly Draft[],
): { readonly formula: string; readonly terms: readonly Term[] } => {
  const terms = drafts.map((draft, index): Term => {
    const { name, count, totalKg, source } = lineOf(draft);
    return {
      symbol: `m${index + 1}`,
      meaning: count === null || count === 1 ? name : `${name}, ${count} of them`,
      value: totalKg === null ? null : measure(totalKg, 'mass'),
      ...(source === null ? {} : { source }),
    };
  });
  const formula = terms.length === 0 ? '0' : terms.map(({ symbol }) => symbol).join(' + ');
  return { formula, terms };
};

export const finishWorking = (
  draft: WorkingDraft,
  symbol: string,
  mass: TakenMass | null,
): Working => ({
  ...draft,
  result: {
    symbol,
    meaning: draft.title,
    value: mass === null ? null : measure(mass.massKg, 'mass'),
  },
  limit: null,
});
