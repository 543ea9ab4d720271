import { describe, expect, it } from 'vitest';
import { setsInRow } from './sets-in-row.ts';

const row = { from: '1', to: '4', first: '18 in', pitch: '9 in', units: 'customary' } as const;

const rowOf = (some: object) => {
  const answer = setsInRow({ ...row, ...some });
  return answer.ok ? answer.value.map(({ id, y }) => `${id} ${y}`) : [];
};

const refusedOf = (some: object) => {
  const answer = setsInRow({ ...row, ...some });
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

describe('sets in a row', () => {
  it('stand a pitch apart, in the measure of the house', () => {
    expect(rowOf({})).toEqual(['1 18 in', '2 27 in', '3 36 in', '4 45 in']);
    expect(rowOf({ units: 'metric', first: '0.45 m', pitch: '200 mm', to: '3' })).toEqual([
      '1 0.45 m',
      '2 0.65 m',
      '3 0.85 m',
    ]);
    expect(rowOf({ first: '1\'-6"', to: '2' })).toEqual(['1 18 in', '2 27 in']);
    expect(rowOf({ first: '1.5 ft', pitch: '6 in', to: '2' })).toEqual(['1 1.5 ft', '2 2 ft']);
  });

  it('add up without a rest: the hundredth at 9 in stands at 18 + 99 · 9 = 909 in', () => {
    expect(rowOf({ to: '100' }).at(-1)).toBe('100 909 in');
  });

  it('keep letters before the number, and its leading noughts', () => {
    expect(rowOf({ from: 'D1', to: 'D2' })).toEqual(['D1 18 in', 'D2 27 in']);
    expect(rowOf({ from: '09', to: '10' })).toEqual(['09 18 in', '10 27 in']);
  });

  it('are refused where numbers or measures are none, all at once', () => {
    expect(refusedOf({ from: 'front' })).toEqual(['DOC-043 from']);
    expect(refusedOf({ from: 'D1', to: 'M4' })).toEqual(['DOC-043 to']);
    expect(refusedOf({ from: '5', to: '4' })).toEqual(['DOC-035 to']);
    expect(refusedOf({ to: '201' })).toEqual(['DOC-034 to']);
    expect(rowOf({ to: '200' })).toHaveLength(200);
    expect(refusedOf({ from: '', first: '18', pitch: 'nine' })).toEqual([
      'DOC-043 from',
      expect.stringMatching(/^QTY-\d+ first$/),
      expect.stringMatching(/^QTY-\d+ pitch$/),
    ]);
  });
});
