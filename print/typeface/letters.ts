/**
 * Which glyph stands for which letter: the `cmap` table, read and written anew.
 *
 * Source  OpenType 1.9, chapter "cmap", from memory: format 4 is read, which every font of the face
 *         has, and format 12 is written, which needs no arithmetic
 */
import { assert } from '#outcome';
import { type Tables, tableOf } from './woff.ts';

/** Glyph numbers by code point. */
export type Letters = ReadonlyMap<number, number>;

const WINDOWS = 3;
const UNICODE = 1;

const subtableStart = (cmap: Buffer): number => {
  const count = cmap.readUInt16BE(2);
  const entries = Array.from({ length: count }, (_, index) => 4 + index * 8);
  const entry = entries.find(
    (at) => cmap.readUInt16BE(at) === WINDOWS && cmap.readUInt16BE(at + 2) === UNICODE,
  );
  assert(entry !== undefined, 'a file of the face maps Unicode to glyphs');
  const start = cmap.readUInt32BE(entry + 4);
  assert(cmap.readUInt16BE(start) === 4, 'that map is of format 4');
  return start;
};

/** The letters of a font that it draws; those it maps to no glyph are left out. */
export const lettersOf = (tables: Tables): Letters => {
  const cmap = tableOf(tables, 'cmap');
  const start = subtableStart(cmap);
  const segments = cmap.readUInt16BE(start + 6) / 2;
  const [ends, starts, deltas, offsets] = [
    14,
    16 + 2 * segments,
    16 + 4 * segments,
    16 + 6 * segments,
  ].map((place) => start + place) as [number, number, number, number];
  const letters = new Map<number, number>();
  for (let segment = 0; segment < segments; segment += 1) {
    const [end, first, delta, offset] = [ends, starts, deltas, offsets].map((place) =>
      cmap.readUInt16BE(place + 2 * segment),
    ) as [number, number, number, number];
    for (let point = first; point <= end && point !== 0xffff; point += 1) {
      const place = offsets + 2 * segment + offset + 2 * (point - first);
      const listed = offset === 0 ? point : cmap.readUInt16BE(place);
      const glyph = offset !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) letters.set(point, glyph);
    }
  }
  return letters;
};

const GROUP = 12;
const FORMAT_12_HEADER = 16;
const CMAP_HEADER = 12;

/** The same as a table: one group of one letter each. */
export const lettersTable = (letters: Letters): Buffer => {
  const sorted = [...letters].toSorted(([one], [other]) => one - other);
  const length = FORMAT_12_HEADER + sorted.length * GROUP;
  const table = Buffer.alloc(CMAP_HEADER + length);
  table.writeUInt16BE(1, 2);
  table.writeUInt16BE(WINDOWS, 4);
  table.writeUInt16BE(10, 6);
  table.writeUInt32BE(CMAP_HEADER, 8);
  table.writeUInt16BE(12, CMAP_HEADER);
  table.writeUInt32BE(length, CMAP_HEADER + 4);
  table.writeUInt32BE(sorted.length, CMAP_HEADER + 12);
  sorted.forEach(([point, glyph], index) => {
    const at = CMAP_HEADER + FORMAT_12_HEADER + index * GROUP;
    [point, point, glyph].forEach((value, place) => {
      table.writeUInt32BE(value, at + 4 * place);
    });
  });
  return table;
};
