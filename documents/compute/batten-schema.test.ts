import { describe, expect, it } from 'vitest';
import * as specimens from '../provocations/specimens.ts';
import { readJson } from '../read-json.ts';
import { computeInput } from './compute-input.ts';

const faults = (value: unknown): readonly string[] => {
  const answer = computeInput('batten').read(value);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};
const [line] = specimens.batten.lines;
const [piece] = specimens.batten.pieces;

describe('the input of batten', () => {
  it('is sound with pipe, ends, lines and loads alone', () => {
    const { pipe, left, right, lines, loads } = specimens.batten;
    const { massPerLength, secondMoment, elasticModulus } = pipe;
    const bare = { massPerLength: 0 * massPerLength, secondMoment, elasticModulus };
    expect(faults({ pipe: bare, left, right, lines, loads })).toEqual([]);
    expect(faults({ pipe: bare, left, right, lines, loads: [] })).toEqual([]);
  });

  it('takes null for what does not stretch or bend, and nowhere else', () => {
    const rigid = { ...line, stiffness: null };
    expect(faults({ ...specimens.batten, lines: [rigid] })).toEqual([]);
    expect(faults({ ...specimens.batten, lines: [{ ...line, trim: null }] })).toEqual([
      'DOC-036 lines[0].trim',
    ]);
    expect(faults({ ...specimens.batten, left: null })).toEqual(['DOC-036 left']);
  });

  it('refuses every fault at once, each with its path', () => {
    const spoiled = {
      ...specimens.batten,
      pipe: { ...specimens.batten.pipe, secondMoment: 0, elasticModulus: '200 GPa' },
      lines: [{ ...line, stiffness: 0 }, { x: 1 }, { ...line, stiffness: -3 }],
      loads: [
        { x: 1, mass: -2 },
        { from: 0, mass: 3 },
        { x: 1, mass: 4, from: 2 },
      ],
      tensionOnly: 'yes',
      splices: [{ x: 1, strength: 1.5 }],
      pieces: [{ ...piece, picks: [piece?.picks[0]] }],
    };
    expect(new Set(faults(spoiled))).toEqual(
      new Set([
        'DOC-052 pipe.secondMoment',
        'DOC-032 pipe.elasticModulus',
        'DOC-052 lines[0].stiffness',
        'DOC-030 lines[1].stiffness',
        'DOC-051 lines[2].stiffness',
        'DOC-051 loads[0].mass',
        'DOC-030 loads[1].to',
        'DOC-031 loads[2].from',
        'DOC-032 tensionOnly',
        'DOC-053 splices[0].strength',
        'DOC-035 pieces[0].picks',
      ]),
    );
  });

  it('refuses what is empty, and numbers that are none', () => {
    expect(faults({ ...specimens.batten, lines: [] })).toEqual(['DOC-035 lines']);
    expect(faults({})).toEqual(
      ['pipe', 'left', 'right', 'lines', 'loads'].map((field) => `DOC-030 ${field}`),
    );
    const loads = [{ x: 1, mass: Number.NaN }];
    expect(faults({ ...specimens.batten, loads })).toEqual(['DOC-012 loads[0].mass']);
    const text = JSON.stringify(specimens.batten).replace('"mass":30', '"mass":NaN');
    const read = readJson(text);
    expect(read.ok).toBe(false);
  });
});
