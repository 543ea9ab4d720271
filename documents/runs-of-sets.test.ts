import { describe, expect, it } from 'vitest';
import { runsOfSets } from './runs-of-sets.ts';

describe('numbers of line sets', () => {
  it.each([
    [['1', '2', '3', '4'], '1–4'],
    [['1', '2'], '1, 2'],
    [['1', '2', '3', '5', '7', '8'], '1–3, 5, 7, 8'],
    [['D1', 'D2', 'D3', 'M1'], 'D1–D3, M1'],
    [['9', '10', '11'], '9–11'],
    [['3', '2', '1'], '3, 2, 1'],
    [['06', '07', '08'], '06, 07, 08'],
    [['cyc', '1a', '2a'], 'cyc, 1a, 2a'],
    [[], ''],
  ])('of %j are read as %s', (ids, words) => {
    expect(runsOfSets(ids)).toBe(words);
  });
});
