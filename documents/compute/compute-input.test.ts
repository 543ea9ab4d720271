import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import * as specimens from '../provocations/specimens.ts';
import { computeInput, isComputeName } from './compute-input.ts';
import { COMPUTE_NAMES } from './inputs.ts';

const SPECIMENS = {
  balance: specimens.balance,
  bricks: specimens.brickTask,
  takeoff: specimens.takeoff,
  pullTest: specimens.pullTest,
  mix: specimens.mix,
  reach: specimens.reach,
  batten: specimens.batten,
  lines: specimens.lines,
  totals: specimens.totals,
  releasable: specimens.releasable,
  runaway: specimens.runaway,
  dropped: specimens.dropped,
  plan: specimens.plan,
  verify: specimens.verify,
};

const faults = (name: (typeof COMPUTE_NAMES)[number], value: unknown): readonly string[] => {
  const answer = computeInput(name).read(value);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

describe.each(COMPUTE_NAMES)('the input of %s', (name) => {
  it('is read as it is written', () => {
    expect(computeInput(name).read(SPECIMENS[name])).toEqual({ ok: true, value: SPECIMENS[name] });
  });

  it('has a schema that takes it, and takes no stray field', () => {
    const validate = new Ajv2020({ strict: true, strictTypes: false }).compile(
      computeInput(name).schema,
    );
    expect(validate(SPECIMENS[name]), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...SPECIMENS[name], stray: 1 })).toBe(false);
    expect(validate([])).toBe(false);
  });

  it('refuses a stray field, and what is no object', () => {
    expect(faults(name, { ...SPECIMENS[name], stray: 1 })).toEqual(['DOC-031 stray']);
    expect(faults(name, [])).toEqual(['DOC-032 ']);
    expect(faults(name, null)).toEqual(['DOC-036 ']);
  });
});

describe('a pull test that is to correct a mass', () => {
  it('[DOC-030] needs the imbalance that the take-off gives, to correct it by', () => {
    const asked = { ...specimens.pullTest, itemMass: 100 };
    const read = computeInput('pullTest').read(asked);
    expect(read.ok ? [] : read.error.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'DOC-030 expectedImbalance',
    ]);
    expect(computeInput('pullTest').read({ ...asked, expectedImbalance: 10 }).ok).toBe(true);
  });
});

describe('the input of balance', () => {
  it('takes every kind of item, with what is optional', () => {
    const items = [
      { kind: 'clear', mass: 100, drop: 1, pick: 0, uncertainty: 2 },
      { kind: 'clear', mass: 100 },
      { kind: 'cloth', mass: 90, drop: 9, tie: 0.2, hem: 0, hemUncertainty: 0.5 },
      { kind: 'tipping', mass: 90, drop: 9, pick: 0.2, centre: 0.4 },
      { kind: 'standing', mass: 90, drop: 9, pick: 0.2 },
      { kind: 'loom', massPerLength: 4, length: 15, fixedAt: 11 },
      { kind: 'deckLoom', massPerLength: 4, length: 15, uncertainty: 1 },
    ];
    const extras = {
      battenUncertainty: 1,
      carriageUncertainty: 1,
      brickUncertainty: 1,
      friction: 80,
      handLinePerBatten: 0.5,
    };
    expect(faults('balance', { ...specimens.balance, ...extras, items })).toEqual([]);
  });

  it('refuses every fault at once, each with its path', () => {
    const { batten, ...rest } = specimens.balance;
    const spoiled = {
      ...rest,
      purchase: 3,
      lines: 5.5,
      carriage: '43 kg',
      items: [
        { kind: 'cloth', mass: 90, drop: 0, tie: 0.2 },
        { kind: 'tipping', mass: -1, drop: 9, pick: 0.2, centre: 40 },
        { kind: 'rope' },
        {},
      ],
      heights: [1, null],
    };
    expect(new Set(faults('balance', spoiled))).toEqual(
      new Set([
        'DOC-033 purchase',
        'DOC-054 lines',
        'DOC-030 batten',
        'DOC-032 carriage',
        'DOC-052 items[0].drop',
        'DOC-030 items[0].hem',
        'DOC-051 items[1].mass',
        'DOC-053 items[1].centre',
        'DOC-033 items[2].kind',
        'DOC-030 items[3].kind',
        'DOC-036 heights[1]',
      ]),
    );
  });

  it('takes a height a hair beyond a stop, as feet turned into metres give it', () => {
    expect(faults('balance', { ...specimens.balance, heights: [0.914, 18.593] })).toEqual([]);
  });
});

describe('the input of takeoff', () => {
  const base = { basis: 'published' };

  it.each([
    { kind: 'mass', mass: 100, hem: { value: 10, tolerance: 1 } },
    {
      kind: 'cloth',
      width: 12,
      areaMass: 0.5,
      fullness: 0.5,
      hemAllowance: 0.05,
      paint: 0,
      moisture: 0,
      ties: { count: 30, each: 0.03 },
    },
    {
      kind: 'frame',
      members: [{ name: 'rail', count: 2, length: 3, massPerLength: 1, z: 2 }],
      sheets: [{ name: 'ply', count: 1, area: 3, massPerArea: 4 }],
      hardware: [{ name: 'hinge', count: 3, each: 0.2 }],
      allowance: 0.08,
    },
    { kind: 'loom', massPerLength: 4, length: 15 },
    { kind: 'pipe', massPerLength: 4, length: 15, fittings: 2 },
    { kind: 'hardware', lines: [{ name: 'shackle', count: 4, each: 0.4 }] },
  ])('takes kind $kind', (numbers) => {
    expect(faults('takeoff', { ...base, ...numbers })).toEqual([]);
  });

  it('tells a fault inside a number with its tolerance at its own path', () => {
    const mass = { value: -3, tolerance: -1, bassis: 'weighed' };
    expect(faults('takeoff', { ...base, kind: 'mass', mass })).toEqual([
      'DOC-051 mass.value',
      'DOC-051 mass.tolerance',
      'DOC-031 mass.bassis',
    ]);
    expect(faults('takeoff', { ...base, kind: 'mass', mass: -3 })).toEqual(['DOC-051 mass']);
    expect(faults('takeoff', { ...base, kind: 'mass', mass: '3 kg' })).toEqual(['DOC-032 mass']);
  });

  it('tells a fault of a place at the place that was meant', () => {
    const asked = { ...base, kind: 'mass', mass: 3 };
    expect(faults('takeoff', { ...asked, placement: { points: [] } })).toEqual([
      'DOC-035 placement.points',
    ]);
    expect(faults('takeoff', { ...asked, placement: { from: 1 } })).toEqual([
      'DOC-030 placement.to',
    ]);
  });

  it('takes tolerances by basis, and no other basis', () => {
    const asked = { ...base, kind: 'mass', mass: 3 };
    expect(faults('takeoff', { ...asked, toleranceByBasis: { weighed: 0.02 } })).toEqual([]);
    expect(faults('takeoff', { ...asked, toleranceByBasis: { weihged: 0.02 } })).toHaveLength(1);
  });
});

describe('names of calculations', () => {
  it('are known or not', () => {
    expect(isComputeName('balance')).toBe(true);
    expect(isComputeName('toString')).toBe(false);
  });
});
