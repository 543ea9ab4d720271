import { describe, expect, it } from 'vitest';
import * as specimens from '../provocations/specimens.ts';
import { computeInput } from './compute-input.ts';

const faults = (name: 'releasable' | 'runaway' | 'dropped', value: unknown): readonly string[] => {
  const answer = computeInput(name).read(value);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const { curve, ...place } = specimens.releasable;
const { moves } = specimens.runaway;

describe('the input of releasable', () => {
  it('is sound without a hold, and without contacts', () => {
    const { hold, ...bare } = place;
    const plain = curve.map(({ height, below, above }) => ({ height, below, above }));
    expect(faults('releasable', { ...bare, curve: plain })).toEqual([]);
  });

  it('refuses every fault at once, each with its path', () => {
    const spoiled = {
      ...place,
      hold: -1,
      height: '4 m',
      curve: [
        { height: 0, below: 0 },
        { height: 1, below: 2e7, above: 0, contact: { low: 0 } },
      ],
    };
    expect(new Set(faults('releasable', spoiled))).toEqual(
      new Set([
        'DOC-051 hold',
        'DOC-032 height',
        'DOC-030 curve[0].above',
        'DOC-053 curve[1].below',
        'DOC-030 curve[1].contact.high',
      ]),
    );
    expect(faults('releasable', { ...place, curve: [] })).toEqual(['DOC-035 curve']);
  });

  it('[DOC-078] [DOC-109] refuses stops reversed, and a start beyond them', () => {
    const { releasable, runaway } = specimens;
    for (const [name, sound] of [
      ['releasable', releasable],
      ['runaway', runaway],
    ] as const) {
      expect(faults(name, { ...sound, lowStop: 19 })).toEqual(['DOC-078 lowStop']);
      expect(faults(name, { ...sound, height: 0.9 })).toEqual(['DOC-109 height']);
      expect(faults(name, { ...sound, height: 18.6 })).toEqual(['DOC-109 height']);
    }
  });
});

describe('the input of runaway', () => {
  it('is sound with one mass, and without what is optional', () => {
    const { hold, already, liftLines, stop, ...bare } = specimens.runaway;
    expect(faults('runaway', { ...bare, moves: { ...moves, hanging: 210 } })).toEqual([]);
    expect(faults('runaway', { ...bare, liftLines: {}, stop: { stiffness: 1e6 } })).toEqual([]);
  });

  it('refuses every fault at once, each with its path', () => {
    const spoiled = {
      ...specimens.runaway,
      moves: {
        ...moves,
        purchase: 3,
        hanging: [{ height: 1, below: -2, above: 0 }],
        friction: { share: 1.2, of: 'arbor', constant: 1 },
      },
      already: { way: 'up', speed: 0 },
      liftLines: { largestShare: 0, stiffness: null },
      stop: { distance: 0 },
    };
    expect(new Set(faults('runaway', spoiled))).toEqual(
      new Set([
        'DOC-033 moves.purchase',
        'DOC-051 moves.hanging[0].below',
        'DOC-053 moves.friction.share',
        'DOC-033 moves.friction.of',
        'DOC-033 already.way',
        'DOC-052 already.speed',
        'DOC-052 liftLines.largestShare',
        'DOC-036 liftLines.stiffness',
        'DOC-052 stop.distance',
      ]),
    );
    const { friction, ...silent } = moves;
    expect(faults('runaway', { ...specimens.runaway, moves: silent })).toEqual([
      'DOC-030 moves.friction',
    ]);
  });

  it('takes one way in which the stop gives, not two', () => {
    const stop = { stiffness: 1e6, distance: 0.1 };
    expect(faults('runaway', { ...specimens.runaway, stop })[0]).toMatch(/^DOC-031 stop\./);
  });
});

describe('the input of dropped', () => {
  it('is sound without air', () => {
    const { air, ...bare } = specimens.dropped;
    expect(faults('dropped', bare)).toEqual([]);
  });

  it('asks the house for its rule, and refuses every fault by its path', () => {
    const { bounce, ...silent } = specimens.dropped;
    expect(faults('dropped', silent)).toEqual(['DOC-030 bounce']);
    const spoiled = {
      ...specimens.dropped,
      mass: 0,
      air: { dragCoefficient: 1, area: 0, density: 1.2 },
      bounce: { least: -1, shareOfFall: 0.25 },
      levels: [{ name: '', height: 0 }],
    };
    expect(new Set(faults('dropped', spoiled))).toEqual(
      new Set([
        'DOC-052 mass',
        'DOC-052 air.area',
        'DOC-051 bounce.least',
        'DOC-040 levels[0].name',
      ]),
    );
  });

  it('[DOC-087] refuses a fall onto nothing', () => {
    const levels = [{ name: 'upper gallery', height: 17.6784 }];
    expect(faults('dropped', { ...specimens.dropped, levels })).toEqual(['DOC-087 from']);
  });
});
