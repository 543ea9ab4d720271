import { describe, expect, it } from 'vitest';
import { readHouseValue, type Unknown, unknownsOf } from '#documents';
import { ENGLISH } from '#texts';
import demo from '../../examples/kestlemere/house.json' with { type: 'json' };
import { blockedWords, unknownWords } from './unknown-words.ts';

const GERMAN = {
  words: 'US',
  tongue: {
    language: 'de',
    decimalMark: ',',
    months: [],
    date: '',
    texts: {
      '{field} of {owner}{why}': '{field}, {owner}{why}',
      'height of the grid': 'Höhe des Schnürbodens',
      'the stage': 'die Bühne',
      'whether a piece clears the grid': 'ob ein Stück frei bleibt',
    },
  },
} as const;

const unknowns = (): readonly Unknown[] => {
  const answer = readHouseValue(demo);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return unknownsOf(answer.value.house);
};

describe('what is unknown', () => {
  const grid = unknowns().find(({ path }) => path === 'stage.gridHeight');
  if (grid === undefined) throw new Error('the demo has its grid surveyed');

  it('is in English what the documents say', () => {
    expect(unknownWords(grid, ENGLISH)).toBe('height of the grid of the stage: not surveyed');
    expect(blockedWords(grid.blocks, ENGLISH)).toBe('whether a piece clears the grid');
  });

  it('is in another language a sentence of its own; the reason stays as it was given', () => {
    expect(unknownWords(grid, GERMAN)).toBe('Höhe des Schnürbodens, die Bühne: not surveyed');
    expect(blockedWords(grid.blocks, GERMAN)).toBe('ob ein Stück frei bleibt');
  });

  it('stays English where a language has no word for it, with the names that people gave', () => {
    const aid = unknowns().find(({ path }) => path.startsWith('equipment'));
    expect(aid && unknownWords(aid, GERMAN)).toMatch(/^rating, Hemp spot line HS1 to HS6: /);
  });
});
