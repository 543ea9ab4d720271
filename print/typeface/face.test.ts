import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { textWidth } from '#drawings';
import { makeFace } from './face.ts';
import { glyphsOf } from './glyphs.ts';
import { lettersOf } from './letters.ts';
import { BOX, LINE } from './signs.ts';
import { openWoff, type Tables } from './woff.ts';

const require = createRequire(import.meta.url);

const fileOf = (family: string, subset: string, weight: number): Buffer =>
  readFileSync(
    require.resolve(`@fontsource/${family}/files/${family}-${subset}-${weight}-normal.woff`),
  );

const SUBSETS = ['latin', 'latin-ext', 'vietnamese'] as const;

const faceOf = (family: string, weight: number) => {
  const [first, ...others] = SUBSETS.map((subset) => fileOf(family, subset, weight));
  return makeFace(first ?? Buffer.alloc(0), others);
};

/** Tables of a font that is not packed, straight from its directory. */
const tablesOf = (font: Buffer): Tables => {
  const entries = Array.from({ length: font.readUInt16BE(4) }, (_, index) => 12 + index * 16);
  return new Map(
    entries.map((at) => {
      const start = font.readUInt32BE(at + 8);
      return [
        font.toString('latin1', at, at + 4),
        font.subarray(start, start + font.readUInt32BE(at + 12)),
      ];
    }),
  );
};

/** The map of letters as a reader of format 12 sees it. */
const mapOf = (tables: Tables): ReadonlyMap<number, number> => {
  const cmap = tables.get('cmap') ?? Buffer.alloc(0);
  const start = cmap.readUInt32BE(8);
  const groups = cmap.readUInt32BE(start + 12);
  return new Map(
    Array.from({ length: groups }, (_, index) => {
      const at = start + 16 + index * 12;
      expect(cmap.readUInt32BE(at + 4)).toBe(cmap.readUInt32BE(at));
      return [cmap.readUInt32BE(at), cmap.readUInt32BE(at + 8)];
    }),
  );
};

const FACES = [
  { family: 'encode-sans', size: 400, weight: 'plain', width: 'head' },
  { family: 'encode-sans', size: 700, weight: 'strong', width: 'head' },
  { family: 'encode-sans-semi-condensed', size: 400, weight: 'plain', width: 'narrow' },
  { family: 'encode-sans-semi-condensed', size: 600, weight: 'strong', width: 'narrow' },
] as const;

describe.each(FACES)('$family $size', ({ family, size, weight, width }) => {
  const { font, points } = faceOf(family, size);
  const tables = tablesOf(font);
  const glyphs = glyphsOf(tables);
  const map = mapOf(tables);
  const advance = (letter: string): number =>
    glyphs[map.get(letter.codePointAt(0) ?? 0) ?? 0]?.advance ?? 0;

  it('is as wide in print as drawings take it to be', () => {
    for (let point = 0x20; point < 0x7f; point += 1) {
      const letter = String.fromCharCode(point);
      // The low line is drawn otherwise, and said below.
      if (letter === LINE) continue;
      const thousandths = textWidth(letter, 1000, { weight, width });
      expect(Math.abs(advance(letter) / 2 - thousandths), letter).toBeLessThanOrEqual(0.5);
    }
  });

  it('has figures of one width, and a line as wide as a figure', () => {
    const widths = [...'0123456789', LINE].map(advance);
    expect(new Set(widths).size).toBe(1);
  });

  it('has every letter of Latin-1, of Latin Extended-A and of Vietnamese', () => {
    const extended = Array.from({ length: 0x80 }, (_, index) => 0x100 + index).filter(
      (point) => ![0x132, 0x133, 0x17f].includes(point),
    );
    const latin = Array.from({ length: 0x60 }, (_, index) => 0xa0 + index);
    const vietnamese = Array.from({ length: 0x5a }, (_, index) => 0x1ea0 + index);
    for (const point of [...latin, ...extended, ...vietnamese]) {
      expect(points.has(point), point.toString(16)).toBe(true);
    }
    expect(points.has('Ω'.codePointAt(0) ?? 0)).toBe(false);
  });

  it('draws a letter of another file as that file does', () => {
    const other = openWoff(fileOf(family, 'latin-ext', size));
    const letter = 'ř'.codePointAt(0) ?? 0;
    const theirs = glyphsOf(other)[lettersOf(other).get(letter) ?? 0];
    expect(theirs?.outline.length).toBeGreaterThan(0);
    expect(advance('ř')).toBe(theirs?.advance);
  });

  it('composes every glyph of parts that it has', () => {
    const [WORDS, MORE] = [0x01, 0x20];
    for (const { outline } of glyphs) {
      if (outline.length === 0 || outline.readInt16BE(0) >= 0) continue;
      const flags = outline.readUInt16BE(10);
      const part = glyphs[outline.readUInt16BE(12)];
      expect(part?.outline.length).toBeGreaterThan(0);
      // The second part follows the places of the first, where neither is scaled.
      if ((flags & MORE) === 0 || (flags & 0xc8) !== 0) continue;
      const second = outline.readUInt16BE(16 + ((flags & WORDS) === 0 ? 0 : 2));
      expect(second).toBeLessThan(glyphs.length);
    }
  });

  it('has a box to tick that is open inside', () => {
    const outline = glyphs[map.get(BOX.codePointAt(0) ?? 0) ?? 0]?.outline ?? Buffer.alloc(0);
    expect(outline.readInt16BE(0)).toBe(2);
    const [left, bottom, right, top] = [2, 4, 6, 8].map((at) => outline.readInt16BE(at));
    expect((right ?? 0) - (left ?? 0)).toBe((top ?? 0) - (bottom ?? 0));
    expect(advance(BOX)).toBeGreaterThan(right ?? 0);
  });

  it('has a directory in order, each table whole on a boundary of four bytes', () => {
    const tags = [...tables.keys()];
    expect(tags.every((tag, index) => index === 0 || (tags[index - 1] ?? '') < tag)).toBe(true);
    for (let index = 0; index < tags.length; index += 1) {
      const at = 12 + index * 16;
      const [sum, start, length] = [4, 8, 12].map((offset) => font.readUInt32BE(at + offset));
      expect((start ?? 1) % 4).toBe(0);
      const words = Math.ceil((length ?? 0) / 4);
      const total = Array.from({ length: words }, (_, word) =>
        font.readUInt32BE((start ?? 0) + word * 4),
      ).reduce((all, word) => (all + word) >>> 0, 0);
      expect(total).toBe(sum);
    }
  });

  it('says how many glyphs it has in each table alike', () => {
    expect(tables.get('maxp')?.readUInt16BE(4)).toBe(glyphs.length);
    expect(tables.get('hhea')?.readUInt16BE(34)).toBe(glyphs.length);
    expect(tables.get('loca')?.length).toBe((glyphs.length + 1) * 4);
    expect(tables.get('hmtx')?.length).toBe(glyphs.length * 4);
    expect(tables.get('loca')?.readUInt32BE(glyphs.length * 4)).toBe(tables.get('glyf')?.length);
  });
});

describe('a file that is no web font', () => {
  it('is a defect, not a page without letters', () => {
    expect(() => makeFace(Buffer.from('OTTO....'), [])).toThrow('is a WOFF font');
  });
});
