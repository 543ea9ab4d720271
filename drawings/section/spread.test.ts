import { describe, expect, it } from 'vitest';
import { spread } from './spread.ts';

const PAPER = { from: 0, to: 100 };

describe('labels that may not touch', () => {
  it('stay where they are while they have room', () => {
    expect(spread([5, 20, 60], 10, PAPER)).toEqual([5, 20, 60]);
    expect(spread([], 10, PAPER)).toEqual([]);
  });

  it('move apart by the same to both sides: 48 and 52 are 45 and 55 at a distance of ten', () => {
    expect(spread([48, 52], 10, PAPER)).toEqual([45, 55]);
    expect(spread([50, 50, 50], 10, PAPER)).toEqual([40, 50, 60]);
  });

  it('push a neighbour on that they would run into', () => {
    // 50, 50, 62: the first two are 45 and 55, so the third would be 7 away. Together: the mean of
    // 50, 40 and 42 is 44.
    expect(spread([50, 50, 62], 10, PAPER)).toEqual([44, 54, 64]);
  });

  it('stay on the paper', () => {
    expect(spread([-20, 1, 2], 10, PAPER)).toEqual([0, 10, 20]);
    expect(spread([99, 99], 10, PAPER)).toEqual([90, 100]);
  });
});
