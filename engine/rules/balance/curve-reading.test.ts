import { describe, expect, it } from 'vitest';
import { curveOf } from '../example-assessment.ts';
import { furthest, passesBelow, readCurve, readingsBetween } from './curve-reading.ts';

// A piece that leaves the deck at 5 m, by hand: −300 N at 1 m, −100 N under 5 m, +50 N over it.
const curve = curveOf([
  [1, -300],
  [5, -100, 50],
  [15, -150],
]);

describe('reading a curve', () => {
  it('reads a straight line between two nodes', () => {
    expect(readCurve(curve, 3, 'below')?.imbalanceN).toBeCloseTo(-200, 9);
    expect(readCurve(curve, 10, 'above')?.imbalanceN).toBeCloseTo(-50, 9);
  });

  it('has two sides at a jump, and a height a hair beside it is the same height', () => {
    expect(readCurve(curve, 5, 'below')?.imbalanceN).toBe(-100);
    expect(readCurve(curve, 5 + 1e-9, 'above')?.imbalanceN).toBe(50);
  });

  it('reads nothing off the travel', () => {
    expect(readCurve(curve, 0.9, 'above')).toBeNull();
    expect(readCurve(curve, 15.1, 'above')).toBeNull();
  });

  it('begins a range at a jump with the piece in the air', () => {
    expect(readingsBetween(curve, 5, 15).map(({ imbalanceN }) => imbalanceN)).toEqual([50, -150]);
    expect(readingsBetween(curve, 1, 15).map(({ imbalanceN }) => imbalanceN)).toEqual([
      -300, -100, 50, -150,
    ]);
    expect(readingsBetween(curve, 5, 5).map(({ imbalanceN }) => imbalanceN)).toEqual([50]);
    expect(furthest(readingsBetween(curve, 5, 15))?.heightM).toBe(15);
  });

  it('finds where a set first passes a limit on the way in', () => {
    // −100 N at 5 m and −300 N at 1 m: −250 N half way between −200 N at 3 m and 1 m.
    expect(passesBelow(curve, 5, 250)).toBeCloseTo(2, 9);
    expect(passesBelow(curve, 5, 99)).toBe(5);
    expect(passesBelow(curve, 5, 300)).toBeNull();
  });
});
