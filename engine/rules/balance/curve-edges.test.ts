import { describe, expect, it } from 'vitest';
import { curveOf } from '../example-assessment.ts';
import { furthest, passesBelow, readCurve, readingsBetween } from './curve-reading.ts';

// −300 N ± 10 at 1 m; −100 N under 5 m and +50 N over it, ± 30; −150 N ± 50 at 15 m.
const curve = curveOf([
  [1, -300, -300, 10],
  [5, -100, 50, 30],
  [15, -150, -150, 50],
]);

describe('reading a curve at its edges', () => {
  it('reads the tolerance on the straight line, too', () => {
    expect(readCurve(curve, 2, 'above')).toEqual({
      heightM: 2,
      imbalanceN: -250,
      toleranceN: 15,
    });
    expect(readCurve(curve, 12.5, 'below')).toEqual({
      heightM: 12.5,
      imbalanceN: -100,
      toleranceN: 45,
    });
  });

  it('reads the ends, and nothing of a curve of one node but the node', () => {
    expect(readCurve(curve, 1, 'below')?.toleranceN).toBe(10);
    expect(readCurve(curve, 15, 'above')?.imbalanceN).toBe(-150);
    const point = curveOf([[3, 20]]);
    expect(readCurve(point, 3, 'above')?.imbalanceN).toBe(20);
    expect(readCurve(point, 2, 'above')).toBeNull();
    expect(readCurve(point, 4, 'above')).toBeNull();
  });

  it('leaves out of a range what lies off the curve', () => {
    expect(readingsBetween(curve, 0, 3).map(({ imbalanceN }) => imbalanceN)).toEqual([
      -300, -300, -200,
    ]);
    expect(readingsBetween(curve, 20, 30)).toEqual([]);
  });

  it('ends a range at a jump with what is under it', () => {
    expect(readingsBetween(curve, 1, 5).map(({ imbalanceN }) => imbalanceN)).toEqual([-300, -100]);
    // A hair beside the node is the node, at either end.
    expect(readingsBetween(curve, 5 - 5e-7, 15)).toHaveLength(2);
    expect(readingsBetween(curve, 1, 5 + 5e-7)).toHaveLength(2);
  });

  it('takes the first of two readings that are as far from balance', () => {
    const level = curveOf([
      [1, 80],
      [3, -80],
    ]);
    expect(furthest(readingsBetween(level, 1, 3))?.heightM).toBe(1);
    expect(furthest([])).toBeNull();
  });

  it('finds the highest of several places at which a limit is passed', () => {
    const wave = curveOf([
      [1, -300],
      [3, 0],
      [5, 300],
      [7, 0],
      [9, 0],
    ]);
    // From 0 N at 7 m to 300 N at 5 m: 150 N at 6 m. Below 3 m the other way: −150 N at 2 m.
    expect(passesBelow(wave, 9, 150)).toBeCloseTo(6, 9);
    expect(passesBelow(wave, 3, 150)).toBeCloseTo(2, 9);
    expect(passesBelow(wave, 3 + 5e-7, 150)).toBeCloseTo(2, 9);
    expect(passesBelow(wave, 0.5, 150)).toBeNull();
  });

  it('finds a jump on the way in at its node', () => {
    const jump = curveOf([
      [1, 0],
      [4, -250, 0],
      [9, 0],
    ]);
    expect(passesBelow(jump, 9, 200)).toBe(4);
  });
});
