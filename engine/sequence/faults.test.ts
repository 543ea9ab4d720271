/** Where a set is held after the worst single fault: U = 60 − 10 h newtons, a lock of 50 N. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { setWith } from './example-jobs.contract.ts';
import { type RampAsked, rampLoad, rampNode, rounded, SIXTY } from './example-ramp.contract.ts';
import { faultless, handsOn, meetAll } from './faults.ts';
import type { Rated } from './held.ts';
import type { LoadChange } from './load.ts';
import { AWAY, HANGING, RESTING, SLACK } from './site.ts';

type Asked = RampAsked & { readonly fixed?: readonly Rated[] };

const open = (question: Asked = {}) => {
  const { loads, load } = rampLoad(question);
  return faultless(loads.site, load, question.fixed ?? []).map(rounded);
};

const hands = (question: Asked = {}) => {
  const { loads, load } = rampLoad(question);
  return handsOn(loads, load, question.fixed ?? []).map(rounded);
};

const atFour = (lowN: number, highN: number) => ({ at: () => ({ lowN, highN, doubtN: 0 }) });

describe('a brick miscounted', () => {
  it('is off the lock: 30 N either way', () => {
    expect(open()).toEqual([[3, 9]]);
  });

  it('counts against what is made fast too: 60 less 20 either way', () => {
    expect(open({ fixed: [SIXTY] })).toEqual([[2, 10]]);
  });

  it('is more than a lock of 10 N holds anywhere', () => {
    expect(open({ physics: { lockLimitN: 10 } })).toEqual([]);
    expect(open({ physics: { lockLimitN: 20 } })).toEqual([[6, 6]]);
  });

  it('is nothing where there are no bricks', () => {
    expect(open({ physics: { bricks: [] }, fixed: [SIXTY] })).toEqual([[0, 12]]);
  });
});

describe('an item off by its tolerance', () => {
  const lamp = { start: { items: { lamp: 'flying' } }, fixed: [SIXTY] } as const;

  it('counts where masses are taken as they are written: 60 less 30 for 72 − 10 h', () => {
    expect(open({ ...lamp, options: { doubtShare: 0 } })).toEqual([[4.2, 10.2]]);
    expect(open({ ...lamp, options: { doubtShare: 0.99 } })).toEqual([[4.2, 10.2]]);
  });

  it('is not counted twice where all doubt is in the sum already', () => {
    expect(open({ ...lamp, options: { doubtShare: 1 } })).toEqual([[3.2, 11.2]]);
  });

  it('counts on its rest as it does hanging, and neither slack nor away', () => {
    const phase = (phases: NonNullable<LoadChange['phases']>, lowN: number) =>
      open({ ...lamp, options: { doubtShare: 0 }, change: { phases }, physics: atFour(lowN, 40) });
    expect(phase([RESTING], 30)).toEqual([[4, 4]]);
    expect(phase([RESTING], 30.1)).toEqual([]);
    expect(phase([AWAY], 30)).toEqual([[2, 10]]);
    expect(phase([SLACK], 30)).toEqual([[2, 4]]);
  });
});

describe('contact lost', () => {
  const rest = { start: { items: { lamp: 'attachedResting' } }, options: { restAtM: 4 } } as const;

  it('leaves the batten with all that was shared', () => {
    expect(open({ ...rest, physics: atFour(0, 50) })).toEqual([[4, 4]]);
    expect(open({ ...rest, physics: atFour(0, 50.1) })).toEqual([]);
  });

  it('is no fault of a set that hangs on steel', () => {
    const at5 = { ...rampNode(5, 0), contact: { lowN: 0, highN: 55 } };
    const physics = { curve: () => [rampNode(0, 300), { ...at5, belowN: 300, aboveN: -300 }] };
    const start = { height: metres(5), service: 'deadHung' as const };
    expect(open({ physics, start })).toEqual([[5, 5]]);
    expect(open({ physics, start: { height: metres(5) } })).toEqual([]);
  });
});

describe('a tended line lost', () => {
  const line = (kind: Restraint['kind']): Restraint => ({
    kind,
    resists: 'both',
    rating: newtons(60),
    from: metres(0),
    to: metres(12),
    owner: null,
    tag: null,
  });
  const five = { bricks: examplePhysics(setWith({})).bricks.map((b) => ({ ...b, atBattenN: 5 })) };
  const tied = (restraints: readonly Restraint[], change: LoadChange = {}) =>
    open({ physics: five, start: { restraints }, change });

  it('leaves the lock, and what is made fast is not lost', () => {
    // 50 N on the lock alone; 60 less a brick of 5 on what stays.
    expect(tied([line('bullLine')])).toEqual([[1, 11]]);
    expect(tied([line('pinnedPiece')])).toEqual([[0.5, 11.5]]);
  });

  it('leaves the other of two', () => {
    expect(tied([line('bullLine'), line('winch')])).toEqual([[0.5, 11.5]]);
  });

  it('is no fault where it has been taken off', () => {
    expect(tied([line('bullLine')], { tied: false })).toEqual([[1.5, 10.5]]);
  });
});

describe('an item that hands let go', () => {
  it('leaves the others, and the lock to hold them', () => {
    const both = { start: { items: { lamp: 'flying', heavy: 'flying' } } } as const;
    // 90 − 10 h without the lamp, 72 − 10 h without the heavy one: 50 N either way.
    expect(hands(both)).toEqual([[4, 12]]);
    expect(hands({ ...both, change: { phases: [HANGING, AWAY] } })).toEqual([[1, 11]]);
    expect(hands({ ...both, change: { phases: [AWAY, AWAY] } })).toEqual([[0, 12]]);
    expect(hands({ ...both, change: { phases: [SLACK, AWAY] } })).toEqual([[0, 4]]);
    expect(hands({ ...both, fixed: [SIXTY], change: { phases: [HANGING, AWAY] } })).toEqual([
      [0, 12],
    ]);
  });

  it('may be one that rests', () => {
    const rests = (restAtM: number) =>
      hands({ start: { items: { lamp: 'attachedResting' } }, options: { restAtM } });
    expect(rests(1)).toEqual([[1, 1]]);
    expect(rests(0.9)).toEqual([]);
  });
});

describe('where a set may stand at all', () => {
  it('is in the end all that counts', () => {
    // Slack picks reach 2 m, and below 3 m it is not held.
    const slack = { start: { items: { lamp: 'attachedSlack' } }, options: { restAtM: 2 } } as const;
    expect(open(slack)).toEqual([]);
    expect(hands(slack)).toEqual([[0, 2]]);
  });

  it('is what all lists have in common', () => {
    const [low, high] = [
      { lo: 0, hi: 1 },
      { lo: 2, hi: 4 },
    ];
    expect(meetAll([[low, high], [{ lo: 0.5, hi: 3 }]])).toEqual([
      { lo: 0.5, hi: 1 },
      { lo: 2, hi: 3 },
    ]);
    expect(meetAll([[low], [high]])).toEqual([]);
  });
});
