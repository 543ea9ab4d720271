/**
 * What the rules are given that speak to a line which holds the batten down. A show or a record
 * of the house would let them judge what is not so: the batten is held as nobody has hung it.
 */
import { describe, expect, it, vi } from 'vitest';
import { reckoned } from '#findings';
import { assessmentOf } from '../example-assessment.ts';
import { exampleHouse } from '../example-house.ts';
import { hangingState, structureOf } from '../example-structure.ts';
import type { SetCase } from '../rule.ts';
import { bearsLine } from './bears-line.ts';

const { given } = vi.hoisted(() => ({ given: [] as SetCase[] }));

vi.mock('../batten/tips-over.ts', () => ({
  tipsOver: (the: SetCase) => {
    given.push(the);
    return [];
  },
}));

describe('the rules that speak to a line', () => {
  it('are given the set as it is held, in one state, and nothing of the rest of the house', () => {
    const held = hangingState({ name: 'reworked' });
    const structure = structureOf([hangingState()], { rework: () => held });
    const set = assessmentOf({ set: { structure: reckoned(structure) } });
    bearsLine(exampleHouse, set, 100);
    // Lines 2 and 4, 1 and 5, and 3 alone are tried.
    expect(given).toHaveLength(3);
    const states = [{ ...held, name: 'held down' }];
    expect(given[0]).toEqual({
      house: exampleHouse,
      show: null,
      state: null,
      nowMs: null,
      set: { ...set, structure: reckoned({ ...structure, states }) },
    });
  });
});
