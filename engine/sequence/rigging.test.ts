/**
 * Stages written by hand on the six-line set with a lamp of 200 lb: with the batten in it is
 * 48.59 + 200 lb less the bricks, 1.32 lb less for every foot, on a lock of 50 lb.
 */
import { describe, expect, it } from 'vitest';
import { FOOT, metres, POUND_FORCE } from '#quantities';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { heldLoads, type Trust } from './held-loads.ts';
import { loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { mustHaul, riggingOf, spanOf } from './rigging.ts';
import { siteOf } from './site.ts';
import type { Stage } from './stages.ts';

const SET = setWith({ lamp: clearItem(200) });

const loads = loadsOf(
  siteOf(
    examplePhysics(SET),
    hung(SET, 3, [['F', 8]]),
    { items: {}, bricks: { F: 16 }, height: null, service: 'in' },
    { ...USUAL, doubtShare: 0, lock: 'nominal', neatM: FOOT },
  ),
);

type Extra = NonNullable<Trust['extra']>;

const trusting = (extra: Partial<Extra> | null) =>
  heldLoads(loads, {
    lockN: 50 * POUND_FORCE,
    exposedJ: Number.POSITIVE_INFINITY,
    extra:
      extra === null
        ? null
        : { resists: 'out', ratedN: 200 * POUND_FORCE, span: null, as: 'line', ...extra },
  });

/** Bricks on the arbor, where, and from where it was flown there. */
const stage = (full: number, heightFt: number, fromFt: number | null = null): Stage => ({
  step: null,
  load: loads.changed(loads.first, { counts: [full] }),
  order: '',
  heightM: ft(heightFt),
  way:
    fromFt === null
      ? null
      : { lo: ft(Math.min(fromFt, heightFt)), hi: ft(Math.max(fromFt, heightFt)) },
  gallery: null,
  isAtBatten: false,
});

const rigged = (extra: Partial<Extra> | null, stages: readonly Stage[]) =>
  riggingOf(loads, trusting(extra), stages);

describe('a line', () => {
  // 13 F leave −76.41 lb at 3 ft and more above.
  const heavy = [stage(8, 3), stage(13, 3), stage(13, 20.3, 3), stage(8, 20.3), stage(8, 30, 20.3)];

  it('is rigged before the first stage that needs it, and comes off after the last', () => {
    expect(rigged({}, heavy)).toEqual([
      {
        first: 1,
        last: 3,
        span: { lo: ft(3), hi: ft(20.3) },
        restraint: {
          kind: 'bullLine',
          resists: 'out',
          rating: 200 * POUND_FORCE,
          // Whole feet are called, and the one above 20.3 is 21.
          from: metres(ft(3)),
          to: metres(ft(21)),
          owner: null,
          tag: null,
        },
      },
    ]);
  });

  it('is called a little wider than it is needed, and no wider than the travel', () => {
    const feet = (fromFt: number, toFt: number) => {
      const [one] = rigged({}, [stage(13, fromFt), stage(13, toFt, fromFt)]);
      return [(one?.restraint.from ?? 0) / FOOT, (one?.restraint.to ?? 0) / FOOT];
    };
    const [from, to] = feet(10.4, 20.6);
    expect(from).toBeCloseTo(10, 9);
    expect(to).toBeCloseTo(21, 9);
    const odd = rigged({}, [stage(13, 3)]);
    expect(odd[0]?.restraint.from).toBe(ft(3));
    // −153 lb at the high stop, which bears it; the way there is for the line.
    expect(feet(50, 60.7)[1]).toBeCloseTo(61, 9);
  });

  it('is needed only where the lock is not enough', () => {
    // 9 F: 23.59 lb at 3 ft is −50 lb at 3 + 73.59 / 1.32 = 58.75 ft.
    const [one] = rigged({}, [stage(9, 3), stage(9, 60, 3)]);
    expect(one).toMatchObject({ first: 1, last: 1, span: { hi: ft(60) } });
    expect((one?.span.lo ?? 0) / FOOT).toBeCloseTo(58.75, 6);
    expect(rigged({}, [stage(9, 3), stage(9, 58, 3), stage(8, 58)])).toEqual([]);
  });

  it('stays on from one need to the next', () => {
    const twice = [
      stage(8, 3),
      stage(13, 3),
      stage(8, 3),
      stage(8, 20, 3),
      stage(13, 20),
      stage(8, 20),
    ];
    expect(rigged({}, twice)).toMatchObject([
      { first: 1, last: 5, span: { lo: ft(3), hi: ft(20) } },
    ]);
  });

  it('is nowhere rigged where none is trusted, or none needed', () => {
    expect(rigged(null, heavy)).toEqual([]);
    expect(rigged({}, [])).toEqual([]);
  });

  it('is on while riggers are at a batten that is not held without it, before or after', () => {
    const hands = (before: Stage, after: Stage) =>
      rigged({}, [before, { ...after, isAtBatten: true }]);
    expect(hands(stage(8, 20), stage(13, 20))).toMatchObject([{ first: 1, last: 1 }]);
    expect(hands(stage(13, 20), stage(8, 20))).toMatchObject([
      { first: 0, last: 1, span: { lo: ft(20), hi: ft(20) } },
    ]);
    expect(hands(stage(8, 20), stage(9, 20))).toEqual([]);
  });

  it('is on from the start where the set is found so that nothing else holds it', () => {
    const found = rigged({}, [stage(13, 3), stage(8, 3)]);
    expect(found).toMatchObject([{ first: 0, last: 1, span: { lo: ft(3), hi: ft(3) } }]);
  });
});

describe('what is made fast', () => {
  const twice = [
    stage(8, 3.4),
    stage(13, 3.4),
    stage(8, 3.4),
    stage(8, 20.3, 3.4),
    stage(13, 20.3),
    stage(8, 20.3),
  ];

  it('is rigged anew at each stop, at its very height', () => {
    const sling = { kind: 'arborSling', resists: 'out', rating: 200 * POUND_FORCE } as const;
    expect(rigged({ as: 'fast' }, twice)).toMatchObject([
      {
        first: 1,
        last: 2,
        span: { lo: ft(3.4), hi: ft(3.4) },
        restraint: { ...sling, from: ft(3.4), to: ft(3.4) },
      },
      {
        first: 4,
        last: 5,
        span: { lo: ft(20.3), hi: ft(20.3) },
        restraint: { ...sling, from: ft(20.3), to: ft(20.3) },
      },
    ]);
  });

  it('stays through several stages at one stop', () => {
    const stop = [stage(8, 20), stage(13, 20), stage(8, 20), stage(9, 20), stage(13, 20)];
    expect(rigged({ as: 'fast' }, stop)).toMatchObject([{ first: 1, last: 4 }]);
  });

  it('is not rigged for a flight that is held, whatever was not held before it', () => {
    const before = rigged({ as: 'fast' }, [stage(13, 20), stage(8, 30, 20)]);
    expect(before).toMatchObject([{ first: 0, last: 0 }]);
    expect(before).toHaveLength(1);
    expect(rigged({}, [stage(13, 20), stage(8, 30, 20)])).toMatchObject([{ first: 0, last: 1 }]);
  });

  it('is stands under a batten that would come in', () => {
    // No brick against the lamp: 248.59 lb at 3 ft, where the stop bears it, and 226.15 at 20.
    const stands = rigged({ as: 'fast', resists: 'in' }, [stage(8, 20), stage(0, 20)]);
    expect(stands).toMatchObject([
      { first: 1, last: 1, restraint: { kind: 'stands', resists: 'in', from: ft(20) } },
    ]);
    const line = rigged({ resists: 'in' }, [stage(8, 20), stage(0, 20)]);
    expect(line).toMatchObject([{ restraint: { kind: 'bullLine', resists: 'in' } }]);
    expect(rigged({ as: 'fast', resists: 'in' }, [stage(8, 3), stage(0, 3)])).toEqual([]);
  });
});

describe('heights at which it is needed', () => {
  it('are those of every time that it is rigged', () => {
    expect(spanOf([])).toBeNull();
    const spans = [
      { lo: 5, hi: 6 },
      { lo: 2, hi: 3 },
      { lo: 4, hi: 9 },
    ];
    const [one] = rigged({}, [stage(13, 3)]);
    if (one === undefined) throw new Error('it is needed');
    expect(spanOf(spans.map((span) => ({ ...one, span })))).toEqual({ lo: 2, hi: 9 });
  });
});

describe('a line that would have to draw the arbor up', () => {
  // −98.85 lb at 20 ft; friction of the lamp is 0.05 · 376.4 + 4 = 22.82 lb.
  const down = [stage(13, 20), stage(13, 3, 20)];
  const hauls = (ratedLb: number, stages: readonly Stage[], as: Extra['as'] = 'line') =>
    mustHaul(loads.site, trusting({ ratedN: ratedLb * POUND_FORCE, as }), stages);

  it('is asked for friction too when the batten comes in', () => {
    expect(hauls(121.6, down)).toBe(true);
    expect(hauls(121.7, down)).toBe(false);
  });

  it('only pays out when the batten goes out', () => {
    expect(hauls(121.6, [stage(13, 3), stage(13, 20, 3)])).toBe(false);
    expect(hauls(121.6, [stage(13, 20), stage(8, 20)])).toBe(false);
  });

  it('is asked once, and only as a line', () => {
    expect(hauls(121.6, down, 'hauled')).toBe(false);
    expect(hauls(121.6, down, 'fast')).toBe(false);
    expect(mustHaul(loads.site, trusting(null), down)).toBe(false);
  });
});
