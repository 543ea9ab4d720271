import { describe, expect, it } from 'vitest';
import * as specimens from '../provocations/specimens.ts';
import { computeInput } from './compute-input.ts';

const { plan, verify } = specimens;

const faults = (name: 'plan' | 'verify', value: unknown): readonly string[] => {
  const answer = computeInput(name).read(value);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const withSet = (more: object) => ({ ...plan, set: { ...plan.set, ...more } });
const withStart = (more: object) => ({ ...plan, start: { ...plan.start, ...more } });
const withSteps = (...steps: readonly object[]) => ({ ...verify, steps });

describe('the input of plan', () => {
  it('needs nothing that is optional', () => {
    const { steel: _, rests: __, spare: ___, callHeights: ____, ...rest } = plan;
    const { spreader: _5, arborMassLimit: _6, ...set } = plan.set;
    expect(faults('plan', { ...rest, set })).toEqual([]);
    expect(faults('plan', { ...rest, goal: { ...plan.goal, height: null } })).toEqual([]);
  });

  it('has no default for how the set stands, what is doubted, or what holds', () => {
    expect(faults('plan', {})).toEqual(
      ['set', 'start', 'doubt', 'lock', 'goal', 'restraint'].map((field) => `DOC-030 ${field}`),
    );
    expect(faults('plan', withStart({ restraints: undefined, closed: undefined }))).toEqual([
      'DOC-030 start.restraints',
      'DOC-030 start.closed',
    ]);
  });

  it('[DOC-030] wants every uncertainty, unless masses are as written and nobody is near', () => {
    const [full] = plan.set.bricks;
    const { uncertainty: _, hemUncertainty: __, ...cloth } = plan.set.items.cloth;
    const { battenUncertainty: _b, carriageUncertainty: _c, ...bare } = plan.set;
    const { uncertainty: _u, ...brick } = full ?? {};
    const set = { ...bare, items: { cloth }, bricks: [brick, plan.set.bricks[1]] };
    const missing = [
      'DOC-030 set.battenUncertainty',
      'DOC-030 set.carriageUncertainty',
      'DOC-030 set.bricks[0].uncertainty',
      'DOC-030 set.items.cloth.uncertainty',
      'DOC-030 set.items.cloth.hemUncertainty',
    ];
    expect(faults('plan', { ...plan, set })).toEqual(missing);
    expect(faults('plan', { ...plan, set, doubt: 'worst', lock: 'nominal' })).toEqual(missing);
    expect(faults('plan', { ...plan, set, doubt: 'none', lock: 'nominal' })).toEqual([]);
  });

  it('[DOC-078] [DOC-086] [DOC-046] wants a set that can be', () => {
    expect(faults('plan', withSet({ lowStop: 18.5928 }))).toContain('DOC-078 set.lowStop');
    const [upper, mid] = plan.set.galleries;
    expect(
      faults('plan', withSet({ galleries: [upper, { ...mid, id: 'upper', reachLow: 2 }] })),
    ).toEqual([
      'DOC-046 set.galleries[1].id',
      'DOC-086 set.galleries[1].reachLow',
      'DOC-076 start.closed[1].gallery',
    ]);
    const [full, old] = plan.set.bricks;
    expect(faults('plan', withSet({ bricks: [full, old, full] }))).toEqual([
      'DOC-046 set.bricks[2].id',
    ]);
  });

  it('[DOC-109] knows how far the batten goes, to a micrometre', () => {
    expect(faults('plan', withStart({ height: 0.914 }))).toEqual(['DOC-109 start.height']);
    expect(faults('plan', withStart({ height: 0.9144 - 1e-7 }))).toEqual([]);
    expect(faults('plan', { ...plan, goal: { ...plan.goal, height: 19 } })).toEqual([
      'DOC-109 goal.height',
    ]);
  });

  it('[DOC-074] [DOC-130] knows the kinds and items of the set alone', () => {
    const [upper, mid] = plan.set.galleries;
    expect(faults('plan', withSet({ galleries: [{ ...upper, stock: { X: 1 } }, mid] }))).toEqual([
      'DOC-074 set.galleries[0].stock.X',
    ]);
    const goal = { ...plan.goal, items: { clotg: 'on' }, bricks: { X: 1 } };
    expect(faults('plan', { ...plan, goal, rests: ['tower'], spare: { Y: 1 } })).toEqual([
      'DOC-130 goal.items.clotg',
      'DOC-074 goal.bricks.X',
      'DOC-074 spare.Y',
      'DOC-130 rests[0]',
    ]);
    const [full, old] = plan.set.bricks;
    expect(faults('plan', withSet({ bricks: [full, { ...old, looksLike: ['F', 'X'] }] }))).toEqual([
      'DOC-074 set.bricks[1].looksLike[1]',
    ]);
    const stack = [
      { kind: 'spreader', count: 1, tag: 'spreader' },
      { kind: 'Z', count: 1, tag: 'show' },
    ];
    expect(faults('plan', withStart({ stack, items: { tower: 'away' } }))).toEqual([
      'DOC-130 start.items.tower',
      'DOC-074 start.stack[1].kind',
    ]);
  });

  it('tells slips of the pen by their place', () => {
    const spoiled = {
      ...withSet({ purchase: 3, hands: { brief: 711 }, bricks: [] }),
      doubt: 'some',
      lock: 'planned',
      restraint: 'both',
    };
    expect(new Set(faults('plan', spoiled))).toEqual(
      new Set([
        'DOC-033 set.purchase',
        'DOC-030 set.hands.steady',
        'DOC-035 set.bricks',
        'DOC-033 doubt',
        'DOC-033 lock',
        'DOC-033 restraint',
      ]),
    );
  });
});

describe('the input of verify', () => {
  it('takes every act', () => {
    const [bull] = verify.start.restraints;
    const steps = [
      { act: 'attach', item: 'cloth', as: 'attachedResting' },
      { act: 'takeUp', item: 'cloth' },
      { act: 'rest', item: 'cloth' },
      { act: 'release', item: 'cloth' },
      { act: 'add', kind: 'O', count: 1, gallery: 'mid' },
      { act: 'remove', kind: 'F', count: 500, gallery: 'upper' },
      { act: 'fly', to: 18.5928 },
      { act: 'rig', restraint: bull },
      { act: 'unrig', restraint: bull },
      { act: 'hangOnSteel' },
      { act: 'takeOffSteel' },
      { act: 'close', zone: { zone: 'run' } },
      { act: 'reopen', zone: { zone: 'drop', gallery: 'mid' } },
      { act: 'ease', pull: 0, lifted: true },
    ];
    expect(faults('verify', withSteps(...steps))).toEqual([]);
    expect(faults('verify', withSteps())).toEqual([]);
  });

  it('refuses every fault of every step at once, each by its path', () => {
    const [bull] = verify.start.restraints;
    const steps = [
      { act: 'attach', item: 'tower', as: 'flying' },
      { act: 'add', kind: 'X', count: 1, gallery: 'lower' },
      { act: 'fly', to: 40 },
      { act: 'rig', restraint: { ...bull, from: 9, to: 3 } },
      { act: 'close', zone: { zone: 'drop', gallery: 'lower' } },
    ];
    expect(faults('verify', withSteps(...steps))).toEqual([
      'DOC-130 steps[0].item',
      'DOC-074 steps[1].kind',
      'DOC-076 steps[1].gallery',
      'DOC-109 steps[2].to',
      'DOC-087 steps[3].restraint.from',
      'DOC-076 steps[4].zone.gallery',
    ]);
  });

  it('refuses what is no step', () => {
    const steps = [
      { act: 'jump' },
      { act: 'add', kind: 'F', count: 0, gallery: 'mid' },
      { act: 'add', kind: 'F', count: 1.5, gallery: 'mid' },
      { act: 'ease', pull: -1, lifted: 'yes' },
      { act: 'fly' },
      { act: 'release', item: 'cloth', from: 'batten' },
    ];
    expect(new Set(faults('verify', withSteps(...steps)))).toEqual(
      new Set([
        'DOC-033 steps[0].act',
        'DOC-052 steps[1].count',
        'DOC-054 steps[2].count',
        'DOC-051 steps[3].pull',
        'DOC-032 steps[3].lifted',
        'DOC-030 steps[4].to',
        'DOC-031 steps[5].from',
      ]),
    );
  });
});
