/** The face on paper: two widths, each in two weights. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { TFontDictionary } from 'pdfmake/interfaces.js';
import { type FaceFont, makeFace } from './typeface/face.ts';

export type Face = 'Wide' | 'Narrow';

/** Heads run wide and heavy; text and lettering run narrow and less heavy. */
const FACES = {
  Wide: { family: 'encode-sans', normal: 400, bold: 700 },
  Narrow: { family: 'encode-sans-semi-condensed', normal: 400, bold: 600 },
} as const;

/** The first has Latin-1 and the punctuation; the others the rest of Europe, and Vietnamese. */
const SUBSETS = ['latin', 'latin-ext', 'vietnamese'] as const;

const require = createRequire(import.meta.url);

const fileOf = (family: string, subset: string, weight: number): Buffer =>
  readFileSync(
    require.resolve(`@fontsource/${family}/files/${family}-${subset}-${weight}-normal.woff`),
  );

/** Under the name that the font bears itself, by which a drawing asks for it. */
export type NamedFont = FaceFont & { readonly name: string };

const POSTSCRIPT = {
  Wide: { normal: 'EncodeSans-Regular', bold: 'EncodeSans-Bold' },
  Narrow: { normal: 'EncodeSansSemiCondensed-Regular', bold: 'EncodeSansSemiCondensed-SemiBold' },
} as const;

const fontOf = (face: Face, weight: 'normal' | 'bold'): NamedFont => {
  const { family, [weight]: size } = FACES[face];
  const [first, ...others] = SUBSETS.map((subset) => fileOf(family, subset, size));
  return { ...makeFace(first ?? Buffer.alloc(0), others), name: POSTSCRIPT[face][weight] };
};

export const FONT_NAMES: TFontDictionary = {
  Wide: { ...POSTSCRIPT.Wide },
  Narrow: { ...POSTSCRIPT.Narrow },
};

let made: readonly NamedFont[] | null = null;

/** The four fonts, made from their files at the first print and then kept. */
export const fonts = (): readonly NamedFont[] => {
  made ??= (['Wide', 'Narrow'] as const).flatMap((face) => [
    fontOf(face, 'normal'),
    fontOf(face, 'bold'),
  ]);
  return made;
};

const hasGlyph = (point: number): boolean => fonts().every(({ points }) => points.has(point));

const LINE_BREAK = '\n';

/** A letter that no file has is printed as its number, and never left out or drawn as a box. */
const printableLetter = (letter: string): string => {
  const point = letter.codePointAt(0) ?? 0;
  if (letter === LINE_BREAK || hasGlyph(point)) return letter;
  return `[U+${point.toString(16).toUpperCase().padStart(4, '0')}]`;
};

const PLAIN = /^[\n\x20-\x7e]*$/;

export const printable = (text: string): string =>
  PLAIN.test(text) ? text : [...text.normalize('NFC')].map(printableLetter).join('');
