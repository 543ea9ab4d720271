import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { arborDrawing } from './index.ts';
import { textWidth } from './lettering.ts';
import type { Lettering, Shape } from './shape.ts';

const { house, assessment } = openExample('kestlemere');
const set = assessment.sets.find(({ lineSet }) => lineSet.id === '11');
if (set === undefined) throw new Error('no set 11');

const lettersIn = (shapes: readonly Shape[]): readonly Lettering[] =>
  shapes.filter((shape): shape is Lettering => shape.kind === 'text');

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

const drawn = (width: number): readonly Lettering[] =>
  lettersIn(arborDrawing(set, house, { width, height: 600, letter: 14 }).shapes);

describe('the arbor on its wall', () => {
  it.each([180, 200, 380])(
    'keeps the names of the galleries clear of the arbor, %i wide',
    (width) => {
      // The arbor is 24 wide, and its middle 34 from the right edge: the wall of 10 and 24 more.
      const arborLeft = width - 34 - 12;
      const galleries = drawn(width);
      expect(galleries.length).toBeGreaterThan(3);
      for (const { x, text, size, weight } of galleries) {
        expect(x + textWidth(text, size, { weight }), text).toBeLessThan(arborLeft);
      }
    },
  );

  it('says every height, above its floor or beneath it', () => {
    const wide = drawn(380).map(({ text }) => plain(text));
    expect(wide).toContain(`Upper loading gallery 58'-0"`);
    const narrow = drawn(180).map(({ text }) => plain(text));
    expect(narrow).toContain('Upper loading gallery');
    expect(narrow).toContain(`58'-0"`);
  });
});
