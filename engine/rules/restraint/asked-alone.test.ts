/**
 * What the rules are given that speak to a line which holds the batten down. A show or a record
 * of the house would let them judge what is not so: the batten is held as nobody has hung it.
 */
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { reckoned } from '#findings';
import { assessmentOf } from '../example-assessment.ts';
import { exampleHouse } from '../example-house.ts';
import { hangingState, structureOf } from '../example-structure.ts';
import type { SetCase } from '../rule.ts';

const given: SetCase[] = [];

/** Files share what they import: the rule is read anew for this one, and again for the next. */
beforeAll(() => {
  vi.resetModules();
  vi.doMock('../batten/tips-over.ts', () => ({
    tipsOver: (the: SetCase) => {
      given.push(the);
      return [];
    },
  }));
});
afterAll(() => {
  vi.doUnmock('../batten/tips-over.ts');
  vi.resetModules();
});

describe('the rules that speak to a line', () => {
  it('are given the set as it is held, in one state, and nothing else of the house', async () => {
    const { bearsLine } = await import('./bears-line.ts');
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
