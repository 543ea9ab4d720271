/** What a find, a measure, a tag and a note make of a set in a call. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import {
  ADD,
  event,
  FLY,
  findOf,
  given,
  LOW,
  looseIn,
  onSet,
  opened,
  SET,
  seven,
} from './example-events.ts';
import { foldEvent } from './index.ts';

describe('what is found, measured, tagged and written', () => {
  it('a find ends a doubt, with its author and its time, and begins anew', () => {
    const doubted = foldEvent(opened(), onSet('set doubted', { why: 'first' }));
    expect(seven(foldEvent(doubted, onSet('set doubted', { why: 'second' }))).doubt).toBe('first');
    const find = findOf(
      { ...LOW, height: metres(4) },
      { lock: 'open', ring: 'off', collar: 'loose' },
    );
    const set = seven(foldEvent(doubted, find));
    expect(set).toMatchObject({ doubt: null, lock: 'open', ring: 'off', collar: 'loose' });
    expect(set.knowledge).toMatchObject({ basis: 'counted', by: 'pers_a', second: null });
    expect(set.since).toEqual({ start: set.standing, steps: [] });
  });

  it('a find in the middle of bricks leaves the gallery to be counted', () => {
    const { now } = given(opened(), ADD, 'gallery:upper');
    expect(looseIn(foldEvent(now, findOf(LOW)))).toEqual({});
  });

  it('a lock is doubted and trusted again', () => {
    const wet = foldEvent(opened(), onSet('lock doubted', { why: 'wet' }));
    expect(seven(wet).lockDoubt).toBe('wet');
    expect(seven(foldEvent(wet, onSet('lock doubted', { why: null }))).lockDoubt).toBeNull();
  });

  it('two pulls keep how it stood when it was pulled, and a scale keeps the item', () => {
    const pull = onSet('pull tested', { post: 'rail', out: 200, in: -50, height: 1 });
    const set = seven(foldEvent(opened(), pull));
    expect(set.pulledAs).toEqual(LOW);
    expect(set.pullTest).toMatchObject({ out: newtons(200), in: newtons(-50), by: 'pers_a' });
    const scale = onSet('item weighed', { post: 'deck', item: 'lamp', mass: 12 });
    expect(seven(foldEvent(opened(), scale)).weighed).toEqual({ lamp: 12 });
  });

  it('a tag on a set that hangs on its steel leaves it there, and so does giving it back', () => {
    const tag = { number: '12', reason: 'head block' };
    const hung = opened({ ...LOW, service: 'deadHung' });
    const out = foldEvent(hung, onSet('tag placed', { tag, service: 'lockedOut' }));
    expect(seven(out)).toMatchObject({ tag, standing: { service: 'deadHung' } });
    const back = onSet('tag returned', { number: '12', repairedBy: 'Bo', words: '' });
    expect(seven(foldEvent(out, back))).toMatchObject({ standing: { service: 'deadHung' } });
  });

  it('a tag takes the set out of use and its order with it, until it is given back', () => {
    const told = foldEvent(opened(), onSet('plan told', { job: 'load', steps: [FLY] }));
    const tag = { number: '12', reason: 'head block' };
    const out = foldEvent(told, onSet('tag placed', { tag, service: 'lockedOut' }));
    expect(seven(out)).toMatchObject({ tag, plan: null, standing: { service: 'lockedOut' } });
    const back = (number: string) => onSet('tag returned', { number, repairedBy: 'Bo', words: '' });
    expect(seven(foldEvent(out, back('11'))).tag).toEqual(tag);
    expect(seven(foldEvent(out, back('12')))).toMatchObject({
      tag: null,
      standing: { service: 'in' },
    });
    const unknown = foldEvent(opened(null), onSet('tag placed', { tag, service: 'paused' }));
    expect(seven(unknown)).toMatchObject({ tag, standing: null });
  });

  it('a note that waited on a device is paper until people settle it', () => {
    const live = event('note written', SET, { text: 'x', writtenMs: null });
    expect(seven(foldEvent(opened(), live)).notes).toEqual([]);
    const paper = event('note written', SET, { text: 'x', writtenMs: 7 });
    const now = foldEvent(opened(), paper);
    expect(seven(now)).toMatchObject({
      notes: [paper.seq],
      noteBy: { [paper.seq]: { by: 'pers_a' } },
    });
    const settle = onSet('note settled', { note: paper.seq, words: 'as counted' });
    expect(seven(foldEvent(now, settle)).notes).toEqual([]);
    expect(seven(foldEvent(now, findOf(LOW, { settles: [paper.seq] }))).notes).toEqual([]);
  });

  it('is judged by whoever judges, and says so', () => {
    const judged = onSet('set judged', { held: 'unheld', rule: 'ORD-001' });
    expect(seven(foldEvent(opened(), judged))).toMatchObject({ held: 'unheld', rule: 'ORD-001' });
  });
});
