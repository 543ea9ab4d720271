import { describe, expect, it } from 'vitest';
import { metres, POUND_FORCE } from '#quantities';
import { SIX_LINE_SET } from '../../validation/sequence/set-physics.ts';
import {
  asked,
  asLb,
  bare,
  clearItem,
  found,
  ft,
  none,
  setWith,
  words,
} from './example-jobs.contract.ts';

const LAMP = setWith({ lamp: clearItem(200) });
const ON = { items: { lamp: 'on' }, bricks: { F: 8 } } as const;

describe('one restraint more', () => {
  const set = setWith({ bridge: { kind: 'standing', mass: 100, drop: ft(9), pick: ft(1) } });
  const goal = { items: { bridge: 'on' }, bricks: { F: 9 }, height: metres(ft(30)) } as const;
  const step = { restraintStepN: 5 * POUND_FORCE };

  it('is rigged before it is needed and off when it is not, with its least rating', () => {
    const plan = found(asked(set, bare, goal, { ...step, restraint: 'out' }));
    const order = words(plan);
    expect(order).toContain('rig bullLine');
    expect(order.indexOf('unrig bullLine')).toBeGreaterThan(order.indexOf('rig bullLine'));
    // 220 lb stand up to 10 ft: just below it 48.59 − 7 · 1.32 − 225 = −185.65 lb. No gallery
    // reaches there, and with 8 F it would be 59 lb batten heavy just above.
    expect(asLb(plan.restraint?.rated ?? 0)).toBeCloseTo(190, 6);
    expect(plan.restraint?.refutedStates).toBeGreaterThan(0);
    expect(plan.states.at(-1)?.standing.restraints).toEqual([]);
    const rated = plan.restraint?.rated ?? 0;
    const rigged = plan.states.filter(({ standing }) => standing.restraints.length > 0);
    expect(rigged.length).toBeGreaterThan(0);
    expect(
      rigged.every(({ holds }) => holds.out.ratedN <= rated || holds.out.by === 'highStop'),
    ).toBe(true);
    for (const { imbalance, holds } of plan.states) {
      expect(imbalance.highN).toBeGreaterThanOrEqual(-holds.out.ratedN - 1e-6);
      expect(imbalance.lowN).toBeLessThanOrEqual(holds.in.ratedN + 1e-6);
    }
  });

  it('resists a batten that comes in at rest only', () => {
    const planOf = (restraint: 'out' | 'in' | 'either', galleries = SIX_LINE_SET.galleries) =>
      asked({ ...set, galleries }, bare, goal, { ...step, restraint });
    const ratingOf = (...with_: Parameters<typeof planOf>): number =>
      found(planOf(...with_)).restraint?.rated ?? Number.NaN;
    // Lifted all but bare it would be some 200 lb in on the way, and stands do not come along.
    expect(none(planOf('in')).exhaustive).toBe(true);
    expect(ratingOf('either')).toBe(ratingOf('out'));
    const upper = SIX_LINE_SET.galleries.slice(0, 1);
    expect(none(planOf('in', upper)).smallestChange).not.toMatchObject({ change: 'restraint' });
    expect(ratingOf('either', upper)).toBe(ratingOf('out', upper));
  });

  it('is stands where all is done at one height on the deck, and a sling for the arbor', () => {
    const here = { fromM: ft(4), toM: ft(4) };
    const only = { ...step, travel: here, work: [here] };
    const start = { ...bare, height: metres(ft(4)) };
    const stands = found(asked(LAMP, start, ON, { ...only, restraint: 'in' }));
    expect(words(stands)).toContain('rig stands');
    // Three bricks first, 27.73 lb arbor heavy: the lamp on them makes 172.27.
    expect(asLb(stands.restraint?.rated ?? 0)).toBeCloseTo(175, 6);
    expect(stands.restraint).toMatchObject({ resists: 'in', from: ft(4), to: ft(4) });
    const slung = found(asked(LAMP, start, ON, { ...only, restraint: 'out' }));
    expect(words(slung)).toContain('rig arborSling');
    // All but two bricks first, then the lamp at 47 lb batten heavy, then the two.
    expect(asLb(slung.restraint?.rated ?? 0)).toBeCloseTo(155, 6);
  });

  it('is told, not rigged, where none may be', () => {
    const { rule, byN, smallestChange, atHeight } = none(asked(set, bare, goal, step));
    expect(rule).toBe('HOLD');
    expect(byN).toBeGreaterThan(0);
    expect(atHeight).not.toBeNull();
    expect(smallestChange).toMatchObject({ change: 'restraint' });
    const rated = smallestChange?.change === 'restraint' ? smallestChange.rated : 0;
    const either = found(asked(set, bare, goal, { ...step, restraint: 'either' }));
    expect(either.restraint?.rated).toBe(rated);
  });
});
