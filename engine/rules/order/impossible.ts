import { type Refusal, refusal } from '#outcome';
import { type OrderRefusal, REFUSALS } from './refusal-codes.ts';

export type Impossible = { readonly refusal: Refusal };

/** A step that cannot be replayed: what was found in it and what would be taken. */
export const impossible = (
  why: OrderRefusal,
  step: number,
  found: string,
  accepted: string,
): Impossible => ({
  refusal: refusal(REFUSALS[why].code, step < 0 ? 'start' : `steps[${step}]`, { found, accepted }),
});

export const isImpossible = (answer: object): answer is Impossible => 'refusal' in answer;

export const listed = (names: readonly string[]): string =>
  names.length === 0 ? 'nothing' : names.join(', ');
