import { describe, expect, it } from 'vitest';
import { TERMINATIONS } from '#house';
import { INCH } from '#quantities';
import { bendingEfficiency, lineFactor, sheaveRatio, terminationEfficiency } from './strength.ts';

const QUARTER = INCH / 4;

describe('what an end leaves of the strength', () => {
  it('is in the table for every way of making one', () => {
    const found = TERMINATIONS.map((each) => terminationEfficiency(each, QUARTER)?.value);
    expect(found).toEqual([1, 0.95, 0.95, 0.9, 0.75, 1, 0.8]);
  });

  it('takes the figure of the next larger size for a hand-tucked eye', () => {
    const at = (inches: number) => terminationEfficiency('handTuckedSplice', inches * INCH)?.value;
    expect([1 / 8, 1 / 4, 0.2501, 5 / 16, 7 / 16, 0.49, 1 / 2, 3 / 4].map(at)).toEqual([
      0.9, 0.9, 0.89, 0.89, 0.87, 0.86, 0.86, 0.82,
    ]);
    // As a diameter comes back from another unit, with the last figure off.
    expect(at((5 / 16) * (1 + 1e-12))).toBe(0.89);
    expect([0.76, 7 / 8, 1.5].map(at)).toEqual([0.8, 0.8, 0.8]);
  });

  it('has no figure for a mechanical splice on a rope over an inch', () => {
    expect(terminationEfficiency('mechanicalSplice', INCH)?.value).toBe(0.95);
    expect(terminationEfficiency('mechanicalSplice', 1.01 * INCH)).toBeNull();
    expect(terminationEfficiency('clips', 1.01 * INCH)?.value).toBe(0.8);
  });

  it('says where each figure is from, and which are from memory', () => {
    for (const each of TERMINATIONS) {
      const memory = each === 'handTuckedSplice' || each === 'compressionSleeve';
      const source = terminationEfficiency(each, QUARTER)?.source ?? '';
      expect(source.includes('from memory'), each).toBe(memory);
      expect(source.includes('Table 4'), each).toBe(!memory);
    }
  });
});

describe('what a bend leaves of the strength', () => {
  it('lies on a straight line between two figures of the table', () => {
    expect(bendingEfficiency(32)?.value).toBeCloseTo(0.934, 12);
    expect(bendingEfficiency(1.5)?.value).toBeCloseTo(0.575, 12);
    expect(bendingEfficiency(16)?.value).toBeCloseTo(0.894, 12);
  });

  it('stays at the last figure beyond the table, and says so', () => {
    expect(bendingEfficiency(40)).toEqual({
      value: 0.95,
      source: 'published table of sheave size and wire rope strength',
    });
    const beyond = bendingEfficiency(40.01);
    expect(beyond?.value).toBe(0.95);
    expect(beyond?.source).toContain('its last figure (D/d 40)');
  });

  it('is not known for a sheave smaller than its rope', () => {
    expect(bendingEfficiency(1)?.value).toBe(0.5);
    expect(bendingEfficiency(0.999)).toBeNull();
    expect(bendingEfficiency(0)).toBeNull();
  });
});

describe('the design factor of a line', () => {
  it('is strength after end and bend over the tension', () => {
    const line = { breakingN: 31_000, termination: 0.8, bending: 0.93, tensionN: 1000 };
    expect(lineFactor(line)).toBeCloseTo(23.064, 9);
    expect(lineFactor({ ...line, termination: 1, bending: 1 })).toBe(31);
  });

  it('is none on a line that carries nothing', () => {
    expect(lineFactor({ breakingN: 1, termination: 1, bending: 1, tensionN: 0 })).toBeNull();
  });

  it('has a sheave over its rope', () => {
    expect(sheaveRatio({ sheaveDiameterM: 8 * INCH, lineDiameterM: INCH / 4 })).toBe(32);
  });
});
