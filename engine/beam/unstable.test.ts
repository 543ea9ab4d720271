import { describe, expect, it } from 'vitest';
import { answerBatten } from './answer.ts';
import { solved, twoSpans } from './example-battens.ts';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase } from './types.ts';

const codeOf = (the: BattenCase): string => {
  const answer = solveBatten(the);
  if (!answer.ok) return 'refused';
  return 'unstable' in answer.value ? answer.value.unstable.code : 'answered';
};

const hung = (xs: readonly number[], loads: BattenCase['loads']): BattenCase => ({
  ...twoSpans(loads),
  lines: xs.map((x) => ({ x, stiffness: 5e4 })),
});

describe('a batten that would move', () => {
  it('tips over where the load as a whole is outside the outer lines', () => {
    expect(codeOf(hung([2, 4], [{ x: 1.9, mass: 10 }]))).toBe('tipsOver');
    expect(codeOf(hung([2, 4], [{ x: 4.1, mass: 10 }]))).toBe('tipsOver');
    expect(codeOf(hung([2, 4], [{ x: 2.1, mass: 10 }]))).toBe('answered');
  });

  it('tips over where the load is on the outer line, in any digits', () => {
    expect(codeOf(hung([0.3, 4], [{ x: 0.3, mass: 10 }]))).toBe('tipsOver');
    const feet = 0.1 + 0.2;
    expect(codeOf(hung([0.3, 4], [{ x: feet, mass: 10 }]))).toBe('tipsOver');
  });

  it('does not tip where lines may push', () => {
    const the = { ...hung([2, 4], [{ x: 1, mass: 10 }]), tensionOnly: false };
    const { tensions, slack } = solved(the);
    expect(tensions[0]).toBeCloseTo(1.5 * 98.0665, 9);
    expect(tensions[1]).toBeCloseTo(-0.5 * 98.0665, 9);
    expect(slack).toEqual([false, false]);
  });

  it('turns about a line that is alone, even below its load', () => {
    expect(codeOf(hung([3], [{ x: 3, mass: 10 }]))).toBe('tooFewLines');
    expect(codeOf({ ...hung([3], [{ x: 3, mass: 10 }]), tensionOnly: false })).toBe('tooFewLines');
    const support = { x: 3, stiffness: null, height: 0 };
    expect(codeOf({ ...hung([3], [{ x: 3, mass: 10 }]), supports: [support] })).toBe('tooFewLines');
  });

  it('turns about the one line that stays tight, though its weight is just below', () => {
    const short = [1, 3, 5].map((x) => ({ x, stiffness: 5e4, trim: x === 3 ? 0.5 : 0 }));
    const even = { from: 0, to: 6, mass: 60 };
    expect(codeOf({ ...hung([], [even]), lines: short })).toBe('tooFewLines');
    // A gram to one side, and the line there holds it from turning on.
    const heavier = solved({ ...hung([], [even, { x: 3.5, mass: 0.001 }]), lines: short });
    expect(heavier.slack).toEqual([true, false, false]);
    expect(heavier.tensions[2]).toBeCloseTo((0.001 * 9.80665 * 0.5) / 2, 9);
    // Wires out of trim that still share, where lines that do not stretch would leave one alone.
    const shared = short.map((line) => ({ ...line, stiffness: 5e3, trim: line.trim / 10 }));
    const wires = solved({ ...hung([], [even]), lines: shared });
    expect(wires.slack).toEqual([false, false, false]);
    expect(wires.rigid()).toBeNull();
  });

  it('is held by lines that would pull at once: a load on the middle one of three', () => {
    const { tensions, slack } = solved(twoSpans([{ x: 3, mass: 50 }], { tensionOnly: true }));
    expect(tensions.map((each) => Math.round(each * 1e6) / 1e6)).toEqual([0, 490.3325, 0]);
    expect(slack).toEqual([false, false, false]);
  });

  it('hangs on nothing where nothing weighs', () => {
    expect(codeOf(hung([2, 4], []))).toBe('noLoad');
    expect(codeOf(hung([2, 4], [{ x: 3, mass: 0 }]))).toBe('noLoad');
    // Lines that push are there without a load, and strain the pipe where one is out of true:
    // 6·E·I·d/L³ in the middle of two spans, half as much back at either end.
    const strained = twoSpans([], {
      lines: [0, 3, 6].map((x) => ({ x, stiffness: null, trim: x === 3 ? 0.01 : 0 })),
      tensionOnly: false,
    });
    const middle = (6 * 1.289867e-7 * 2e11 * 0.01) / 27;
    for (const [i, share] of [-0.5, 1, -0.5].entries()) {
      expect(solved(strained).tensions[i]).toBeCloseTo(share * middle, 9);
    }
    const still = solved({ ...hung([2, 4], []), tensionOnly: false });
    expect(still.tensions.map(Math.abs)).toEqual([0, 0]);
    expect(Math.abs(still.deflection.max.value)).toBe(0);
  });

  it('says why in words, and gives not one number', () => {
    const answer = answerBatten(hung([2, 4], [{ x: 1, mass: 10 }]));
    expect(answer).toEqual({
      ok: true,
      value: {
        unstable: {
          code: 'tipsOver',
          reason:
            'The load as a whole pulls down at x = 1 m, on or beyond the outermost line at ' +
            'x = 2 m, and no line can push: the batten tips over.',
        },
      },
    });
  });
});

describe('traps', () => {
  it('lines close together: rigid ones invent a slack line where wires share', () => {
    // The span to the left is loaded: it turns a rigid batten up about the first of the two.
    const wires = solved(hung([0.5, 3, 3.1, 5.5], [{ x: 1.5, mass: 60 }]));
    expect(wires.slack).toEqual([false, false, false, true]);
    expect(wires.tensions[2]).toBeGreaterThan(0.6 * (wires.tensions[1] ?? Number.NaN));
    expect(wires.rigid()?.slack).toEqual([false, false, true, true]);
    // What is left is a lever: 60 kg at 1.5 m between lines at 0.5 and 3 m.
    expect(wires.rigid()?.tensions[0]).toBeCloseTo(36 * 9.80665, 9);
    expect(wires.rigid()?.tensions[1]).toBeCloseTo(24 * 9.80665, 9);
  });

  it('a line that only touches pulls nothing, is not slack, and ends a span', () => {
    // As low as the pipe sags there: 5·w·L⁴/(24·E·I) below two spans of 3 m under 100 N/m.
    const low = (5 * 100 * 81) / (24 * 1.289867e-7 * 2e11);
    const { at, sag, slack, tensions } = solved({
      ...twoSpans([{ from: 0, to: 6, mass: 600 / 9.80665 }]),
      lines: [0, 3, 6].map((x) => ({ x, stiffness: null, trim: x === 3 ? -low : 0 })),
    });
    expect([tensions[1], slack[1]]).toEqual([0, false]);
    expect(sag?.span).toBe(3);
    const x = sag?.x ?? Number.NaN;
    const chord = at(3).deflection * (1 - Math.abs(x - 3) / 3);
    expect(sag?.value).toBeCloseTo(at(x).deflection - chord, 12);
    expect(sag?.value).toBeGreaterThan(0.001);
  });

  it('a load at the very end, rounded a hair beyond it, is at the end', () => {
    const far = 0.1 + 0.2;
    expect(far).toBeGreaterThan(0.3);
    const the = { ...hung([-0.2, 0.2], []), left: -0.3, right: 0.3 };
    const loads = [
      { x: far, mass: 1 },
      { from: -far, to: far, mass: 3 },
    ];
    const [beyond, exact] = [
      loads,
      [
        { x: 0.3, mass: 1 },
        { from: -0.3, to: 0.3, mass: 3 },
      ],
    ].map((each) => solved({ ...the, loads: each }));
    expect(beyond?.tensions[1]).toBeCloseTo(exact?.tensions[1] ?? NaN, 9);
    expect(beyond?.moment.min.value).toBeCloseTo(exact?.moment.min.value ?? NaN, 9);
    expect(beyond?.at(0.3).deflection).toBeCloseTo(exact?.at(0.3).deflection ?? NaN, 12);
    expect(beyond?.at(-0.3).slope).toBeCloseTo(exact?.at(-0.3).slope ?? NaN, 12);
  });

  it('trims of metres move huge forces without losing the small ones', () => {
    const the = hung([1, 3, 5], [{ x: 3, mass: 1e-6 }]);
    const lines = the.lines.map((line, i) => ({ ...line, trim: i === 1 ? 1 : 0 }));
    const linear = solved({ ...the, lines, tensionOnly: false });
    const sum = linear.tensions.reduce((total, each) => total + each, 0);
    expect(Math.abs(sum - 9.80665e-6)).toBeLessThan(1e-9);
    expect(codeOf({ ...the, lines })).toBe('tooFewLines');
  });
});
