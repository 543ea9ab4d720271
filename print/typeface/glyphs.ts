/**
 * The glyphs of a font as a list that can grow: outlines with their widths.
 *
 * Source  OpenType 1.9, chapters "glyf", "loca", "hmtx", "hhea", "maxp", "head" and "post", from
 *         memory
 */
import { type Tables, tableOf } from './woff.ts';

export type Glyph = {
  /** The outline as the `glyf` table holds it; empty for a space. */
  readonly outline: Buffer;
  /** In units of the font, of which the face has 2000 in an em. */
  readonly advance: number;
  readonly bearing: number;
};

export const glyphsOf = (tables: Tables): readonly Glyph[] => {
  const [glyf, hmtx] = [tableOf(tables, 'glyf'), tableOf(tables, 'hmtx')];
  const starts = outlineStarts(tables);
  const measured = tableOf(tables, 'hhea').readUInt16BE(34);
  return starts.slice(0, -1).map((start, index) => {
    const wide = Math.min(index, measured - 1) * 4;
    const bearing = index < measured ? index * 4 + 2 : measured * 4 + (index - measured) * 2;
    return {
      outline: glyf.subarray(start, starts[index + 1]),
      advance: hmtx.readUInt16BE(wide),
      bearing: hmtx.readInt16BE(bearing),
    };
  });
};

const outlineStarts = (tables: Tables): readonly number[] => {
  const loca = tableOf(tables, 'loca');
  const isLong = tableOf(tables, 'head').readInt16BE(50) === 1;
  const count = tableOf(tables, 'maxp').readUInt16BE(4) + 1;
  return Array.from({ length: count }, (_, index) =>
    isLong ? loca.readUInt32BE(index * 4) : loca.readUInt16BE(index * 2) * 2,
  );
};

const [WORDS, MORE, SCALE, TWO_SCALES, MATRIX] = [0x01, 0x20, 0x08, 0x40, 0x80] as const;
const OUTLINE_HEADER = 10;

/** Bytes that one part of a composed glyph takes, by its flags. */
const partLength = (flags: number): number => {
  const places = (flags & WORDS) === 0 ? 2 : 4;
  if ((flags & MATRIX) !== 0) return 4 + places + 8;
  if ((flags & TWO_SCALES) !== 0) return 4 + places + 4;
  return 4 + places + ((flags & SCALE) === 0 ? 0 : 2);
};

/** A glyph of another font, behind `count` glyphs of this one: its parts are numbered anew. */
export const movedBehind = (glyph: Glyph, count: number): Glyph => {
  const { outline } = glyph;
  if (outline.length === 0 || outline.readInt16BE(0) >= 0) return glyph;
  const moved = Buffer.from(outline);
  let at = OUTLINE_HEADER;
  let flags: number = MORE;
  while ((flags & MORE) !== 0 && at < moved.length) {
    flags = moved.readUInt16BE(at);
    moved.writeUInt16BE(moved.readUInt16BE(at + 2) + count, at + 2);
    at += partLength(flags);
  }
  return { ...glyph, outline: moved };
};

const changed = (table: Buffer, at: number, value: number): Buffer => {
  const copy = Buffer.from(table);
  copy.writeUInt16BE(value, at);
  return copy;
};

/** `post` without the names of the glyphs, which nobody asks for. */
const namelessPost = (post: Buffer): Buffer => {
  const copy = Buffer.from(post.subarray(0, 32));
  copy.writeUInt32BE(0x00030000, 0);
  return copy;
};

/** The tables again, with these glyphs in place of their own. */
export const withGlyphs = (tables: Tables, glyphs: readonly Glyph[]): Tables => {
  const outlines = glyphs.map(({ outline }) =>
    Buffer.concat([outline, Buffer.alloc((4 - (outline.length % 4)) % 4)]),
  );
  const loca = Buffer.alloc((glyphs.length + 1) * 4);
  const hmtx = Buffer.alloc(glyphs.length * 4);
  let start = 0;
  glyphs.forEach(({ advance, bearing }, index) => {
    loca.writeUInt32BE(start, index * 4);
    start += outlines[index]?.length ?? 0;
    hmtx.writeUInt16BE(advance, index * 4);
    hmtx.writeInt16BE(bearing, index * 4 + 2);
  });
  loca.writeUInt32BE(start, glyphs.length * 4);
  return new Map([
    ...tables,
    ['glyf', Buffer.concat(outlines)],
    ['loca', loca],
    ['hmtx', hmtx],
    ['head', changed(tableOf(tables, 'head'), 50, 1)],
    ['hhea', changed(tableOf(tables, 'hhea'), 34, glyphs.length)],
    ['maxp', changed(tableOf(tables, 'maxp'), 4, glyphs.length)],
    ['post', namelessPost(tableOf(tables, 'post'))],
  ]);
};
