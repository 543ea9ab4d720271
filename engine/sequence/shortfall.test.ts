/** By how much a load is not held: 48.59 lb bare with the batten in, 1.32 lb less a foot. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint, Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { asLb, bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { type Job, loadsFor } from './job.ts';
import { USUAL } from './plan-order.ts';
import { goalShortfall, shortfall } from './shortfall.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const SET = setWith({ lamp: clearItem(200, 4), head: clearItem(60) });

type Asked = {
  readonly start?: Standing;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
};

const jobOf = ({ start = bare, goal = {}, options = {} }: Asked): Job => ({
  physics: examplePhysics(SET),
  start,
  goal: { items: {}, bricks: {}, height: null, service: 'in', ...goal },
  options: { ...USUAL, doubtShare: 0, ...options },
});

const short = (asked: Asked): number => {
  const job = jobOf(asked);
  const loads = loadsFor(job);
  return asLb(shortfall(job, loads, loads.first, job.start.height));
};

const bothUp = { lamp: 'flying', head: 'flying' } as const;
const lampUp = (heightFt: number, full: number): Standing => ({
  ...hung(SET, heightFt, [['F', full]]),
  items: { lamp: 'flying' },
});

const restraint = (more: Partial<Restraint>): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(40 * 4.4482216152605),
  from: metres(ft(3)),
  to: metres(ft(40)),
  owner: null,
  tag: null,
  ...more,
});

describe('what a load lacks', () => {
  it('is nothing where the lock holds it, to the pound, either way', () => {
    // With the lamp and 7 F: 73.59 − 1.32 (h − 3), which is 50 lb at 20.87 ft.
    expect(short({ start: lampUp(21, 7) })).toBe(0);
    expect(short({ start: lampUp(20, 7) })).toBeCloseTo(73.59 - 17 * 1.32 - 50, 6);
    // With 9 F: 23.59 lb, and −50 at 58.75 ft.
    expect(short({ start: lampUp(58, 9) })).toBe(0);
    expect(short({ start: lampUp(60, 9) })).toBeCloseTo(57 * 1.32 - 23.59 - 50, 6);
  });

  it('is nothing on a stop that bears it, and more than none where even that is too weak', () => {
    expect(short({ start: lampUp(3, 0) })).toBe(0);
    expect(short({ start: lampUp(61, 20) })).toBe(0);
    // 48.59 + 200 − 75 · 25 − 58 · 1.32 lb on a stop of 1400.
    expect(short({ start: lampUp(61, 75) })).toBeCloseTo(75 * 25 + 58 * 1.32 - 248.59 - 1400, 6);
  });

  it('counts the doubt that is asked for, either way', () => {
    // 4 lb of the lamp and half a pound for each brick.
    const at = (doubtShare: number, full: number, heightFt: number) =>
      short({ start: lampUp(heightFt, full), options: { doubtShare } });
    expect(at(1, 7, 20)).toBeCloseTo(73.59 - 17 * 1.32 - 50 + 7.5, 6);
    expect(at(0.5, 7, 20)).toBeCloseTo(73.59 - 17 * 1.32 - 50 + 3.75, 6);
    expect(at(1, 9, 60)).toBeCloseTo(57 * 1.32 - 23.59 - 50 + 8.5, 6);
  });

  it('trusts the lock as far as it is ever trusted, and what stands beside it', () => {
    for (const lock of ['planning', 'nominal'] as const) {
      expect(short({ start: lampUp(20, 7), options: { lock } })).toBeCloseTo(1.15, 6);
    }
    // 11 F leave −26.41 − 57 · 1.32 = −101.65 lb at 60 ft; the line goes no higher than 40.
    const tied = (more: Partial<Restraint>, heightFt: number) =>
      short({ start: { ...lampUp(heightFt, 11), restraints: [restraint(more)] } });
    expect(tied({}, 60)).toBeCloseTo(51.65, 6);
    // A line of 40 lb adds nothing to the lock's 50, and one of 100 is instead of it.
    const atForty = 26.41 + 37 * 1.32;
    expect(tied({}, 40)).toBeCloseTo(atForty - 50, 6);
    const strong = newtons(70 * 4.4482216152605);
    expect(tied({ rating: strong }, 40)).toBeCloseTo(atForty - 70, 6);
    expect(tied({ rating: strong, resists: 'in' }, 40)).toBeCloseTo(atForty - 50, 6);
  });

  it('is all that there is where the batten cannot be', () => {
    const job = jobOf({ start: lampUp(3, 8) });
    const loads = loadsFor(job);
    expect(shortfall(job, loads, loads.first, ft(70))).toBe(Number.POSITIVE_INFINITY);
    expect(shortfall(job, loads, loads.first, ft(2))).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('what the goal lacks', () => {
  const goalOf = (asked: Asked): number => {
    const job = jobOf(asked);
    return asLb(goalShortfall(job, loadsFor(job)));
  };
  const at30 = (goal: Partial<OrderGoal>): Partial<OrderGoal> => ({
    height: metres(ft(30)),
    ...goal,
  });

  it('is asked at its height, and nowhere where it names none', () => {
    // 248.59 − 27 · 1.32 = 212.95 lb at 30 ft without a brick.
    expect(goalOf({ goal: at30({ items: { lamp: 'on' } }) })).toBeCloseTo(162.95, 6);
    expect(goalOf({ goal: { items: { lamp: 'on' } } })).toBe(0);
    expect(goalOf({ goal: at30({ items: { lamp: 'on' }, bricks: { F: 8 } }) })).toBe(0);
  });

  it('has what is to hang, not what is to go, and what nobody speaks of', () => {
    const start = { ...hung(SET, 3, [['F', 8]]), items: bothUp };
    const lacks = (items: OrderGoal['items']) =>
      goalOf({ start, goal: at30({ items, bricks: { F: 8 } }) });
    // Both 272.95 − 200 = 72.95 lb; the lamp alone 12.95; the head alone −127.05.
    expect(lacks({})).toBeCloseTo(22.95, 6);
    expect(lacks({ head: 'away' })).toBe(0);
    expect(lacks({ lamp: 'away' })).toBeCloseTo(77.05, 6);
  });

  it('has no restraint of the start, and its own bricks', () => {
    const line = restraint({ rating: newtons(2000) });
    const start = { ...lampUp(3, 13), restraints: [line] };
    expect(goalOf({ start, goal: at30({ bricks: { F: 13 } }) })).toBeCloseTo(
      26.41 + 50 + 27 * 1.32 - 50,
      6,
    );
  });

  it('on steel is borne by it', () => {
    const goal = at30({ items: { lamp: 'on' }, service: 'deadHung' });
    expect(goalOf({ goal, options: { steelN: 5000 } })).toBe(0);
    // 162.95 lb too much for the lock; the steel bears 200 of 212.95.
    const weak = 200 * 4.4482216152605;
    expect(goalOf({ goal, options: { steelN: weak } })).toBeCloseTo(12.95, 6);
  });
});
