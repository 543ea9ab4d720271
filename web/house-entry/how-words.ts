/** How a value is known, in words. */
import { BASES, type Basis } from '#house';
import { basisWords } from '#sheets';
import type { Voice } from '#texts';
import { isObject, type Json } from '../keeping/json.ts';

const isBasis = (value: Json | undefined): value is Basis => BASES.some((basis) => basis === value);

/** `measured, demo plan` of a "given"; empty where there is none. */
export const givenWords = (given: Json | undefined, voice: Voice): string => {
  if (!isObject(given) || !isBasis(given['basis'])) return '';
  const source = given['source'];
  const how = basisWords(given['basis'], voice);
  return typeof source === 'string' ? `${how}, ${source}` : how;
};
