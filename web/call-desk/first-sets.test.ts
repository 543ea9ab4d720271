import { describe, expect, it } from 'vitest';
import type { Metres } from '#quantities';
import type { PlanNow, SetNow, Standing, Step } from '#state';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { stockOf } from './count-draft.ts';
import { firstSets, isTallyOff, tallyOf, waitingFor } from './first-sets.ts';
import { openedOn, setOf, withSets } from './opened-for-tests.ts';

const { example: EXAMPLE, now: OPENED } = openedOn({
  house: kestlemere,
  show: clockmaker,
  state: record,
});

const ORDER = EXAMPLE.house.lineSets.map(({ id }) => id);
const ADD: Step = { act: 'add', kind: 'full', count: 4, gallery: 'mid' };
const PLAN: PlanNow = { seq: 2, job: 'load', steps: [ADD, ADD], done: 1 };
const AWAY = { by: 'p', device: 'd', atMs: 1, post: 'gallery:mid', step: ADD } as const;
const STANDING: Standing = {
  height: 3 as Metres,
  stack: [
    { kind: 'full', count: 10, tag: 'pipe' },
    { kind: 'spreader', count: 2, tag: 'spreader' },
  ],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

describe('the sets of an overview', () => {
  it('has first what nothing holds, then what is not known any more, then what is worked', () => {
    const before = OPENED;
    const known = { standing: STANDING, last: STANDING, held: 'held' } as const;
    const now = withSets(before, {
      '1': { ...known, held: 'unheld' },
      '3': { standing: null, last: STANDING, doubt: 'touched by another crew' },
      '5': { ...known, plan: PLAN },
      '7': { ...known, plan: { ...PLAN, done: 2 } },
      '9': { ...known, tag: { number: '1', reason: 'rope' } },
      '11': { standing: null, last: null },
    });
    const first = firstSets(now, ORDER);
    expect(first.unheld.map(({ id }) => id)).toEqual(['1']);
    expect(first.doubted.map(({ id }) => id)).toEqual(['3']);
    expect(first.worked.map(({ id }) => id)).toEqual(['5']);
    expect(first.tagged.map(({ id }) => id)).toContain('9');
    expect(first.neverKnown).toContain('11');
    expect(first.neverKnown).not.toContain('3');
  });

  it('says what waits for the word of a post, and for no other', () => {
    const asked = { ...AWAY, seq: 4, override: null, secondOf: 'headFly' };
    const now = withSets(OPENED, { '5': { asked } });
    expect(waitingFor(now, 'headFly').map(({ id }) => id)).toEqual(['5']);
    expect(waitingFor(now, 'rail')).toEqual([]);
  });
});

describe('plates against the plan (C85)', () => {
  const set: SetNow = {
    ...setOf(OPENED, '5'),
    ...{ standing: STANDING, plan: PLAN, leave: null, asked: null },
  };

  it('counts bricks and no spreader plates, and those that the order still puts on', () => {
    expect(tallyOf(set, 18)).toEqual({ on: 10, atEnd: 14, byShow: 18 });
  });

  it('counts a brick that was told aloud once and not twice', () => {
    const stack = [{ kind: 'full', count: 13, tag: 'show' } as const];
    const standing = { ...STANDING, stack };
    const leave = {
      ...{ ...AWAY, seq: 5, second: null, before: STANDING, expects: STANDING, plates: 3 },
    };
    // Ten before the step and three of its four: one is still to come.
    expect(tallyOf({ ...set, standing, leave }, null)?.atEnd).toBe(14);
  });

  it('is off only where no work is open that would mend it, and all of it hangs', () => {
    const hung: SetNow = { ...set, plan: null, standing: { ...STANDING, items: { a: 'flying' } } };
    const tally = { on: 10, atEnd: null, byShow: 12 };
    expect(isTallyOff(tally, hung)).toBe(true);
    expect(isTallyOff({ ...tally, byShow: 10 }, hung)).toBe(false);
    expect(isTallyOff({ ...tally, byShow: null }, hung)).toBe(false);
    expect(isTallyOff(tally, { ...hung, plan: PLAN })).toBe(false);
    expect(isTallyOff(tally, { ...hung, standing: STANDING })).toBe(false);
  });

  it('knows nothing of a set that nobody knows', () => {
    expect(tallyOf({ ...set, standing: null }, 12)).toBe(null);
  });
});

describe('a count of loose bricks', () => {
  it('keeps nought apart from not counted', () => {
    const stock = stockOf({ full: '0', half: '', old: ' 12 ' });
    expect(stock.ok && stock.value).toEqual({ full: 0, old: 12 });
  });

  it('refuses what is no count, by its kind', () => {
    const stock = stockOf({ full: '3.5', half: '2' });
    expect(!stock.ok && stock.error.map(({ path }) => path)).toEqual(['full']);
  });
});
