import { describe, expect, it } from 'vitest';
import { answerBatten } from './answer.ts';
import { twoSpans } from './example-battens.ts';
import { heaviestAt } from './heaviest-load.ts';
import { placePicks } from './place-picks.ts';
import { BEAM_REFUSALS } from './refusal-codes.ts';
import { turnsToEven, turnsToLevel } from './turn-lines.ts';
import type { BattenCase, Load } from './types.ts';

const SOUND = twoSpans([{ x: 1, mass: 20 }]);
const LOAD: Load = { x: 1, mass: 20 };
const RIGID = { x: 3, stiffness: null };
const PIECE = {
  bendingStiffness: null,
  loads: [LOAD],
  picks: [1, 2].map((x) => ({ ...RIGID, x })),
};

const pipe = (changes: object): Partial<BattenCase> => ({ pipe: { ...SOUND.pipe, ...changes } });
const lines = (...list: readonly object[]): Partial<BattenCase> => ({
  lines: list.map((line) => ({ ...RIGID, ...line })),
});
const loads = (...list: readonly Load[]): Partial<BattenCase> => ({ loads: list });
const piece = (changes: object): Partial<BattenCase> => ({ pieces: [{ ...PIECE, ...changes }] });
const support = (changes: object): Partial<BattenCase> => ({
  supports: [{ ...RIGID, height: 0, ...changes }],
});

/** What is spoiled, and every fault that has to be told, each by code and path. */
const PROVOKED: readonly (readonly [string, string, Partial<BattenCase>, readonly string[]])[] = [
  ['BEM-001', 'no lines', lines(), ['BEM-001 lines']],
  [
    'BEM-002',
    'lines off the batten',
    lines({ x: -0.1 }, { x: 2 }, { x: 6.1 }),
    ['BEM-002 lines[0].x', 'BEM-002 lines[2].x'],
  ],
  ['BEM-002', 'a support off the batten', support({ x: 7 }), ['BEM-002 supports[0].x']],
  [
    'BEM-002',
    'a splice off the batten',
    { splices: [{ x: -1, strength: 1 }] },
    ['BEM-002 splices[0].x'],
  ],
  [
    'BEM-002',
    'a pick off the batten',
    piece({ picks: [RIGID, { ...RIGID, x: 6.5 }] }),
    ['BEM-002 pieces[0].picks[1].x'],
  ],
  [
    'BEM-003',
    'two lines at one place',
    lines({ x: 1 }, { x: 5 }, { x: 1 }),
    ['BEM-003 lines[2].x'],
  ],
  [
    'BEM-003',
    'two picks at one place',
    piece({ picks: [RIGID, { ...RIGID, x: 3.0005 }] }),
    ['BEM-003 pieces[0].picks[1].x'],
  ],
  [
    'BEM-004',
    'no stiffness',
    lines({ stiffness: 0 }, { x: 1, stiffness: -5 }),
    ['BEM-004 lines[0].stiffness', 'BEM-004 lines[1].stiffness'],
  ],
  [
    'BEM-004',
    'a stiffness that is no number',
    lines({}, { x: 1, stiffness: Number.NaN }),
    ['BEM-004 lines[1].stiffness'],
  ],
  [
    'BEM-004',
    'a piece of no stiffness',
    piece({ bendingStiffness: 0 }),
    ['BEM-004 pieces[0].bendingStiffness'],
  ],
  [
    'BEM-004',
    'a stand of no stiffness',
    support({ stiffness: Number.POSITIVE_INFINITY }),
    ['BEM-004 supports[0].stiffness'],
  ],
  [
    'BEM-005',
    'loads beyond the ends',
    loads({ x: 6.01, mass: 1 }, { from: -1, to: 7, mass: 1 }),
    ['BEM-005 loads[0].x', 'BEM-005 loads[1].from', 'BEM-005 loads[1].to'],
  ],
  [
    'BEM-005',
    'a spread load the wrong way round',
    loads({ from: 4, to: 2, mass: 1 }),
    ['BEM-005 loads[0].from'],
  ],
  [
    'BEM-006',
    'masses that are none',
    loads({ x: 1, mass: -1 }, { x: 1, mass: Number.NaN }),
    ['BEM-006 loads[0].mass', 'BEM-006 loads[1].mass'],
  ],
  ['BEM-006', 'a pipe that pulls up', pipe({ massPerLength: -4 }), ['BEM-006 pipe.massPerLength']],
  [
    'BEM-007',
    'places that are no numbers',
    { ...lines({ x: Number.NaN }), ...loads({ x: NaN, mass: 1 }) },
    ['BEM-007 lines[0].x', 'BEM-007 loads[0].x'],
  ],
  [
    'BEM-007',
    'a trim and a height that are none',
    {
      ...lines({ trim: Number.NaN }, { x: 1 }),
      ...support({ height: Number.NEGATIVE_INFINITY }),
    },
    ['BEM-007 lines[0].trim', 'BEM-007 supports[0].height'],
  ],
  [
    'BEM-007',
    'ends that are none, or beyond a kilometre',
    { left: Number.NaN, right: 2000 },
    ['BEM-007 left', 'BEM-007 right'],
  ],
  [
    'BEM-008',
    'no pipe',
    pipe({ secondMoment: 0, elasticModulus: Number.NaN, yieldStrength: -1 }),
    ['BEM-008 pipe.secondMoment', 'BEM-008 pipe.elasticModulus', 'BEM-008 pipe.yieldStrength'],
  ],
  ['BEM-009', 'ends reversed', { left: 6, right: 0 }, ['BEM-009 left']],
  ['BEM-009', 'no length', { left: 3, right: 3 }, ['BEM-009 left']],
  ['BEM-010', 'a piece on one pick', piece({ picks: [RIGID] }), ['BEM-010 pieces[0].picks']],
  [
    'BEM-011',
    'splices that take nothing, or more than all',
    {
      splices: [0, 1.1, Number.NaN].map((strength) => ({ x: 2, strength })),
    },
    ['BEM-011 splices[0].strength', 'BEM-011 splices[1].strength', 'BEM-011 splices[2].strength'],
  ],
];

const faultsOf = (answer: ReturnType<typeof answerBatten>): readonly string[] =>
  answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);

describe('a batten that is none', () => {
  it('is sound before it is spoiled', () => {
    expect(answerBatten({ ...SOUND, pieces: [PIECE] }).ok).toBe(true);
  });

  it.each(PROVOKED)('[%s] %s', (_code, _what, changes, wanted) => {
    expect(faultsOf(answerBatten({ ...SOUND, ...changes }))).toEqual(wanted);
  });

  it('is told all its faults at once, each with what was found and what is taken', () => {
    const answer = answerBatten({
      ...SOUND,
      ...lines({ x: -1 }, { x: 2, stiffness: 0 }),
      ...loads({ x: 9, mass: -1 }),
    });
    expect(faultsOf(answer)).toHaveLength(4);
    for (const { found, accepted } of answer.ok ? [] : answer.error) {
      expect(found).not.toBe('');
      expect(accepted).not.toBe('');
    }
  });
});

describe('a search that has nothing to find', () => {
  const codes = (answer: { readonly ok: boolean; readonly error?: unknown }): readonly string[] =>
    answer.ok
      ? []
      : (answer.error as { code: string; path: string }[]).map(
          ({ code, path }) => `${code} ${path}`,
        );

  it('[BEM-012] is refused: limits', () => {
    expect(codes(heaviestAt(SOUND, 1, {}))).toEqual(['BEM-012 limits']);
    expect(codes(heaviestAt(SOUND, 1, { line: -1 }))).toEqual(['BEM-012 limits.line']);
    expect(codes(heaviestAt(SOUND, 1, { liveMass: Number.NaN }))).toEqual([
      'BEM-012 limits.liveMass',
    ]);
    // No yield strength: bending would never stop anything.
    expect(codes(heaviestAt(SOUND, 1, { utilisation: 1 }))).toEqual(['BEM-012 limits.utilisation']);
    expect(codes(heaviestAt(SOUND, 9, { line: 5000 }))).toEqual(['BEM-005 loads[1].x']);
  });

  it('[BEM-012] is refused: picks', () => {
    const task = { mass: 50, centre: 3, count: 2, halfFrom: 0.5, halfTo: 2 };
    expect(placePicks(SOUND, task).ok).toBe(true);
    expect(codes(placePicks(SOUND, { ...task, count: 1 }))).toEqual(['BEM-012 count']);
    expect(codes(placePicks(SOUND, { ...task, halfTo: 3.1 }))).toEqual(['BEM-012 halfTo']);
    expect(codes(placePicks(SOUND, { ...task, halfFrom: 0 }))).toEqual(['BEM-012 halfTo']);
    expect(codes(placePicks(SOUND, { ...task, mass: 0 }))).toEqual(['BEM-006 mass']);
    expect(codes(placePicks({ ...SOUND, lines: [] }, task))).toEqual(['BEM-001 lines']);
  });

  it('[BEM-012] is refused: turns beside a stand or a piece', () => {
    const stood = { ...SOUND, ...support({ x: 2 }) };
    expect(codes(turnsToLevel(stood))).toEqual(['BEM-012 supports']);
    expect(codes(turnsToEven({ ...SOUND, pieces: [PIECE] }))).toEqual(['BEM-012 pieces']);
    expect(codes(turnsToLevel({ ...SOUND, lines: [] }))).toEqual(['BEM-001 lines']);
    expect(codes(turnsToEven({ ...SOUND, lines: [] }))).toEqual(['BEM-001 lines']);
  });

  it('[BEM-013] is refused: evenly shared where a line would push', () => {
    expect(codes(turnsToEven(twoSpans([{ x: 0.3, mass: 20 }])))).toEqual(['BEM-013 loads']);
  });
});

it('every code is provoked here', () => {
  const told = new Set(
    PROVOKED.flatMap(([, , , faults]) => faults.map((each) => each.slice(0, 7))),
  );
  const all = Object.values(BEAM_REFUSALS).map(({ code }) => code);
  expect(new Set(all).size).toBe(all.length);
  expect(all.filter((code) => !told.has(code))).toEqual(['BEM-013', 'BEM-012']);
});
