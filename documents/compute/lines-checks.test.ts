import { describe, expect, it } from 'vitest';
import * as specimens from '../provocations/specimens.ts';
import { computeInput } from './compute-input.ts';

const faults = (name: 'lines' | 'totals', value: unknown): readonly string[] => {
  const answer = computeInput(name).read(value);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const [first, second] = specimens.lines.lines;
const [state] = specimens.totals.states;
const [hung, motor] = state?.sets ?? [];

describe('the input of lines', () => {
  it('is sound without what is optional', () => {
    const { cable, handLineMass, handLineTension, friction, held, ...rest } = specimens.lines;
    const { moves, bridles, turningBlocks, ...bare } = rest;
    expect(faults('lines', bare)).toEqual([]);
  });

  it('refuses every fault at once, each with its path', () => {
    const spoiled = {
      ...specimens.lines,
      purchase: 4,
      lines: [
        { x: -4, tension: -1 },
        { x: '4 m', tension: 1 },
      ],
      cable: { ...specimens.lines.cable, diameter: 0, termination: 'knot' },
      moves: [{ kind: 'steady', mass: 200 }, { kind: 'jump' }],
      turningBlocks: [{ tension: 1, turn: 200 }],
      headHeight: Number.NaN,
    };
    expect(new Set(faults('lines', { ...spoiled, headHeight: null }))).toEqual(
      new Set([
        'DOC-033 purchase',
        'DOC-051 lines[0].tension',
        'DOC-032 lines[1].x',
        'DOC-036 headHeight',
        'DOC-052 cable.diameter',
        'DOC-033 cable.termination',
        'DOC-030 moves[0].acceleration',
        'DOC-033 moves[1].kind',
        'DOC-053 turningBlocks[0].turn',
      ]),
    );
    expect(faults('lines', spoiled)).toEqual(['DOC-012 headHeight']);
    expect(faults('lines', { ...specimens.lines, lines: [] })).toEqual(['DOC-035 lines']);
  });

  it.each([
    ['DOC-087 wireEndHeight', { wireEndHeight: 20.12 }],
    ['DOC-087 attachHeight', { attachHeight: 21 }],
    ['DOC-080 lines[1].x', { lines: [second, first] }],
    ['DOC-080 lines[1].x', { lines: [first, first] }],
    ['DOC-052 bridles[0].right', { bridles: [{ load: 1, left: 0, right: 0, height: 1 }] }],
  ])('[DOC-080] [DOC-087] refuses what does not fit together: %s', (fault, change) => {
    expect(faults('lines', { ...specimens.lines, ...change })).toEqual([fault]);
  });
});

const withSets = (...sets: readonly unknown[]): unknown => ({
  ...specimens.totals,
  states: [{ name: 'bare', sets }],
});

describe('the input of totals', () => {
  it('is sound without what is optional', () => {
    const { movingShare, floors, ...rest } = specimens.totals;
    const { moving, arborWireMass, bay, ...still } = hung ?? {};
    expect(faults('totals', { ...rest, states: [{ name: 'bare', sets: [still] }] })).toEqual([]);
  });

  it('[DOC-030] asks for the share of moving sets where one moves', () => {
    const { movingShare, ...rest } = specimens.totals;
    expect(faults('totals', rest)).toEqual(['DOC-030 movingShare']);
  });

  it('[DOC-033] knows only the bays of its list', () => {
    expect(faults('totals', withSets({ ...motor, bay: 'C' }))).toEqual([
      'DOC-033 states[0].sets[0].bay',
    ]);
  });

  it('[DOC-046] takes each set, bay, well and floor once', () => {
    expect(faults('totals', withSets(hung, hung))).toEqual(['DOC-046 states[0].sets[1].set']);
    expect(faults('totals', { ...specimens.totals, bays: ['A', 'B', 'A'] })).toEqual([
      'DOC-046 bays[2]',
    ]);
    const [well] = specimens.totals.wells;
    const [floor] = specimens.totals.floors;
    expect(faults('totals', { ...specimens.totals, wells: [well, { ...well, x: 9 }] })).toEqual([
      'DOC-046 wells[1].id',
    ]);
    expect(faults('totals', { ...specimens.totals, floors: [floor, floor] })).toEqual([
      'DOC-046 floors[1].id',
    ]);
  });

  it('[DOC-095] refuses wells of which one lies over another, and lets them touch', () => {
    const wells = (x: number) => [
      { id: 'W1', x: 0.1, width: 0.4 },
      { id: 'W2', x, width: 0.2 },
    ];
    expect(faults('totals', { ...specimens.totals, wells: wells(0.39) })).toEqual([
      'DOC-095 wells[1].x',
    ]);
    expect(faults('totals', { ...specimens.totals, wells: wells(0.4) })).toEqual([]);
  });

  it('refuses faults inside a state by their path', () => {
    const spoiled = { ...hung, arborMass: -1, lines: [{ x: 1 }], moving: 'yes' };
    expect(new Set(faults('totals', withSets(spoiled)))).toEqual(
      new Set([
        'DOC-051 states[0].sets[0].arborMass',
        'DOC-030 states[0].sets[0].lines[0].tension',
        'DOC-032 states[0].sets[0].moving',
      ]),
    );
    expect(faults('totals', { ...specimens.totals, states: [] })).toEqual(['DOC-035 states']);
  });
});
