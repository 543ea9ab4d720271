/** Where an item pulls along the batten, as one line of text: points, or one end to the other. */
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
