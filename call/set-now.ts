/** One set as a call knows it: known, in doubt, found again. */
import type { Knowledge, SetNow, Standing } from '#state';
import { message } from '#texts';

const NOBODY: Knowledge = { basis: 'unknown', at: null, by: null, second: null };

/** A set of which nobody has recorded anything. */
export const UNKNOWN_SET: SetNow = {
  standing: null,
  last: null,
  doubt: message('nobody has recorded how it stands'),
  knowledge: NOBODY,
  held: 'unknown',
  rule: null,
  lock: 'closed',
  ring: 'on',
  collar: 'secured',
  lockDoubt: null,
  tag: null,
  asked: null,
  leave: null,
  plan: null,
  since: null,
  changed: true,
  notes: [],
  noteBy: {},
  overrides: [],
  pullTest: null,
  pulledAs: null,
  weighed: {},
};

/** Not known from now on: only measuring and making safe is left. */
export const inDoubt = (set: SetNow, doubt: string): SetNow => ({
  ...set,
  standing: null,
  last: set.standing ?? set.last,
  doubt: set.standing === null && set.doubt !== null ? set.doubt : doubt,
  knowledge: { ...set.knowledge, basis: 'unknown' },
  held: 'unknown',
  rule: null,
  asked: null,
  leave: null,
  plan: null,
  since: null,
  changed: true,
});

/** Stands so now; what was planned goes on only where it was done as planned. */
export const standingAs = (set: SetNow, standing: Standing): SetNow => ({
  ...set,
  standing,
  last: standing,
  doubt: null,
});

export const foundAs = (set: SetNow, standing: Standing, knowledge: Knowledge): SetNow => ({
  ...standingAs(set, standing),
  knowledge,
  // Until the rules have looked at it.
  held: 'unknown',
  rule: null,
  asked: null,
  leave: null,
  plan: null,
  since: { start: standing, steps: [] },
  changed: true,
});
