import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marked, startsLikeFormula, unmarked } from './formula-mark.ts';

const SEED = 20_261_129;

describe('the mark of a text that a spreadsheet would reckon', () => {
  it.each(['=HYPERLINK("x")', '+1', '-1', '@a', '＝1', '－3', '\t=1', '\r=1', '\n=1', "'=1"])(
    'stands before %j, and is taken off again',
    (text) => {
      expect(marked(text)).toBe(`'${text}`);
      expect(unmarked(marked(text))).toBe(text);
    },
  );

  it('stands before nothing else', () => {
    for (const text of ["it's 1=1", '', '6 ft', '−3 ft', '"=1"']) expect(marked(text)).toBe(text);
  });

  it(`loses nothing of any text, and leaves none that is reckoned (seed ${SEED})`, () => {
    const signs = fc.constantFrom("'", '=', '+', '-', '@', '\t', '\n', '＝', 'a', '1', ' ');
    fc.assert(
      fc.property(fc.string({ unit: signs, maxLength: 6 }), (text) => {
        expect(unmarked(marked(text))).toBe(text);
        expect(/^[=+\-@\t\r\n＝＋－＠]/.test(marked(text))).toBe(false);
        expect(startsLikeFormula(marked(text))).toBe(marked(text) !== text);
      }),
      { seed: SEED },
    );
  });
});
