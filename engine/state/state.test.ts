import { describe, expect, it } from 'vitest';
import { ITEM_PHASES, KNOWLEDGE_BASES, PLATE_TAGS, RESTRAINT_KINDS, SERVICES } from './state.ts';

describe('the words of a state', () => {
  it.each([
    ['phases of an item', ITEM_PHASES, 6],
    ['tags of a plate', PLATE_TAGS, 3],
    ['services of a set', SERVICES, 4],
    ['ways to know', KNOWLEDGE_BASES, 5],
    ['restraints', RESTRAINT_KINDS, 7],
  ])('%s are written once each', (_name, words: readonly string[], count) => {
    expect(new Set(words).size).toBe(count);
    expect(words).toHaveLength(count);
  });

  it('have a word for not knowing', () => {
    expect(KNOWLEDGE_BASES).toContain('unknown');
  });
});
