import { describe, expect, it } from 'vitest';
import { found, type Scene } from '../example-assessment.ts';
import { fittings, hangingState, lineAt, structured } from '../example-structure.ts';

/** The five lines, two of them slack where said, with one load beside the fittings. */
const loaded = (load: (typeof fittings)[number]['load'], ...slack: readonly number[]): Scene =>
  structured([
    hangingState({
      tensions: [1, 2, 3, 4, 5].map((number) => (slack.includes(number) ? 0 : 1000)),
      loads: [...fittings, { of: 'Sign', load, uncertaintyKg: 1 }],
    }),
  ]);

describe('slack lines and loads beyond the last, end by end', () => {
  it('[LFT-003] takes the state with most slack lines, and the first of two with as many', () => {
    const states = [
      hangingState({ name: 'in', tensions: [1000, 0, 1000, 0, 1000] }),
      hangingState({ name: 'out', tensions: [1000, 1000, 0, 0, 1000] }),
    ];
    expect(found('LFT-003', structured(states))).toMatchObject([{ facts: { state: 'in' } }]);
  });

  it('[LFT-003] names a slack line beside one that a load beyond the last makes slack', () => {
    expect(found('LFT-003', loaded({ x: 4.5, mass: 110 }, 2, 4))).toMatchObject([
      { measured: { value: 1 }, facts: { lines: '2' } },
    ]);
  });

  it('[LFT-004] takes the end beyond which most hangs, and names each state once', () => {
    const loads = [
      ...fittings,
      { of: 'Sign', load: { x: -4.2, mass: 30 }, uncertaintyKg: 1 },
      { of: 'Flag', load: { x: 4.6, mass: 40 }, uncertaintyKg: 1 },
      { of: 'Lamp', load: { x: 4.3, mass: 5 }, uncertaintyKg: 1 },
    ];
    const both = hangingState({ tensions: [1000, 0, 1000, 0, 1000], loads });
    const [finding] = found('LFT-004', structured([both]));
    expect(finding).toMatchObject({
      measured: { value: 45 },
      facts: { end: 'stage left', states: 'playing' },
    });
    expect(finding?.facts['furthest']).toMatchObject({ value: expect.closeTo(0.6, 9) });
  });

  it('[LFT-004] counts a load beyond for the whole of it, whatever hangs within', () => {
    const loads = [
      { of: 'Cloth', load: { from: -2, to: 2, mass: 100 }, uncertaintyKg: 1 },
      { of: 'Sign', load: { x: 4.5, mass: 110 }, uncertaintyKg: 1 },
    ];
    const states = ['in', 'out'].map((name) =>
      hangingState({ name, tensions: [1000, 1000, 1000, 0, 1000], loads }),
    );
    expect(found('LFT-004', structured(states))).toMatchObject([
      { measured: { value: 110 }, facts: { states: 'in, out' } },
    ]);
  });

  it('[LFT-004] counts nothing of a spread load that ends at the last line', () => {
    expect(found('LFT-004', loaded({ from: 2, to: 4, mass: 100 }, 4))).toEqual([]);
    expect(found('LFT-004', loaded({ from: -4, to: -2, mass: 100 }, 2))).toEqual([]);
  });

  it('[LFT-004] counts all of a load on no length beyond the last line', () => {
    expect(found('LFT-004', loaded({ from: 4.5, to: 4.5, mass: 60 }, 4))).toMatchObject([
      { measured: { value: 60 } },
    ]);
  });

  it('[LFT-004] counts a spread load whichever end is named first', () => {
    // From 3 m to 5 m, of which the last metre of two lies beyond the line at 4 m.
    expect(found('LFT-004', loaded({ from: 5, to: 3, mass: 100 }, 4))).toMatchObject([
      { measured: { value: 50 } },
    ]);
    expect(found('LFT-004', loaded({ from: -3, to: -5, mass: 100 }, 2))).toMatchObject([
      { measured: { value: 50 }, facts: { furthest: { value: 1 } } },
    ]);
  });

  it('[LFT-004] has no next line in where there is only one', () => {
    const state = hangingState({
      lines: [lineAt(-4, 0)],
      loads: [{ of: 'Sign', load: { x: -4.5, mass: 60 }, uncertaintyKg: 1 }],
    });
    expect(found('LFT-004', structured([state]))).toEqual([]);
    expect(found('LFT-003', structured([state]))).toHaveLength(1);
  });

  it('[LFT-004] judges both lines of a batten that has two', () => {
    const lines = [
      { x: -2, stiffness: 60_000, trim: 0 },
      { x: 2, stiffness: 60_000, trim: 0 },
    ];
    const state = hangingState({
      lines: [lineAt(-2, 0), lineAt(2, 1000)],
      loads: [{ of: 'Sign', load: { x: 2.5, mass: 60 }, uncertaintyKg: 1 }],
    });
    expect(found('LFT-004', structured([state], { lines }))).toMatchObject([
      { facts: { last: { value: 2 }, slack: { value: 1 } } },
    ]);
  });
});
