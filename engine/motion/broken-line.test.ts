import { describe, expect, it } from 'vitest';
import { heightsBetween, sidesAt } from './broken-line.ts';

const LINE = [
  { height: 1, below: 5, above: 10 },
  { height: 3, below: 20, above: 2 },
  { height: 4, below: 1, above: 0 },
];

describe('a broken line', () => {
  it.each([
    [2, { below: 15, above: 15 }],
    [3.5, { below: 1.5, above: 1.5 }],
    // Level beyond its ends.
    [0.5, { below: 5, above: 5 }],
    [9, { below: 0, above: 0 }],
  ])('is straight between its nodes, at %s', (height, sides) => {
    expect(sidesAt(LINE, height)).toEqual(sides);
  });

  it.each([1, 3, 4, 3 + 1e-7])('has two values where it jumps, at %s', (height) => {
    const node = LINE.find((one) => Math.abs(one.height - height) < 1e-6);
    expect(sidesAt(LINE, height)).toMatchObject({ below: node?.below, above: node?.above });
  });

  it('names the heights on the way once each', () => {
    const other = [{ height: 3 + 1e-8, below: 0, above: 0 }];
    expect(heightsBetween([LINE, other], { fromM: 1, toM: 3.9 })).toEqual([1, 3, 3.9]);
    expect(heightsBetween([LINE], { fromM: 2, toM: 2 })).toEqual([2]);
  });
});
