import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { LeaveNow, Standing } from '#state';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { openedOn, setOf, withSets } from './opened-for-tests.ts';
import { CallWallSets } from './wall-of-call.ts';

const { example: EXAMPLE, now: OPENED } = openedOn({
  house: kestlemere,
  show: clockmaker,
  state: record,
});

const NOW = OPENED;

const standingOf = (id: string): Standing => {
  const { standing } = setOf(NOW, id);
  if (standing === null) throw new Error(`set ${id} of the demo is known`);
  return standing;
};

const leaveOf = (to: number): LeaveNow => ({
  ...{ seq: 3, post: 'rail', atMs: 1, by: 'p', device: 'd', second: null, plates: 0 },
  step: { act: 'fly', to: metres(to) },
  before: standingOf('9'),
  expects: standingOf('9'),
});

const wordOn = (part: Parameters<typeof withSets>[1][string]) => {
  const wall = new CallWallSets();
  const now = withSets(NOW, { '9': part });
  const set = wall.of(EXAMPLE, now).find(({ lineSet }) => lineSet.id === '9');
  return set === undefined ? null : wall.signs(set);
};

describe('the wall in a call', () => {
  it('says what overrules the name of a set, in words and by a sign', () => {
    const lost = wordOn({ standing: null, doubt: 'touched by another crew' });
    expect(lost).toEqual({ balance: 'unknown', hold: 'unknown', word: 'UNKNOWN' });
    expect(wordOn({ held: 'unheld' })).toMatchObject({ hold: 'danger', word: 'NOT HELD' });
    expect(wordOn({ held: 'held', leave: leaveOf(1) })).toMatchObject({
      ...{ hold: 'movingIn', word: 'MOVING' },
    });
    expect(wordOn({ held: 'held', leave: leaveOf(30) })).toMatchObject({ hold: 'movingOut' });
  });

  it('shows the plan as what is still to be done, and never as a record', () => {
    const steps = [1, 2, 3].map((to) => ({ act: 'fly', to: metres(to) }) as const);
    const signs = wordOn({ held: 'held', plan: { seq: 2, job: 'load', steps, done: 1 } });
    expect(signs?.word).toBe('2 TO DO');
  });

  it('counts a lock in doubt as no hold', () => {
    const before = wordOn({ held: 'held' });
    const doubted = wordOn({ held: 'held', lockDoubt: 'wet' });
    expect(before?.hold).toBe('lock');
    expect(doubted).toMatchObject({ hold: 'unknown', word: 'LOCK IN DOUBT' });
  });

  it('works a set out again where something happened on it, and no other', () => {
    const wall = new CallWallSets();
    const first = wall.of(EXAMPLE, NOW);
    const moved = { ...standingOf('9'), height: metres(5) };
    const then = wall.of(EXAMPLE, withSets(NOW, { '9': { standing: moved, last: moved } }));
    const changed = then.flatMap((set, at) => (set === first[at] ? [] : [set.lineSet.id]));
    expect(changed).toEqual(['9']);
    const at = then.find(({ lineSet }) => lineSet.id === '9');
    expect(at?.recorded.state.height).toEqual({ low: 5, high: 5 });
  });
});
