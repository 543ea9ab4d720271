/** Our sentences with names put in: the sentence turns for a UK house, the names never do. */
import { phrase, type Voice } from '#texts';

/** Fills `{name}`; a hole that nothing fills is a defect. */
export const filled = (
  sentence: string,
  house: Voice,
  names: Readonly<Record<string, string>> = {},
): string => phrase(house, sentence, names);
