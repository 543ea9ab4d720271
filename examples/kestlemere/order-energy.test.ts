/**
 * What the sets of the worked scenarios would set free. The figures are the plan's own, so no
 * outside check: VALIDATION.md has those of `motion`.
 */
import { describe, expect, it } from 'vitest';
import { orderPhysicsOf, setFreeAt } from '#assessment';
import { FOOT, metres } from '#quantities';
import type { OrderPhysics, StackRun, Standing } from '#state';
import { openExample } from '../open-example.ts';

const { assessment, house, state } = openExample('kestlemere');

const physicsOf = (id: string): OrderPhysics => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === id);
  const physics = set === undefined ? null : orderPhysicsOf(set, house, state);
  if (physics?.known !== true) throw new Error(`no physics of set ${id}`);
  return physics.value;
};

const standing = (
  heightFt: number,
  show: readonly (readonly [string, number])[],
  items: readonly string[],
): Standing => ({
  height: metres(heightFt * FOOT),
  stack: [
    { kind: 'O', count: 3, tag: 'pipe' },
    ...show.map(([kind, count]): StackRun => ({ kind, count, tag: 'show' })),
  ],
  items: Object.fromEntries(items.map((item) => [item, 'flying'])),
  restraints: [],
  service: 'in',
  closed: [],
});

describe('energy that an order could set free', () => {
  it('is 63 to 64 kJ with bricks first on Electric 1', () => {
    const free = setFreeAt(physicsOf('5'), standing(3, [['F', 33]], []));
    // 63 kJ in the plan, with its friction in it; 64.07 kJ without.
    expect(free.energy).toBeGreaterThan(63_000);
    expect(free.energy).toBeLessThan(64_200);
    expect(free.way).toBe('out');
    expect(free.end / FOOT).toBeCloseTo(61, 6);
  });

  it('is 7.95 kJ at the stop for the house curtain with all bricks on at 4 ft', () => {
    const bricks = [
      ['F', 21],
      ['H', 1],
    ] as const;
    const free = setFreeAt(physicsOf('1'), standing(4, bricks, ['cloth']));
    // By trapezia: 435 lb · 26.5 ft / 2 to where the chain lifts, 7.8 kJ as in the plan; then
    // 17 lb batten heavy takes 107 ft·lbf of it, and 23 lb arbor heavy at the top gives 209.
    const footPounds = (429.6 + 5.21) * 13.25 - (16.79 ** 2 - 23.47 ** 2) / 2 / 1.32;
    expect(Math.abs(free.energy - footPounds * 1.35582)).toBeLessThan(5);
    expect(free.way).toBe('out');
  });

  it('is nothing with the heavy side on its stop', () => {
    const items = ['heads', 'profiles', 'cable', 'loom'];
    const free = setFreeAt(physicsOf('5'), standing(3, [], items));
    expect(free.energy).toBe(0);
    expect(free.way).toBe('in');
  });
});
