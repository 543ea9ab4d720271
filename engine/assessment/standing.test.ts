import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { SetState } from '#state';
import { unknownSetState } from '#state';
import { standingOf } from './standing.ts';

const whole: SetState = {
  ...unknownSetState,
  height: { low: metres(0.9), high: metres(0.9) },
  lock: 'closed',
  ring: 'on',
  stack: [{ kind: 'F', count: 4, tag: 'pipe' }],
  items: [{ item: 'cloth', phase: 'flying' }],
  restraints: [],
  service: 'in',
  knowledge: { ...unknownSetState.knowledge, basis: 'counted' },
};

const needsOf = (change: Partial<SetState>): readonly string[] => {
  const standing = standingOf({ ...whole, ...change });
  return standing.known ? [] : standing.needs;
};

describe('standingOf', () => {
  it('is how a set stands that somebody recorded in full', () => {
    expect(standingOf(whole)).toEqual({
      known: true,
      value: {
        height: 0.9,
        stack: [{ kind: 'F', count: 4, tag: 'pipe' }],
        items: { cloth: 'flying' },
        restraints: [],
        service: 'in',
        closed: [],
      },
    });
  });

  it('asks for all of a set that nobody recorded, and takes nothing for bare', () => {
    const needs = standingOf(unknownSetState);
    expect(needs.known).toBe(false);
    expect(needs.known ? [] : needs.needs).toHaveLength(8);
  });

  it.each<readonly [string, Partial<SetState>, RegExp]>([
    ['a height', { height: null }, /^height of the batten$/],
    ['one height', { height: { low: metres(1), high: metres(2) } }, /measured/],
    ['a stack', { stack: null }, /on the arbor/],
    ['items', { items: null }, /hangs/],
    ['restraints', { restraints: null }, /holds the set/],
    ['a service', { service: null }, /in use/],
    ['a lock', { lock: null }, /lock/],
    ['a closed lock', { lock: 'open' }, /recorded open/],
    ['a ring', { ring: null }, /ring/],
    ['a ring that is on', { ring: 'off' }, /recorded off/],
    ['somebody who knows', { knowledge: unknownSetState.knowledge }, /known/],
  ])('asks for %s alone where nothing else is missing', (_name, change, words) => {
    const needs = needsOf(change);
    expect(needs).toHaveLength(1);
    expect(needs[0]).toMatch(words);
  });

  it('takes an empty list for nothing, which is not unknown', () => {
    expect(needsOf({ stack: [], items: [] })).toEqual([]);
  });
});
