/** What each event of work makes of a house in a call. Nothing is judged here. */
import { describe, expect, it } from 'vitest';
import type { HouseEvent, Payload } from '#events';
import { metres } from '#quantities';
import type { Standing, Step } from '#state';
import {
  ADD,
  CALL,
  clearIn,
  counted,
  event,
  FLY,
  findOf,
  given,
  LOW,
  looseIn,
  onHouse,
  onSet,
  opened,
  reportOf,
  SET,
  seven,
} from './example-events.ts';
import { foldAll, foldEvent, NOTHING_OPEN } from './index.ts';

describe('a call', () => {
  it('begins with every set as it was recorded, and unknown where it was not', () => {
    const now = opened();
    expect(now.call).toMatchObject({ id: CALL, house: 'house', show: 'show', isDrill: false });
    expect(seven(now)).toMatchObject({
      standing: LOW,
      since: { start: LOW, steps: [] },
      changed: true,
    });
    expect(now.galleries['upper']).toEqual({ stock: { B: 10 }, countedMs: 5, countedBy: 'loader' });
    expect(seven(opened(null))).toMatchObject({ standing: null, doubt: 'no record', since: null });
  });

  it('hears nothing of another call, of no call, and of what is no part of one', () => {
    const now = opened();
    const other = event('set doubted', SET, { call: 'call-2', why: 'x' });
    expect(foldEvent(now, other)).toEqual({ ...now, seq: other.seq });
    const doubt = onSet('set doubted', { why: 'x' });
    expect(foldEvent(NOTHING_OPEN, doubt)).toEqual({ ...NOTHING_OPEN, seq: doubt.seq });
    const save = event('device revoked', 'device:x', { revoked: 'dev_x', why: '' });
    expect(foldEvent(now, save)).toEqual({ ...now, seq: save.seq });
  });

  it('knows no set any more, and has nobody at a post, after a backup was made the record', () => {
    const who = { saidBy: 'A. Lead', why: 'the disk died' };
    const keys = { houseKey: 'house-1', recordKey: 'record-2', before: 'record-1' };
    const taken = onHouse('post taken', { post: 'rail', name: 'Ada', answeredBy: null });
    const before = foldEvent(opened(), taken);
    const now = foldEvent(before, event('record made', 'house', { ...keys, ...who }));
    expect(now).toMatchObject({ call: { id: CALL }, posts: {}, zones: [] });
    expect(seven(now)).toMatchObject({ standing: null, last: LOW, held: 'unknown' });
    expect(seven(now).doubt).toContain('restored');
  });

  it('is over when it is closed, and a new one begins anew', () => {
    const now = foldEvent(opened(), onHouse('call closed', { words: '' }));
    expect(now.call).toBeNull();
    expect(foldEvent(now, onSet('set doubted', { why: 'x' }))).toMatchObject({ sets: now.sets });
    expect(seven(opened()).doubt).toBeNull();
  });
});

describe('posts and stops', () => {
  const taken = (post: string, more = {}) =>
    onHouse('post taken', { post, name: 'Ada', answeredBy: null }, more);

  it('are taken, said clear, and left', () => {
    let now = foldEvent(opened(), taken('rail'));
    expect(now.posts['rail']).toMatchObject({ by: 'pers_a', device: 'dev_a', isClear: false });
    now = foldEvent(now, onHouse('post said', { post: 'rail', isClear: true }));
    expect(clearIn(now)).toBe(true);
    expect(clearIn(foldEvent(now, taken('rail')))).toBe(false);
    expect(foldEvent(now, onHouse('post left', { post: 'rail' })).posts).toEqual({});
    expect(foldEvent(now, onHouse('post said', { post: 'deck', isClear: true })).posts).toEqual(
      now.posts,
    );
  });

  it('whoever goes to the line is not clear of it any more; bricks and zones move nobody', () => {
    const rail = [taken('rail'), onHouse('post said', { post: 'rail', isClear: true })];
    const now = foldAll(rail, opened());
    expect(clearIn(given(now, FLY).now)).toBe(false);
    expect(clearIn(given(now, ADD).now)).toBe(true);
    expect(clearIn(given(now, { act: 'close', zone: { zone: 'run' } }).now)).toBe(true);
  });

  it('a stop stands until it is lifted, and remembers who has heard it and when', () => {
    const stop = onHouse('stop called', { post: 'deck', set: null, words: 'hold' });
    let now = foldEvent(opened(), stop);
    expect(now.stops).toMatchObject([{ seq: stop.seq, set: null, heard: { deck: stop.atMs } }]);
    const heard = onHouse('stop heard', { post: 'rail', stop: stop.seq });
    now = foldAll([heard, onHouse('stop heard', { post: 'rail', stop: stop.seq })], now);
    expect(now.stops[0]?.heard).toEqual({ deck: stop.atMs, rail: heard.atMs });
    const lift = onHouse('stop lifted', { post: 'headFly', stop: stop.seq, substitute: null });
    expect(foldEvent(now, lift).stops).toEqual([]);
  });

  it('only whoever called a stop agrees that work may go on', () => {
    const stop = onHouse('stop called', { post: null, set: '7', words: '' });
    const now = foldEvent(opened(), stop);
    expect(now.stops[0]?.heard).toEqual({});
    const agree = (more: Partial<Pick<HouseEvent, 'by' | 'device'>>) =>
      foldEvent(now, onHouse('stop agreed', { stop: stop.seq }, more)).stops[0]?.isAgreed;
    expect(agree({})).toBe(true);
    expect(agree({ device: 'dev_other' })).toBe(true);
    expect(agree({ by: 'pers_b' })).toBe(false);
    expect(agree({ by: null })).toBe(false);
  });
});

describe('a step', () => {
  it('waits for its second, is given, and is done as it was worked out', () => {
    const asking = onSet('leave asked', { post: 'rail', step: FLY, paper: null, override: null });
    const waits = onSet('leave waits', { asked: asking.seq, secondOf: 'headFly' });
    const now = foldAll([asking, waits], opened());
    expect(seven(now).asked).toMatchObject({ seq: asking.seq, secondOf: 'headFly', step: FLY });
    const fly = given(opened(), FLY);
    expect(seven(fly.now)).toMatchObject({ lock: 'open', ring: 'off', asked: null });
    const done = seven(foldEvent(fly.now, reportOf(fly.leave)));
    expect(done).toMatchObject({ lock: 'closed', ring: 'on', leave: null, changed: false });
    expect(done.standing?.height).toBe(9);
    expect(done.since?.steps).toEqual([FLY]);
  });

  it('freshens what was counted, and not what was carried over', () => {
    const fly = given(opened(), FLY);
    const report = reportOf(fly.leave);
    expect(seven(foldEvent(fly.now, report)).knowledge).toEqual({
      ...counted,
      at: new Date(report.atMs).toISOString(),
      by: 'pers_a',
    });
    const set = { ...seven(opened()), knowledge: { ...counted, basis: 'carriedOver' } as const };
    const old = given({ ...opened(), sets: { 7: set } }, FLY);
    expect(seven(foldEvent(old.now, reportOf(old.leave))).knowledge.at).toBe(counted.at);
  });

  it('leads on in its order where it was done as told, and ends the order where not', () => {
    const told = foldEvent(opened(), onSet('plan told', { job: 'load', steps: [FLY, ADD] }));
    const fly = given(told, FLY);
    expect(seven(foldEvent(fly.now, reportOf(fly.leave))).plan?.done).toBe(1);
    // A step is the same in whatever order its fields come.
    const turned = given(told, { to: metres(9), act: 'fly' });
    expect(seven(foldEvent(turned.now, reportOf(turned.leave))).plan?.done).toBe(1);
    const other = given(told, { act: 'fly', to: metres(5) });
    expect(seven(foldEvent(other.now, reportOf(other.leave))).plan).toBeNull();
  });

  it('is returned: asked is forgotten, given was not used', () => {
    const asking = onSet('leave asked', { post: 'rail', step: FLY, paper: null, override: null });
    const now = foldEvent(opened(), asking);
    const back = (asked: number) => onSet('leave returned', { asked, words: '' });
    expect(seven(foldEvent(now, back(asking.seq))).asked).toBeNull();
    expect(seven(foldEvent(now, back(99_999))).asked).not.toBeNull();
    const fly = given(opened(), FLY);
    expect(seven(foldEvent(fly.now, back(fly.leave)))).toMatchObject({
      ...{ leave: null, lock: 'closed', ring: 'on', standing: LOW },
    });
  });

  it('is not followed by one that is done without leave: then nobody knows', () => {
    const now = foldEvent(opened(), reportOf(99_999, { words: 'flown to trim' }));
    expect(seven(now)).toMatchObject({
      standing: null,
      last: LOW,
      doubt: 'flown to trim',
      plan: null,
    });
    expect(seven(foldEvent(opened(), reportOf(99_999))).doubt).toContain('without leave');
  });

  it.each<[string, Partial<Payload<'step reported'>>, string | null]>([
    ['where it was seen to stop', { height: 9.1 }, null],
    ['elsewhere than told', { height: 9.2 }, 'elsewhere'],
    ['done otherwise', { as: 'otherwise', words: 'bent a pick' }, 'bent a pick'],
    ['otherwise, without a word', { as: 'otherwise' }, 'otherwise'],
    ['broken off and seen where it was', { as: 'notDone', height: 1 }, null],
    ['broken off, and nobody looked', { as: 'notDone' }, 'elsewhere'],
  ])('a move %s', (_, more, doubt) => {
    const fly = given(opened(), FLY);
    const set = seven(foldEvent(fly.now, reportOf(fly.leave, more)));
    if (doubt === null) expect(set.standing).not.toBeNull();
    else expect(set.doubt).toContain(doubt);
    expect(set.standing === null).toBe(doubt !== null);
  });
});

describe('bricks', () => {
  const count = (leave: number, so: number) =>
    onSet('plates counted', { post: 'gallery:upper', leave, count: so });
  const loose = looseIn;

  it('go one by one from the gallery onto the arbor, and back', () => {
    const { now, leave } = given(opened(), ADD, 'gallery:upper');
    expect(seven(now).collar).toBe('loose');
    const two = foldAll([count(leave, 1), count(leave, 2)], now);
    expect(seven(two).standing?.stack.at(-1)).toEqual({ kind: 'B', count: 2, tag: 'show' });
    expect(loose(two)).toEqual({ B: 8 });
    expect(loose(foldEvent(two, count(leave, 1)))).toEqual({ B: 9 });
    const done = foldEvent(two, reportOf(leave, { plates: 3 }));
    expect(seven(done)).toMatchObject({ standing: null });
    expect(seven(done).doubt).toContain('told one by one');
    const three = foldAll([count(leave, 3), reportOf(leave, { plates: 3 })], two);
    expect(seven(three)).toMatchObject({ collar: 'secured', changed: true, leave: null });
    expect(loose(three)).toEqual({ B: 7 });
  });

  it('fewer than told are what was counted, and the order is an order no more', () => {
    const told = foldEvent(opened(), onSet('plan told', { job: 'load', steps: [ADD] }));
    const { now, leave } = given(told, ADD, 'gallery:upper');
    const one = seven(foldAll([count(leave, 1), reportOf(leave, { plates: 1 })], now));
    expect(one).toMatchObject({ plan: null, since: { steps: [{ ...ADD, count: 1 }] } });
    const none = seven(foldEvent(now, reportOf(leave, { plates: 0, as: 'notDone' })));
    expect(none).toMatchObject({ standing: LOW, plan: { done: 0 }, since: { steps: [] } });
  });

  it('that nobody counted are unknown, on the arbor and at the gallery', () => {
    const { now, leave } = given(opened(), ADD, 'gallery:upper');
    const uncounted = foldEvent(now, reportOf(leave));
    expect(seven(uncounted).doubt).toContain('not counted');
    expect(loose(uncounted)).toEqual({});
    const gone = foldAll(
      [count(leave, 1), onSet('leave returned', { asked: leave, words: '' })],
      now,
    );
    expect(seven(gone).doubt).toContain('broken off');
    expect(loose(gone)).toEqual({});
  });

  it('more than lay there say that the gallery was counted wrong', () => {
    const few = foldEvent(
      opened(),
      onHouse('gallery counted', {
        ...{ post: 'gallery:upper', gallery: 'upper', stock: { B: 1, C: 4 }, second: null },
      }),
    );
    const { now, leave } = given(few, ADD, 'gallery:upper');
    const two = foldAll([count(leave, 1), count(leave, 2)], now);
    expect(loose(two)).toEqual({ C: 4 });
    expect(seven(two).standing?.stack.at(-1)?.count).toBe(2);
  });

  it('of a kind that does not lie on top cannot have come off', () => {
    const off: Step = { act: 'remove', kind: 'C', count: 1, gallery: 'upper' };
    const { now, leave } = given(opened(), off, 'gallery:upper');
    expect(seven(foldEvent(now, count(leave, 1))).doubt).toContain('more bricks were counted off');
  });

  it('counted without leave leave nobody knowing', () => {
    expect(seven(foldEvent(opened(), count(5, 1))).doubt).toContain('without leave');
  });

  it('counted otherwise by the second are in doubt before anything is unlocked', () => {
    const asking = onSet('leave asked', { post: 'rail', step: FLY, paper: null, override: null });
    const word = (plates: number | null) =>
      onSet('leave seconded', { post: 'headFly', asked: asking.seq, plates });
    const now = foldEvent(opened(), asking);
    expect(seven(foldEvent(now, word(2))).standing).toEqual(LOW);
    expect(seven(foldEvent(now, word(null))).standing).toEqual(LOW);
    expect(seven(foldEvent(now, word(3)))).toMatchObject({ standing: null, asked: null });
    expect(seven(foldEvent(now, word(3))).doubt).toContain('two counts differ: the second');
  });
});

describe('zones', () => {
  const close: Step = { act: 'close', zone: { zone: 'run' } };

  it('are closed and opened by the report of their marshal', () => {
    const { now, leave } = given(opened(), close, 'marshal:run');
    expect(now.zones).toEqual([]);
    const closed = foldEvent(now, reportOf(leave));
    expect(closed.zones).toMatchObject([{ zone: { zone: 'run' }, set: '7', post: 'marshal:run' }]);
    const open = given(closed, { act: 'reopen', zone: { zone: 'run' } }, 'marshal:run');
    expect(foldEvent(open.now, reportOf(open.leave)).zones).toEqual([]);
  });

  it('are neither closed nor opened by what another post, or of another leave, is said', () => {
    const { now, leave } = given(opened(), close, 'marshal:run');
    for (const wrong of [reportOf(leave, { post: 'deck' }), reportOf(leave, { leave: 1 })]) {
      const heard = foldEvent(now, wrong);
      expect(heard.zones).toEqual([]);
      expect(seven(heard)).toMatchObject({ standing: null, leave: null });
    }
    const loose = foldEvent(opened(), findOf(LOW, { lock: 'open', collar: 'loose' }));
    const again = given(loose, close, 'marshal:run');
    const closed = seven(foldEvent(again.now, reportOf(again.leave)));
    expect(closed).toMatchObject({ lock: 'open', collar: 'loose' });
  });

  it('of a set that nobody knows are closed all the same, and it stays unknown', () => {
    const doubted = foldEvent(opened(), onSet('set doubted', { why: 'touched' }));
    const { now, leave } = given(doubted, close, 'marshal:run');
    const closed = foldEvent(now, reportOf(leave));
    expect(closed.zones).toHaveLength(1);
    expect(seven(closed)).toMatchObject({ standing: null, doubt: 'touched', leave: null });
    expect(seven(closed).last?.closed).toEqual([{ zone: 'run' }]);
    const fly = given(doubted, FLY);
    expect(seven(fly.now).leave).toBeNull();
  });

  it('are as a find says', () => {
    const { now, leave } = given(opened(), close, 'marshal:run');
    const closed = foldEvent(now, reportOf(leave));
    const drop = { zone: 'drop', gallery: 'upper' } as const;
    const found = (zones: Standing['closed']) =>
      foldEvent(closed, findOf({ ...LOW, closed: [...zones] })).zones.map(({ post }) => post);
    expect(found([])).toEqual([]);
    expect(found([{ zone: 'run' }, drop])).toEqual(['marshal:run', 'marshal:drop:upper']);
  });
});
