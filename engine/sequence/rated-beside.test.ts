/** What is engaged beside the lock. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint } from '#state';
import { examplePhysics, SIX_LINE_SET } from '../../validation/sequence/set-physics.ts';
import { bare } from './example-jobs.contract.ts';
import { USUAL } from './plan-order.ts';
import { ratedBeside } from './rated-beside.ts';
import { siteOf } from './site.ts';

const GOAL = { items: {}, bricks: {}, height: null, service: 'in' } as const;
const { lowStopM, highStopM } = SIX_LINE_SET;

const line: Restraint = {
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(900),
  from: metres(2),
  to: metres(9),
  owner: null,
  tag: null,
};

const physics = {
  ...examplePhysics(SIX_LINE_SET),
  lowStop: { heightM: lowStopM, ratedN: 6000 },
  highStop: { heightM: highStopM, ratedN: 7000 },
};

const beside = (
  load: { readonly tied: boolean; readonly onSteel: boolean },
  steelN: number | null,
) => {
  const site = siteOf(physics, { ...bare, restraints: [line] }, GOAL, { ...USUAL, steelN });
  return ratedBeside(site, { ...load, room: { lo: 5, hi: 5 } });
};

const STOPS = [
  { resists: 'in', ratedN: 6000, span: { lo: lowStopM, hi: lowStopM } },
  { resists: 'out', ratedN: 7000, span: { lo: highStopM, hi: highStopM } },
];
const LINE = { resists: 'out', ratedN: 900, span: { lo: 2, hi: 9 } };

describe('beside the lock', () => {
  it('each stop holds the way that it is run against, where it is', () => {
    expect(beside({ tied: false, onSteel: false }, 5000)).toEqual(STOPS);
  });

  it('restraints of the start hold while the set is tied', () => {
    expect(beside({ tied: true, onSteel: false }, null)).toEqual([...STOPS, LINE]);
  });

  it('steel holds the batten from coming in where it hangs on it, if it is rated', () => {
    const steel = { resists: 'in', ratedN: 5000, span: { lo: 5, hi: 5 } };
    expect(beside({ tied: false, onSteel: true }, 5000)).toEqual([...STOPS, steel]);
    expect(beside({ tied: true, onSteel: true }, 5000)).toEqual([...STOPS, LINE, steel]);
    expect(beside({ tied: false, onSteel: true }, null)).toEqual(STOPS);
  });
});
