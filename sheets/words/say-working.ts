/** A formula twice, as symbols and with the numbers put in, with its result and its limit. */

import type { Measure, Term, Working } from '#findings';
import type { House } from '#house';
import { phrase, told } from '#texts';
import { sayMeasure } from './say-measure.ts';
import { inHouseWords } from './trade-translation.ts';

export type SaidWorking = {
  readonly title: string;
  readonly symbols: string;
  readonly numbers: string;
  readonly result: string;
  /** `limit 66 in (demo plan)`; null where nothing is held against one. */
  readonly limit: string | null;
  readonly source: string;
  readonly omits: string | null;
  readonly terms: readonly {
    readonly symbol: string;
    readonly meaning: string;
    readonly value: string;
    readonly source: string | null;
  }[];
};

const UNKNOWN = 'unknown';
const PLUS = '+';
const TRUE_MINUS = '\u2212';

const sizeOf = (value: Measure): Measure => ({ ...value, value: Math.abs(value.value) });

const said = (value: Measure | null, house: House): string => {
  if (value === null) return UNKNOWN;
  const fine = { style: 'fine' } as const;
  if (value.kind === 'imbalance' || value.value >= 0) return sayMeasure(value, house, fine);
  return phrase(house, 'less {sizeOf}', { sizeOf: sayMeasure(sizeOf(value), house, fine) });
};

/**
 * The formula with numbers for its symbols. A part below nothing turns the operator before it, so
 * that no reader meets a plus and a minus in a row.
 */
const withNumbers = (formula: string, terms: readonly Term[], house: House): string => {
  const bySymbol = new Map(terms.map((term) => [term.symbol, term.value]));
  const words = formula.split(' ');
  const out: string[] = [];
  for (const word of words) {
    const value = bySymbol.get(word);
    if (value === undefined) {
      out.push(word);
      continue;
    }
    const operator = out.at(-1);
    const turns = operator === PLUS || operator === TRUE_MINUS;
    if (value !== null && value.kind !== 'imbalance' && value.value < 0 && turns) {
      out[out.length - 1] = operator === PLUS ? TRUE_MINUS : PLUS;
      out.push(said(sizeOf(value), house));
      continue;
    }
    out.push(said(value, house));
  }
  return out.join(' ');
};

export const sayWorking = (working: Working, house: House): SaidWorking => {
  const { formula, terms, result, limit, source, omits } = working;
  const fine = { round: 'down', style: 'fine' } as const;
  const limitWords =
    limit === null
      ? null
      : phrase(house, 'limit {measure} ({source})', {
          measure: sayMeasure(limit.value, house, fine),
          source: told(house, limit.source),
        });
  return {
    title: inHouseWords(working.title, house),
    symbols: `${result.symbol} = ${formula}`,
    numbers: `${result.symbol} = ${withNumbers(formula, terms, house)}`,
    result: said(result.value, house),
    limit: limitWords,
    source: inHouseWords(source, house),
    omits: omits === undefined ? null : inHouseWords(omits, house),
    terms: terms.map((term) => ({
      symbol: term.symbol,
      meaning: inHouseWords(term.meaning, house),
      value: said(term.value, house),
      source: term.source === undefined ? null : told(house, term.source),
    })),
  };
};
