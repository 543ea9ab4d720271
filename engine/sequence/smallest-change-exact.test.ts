/**
 * How much would have to change, by hand: 48.59 lb with the batten in, 1.32 lb less for every foot,
 * a lamp of 200 lb on it, nine plates of 25 lb and a tenth of a foot, and a lock of 50 lb.
 */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { type ExampleSet, SIX_LINE_SET } from '../../validation/sequence/set-physics.ts';
import { asked, bare, clearItem, ft, hung, lb, none, setWith } from './example-jobs.contract.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const GOAL = { items: { lamp: 'on' }, bricks: { F: 9 }, height: metres(ft(30)) } as const;

const answerOf = (
  set: Partial<ExampleSet>,
  goal: Partial<OrderGoal> = GOAL,
  options: Partial<OrderOptions> = {},
  start = bare,
) => {
  const { rule, exhaustive, atHeight, byN, smallestChange } = none(
    asked(setWith({ lamp: clearItem(200) }, set), start, goal, options),
  );
  return { rule, exhaustive, atHeight, byN, smallestChange };
};

const NOWHERE = { exhaustive: true, atHeight: null, byN: null };

const reach = (fromFt: number, toFt: number) => {
  const [upper] = SIX_LINE_SET.galleries;
  if (upper === undefined) throw new Error('no gallery');
  return { galleries: [{ ...upper, reachFromM: ft(fromFt), reachToM: ft(toFt) }] };
};

describe('how much better masses have to be known', () => {
  const shareOf = (doubtLb: number, doubtShare: number, height: OrderGoal['height']) => {
    const set = setWith({ lamp: clearItem(200, doubtLb) });
    const { smallestChange } = none(asked(set, bare, { ...GOAL, height }, { doubtShare }));
    return smallestChange;
  };

  it('is told to a thousandth part, and never more than will do', () => {
    // Just off its stop 23.59 lb and 70 + 4.5 in doubt: 26.41 / 74.5 is 363.004 of 1024.
    expect(shareOf(70, 1, GOAL.height)).toEqual({ change: 'tolerances', share: 363 / 1024 });
    // It stays on its stop: 73.59 / 74.5 the other way, 1011.5 of 1024.
    expect(shareOf(70, 1, null)).toEqual({ change: 'tolerances', share: 1011 / 1024 });
  });

  it('is a share of what was asked', () => {
    // 26.41 / 144.5 is 374.3 of 2048.
    expect(shareOf(140, 0.5, GOAL.height)).toEqual({ change: 'tolerances', share: 374 / 2048 });
  });
});

describe('how much longer the rod has to be', () => {
  it('is up to the last plate, from whatever it is', () => {
    for (const rodFt of [0.2, 0.8]) {
      const answer = answerOf({ rodM: ft(rodFt) });
      expect(answer).toMatchObject({ ...NOWHERE, rule: 'ROD', smallestChange: { change: 'rod' } });
      const by = answer.smallestChange?.change === 'rod' ? answer.smallestChange.by : 0;
      expect(by).toBeGreaterThanOrEqual(ft(0.9 - rodFt) - 1e-8);
      // Halved 16 times from a stretch of a metre and a bit.
      expect(by).toBeLessThan(ft(0.9 - rodFt) + 2e-5);
    }
  });
});

describe('how much more the arbor has to carry', () => {
  it('is found from whatever it carries, a pound or some hundred', () => {
    // Nine plates are 225 lb, with the carriage.
    for (const [carriageLb, limitLb] of [
      [95, 300],
      [0.2, 0.4],
    ] as const) {
      const arbor = { carriageKg: lb(carriageLb), limitKg: lb(limitLb) };
      const answer = answerOf({ arbor });
      expect(answer).toMatchObject({
        ...NOWHERE,
        rule: 'MASS',
        smallestChange: { change: 'arbor' },
      });
      const by = answer.smallestChange?.change === 'arbor' ? answer.smallestChange.by : 0;
      expect(by).toBeGreaterThanOrEqual(lb(carriageLb + 225 - limitLb) - 1e-8);
      // Halved 16 times from a stretch of 300 lb at most.
      expect(by).toBeLessThan(lb(carriageLb + 225 - limitLb) + 3e-3);
    }
  });

  it('is not asked of one that carries all that ever lies on it', () => {
    const arbor = { carriageKg: lb(95), limitKg: lb(320) };
    expect(answerOf({ ...reach(100, 101), arbor })).toMatchObject({ rule: 'REACH' });
  });
});

describe('who has to reach the arbor', () => {
  it('is asked last, of a set that nobody reaches, at the heights that were used', () => {
    expect(answerOf(reach(100, 101))).toEqual({
      ...NOWHERE,
      rule: 'REACH',
      smallestChange: { change: 'gallery', from: ft(3), to: ft(3) },
    });
  });

  it('is nobody where a rod for one plate is in the way too', () => {
    expect(answerOf({ ...reach(100, 101), rodM: 0.01 })).toEqual({
      ...NOWHERE,
      rule: 'HOLD',
      smallestChange: null,
    });
  });
});

describe('where the batten has to go', () => {
  it('is up to where plates are in reach, and no higher than that', () => {
    const start = { ...hung(setWith({ lamp: clearItem(200) }), 24, [['F', 8]]) };
    // 8 F are 0.8 ft: reach 38 to 38.25 ft is the batten at 25.6125 to 25.8625 ft.
    const goal = { bricks: { F: 9 } } as const;
    const travel = { fromM: ft(20), toM: ft(25) };
    const answer = answerOf(reach(38, 38.25), goal, { travel }, start);
    expect(answer).toMatchObject({
      ...NOWHERE,
      rule: 'TRAVEL',
      smallestChange: { change: 'higher' },
    });
    const to = answer.smallestChange?.change === 'higher' ? answer.smallestChange.to : 0;
    expect(to).toBeGreaterThanOrEqual(ft(25.6125) - 1e-6);
    expect(to).toBeLessThan(ft(25.6125) + 3e-4);
  });

  it('is down to there where that is lower', () => {
    const start = { ...hung(setWith({ lamp: clearItem(200) }), 24, [['F', 8]]) };
    // Reach 43 to 43.25 ft: the batten at 20.6125 to 20.8625 ft.
    const travel = { fromM: ft(22), toM: ft(30) };
    const answer = answerOf(reach(43, 43.25), { bricks: { F: 9 } }, { travel }, start);
    expect(answer).toMatchObject({
      ...NOWHERE,
      rule: 'TRAVEL',
      smallestChange: { change: 'lower' },
    });
    const to = answer.smallestChange?.change === 'lower' ? answer.smallestChange.to : 0;
    expect(to).toBeLessThanOrEqual(ft(20.8625) + 1e-6);
    expect(to).toBeGreaterThan(ft(20.8625) - 3e-4);
  });

  it('is nowhere else where the travel is all that the house has', () => {
    const { lowStopM, highStopM } = SIX_LINE_SET;
    const travel = { fromM: lowStopM, toM: highStopM };
    expect(answerOf(reach(100, 101), GOAL, { travel })).toMatchObject({ rule: 'REACH' });
  });
});

describe('what a house has too few of', () => {
  it('is bricks, where all else is as it should be', () => {
    const few = SIX_LINE_SET.galleries.map((each) => ({ ...each, stock: { F: 4 } }));
    expect(answerOf({ galleries: few.slice(0, 1) })).toEqual({
      ...NOWHERE,
      rule: 'STOCK',
      smallestChange: { change: 'stock' },
    });
  });
});
