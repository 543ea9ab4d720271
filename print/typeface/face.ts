/** One weight of the face as one font: all of its letters, figures of one width, and our signs. */
import { assert } from '#outcome';
import { type Glyph, glyphsOf, movedBehind, withGlyphs } from './glyphs.ts';
import { type Letters, lettersOf, lettersTable } from './letters.ts';
import { packFont } from './sfnt.ts';
import { BOX, boxGlyph, LINE, lineGlyph } from './signs.ts';
import { tabularFigures } from './tabular-figures.ts';
import { openWoff, type Tables } from './woff.ts';

export type FaceFont = {
  readonly font: Buffer;
  /** Every code point that has a glyph. */
  readonly points: ReadonlySet<number>;
};

type Grown = { readonly glyphs: readonly Glyph[]; readonly letters: Letters };

/** Letters of another file of the same weight, where the first has none. */
const joined = ({ glyphs, letters }: Grown, more: Tables): Grown => {
  const count = glyphs.length;
  const added = [...lettersOf(more)]
    .filter(([point]) => !letters.has(point))
    .map(([point, glyph]) => [point, glyph + count] as const);
  return {
    glyphs: [...glyphs, ...glyphsOf(more).map((glyph) => movedBehind(glyph, count))],
    letters: new Map([...letters, ...added]),
  };
};

const withFigures = (letters: Letters, figures: ReadonlyMap<number, number>): Letters =>
  new Map([...letters].map(([point, glyph]) => [point, figures.get(glyph) ?? glyph]));

const pointOf = (letter: string): number => letter.codePointAt(0) ?? 0;

const NO_BREAK_HYPHEN = 0x2011;

/** A glyph stands for one letter only, or what is copied out of the file would be the other. */
const withSigns = ({ glyphs, letters }: Grown): Grown => {
  const glyphOf = (letter: string): Glyph => {
    const glyph = glyphs[letters.get(pointOf(letter)) ?? -1];
    assert(glyph !== undefined, `the face has the letter ${letter}`);
    return glyph;
  };
  const signs = [
    [pointOf(BOX), boxGlyph()],
    [pointOf(LINE), lineGlyph(glyphOf('0').advance)],
    [NO_BREAK_HYPHEN, glyphOf('-')],
  ] as const;
  return {
    glyphs: [...glyphs, ...signs.map(([, glyph]) => glyph)],
    letters: new Map([
      ...letters,
      ...signs.map(([point], index) => [point, glyphs.length + index] as const),
    ]),
  };
};

/** `first` decides all measures and the spacing of pairs; the others add the letters it lacks. */
export const makeFace = (first: Buffer, others: readonly Buffer[]): FaceFont => {
  const tables = openWoff(first);
  const plain: Grown = {
    glyphs: glyphsOf(tables),
    letters: withFigures(lettersOf(tables), tabularFigures(tables)),
  };
  const { glyphs, letters } = withSigns(
    others.map(openWoff).reduce((grown, more) => joined(grown, more), plain),
  );
  const made = new Map([...withGlyphs(tables, glyphs), ['cmap', lettersTable(letters)]]) as Tables;
  return { font: packFont(made), points: new Set(letters.keys()) };
};
