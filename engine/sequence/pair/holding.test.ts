/** What holds one of a pair off its own heights, against hand reckoning on the set in 10.1. */
import { describe, expect, it } from 'vitest';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { Restraint } from '#state';
import { clearItem, ft, lb, setWith } from '../example-jobs.contract.ts';
import { physicsOf, standsAt } from './example-pairs.contract.ts';
import { canFlyTo, isHeldWithShare } from './holding.ts';

/** U is 48.59 lb at 3 ft and falls by 1.32 lb for each foot; the lock holds 50 lb. */
const physics = physicsOf('A', setWith({ header: clearItem(230, 4) }));
const exact = { physics, doubtShare: 0 };
const FLYING = { header: 'flying' } as const;

const line = (changes: Partial<Restraint> = {}): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(400 * POUND_FORCE),
  from: metres(ft(3)),
  to: metres(ft(61)),
  owner: null,
  tag: null,
  ...changes,
});

describe('a set that goes along', () => {
  // 10 F against 230 lb: 28.59 lb on the stop, and −48 lb at the high stop.
  const laden = standsAt(3, { F: 10 }, FLYING);

  it('goes wherever its lock would hold it', () => {
    expect(canFlyTo(exact, laden, ft(61))).toBe(true);
    expect(canFlyTo(exact, { ...laden, height: metres(ft(61)) }, ft(3))).toBe(true);
  });

  it('goes no farther than its stops', () => {
    expect(canFlyTo(exact, laden, ft(61.1))).toBe(false);
    expect(canFlyTo(exact, laden, ft(2.9))).toBe(false);
  });

  it('does not pass where nothing holds it, though it holds at both ends', () => {
    // A piece of 120 lb stands on the deck below 20 ft: 8 F for it leave −151 lb there.
    const standing = physicsOf(
      'A',
      setWith({
        header: { kind: 'standing', mass: lb(120), drop: ft(20), pick: 0 },
      }),
    );
    const high = standsAt(30, { F: 5 }, FLYING);
    const holding = { physics: standing, doubtShare: 0 };
    expect(canFlyTo(holding, high, ft(40))).toBe(true);
    expect(canFlyTo(holding, high, ft(10))).toBe(false);
  });

  it('counts the doubt that it is given', () => {
    // 4 lb of the header and 5 of the bricks are more than what is left of 50 lb at the high stop.
    expect(canFlyTo({ physics, doubtShare: 1 }, laden, ft(61))).toBe(false);
    expect(canFlyTo({ physics, doubtShare: 1 }, laden, ft(50))).toBe(true);
  });

  it('is held no more than hands can move it', () => {
    const weak = { ...physics, handsBriefN: 15 * POUND_FORCE };
    expect(canFlyTo({ physics: weak, doubtShare: 0 }, laden, ft(10))).toBe(false);
  });

  it('is held by a line that stays on, where the lock alone is too weak', () => {
    // 15 F: −106 lb at 10 ft and more above.
    const heavy = standsAt(10, { F: 15 }, FLYING);
    expect(canFlyTo(exact, heavy, ft(20))).toBe(false);
    expect(canFlyTo(exact, { ...heavy, restraints: [line()] }, ft(20))).toBe(true);
    const short = line({ to: metres(ft(15)) });
    expect(canFlyTo(exact, { ...heavy, restraints: [short] }, ft(20))).toBe(false);
    const slight = line({ rating: newtons(60 * POUND_FORCE) });
    expect(canFlyTo(exact, { ...heavy, restraints: [slight] }, ft(20))).toBe(false);
  });

  it('stays where it is tied, unknown, out of use, or where something lies on its picks', () => {
    for (const restraint of [line({ kind: 'arborSling' }), line({ rating: null })]) {
      expect(canFlyTo(exact, { ...laden, restraints: [restraint] }, ft(10))).toBe(false);
    }
    for (const restraint of [line({ from: null }), line({ to: null })]) {
      expect(canFlyTo(exact, { ...laden, restraints: [restraint] }, ft(10))).toBe(false);
    }
    expect(canFlyTo(exact, { ...laden, service: 'paused' }, ft(10))).toBe(false);
    const bare = standsAt(3, {}, {});
    expect(canFlyTo(exact, bare, ft(10))).toBe(true);
    for (const phase of ['attachedSlack', 'attachedResting'] as const) {
      expect(canFlyTo(exact, { ...bare, items: { header: phase } }, ft(10))).toBe(false);
    }
  });
});

describe('a set with a piece of which nobody knows the share', () => {
  const items = ['header'] as const;
  const wholeN = 420 * POUND_FORCE;
  const with420 = (share: 'all' | 'any') => ({ items, wholeN, share });

  it('is held with all of it on the stop, and not above', () => {
    const bare = standsAt(3, {}, FLYING);
    expect(isHeldWithShare(exact, bare, with420('any'))).toBe(true);
    expect(isHeldWithShare(exact, { ...bare, height: metres(ft(4)) }, with420('any'))).toBe(false);
  });

  it('is not held with none of it and the bricks still on, and is with all of it', () => {
    const laden = standsAt(3, { F: 9 }, FLYING);
    expect(isHeldWithShare(exact, laden, with420('any'))).toBe(false);
    expect(isHeldWithShare(exact, laden, with420('all'))).toBe(true);
  });

  it('is held with none of it on the high stop', () => {
    const laden = standsAt(61, { F: 9 }, FLYING);
    expect(isHeldWithShare(exact, laden, { items, wholeN: 0, share: 'any' })).toBe(true);
  });

  it('is no better than its lock for a small one, and its doubt counts', () => {
    // −26.65 lb at 60 ft, and 76 lb more are 49.35.
    const high = standsAt(60, {}, FLYING);
    const small = (lb: number) => ({ items, wholeN: lb * POUND_FORCE, share: 'any' }) as const;
    expect(isHeldWithShare(exact, high, small(76))).toBe(true);
    expect(isHeldWithShare(exact, high, small(77))).toBe(false);
    expect(isHeldWithShare({ physics, doubtShare: 1 }, high, small(76))).toBe(false);
  });
});

describe('what a line and doubt are worth', () => {
  it('is nothing for a line against a batten that comes in', () => {
    // 48.59 + 230 − 175 = 103.59 lb at 3 ft, 94.35 at 10.
    const light = { ...standsAt(10, { F: 7 }, FLYING), restraints: [line()] };
    expect(canFlyTo(exact, light, ft(20))).toBe(false);
  });

  it('is counted against the set when it would run out, too', () => {
    // 48.59 − 27 · 1.32 − 62.5 = −49.55 lb at 30 ft with 2 F and an H, and 1.3 lb in doubt.
    const out = standsAt(30, { F: 2, H: 1 }, FLYING);
    const none = { items: ['header'], wholeN: 0, share: 'any' } as const;
    expect(isHeldWithShare(exact, out, none)).toBe(true);
    expect(isHeldWithShare({ physics, doubtShare: 1 }, out, none)).toBe(false);
  });

  it('leaves on what is not shared', () => {
    // The lamp of 40 lb is the set's own: −49.55 + 40 lb, and 59 lb of the piece are 49.45.
    const two = physicsOf('A', setWith({ header: clearItem(230, 4), lamp: clearItem(40) }));
    const out = standsAt(30, { F: 2, H: 1 }, { ...FLYING, lamp: 'flying' });
    const of = (wholeLb: number) =>
      isHeldWithShare({ physics: two, doubtShare: 0 }, out, {
        items: ['header'],
        wholeN: wholeLb * POUND_FORCE,
        share: 'all',
      });
    expect([59, 60].map(of)).toEqual([true, false]);
  });
});
