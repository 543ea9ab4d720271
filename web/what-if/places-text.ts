/** Where an item pulls along the batten, as one line of text: points, or one end to the other. */
import { ok, type Result } from '#outcome';
import { decimalMarkOf, type QuantityRefusal } from '#quantities';
import { phrase, type Voice } from '#texts';
import { readTyped, shownText } from '../grid/typed-marks.ts';
import { isList, isObject, type Json, type JsonObject } from '../keeping/json.ts';

const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');

/** `-20 ft to 20 ft`, `-4.5 ft; 4.5 ft`; empty where nobody has said. */
export const placesText = (placement: Json | undefined): string => {
  if (!isObject(placement)) return '';
  if (isList(placement['points'])) return placement['points'].map(textOf).join('; ');
  const [from, to] = [textOf(placement['from']), textOf(placement['to'])];
  return from === '' && to === '' ? '' : `${from} to ${to}`;
};

/** What is typed is judged by the documents; undefined takes the place away. */
export const placesFrom = (text: string): JsonObject | undefined => {
  const plain = text.trim();
  if (plain === '') return undefined;
  const span = /^(.+?)\s+to\s+(.+)$/i.exec(plain);
  if (span !== null) return { from: (span[1] ?? '').trim(), to: (span[2] ?? '').trim() };
  return {
    points: plain
      .split(/[;,]/)
      .map((part) => part.trim())
      .filter((part) => part !== ''),
  };
};

const mark = (voice: Voice) => decimalMarkOf({ units: 'metric', ...voice });

/** Between one end and the other, as the voice says it. */
const between = (voice: Voice): string =>
  phrase(voice, '{from} to {to}', { from: '', to: '' }).trim();

/** A written text of places as a person of that language reads it. */
export const shownPlaces = (text: string, voice: Voice): string =>
  voice.tongue === undefined
    ? text
    : shownText(text.replace(' to ', ` ${between(voice)} `), mark(voice));

/** What is typed as it is written; refused where the language reads a figure two ways. */
export const readPlaces = (typed: string, voice: Voice): Result<string, QuantityRefusal> => {
  if (voice.tongue === undefined) return ok(typed);
  const word = between(voice).toLowerCase();
  const parts: string[] = [];
  for (const part of typed.split(new RegExp(`(;|\\s(?:to|${word})\\s)`, 'i'))) {
    const sign = part.trim();
    if (sign === ';' || [word, 'to'].includes(sign.toLowerCase())) {
      parts.push(sign === ';' ? '; ' : ' to ');
      continue;
    }
    const read = readTyped('length', sign, mark(voice));
    if (!read.ok) return read;
    parts.push(read.value);
  }
  return ok(parts.join(''));
};
