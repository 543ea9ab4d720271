/** In whose words something is said: the trade's words of the house, and the language read. */

import type { DecimalMark } from '#quantities';

/** A plural has one whole sentence for each form of number that its language knows. */
export type Plural = {
  /** The name of the number that decides. */
  readonly by: string;
  readonly forms: Readonly<Record<string, string>>;
};

/** One more language than English, as plain data: it can be cloned to another thread. */
export type Tongue = {
  readonly language: string;
  /** Between a number and its fraction. */
  readonly decimalMark: DecimalMark;
  /** Short names of the months, January first. */
  readonly months: readonly string[];
  /** A date of the parts `{day}`, `{month}` and `{year}`. */
  readonly date: string;
  /** By its English text. */
  readonly texts: Readonly<Record<string, string | Plural>>;
  /** English texts of the engine among them, whose holes the engine fills itself. */
  readonly told?: readonly string[] | undefined;
};

/** A house is one. Without a tongue it speaks English. */
export type Voice = {
  readonly words: 'US' | 'UK';
  readonly tongue?: Tongue | undefined;
};

/** Where no house is at hand: words that are the same in every English. */
export const ENGLISH: Voice = { words: 'US' };
