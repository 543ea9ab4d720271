/** The order of one set without its zones, and what the galleries have given. */
import { describe, expect, it } from 'vitest';
import { newtons } from '#quantities';
import type { Standing, Step, WorkZone } from '#state';
import { bare, setWith } from '../example-jobs.contract.ts';
import type { OrderPlan, OrderState } from '../types.ts';
import { courseOf } from './course.ts';
import { physicsOf } from './example-pairs.contract.ts';
import { givenAfter, isInStock, stockLess } from './stock.ts';

const RUN: WorkZone = { zone: 'run' };
const UPPER: WorkZone = { zone: 'drop', gallery: 'upper' };

const add = (count: number) =>
  ({ act: 'add', kind: 'F', count, gallery: 'upper' }) as const satisfies Step;
const remove = (count: number): Step => ({ act: 'remove', kind: 'F', count, gallery: 'upper' });

type Found = Extract<OrderPlan, { readonly found: unknown }>['found'];

/** Steps with the zones that are closed after each; the first list is how it starts. */
const foundOf = (steps: readonly Step[], closed: readonly (readonly WorkZone[])[]): Found => {
  const hold = { by: 'lock', ratedN: newtons(1) } as const;
  const none = newtons(0);
  const state = (zones: readonly WorkZone[]): OrderState => ({
    standing: { ...bare, closed: zones },
    imbalance: { lowN: none, highN: none, doubtN: none },
    holds: { in: hold, out: hold },
    lockUsed: null,
  });
  return {
    steps,
    states: closed.map(state),
    restraint: null,
    exposedJ: null,
    searched: 1,
    optimal: true,
  };
};

describe('the order of one set', () => {
  it('is its deeds, with how it stands before and after each', () => {
    const { deeds, points } = courseOf(
      foundOf(
        [{ act: 'close', zone: UPPER }, add(2), { act: 'close', zone: RUN }, remove(1)],
        [[], [UPPER], [UPPER], [UPPER, RUN], [UPPER, RUN]],
      ),
    );
    expect(deeds).toEqual([
      { step: add(2), inClosedRun: false },
      { step: remove(1), inClosedRun: true },
    ]);
    expect(points.map(({ mayBeOpen }) => mayBeOpen)).toEqual([true, true, false]);
    const stood: readonly Standing[] = points.map(({ standing }) => standing);
    expect(stood.map(({ closed }) => closed)).toEqual([[UPPER], [UPPER, RUN], [UPPER, RUN]]);
  });

  it('may have the run open where it reopens it', () => {
    const { points } = courseOf(
      foundOf([add(1), { act: 'reopen', zone: RUN }], [[RUN], [RUN], []]),
    );
    expect(points.map(({ mayBeOpen }) => mayBeOpen)).toEqual([false, true]);
  });

  it('does not take how it was found for how it may be left', () => {
    const closes = courseOf(foundOf([{ act: 'close', zone: RUN }, add(1)], [[], [RUN], [RUN]]));
    expect(closes.points[0]?.mayBeOpen).toBe(false);
    expect(courseOf(foundOf([add(1)], [[], []])).points[0]?.mayBeOpen).toBe(true);
    expect(courseOf(foundOf([], [[]])).points).toHaveLength(1);
    expect(courseOf(foundOf([], [[]])).points[0]?.mayBeOpen).toBe(true);
    expect(courseOf(foundOf([], [[RUN]])).points[0]?.mayBeOpen).toBe(false);
  });
});

describe('the bricks of both', () => {
  const physics = physicsOf('A', setWith({}));
  const given = givenAfter([add(3), remove(1), { act: 'hangOnSteel' }]);
  const F = { gallery: 'upper', kind: 'F' } as const;

  it('are what was given less what came back', () => {
    expect(given).toHaveLength(4);
    const left = (after: number): number | undefined =>
      stockLess(physics, [add(3), remove(1)].slice(0, after)).galleries[0]?.stock['F'];
    expect([left(0), left(1), left(2)]).toEqual([100, 97, 98]);
    expect(stockLess(physics, [add(300)]).galleries[0]?.stock['F']).toBe(0);
    expect(stockLess(physics, [add(3)]).galleries[1]?.stock['F']).toBe(100);
  });

  it('are given by nothing but plates', () => {
    expect(given.map((each) => [...each])).toEqual([
      [],
      [['upper F', 3]],
      [['upper F', 2]],
      [['upper F', 2]],
    ]);
  });

  it('are in stock where they are, and nowhere else', () => {
    const galleries = physics.galleries.map((each) => ({
      ...each,
      stock: { F: each.id === 'upper' ? 0 : 5 },
    }));
    const three = givenAfter([{ ...add(3), gallery: 'mid' }]).at(-1);
    const from = (gallery: string, taken: ReturnType<typeof givenAfter>[number] | undefined) =>
      isInStock({ ...physics, galleries }, [taken, undefined], { gallery, kind: 'F' });
    expect(from('mid', three)).toBe(true);
    expect(from('upper', given.at(-1))).toBe(false);
  });

  it('are in stock up to the last one', () => {
    const other = (count: number) => givenAfter([add(count)]).at(-1);
    expect(isInStock(physics, [given.at(-1), other(98)], F)).toBe(true);
    expect(isInStock(physics, [given.at(-1), other(99)], F)).toBe(false);
    expect(isInStock(physics, [given.at(-1), undefined], { gallery: 'none', kind: 'F' })).toBe(
      true,
    );
    expect(isInStock(physics, [undefined, other(1)], { ...F, kind: 'X' })).toBe(true);
  });
});
