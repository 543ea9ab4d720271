/**
 * Figures of one width. The face draws figures as wide as each needs and keeps a second set for
 * columns of numbers behind its feature `tnum`, which lettering on a drawing cannot ask for; so
 * that set is found here and put in the place of the first.
 *
 * Source  OpenType 1.9, chapters "GSUB" and "Common Table Formats", from memory: lookups of type 1
 */
import { assert } from '#outcome';
import { type Tables, tableOf } from './woff.ts';

/** From the glyph of a figure to that of the same figure in the common width. */
export const tabularFigures = (tables: Tables): ReadonlyMap<number, number> => {
  const gsub = tableOf(tables, 'GSUB');
  const pairs = lookupsOf(gsub, 'tnum').flatMap((lookup) => singlePairs(gsub, lookup));
  assert(pairs.length > 0, 'the face has figures of one width');
  return new Map(pairs);
};

const numbersAt = (table: Buffer, at: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => table.readUInt16BE(at + 2 * index));

const lookupsOf = (gsub: Buffer, feature: string): readonly number[] => {
  const features = gsub.readUInt16BE(6);
  const lookups = gsub.readUInt16BE(8);
  const count = gsub.readUInt16BE(features);
  const indices = Array.from({ length: count }, (_, index) => features + 2 + 6 * index)
    .filter((record) => gsub.toString('latin1', record, record + 4) === feature)
    .map((record) => features + gsub.readUInt16BE(record + 4))
    .flatMap((at) => numbersAt(gsub, at + 4, gsub.readUInt16BE(at + 2)));
  return [...new Set(indices)].map((index) => lookups + gsub.readUInt16BE(lookups + 2 + 2 * index));
};

const singlePairs = (gsub: Buffer, lookup: number): readonly (readonly [number, number])[] => {
  assert(gsub.readUInt16BE(lookup) === 1, 'figures are changed one for one');
  return numbersAt(gsub, lookup + 6, gsub.readUInt16BE(lookup + 4)).flatMap((offset) => {
    const at = lookup + offset;
    const covered = coverage(gsub, at + gsub.readUInt16BE(at + 2));
    if (gsub.readUInt16BE(at) === 1) {
      const delta = gsub.readUInt16BE(at + 4);
      return covered.map((glyph) => [glyph, (glyph + delta) & 0xffff] as const);
    }
    const others = numbersAt(gsub, at + 6, gsub.readUInt16BE(at + 4));
    return covered.map((glyph, index) => [glyph, others[index] ?? glyph] as const);
  });
};

/** The glyphs that a rule is for, listed one by one or by ranges. */
const coverage = (gsub: Buffer, at: number): readonly number[] => {
  const count = gsub.readUInt16BE(at + 2);
  if (gsub.readUInt16BE(at) === 1) return numbersAt(gsub, at + 4, count);
  return Array.from({ length: count }, (_, index) => at + 4 + 6 * index).flatMap((range) => {
    const first = gsub.readUInt16BE(range);
    const last = gsub.readUInt16BE(range + 2);
    return Array.from({ length: last - first + 1 }, (_, index) => first + index);
  });
};
