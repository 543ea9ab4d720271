/** One job as the search sees it, worked by hand on the six-line set. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint, Standing } from '#state';
import { examplePhysics, SIX_LINE_SET } from '../../validation/sequence/set-physics.ts';
import { bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { USUAL } from './plan-order.ts';
import { type Site, siteOf } from './site.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const SET = setWith({ lamp: clearItem(200), head: clearItem(50) });
const GOAL: OrderGoal = { items: {}, bricks: {}, height: null, service: 'in' };

type Asked = {
  readonly start?: Partial<Standing>;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
};

const site = ({ start = {}, goal = {}, options = {} }: Asked, set = SET): Site =>
  siteOf(
    examplePhysics(set),
    { ...bare, ...start },
    { ...GOAL, ...goal },
    { ...USUAL, ...options },
  );

const restraint = (more: Partial<Restraint>): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(900),
  from: metres(2),
  to: metres(9),
  owner: null,
  tag: null,
  ...more,
});

const tiedBy = (...restraints: readonly Restraint[]) => site({ start: { restraints } }).tied;

describe('restraints of the start', () => {
  it('hold between their ends the way that they resist', () => {
    const line = restraint({ resists: 'both' });
    expect(tiedBy(line)).toEqual({
      all: [line],
      rated: [{ resists: 'both', ratedN: 900, span: { lo: 2, hi: 9 } }],
      tended: [{ resists: 'both', ratedN: 900, span: { lo: 2, hi: 9 } }],
      fixed: false,
    });
    expect(tiedBy()).toEqual({ all: [], rated: [], tended: [], fixed: false });
  });

  it('hold nothing where rating, foot or head is not known, and are still taken off', () => {
    for (const unknown of [{ rating: null }, { from: null }, { to: null }]) {
      const line = restraint(unknown);
      expect(tiedBy(line)).toEqual({ all: [line], rated: [], tended: [], fixed: false });
    }
  });

  it('forbid to move where they hold one height', () => {
    const kinds = ['arborSling', 'choke', 'pinnedPiece', 'stands', 'bullLine', 'winch'] as const;
    expect(kinds.map((kind) => tiedBy(restraint({ kind })).fixed)).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
    // One of them is enough.
    expect(tiedBy(restraint({}), restraint({ kind: 'stands' })).fixed).toBe(true);
  });

  it('may be lost where a person tends them', () => {
    const kinds = ['arborSling', 'choke', 'pinnedPiece', 'stands', 'bullLine', 'winch'] as const;
    expect(kinds.map((kind) => tiedBy(restraint({ kind })).tended.length)).toEqual([
      0, 1, 0, 0, 1, 1,
    ]);
  });

  it('are not the steel, which has the rating of its own before that of the question', () => {
    const steel = restraint({ kind: 'deadHangSteel', rating: newtons(7000) });
    const line = restraint({});
    const both = site({ start: { restraints: [line, steel] }, options: { steelN: 5000 } });
    expect(both.tied.all).toEqual([line]);
    expect(both.steelN).toBe(7000);
    expect(site({ options: { steelN: 5000 } }).steelN).toBe(5000);
    const unrated = restraint({ kind: 'deadHangSteel', rating: null });
    const asked = site({ start: { restraints: [unrated] }, options: { steelN: 5000 } });
    expect(asked.steelN).toBe(5000);
    expect(asked.tied.all).toEqual([]);
    expect(site({ start: { restraints: [line] } }).steelN).toBeNull();
  });
});

describe('heights', () => {
  it('are those of the house where nobody narrows them', () => {
    const { travel, work, restAtM } = site({});
    expect(travel).toEqual({ lo: SIX_LINE_SET.lowStopM, hi: SIX_LINE_SET.highStopM });
    expect(work).toEqual([{ lo: SIX_LINE_SET.lowStopM, hi: SIX_LINE_SET.workingM }]);
    expect(restAtM).toBe(SIX_LINE_SET.workingM);
  });

  it('are those of the question where it says so', () => {
    const asked = site({
      options: {
        travel: { fromM: 2, toM: 5 },
        work: [
          { fromM: 1, toM: 2 },
          { fromM: 3, toM: 4 },
        ],
        restAtM: 1.5,
      },
    });
    expect(asked.travel).toEqual({ lo: 2, hi: 5 });
    expect(asked.work).toEqual([
      { lo: 1, hi: 2 },
      { lo: 3, hi: 4 },
    ]);
    expect(asked.restAtM).toBe(1.5);
  });

  it('of a rest are where a piece lies on it, unless the question says another', () => {
    const start = { height: metres(ft(7)), items: { lamp: 'attachedResting' } } as const;
    expect(site({ start }).restAtM).toBe(ft(7));
    expect(site({ start, options: { restAtM: 1.5 } }).restAtM).toBe(1.5);
    const flying = { height: metres(ft(7)), items: { lamp: 'flying' } } as const;
    expect(site({ start: flying }).restAtM).toBe(SIX_LINE_SET.workingM);
  });
});

describe('bricks', () => {
  const kindsOf = (asked: Asked) => site(asked).kinds.map(({ id }) => id);
  const show = (kind: string, count: number) => ({ kind, count, tag: 'show' }) as const;
  const pipe = (kind: string, count: number) => ({ kind, count, tag: 'pipe' }) as const;

  it('of a kind are handled where show bricks, the goal or spare ones are of it', () => {
    expect(kindsOf({})).toEqual([]);
    expect(kindsOf({ start: { stack: [show('H', 1)] } })).toEqual(['H']);
    expect(kindsOf({ start: { stack: [pipe('H', 1)] } })).toEqual([]);
    expect(kindsOf({ goal: { bricks: { F: 2 } } })).toEqual(['F']);
    expect(kindsOf({ options: { spare: { H: 2 } } })).toEqual(['H']);
  });

  it('under pipe weight stay, and count towards what is wanted', () => {
    // From the bottom up: 3 F of a show, 2 F of the pipe, then 4 F and an H of a show.
    const stack = [show('F', 3), pipe('F', 2), show('F', 4), show('H', 1)];
    const { base, order, counts } = site({
      start: { stack },
      goal: { bricks: { F: 9 } },
      options: { spare: { H: 2 } },
    });
    expect(base).toEqual([show('F', 3), pipe('F', 2)]);
    expect(order).toEqual([0, 0, 0, 0, 1]);
    // 9 F less the 3 that nobody reaches; the 2 of the pipe are none of a show.
    expect(counts).toEqual({ start: [4, 1], goal: [6, 0], most: [6, 3] });
  });

  it('are all on top where there is no pipe weight', () => {
    const { base, order } = site({ start: { stack: [show('F', 2)] } });
    expect(base).toEqual([]);
    expect(order).toEqual([0, 0]);
  });

  it('are scarce at a gallery that has fewer than may ever be on the arbor', () => {
    const galleries = SIX_LINE_SET.galleries.map((each) => ({
      ...each,
      stock: each.id === 'upper' ? { F: 9 } : { F: 8, H: 1 },
    }));
    const set = setWith({}, { galleries });
    const goal = { bricks: { F: 9, H: 1 } };
    // At the upper gallery 9 of 9 F are enough, and nobody has heard of an H.
    expect(site({ goal }, set).scarce).toEqual([
      [false, true],
      [true, false],
    ]);
  });
});

describe('items', () => {
  it('are those that are there and those that are wanted, each once', () => {
    const { items } = site({
      start: { items: { lamp: 'flying', old: 'beside' } },
      goal: { items: { lamp: 'away', head: 'on' } },
      options: { rests: ['head'] },
    });
    expect(items).toEqual([
      { id: 'lamp', start: 3, wanted: false, rests: false, twin: null },
      { id: 'old', start: 0, wanted: null, rests: false, twin: null },
      { id: 'head', start: 0, wanted: true, rests: true, twin: null },
    ]);
  });

  it('are in the phase that they are found in', () => {
    const startOf = (phase: Standing['items'][string]) =>
      site({ start: { items: { lamp: phase } } }).items[0]?.start;
    expect(startOf('away')).toBe(0);
    expect(startOf('beside')).toBe(0);
    expect(startOf('attachedSlack')).toBe(1);
    expect(startOf('attachedResting')).toBe(2);
    expect(startOf('flying')).toBe(3);
    expect(startOf('heldElsewhere')).toBe(0);
    const steel = site({ start: { service: 'deadHung', items: { lamp: 'flying' } } });
    expect(steel.items[0]?.start).toBe(3);
    const slack = site({ start: { service: 'deadHung', items: { lamp: 'attachedSlack' } } });
    expect(slack.items[0]?.start).toBe(1);
  });

  it('that are equal go in the order of their names, each after the last equal one', () => {
    const three = setWith({ a: clearItem(50), b: clearItem(50), c: clearItem(50) });
    const { items } = site({ goal: { items: { a: 'on', b: 'on', c: 'on' } } }, three);
    expect(items.map(({ twin }) => twin)).toEqual([null, 0, 1]);
  });

  it('that start otherwise, or are wanted otherwise, are not equal', () => {
    const two = setWith({ a: clearItem(50), b: clearItem(50) });
    const twins = (asked: Asked) => site(asked, two).items.map(({ twin }) => twin);
    const both = { a: 'flying', b: 'flying' } as const;
    expect(twins({ start: { items: both } })).toEqual([null, 0]);
    expect(twins({ start: { items: { ...both, b: 'attachedSlack' } } })).toEqual([null, null]);
    expect(twins({ start: { items: both }, goal: { items: { b: 'away' } } })).toEqual([null, null]);
    expect(twins({ start: { items: both }, options: { rests: ['a'] } })).toEqual([null, null]);
    expect(twins({ start: { items: both }, options: { rests: ['a', 'b'] } })).toEqual([null, null]);
  });
});

describe('a set with bricks on it', () => {
  it('is told from one without', () => {
    const laden = siteOf(examplePhysics(SET), hung(SET, 24, [['F', 8]]), GOAL, USUAL);
    expect(laden.counts).toEqual({ start: [8], goal: [0], most: [8] });
    expect(laden.start.height).toBe(ft(24));
  });
});
