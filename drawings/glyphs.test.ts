import { describe, expect, it } from 'vitest';
import { GLYPH_NAMES, glyph, glyphWord, heavySide, tradeWord } from './index.ts';
import type { Shape } from './shape.ts';

const squareX = (shapes: readonly Shape[]): number => {
  const square = shapes.find((shape) => shape.kind === 'rect');
  if (square === undefined) throw new Error('no arbor in the sign');
  return square.x + square.width / 2;
};

describe('signs', () => {
  it('have something to see and a word to say', () => {
    for (const name of GLYPH_NAMES) {
      expect(glyph(name)).toMatchObject({ width: 24, height: 24 });
      expect(glyph(name).shapes.length).toBeGreaterThan(0);
      expect(glyphWord({ words: 'US' }, name)).not.toBe('');
    }
  });

  it('have none for good, and no word for it', () => {
    const words = GLYPH_NAMES.map((name) => glyphWord({ words: 'US' }, name)).join(' ');
    expect(words).not.toMatch(/\b(safe|ok|good)\b/i);
  });

  it('say balance in the words of the house', () => {
    expect(glyphWord({ words: 'UK' }, 'arborHeavy')).toBe('cradle heavy');
    expect(glyphWord({ words: 'UK' }, 'deadHung')).toBe('fixed');
  });

  it('change sides with the arbor where the operating side is stage left', () => {
    for (const name of ['battenHeavy', 'arborHeavy', 'inBalance'] as const) {
      const [left, right] = [glyph(name), glyph(name, { mirrored: true })];
      expect(squareX(left.shapes)).toBeLessThan(12);
      expect(squareX(right.shapes)).toBe(24 - squareX(left.shapes));
    }
    expect(glyph('lock', { mirrored: true }).shapes).toEqual(glyph('lock').shapes);
  });

  it('are red or ochre only for danger and caution', () => {
    const inks = GLYPH_NAMES.filter((name) => /"(red|ochre)"/.test(JSON.stringify(glyph(name))));
    expect(inks).toEqual(['caution', 'danger']);
  });
});

describe('the words of the trade', () => {
  it('have one for each country', () => {
    expect(tradeWord({ words: 'US' }, 'batten')).toBe('batten');
    expect(tradeWord({ words: 'UK' }, 'batten')).toBe('bar');
    expect(tradeWord({ words: 'UK' }, 'schedule')).toBe('hanging plot');
  });

  it('turn the sign of U into a side', () => {
    expect(heavySide({ words: 'US' }, 1)).toBe('batten heavy');
    expect(heavySide({ words: 'US' }, -1)).toBe('arbor heavy');
    expect(heavySide({ words: 'UK' }, -1)).toBe('cradle heavy');
  });
});
