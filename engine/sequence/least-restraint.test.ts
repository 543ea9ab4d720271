/**
 * The least rating of one restraint, with all that is done at 4 ft: 47.27 lb batten heavy bare, a
 * lock of 50 lb, a lamp of 200 lb, and ratings in steps of 5 lb.
 */
import { describe, expect, it } from 'vitest';
import { metres, POUND_FORCE } from '#quantities';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { bare, clearItem, ft, setWith } from './example-jobs.contract.ts';
import { type Job, loadsFor } from './job.ts';
import { leastRestraint, waysOf } from './least-restraint.ts';
import { USUAL } from './plan-order.ts';
import type { OrderOptions } from './types.ts';

const HERE = { fromM: ft(4), toM: ft(4) };

type Asked = {
  readonly items?: Readonly<Record<string, number>>;
  readonly bricks?: Readonly<Record<string, number>>;
  readonly options?: Partial<OrderOptions>;
  readonly line?: 'line' | 'hauled';
};

const least = ({ items = { lamp: 200 }, bricks = { F: 7, H: 2 }, options, line }: Asked) => {
  const ids = Object.keys(items);
  const set = setWith(
    Object.fromEntries(Object.entries(items).map(([id, massLb]) => [id, clearItem(massLb)])),
  );
  const job: Job = {
    physics: examplePhysics(set),
    start: { ...bare, height: metres(ft(4)) },
    goal: {
      items: Object.fromEntries(ids.map((id) => [id, 'on' as const])),
      bricks,
      height: null,
      service: 'in',
    },
    options: {
      ...USUAL,
      doubtShare: 0,
      lock: 'nominal',
      restraintStepN: 5 * POUND_FORCE,
      travel: HERE,
      work: [HERE],
      ...options,
    },
  };
  return leastRestraint(job, loadsFor(job), line ?? 'line');
};

const rated = (resists: 'in' | 'out', as: string, ratedLb: number) => ({
  is: 'least',
  extra: { resists, as, ratedN: expect.closeTo(ratedLb * POUND_FORCE, 6), span: null },
});

describe('the least restraint', () => {
  it('is what the lamp is too much by, whichever comes first', () => {
    // Three F and an H first, 40.23 lb arbor heavy: the lamp on them makes 159.77 to be held in.
    expect(least({ options: { restraint: 'in' } })).toEqual({
      ...rated('in', 'fast', 160),
      refutedStates: 24,
    });
    // All but two F first, 47.27 − 150 = −152.73 lb with an H or −102.73: 155 holds it out.
    expect(least({ options: { restraint: 'out' } })).toMatchObject(rated('out', 'fast', 155));
  });

  it('is the lesser of both ways, and what is made fast before a line that does no better', () => {
    // With F alone: three of them, 27.73 lb arbor heavy, make 172.27 to be held in.
    const job = { bricks: { F: 8 } };
    expect(least({ ...job, options: { restraint: 'in' } })).toMatchObject(rated('in', 'fast', 175));
    const either = least(job);
    expect(either).toEqual({ ...rated('out', 'fast', 155), refutedStates: 8 });
    expect(least({ ...job, line: 'hauled' })).toEqual(either);
    // Where none may be rigged it is said all the same.
    expect(least({ ...job, options: { restraint: 'none' } })).toEqual(either);
  });

  it('is none where no restraint makes an order', () => {
    // 60 lb and 150 lb against 200 lb of bricks: 57.27 lb are left over at the end.
    const job = { items: { a: 60, b: 150 }, bricks: { F: 8 } };
    expect(least({ ...job, options: { restraint: 'in' } })).toEqual({ is: 'none', searched: 29 });
    expect(least({ ...job, options: { restraint: 'out' } })).toEqual({ is: 'none', searched: 36 });
    // Both ways together, each searched to its end.
    expect(least(job)).toEqual({ is: 'none', searched: 29 + 36 });
  });

  it('stops where the states do, in the first question, in doubling and in halving', () => {
    const stops = (statesMost: number, restraint: OrderOptions['restraint'] = 'out') =>
      least({ options: { restraint, statesMost } });
    expect(stops(10)).toEqual({ is: 'stopped', searched: 10 });
    expect(stops(11)).toEqual({ is: 'stopped', searched: 22 });
    // 11 states find an order at a rating without end; 24 refuse 30 lb, and 60 lb is too many.
    expect(stops(35)).toEqual({ is: 'stopped', searched: 11 + 24 + 35 });
    // 30, 60 and 120 lb refused, 240 and 180 taken, and 150 lb is too many.
    expect(stops(100)).toEqual({ is: 'stopped', searched: 11 + (24 + 35 + 91) + (11 + 11) + 100 });
    // The other way is not looked at: what is least is then not known.
    expect(stops(30, 'in')).toMatchObject(rated('in', 'fast', 160));
    expect(stops(30, 'either')).toEqual({ is: 'stopped', searched: 65 });
  });
});

describe('ways to restrain', () => {
  it('are a sling and a line against out, and stands against in', () => {
    const out = [
      { resists: 'out', as: 'fast' },
      { resists: 'out', as: 'line' },
    ];
    const stands = [{ resists: 'in', as: 'fast' }];
    expect(waysOf('out')).toEqual(out);
    expect(waysOf('in')).toEqual(stands);
    expect(waysOf('either')).toEqual([...out, ...stands]);
    expect(waysOf('none')).toEqual([]);
    expect(waysOf('out', 'hauled')[1]).toEqual({ resists: 'out', as: 'hauled' });
    expect(() => waysOf('sideways' as 'in')).toThrow();
  });
});
