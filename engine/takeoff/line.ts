/** A line of the take-off sheet, and the mass of several of them. */
import type { Reckoned } from '#findings';
import { blocked, reckoned } from '#findings';
import type { Basis } from '#house';
import { BASES } from '#house';
import type { Refusal } from '#outcome';
import type { Kilograms, Metres } from '#quantities';
import { kilograms } from '#quantities';
import type { Figure } from './figure.ts';
import type { Sum, Uncertain } from './sum-of-products.ts';
import { sumOfProducts } from './sum-of-products.ts';

/** A figure as it enters a product: itself, or one and itself for a share that is added. */
export type Factor = { readonly figure: Figure; readonly added: boolean };

export const times = (figure: Figure): Factor => ({ figure, added: false });
export const onePlus = (figure: Figure): Factor => ({ figure, added: true });

/** A line before it is worked out: so many of one, each a sum of products. */
export type Draft = {
  readonly name: string;
  readonly count: Figure;
  readonly products: readonly (readonly Factor[])[];
  /** Where its parts hang across the stage, one for each; null where the item says. */
  readonly xs: readonly Metres[] | null;
  /** Whether it is the pipe or chain in the hem of a cloth. */
  readonly isHem: boolean;
};

export type TakeoffLine = {
  readonly name: string;
  readonly count: number | null;
  readonly eachKg: Kilograms | null;
  readonly totalKg: Kilograms | null;
  /** Half width of the total; null where a tolerance is unknown. */
  readonly uncertaintyKg: Kilograms | null;
  /** No stronger than the weakest of what the line is made of. */
  readonly basis: Basis | null;
  readonly source: string | null;
  readonly xs: readonly Metres[] | null;
  readonly isHem: boolean;
};

export type TakenMass = {
  readonly massKg: Kilograms;
  /** Every figure at its worst, added up linearly; null where a tolerance is unknown. */
  readonly uncertaintyKg: Kilograms | null;
  /** The same as root-sum-square, for information: no guard may use it. */
  readonly uncertaintyRssKg: Kilograms | null;
};

export const lineOf = (draft: Draft): TakeoffLine => {
  const figures = figuresOf(draft);
  const each = sumOf(draft.products);
  const total = sumOf(productsOf(draft));
  return {
    name: draft.name,
    count: draft.count.value,
    eachKg: each === null ? null : kilograms(each.value),
    totalKg: total === null ? null : kilograms(total.value),
    uncertaintyKg: kilogramsOrNull(total?.worst ?? null),
    basis: weakestBasis(figures),
    source: sourcesOf(figures),
    xs: draft.xs,
    isHem: draft.isHem,
  };
};

/** The mass of several lines together, or every figure that is missing for it. */
export const massOf = (
  drafts: readonly Draft[],
  needsBeside: readonly string[],
): Reckoned<TakenMass> => {
  const needs = [...needsBeside, ...unique(drafts.flatMap(figuresOf).flatMap((it) => it.needs))];
  const sum = sumOf(drafts.flatMap(productsOf));
  if (needs.length > 0 || sum === null) return blocked(needs);
  return reckoned({
    massKg: kilograms(sum.value),
    uncertaintyKg: kilogramsOrNull(sum.worst),
    uncertaintyRssKg: kilogramsOrNull(sum.rootSumSquare),
  });
};

export const toleranceNeedsOf = (drafts: readonly Draft[]): readonly string[] =>
  unique(drafts.flatMap(figuresOf).flatMap(({ toleranceNeeds }) => toleranceNeeds));

export const faultsOf = (drafts: readonly Draft[]): readonly Refusal[] =>
  drafts.flatMap(figuresOf).flatMap(({ faults }) => faults);

export const unique = (texts: readonly string[]): readonly string[] => [...new Set(texts)];

const figuresOf = ({ count, products }: Draft): readonly Figure[] => [
  count,
  ...products.flat().map(({ figure }) => figure),
];

const productsOf = ({ count, products }: Draft): readonly (readonly Factor[])[] =>
  products.map((product) => [times(count), ...product]);

/** Null where a figure is missing: a sum with a hole in it is no sum. */
const sumOf = (products: readonly (readonly Factor[])[]): Sum | null => {
  const factors = products.map((product) => product.map(uncertainOf));
  const whole = factors.map((product) => product.filter((factor) => factor !== null));
  if (whole.some((product, index) => product.length !== factors[index]?.length)) return null;
  return sumOfProducts(whole);
};

const uncertainOf = ({ figure, added }: Factor): Uncertain | null => {
  const { field, value, tolerance } = figure;
  return value === null ? null : { key: field, value: added ? 1 + value : value, tolerance };
};

const kilogramsOrNull = (massKg: number | null): Kilograms | null =>
  massKg === null ? null : kilograms(massKg);

const weakestBasis = (figures: readonly Figure[]): Basis | null => {
  if (figures.some(({ value }) => value === null)) return null;
  const bases = figures.map(({ basis }) => basis).filter((basis) => basis !== null);
  if (bases.length === 0) return null;
  // What is multiplied is calculated, however well its factors were weighed and measured.
  const made: readonly Basis[] = bases.length > 1 ? [...bases, 'calculated'] : bases;
  return BASES[Math.max(...made.map((basis) => BASES.indexOf(basis)))] ?? null;
};

const sourcesOf = (figures: readonly Figure[]): string | null => {
  const sources = unique(figures.map(({ source }) => source).filter((source) => source !== null));
  return sources.length === 0 ? null : sources.join('; ');
};
