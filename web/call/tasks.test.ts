import { describe, expect, it } from 'vitest';
import { NOTHING_OPEN, UNKNOWN_SET } from '#call';
import { metres } from '#quantities';
import type { AskedNow, HouseNow, LeaveNow, SetNow, Standing, Step, StopNow } from '#state';
import { alarmedSets, asksCount, stopsOn, tasksOf } from './tasks.ts';

const add: Step = { act: 'add', kind: 'F', count: 13, gallery: 'mid' };
const fly: Step = { act: 'fly', to: metres(7) };
const standing: Standing = {
  ...{ height: metres(1), stack: [], items: {}, restraints: [], service: 'in', closed: [] },
};
const known: SetNow = { ...UNKNOWN_SET, standing, last: standing, doubt: null, held: 'held' };
const planned: SetNow = { ...known, plan: { seq: 3, job: 'load', steps: [add, fly], done: 0 } };
const asked: AskedNow = {
  ...{ seq: 5, post: 'rail', step: fly, atMs: 0, override: null, secondOf: 'headFly' },
  ...{ by: null, device: null },
};
const leave: LeaveNow = {
  ...{ seq: 6, post: 'gallery:mid', step: add, atMs: 0, second: null, plates: 0 },
  ...{ by: null, device: null, before: standing, expects: standing },
};
const house = (sets: HouseNow['sets']): HouseNow => ({ ...NOTHING_OPEN, sets });
const of = (now: HouseNow, post: string): readonly string[] =>
  tasksOf(now, ['9', '11', '17'], post).map(({ set, is }) => `${set} ${is}`);

describe('what is before a post', () => {
  it('is the next step of an order, at the post whose work it is and no other', () => {
    const now = house({ '11': planned });
    expect(of(now, 'gallery:mid')).toEqual(['11 next']);
    expect(of(now, 'rail')).toEqual([]);
  });

  it('puts what is in hand before what is next, and asks both posts of two', () => {
    const now = house({ '9': planned, '11': { ...planned, leave }, '17': { ...planned, asked } });
    expect(of(now, 'gallery:mid')).toEqual(['11 inHand', '9 next']);
    expect(of(now, 'headFly')).toEqual(['17 wordAsked']);
    expect(of(now, 'rail')).toEqual(['17 waits']);
  });

  it('is nothing where nobody knows how the set stands, which every post is told', () => {
    const lost = {
      ...known,
      standing: null,
      doubt: 'two counts differ',
      held: 'unknown',
    } as const;
    const now = house({ '9': UNKNOWN_SET, '11': lost, '17': { ...known, held: 'unheld' } });
    expect(of(now, 'gallery:mid')).toEqual([]);
    expect(alarmedSets(now, ['9', '11', '17']).map(({ id, is }) => [id, is])).toEqual([
      ['11', 'unknown'],
      ['17', 'unheld'],
    ]);
  });

  it('is a zone to be reopened by its marshal once no order on the set will do it', () => {
    const zone = { zone: 'drop', gallery: 'mid' } as const;
    const kept = { zone, set: '11', post: 'marshal:drop:mid', sinceMs: 0 };
    const closed = (set: SetNow): HouseNow => ({ ...house({ '11': set }), zones: [kept] });
    const plan = { seq: 3, job: 'load', steps: [add], done: 1 } as const;
    expect(of(closed({ ...known, plan }), 'marshal:drop:mid')).toEqual(['11 mayReopen']);
    expect(of(closed(known), 'marshal:drop:mid')).toEqual(['11 mayReopen']);
    expect(of(closed(known), 'marshal:run')).toEqual([]);
    expect(of(closed(planned), 'marshal:drop:mid')).toEqual([]);
    expect(of(closed({ ...known, leave }), 'marshal:drop:mid')).toEqual([]);
  });

  it('asks the second for a count only where what hangs or lies there was changed', () => {
    expect(asksCount({ ...known, changed: true }, fly)).toBe(true);
    expect(asksCount({ ...known, changed: false }, fly)).toBe(false);
    expect(asksCount({ ...known, changed: true }, add)).toBe(false);
  });

  it('is stopped by a stop of everything, and by one of its own set', () => {
    const stop = (seq: number, set: string | null): StopNow => ({
      ...{ seq, set, post: null, words: '', atMs: 0, heard: {}, isAgreed: false },
      ...{ by: null, device: null },
    });
    const now = { stops: [stop(1, null), stop(2, '9')] };
    expect(stopsOn(now, '11').map(({ seq }) => seq)).toEqual([1]);
    expect(stopsOn(now, '9').map(({ seq }) => seq)).toEqual([1, 2]);
    expect(stopsOn(now, null).map(({ seq }) => seq)).toEqual([1, 2]);
  });
});
