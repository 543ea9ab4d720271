/** Who may say what in a call, and what the server says in the same batch. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import {
  allClear,
  ask,
  CALL,
  crewed,
  empty,
  FLY,
  feet,
  find,
  LADEN,
  OFF,
  openStage,
  report,
  type Speaks,
  type Stage,
  second,
  unloaded,
  who,
} from './stage-for-tests.ts';

const demo = openExample('kestlemere');
const CLOSE_RUN = { act: 'close', zone: { zone: 'run' } } as const;
const REMOVE = { act: 'remove', kind: 'H', count: 1, gallery: 'upper' } as const;

const seqAsked = (stage: Stage, set = '4'): number => stage.set(set).asked?.seq ?? 0;

describe('who may ask', () => {
  it('[CAL-101] refuses what is asked of a call that is not open', () => {
    const stage = empty(demo);
    const payload = { call: 'call-0', job: 'load' as const, steps: [] };
    expect(stage.send('plan told', stage.on('4'), payload, who('headFly'))).toMatchObject({
      code: 'CAL-101',
    });
    const lift = { call: 'call-0', post: 'headFly', stop: 1, substitute: null };
    expect(stage.send('stop lifted', 'house', lift, who('headFly')).code).toBe('CAL-101');
  });

  it('takes a report of another call, which changes nothing', () => {
    const stage = empty(demo);
    const payload = { call: 'call-0', post: 'rail', isClear: false };
    expect(stage.send('post said', 'house', payload, who('caller')).code).toBe('taken');
    expect(stage.now().posts).toMatchObject({ rail: { isClear: true } });
  });

  it('[CAL-102] refuses who has not taken the post, and the same person on another device', () => {
    const stage = empty(demo);
    expect(ask(stage, '4', 'marshal:run', CLOSE_RUN, { speaks: who('deck') }).code).toBe('CAL-102');
    const other: Speaks = { ...who('rail'), device: 'dev_other' };
    expect(ask(stage, '4', 'rail', FLY, { speaks: other })).toMatchObject({
      code: 'CAL-102',
      words: expect.stringContaining('rail'),
    });
  });

  it('[CAL-102] refuses a report that names a post of somebody else', () => {
    const stage = empty(demo);
    const said = { call: CALL, post: 'rail', isClear: false };
    expect(stage.send('post said', 'house', said, who('deck')).code).toBe('CAL-102');
    const other: Speaks = { ...who('rail'), device: 'dev_other' };
    expect(stage.send('post said', 'house', said, other).code).toBe('taken');
    const machine: Speaks = { by: null, device: 'dev_m', tasks: [], role: 'this machine' };
    stage.take('rail', machine);
    expect(stage.send('post said', 'house', said, machine).code).toBe('taken');
    expect(stage.send('post said', 'house', said, { ...machine, device: 'dev_n' }).code).toBe(
      'CAL-102',
    );
  });

  it('[CAL-103] refuses who is not signed off, unless somebody answers for them by name', () => {
    const stage = empty(demo);
    const learner: Speaks = { ...who('rail'), tasks: ['deck'] };
    expect(ask(stage, '4', 'rail', FLY, { speaks: learner })).toMatchObject({
      code: 'CAL-103',
      words: expect.stringContaining('needs: rail'),
    });
    stage.take('rail', learner, 'pers_head');
    expect(ask(stage, '4', 'rail', FLY, { speaks: learner }).code).not.toBe('CAL-103');
  });

  it.each([
    ['rail', 'lead', true],
    ['rail', 'loader', false],
    ['rail', 'inspector', false],
    ['marshal:run', 'deck', true],
    ['marshal:run', 'induct', false],
    ['deck', 'headFly', true],
    ['gallery:upper', 'deck', false],
  ] as const)('at %s: whoever is signed off for %s may ask is %s', (post, task, may) => {
    const stage = openStage(demo);
    const speaks: Speaks = { ...who(post), tasks: [task] };
    stage.take(post, speaks);
    const { code } = ask(stage, '4', post, CLOSE_RUN, { speaks });
    expect(code === 'CAL-103').toBe(!may);
  });

  it('leaves stop, doubt and tag to everybody, at any post and at none', () => {
    const stage = openStage(demo);
    const anybody = who('caller');
    const stop = { call: CALL, post: null, set: null, words: '' };
    expect(stage.send('stop called', 'house', stop, anybody).code).toBe('taken');
    const doubt = { call: CALL, why: 'somebody was at it' };
    expect(stage.send('set doubted', stage.on('4'), doubt, anybody).code).toBe('taken');
    const tag = { tag: { number: '7', reason: 'rope' }, service: 'lockedOut' as const };
    expect(stage.send('tag placed', stage.on('5'), { call: CALL, ...tag }, anybody).code).toBe(
      'taken',
    );
    expect(stage.set('5')).toMatchObject({ standing: { service: 'lockedOut' } });
  });
});

describe('leave', () => {
  it('is given in the batch of what asked for it, where one person is enough', () => {
    const stage = crewed(demo);
    find(stage, '4', { height: feet(3), stack: LADEN, items: {}, closed: [] });
    const { seq } = ask(stage, '4', 'marshal:run', CLOSE_RUN);
    const [given] = stage.log.after(seq, 1);
    expect(given).toMatchObject({ kind: 'leave given', by: null, payload: { asked: seq } });
    expect(stage.set('4').leave).toMatchObject({ post: 'marshal:run', second: null });
    report(stage, '4');
    expect(stage.now().zones).toMatchObject([{ set: '4', post: 'marshal:run' }]);
  });

  it('waits for the deck before the first brick of a visit, and not before the next', () => {
    const stage = empty(demo);
    ask(stage, '4', 'gallery:upper', OFF);
    expect(stage.set('4')).toMatchObject({ leave: null, asked: { secondOf: 'deck' } });
    second(stage, '4');
    expect(stage.set('4').leave?.second).toMatchObject({ is: 'device', post: 'deck' });
    report(stage, '4');
    const on = { ...OFF, act: 'add' } as const;
    expect(ask(stage, '4', 'gallery:upper', on).code).toBe('taken');
    expect(stage.set('4').leave?.step).toEqual(on);
  });

  it('waits for the head flyman with the count before a set is unlocked that has changed', () => {
    const stage = unloaded(demo);
    ask(stage, '4', 'rail', FLY);
    expect(stage.set('4').asked?.secondOf).toBe('headFly');
    second(stage, '4', 5);
    expect(stage.set('4').leave?.step).toEqual(FLY);
    report(stage, '4', { height: FLY.to });
    expect(ask(stage, '4', 'rail', { act: 'fly', to: feet(12) }).code).toBe('taken');
    expect(stage.set('4').leave?.second).toBeNull();
  });

  it('puts the set in doubt where the second counts otherwise, and every post is told', () => {
    const stage = unloaded(demo);
    ask(stage, '4', 'rail', FLY);
    const { seq } = second(stage, '4', 6);
    expect(stage.set('4')).toMatchObject({ standing: null, leave: null, held: 'unknown' });
    expect(stage.log.after(seq, 5)).toMatchObject([
      { kind: 'set judged', payload: { held: 'unknown' } },
    ]);
    expect(ask(stage, '4', 'rail', FLY)).toMatchObject({
      code: 'CAL-004',
      words: expect.stringContaining('two counts differ: the second counted'),
    });
  });

  it('[CAL-104] is no answer to what is not asked, or waits for another post', () => {
    const stage = unloaded(demo);
    ask(stage, '4', 'rail', FLY);
    const word = (post: string, asked: number) =>
      stage.send(
        'leave seconded',
        stage.on('4'),
        { call: CALL, post, asked, plates: 5 },
        who(post),
      );
    expect(word('headFly', 99_999).code).toBe('CAL-104');
    expect(word('watcher', seqAsked(stage)).code).toBe('CAL-104');
    expect(word('headFly', seqAsked(stage)).code).toBe('taken');
    const nowhere = { call: CALL, post: 'headFly', asked: 1, plates: null };
    expect(stage.send('leave seconded', 'house', nowhere, who('headFly')).code).toBe('CAL-104');
  });

  it('[CAL-105] is not the word of one person on two devices, nor of one device', () => {
    const stage = unloaded(demo);
    const twice: Speaks = { ...who('rail'), device: 'dev_tablet', tasks: ['headFly'] };
    stage.take('headFly', twice);
    ask(stage, '4', 'rail', FLY);
    const payload = { call: CALL, post: 'headFly', asked: seqAsked(stage), plates: 5 };
    expect(stage.send('leave seconded', stage.on('4'), payload, twice).code).toBe('CAL-105');
    const sameDevice: Speaks = { ...who('headFly'), device: who('rail').device };
    stage.take('headFly', sameDevice);
    expect(stage.send('leave seconded', stage.on('4'), payload, sameDevice).code).toBe('CAL-105');
  });

  it('[CAL-105] of a machine without sign-in two devices are one, and paper is the second', () => {
    const stage = unloaded(demo);
    const machine = (device: string): Speaks => ({
      ...{ by: null, device, tasks: [], role: 'this machine' },
    });
    stage.take('rail', machine('dev_1'));
    stage.take('headFly', machine('dev_2'));
    allClear(stage);
    ask(stage, '4', 'rail', FLY, { speaks: machine('dev_1') });
    const payload = { call: CALL, post: 'headFly', asked: seqAsked(stage), plates: 5 };
    const word = stage.send('leave seconded', stage.on('4'), payload, machine('dev_2'));
    expect(word.code).toBe('CAL-105');
    const back = { call: CALL, asked: seqAsked(stage), words: '' };
    stage.send('leave returned', stage.on('4'), back, machine('dev_1'));
    const own = ask(stage, '4', 'rail', FLY, { speaks: machine('dev_1'), paper: ' DEV_1 ' });
    expect(own.code).toBe('CAL-105');
    ask(stage, '4', 'rail', FLY, { speaks: machine('dev_1'), paper: 'Ida on paper' });
    expect(stage.set('4').leave?.second).toEqual({ is: 'paper', name: 'Ida on paper' });
  });

  it('[CAL-106] is not given without the count where bricks have changed', () => {
    const stage = unloaded(demo);
    ask(stage, '4', 'rail', FLY);
    expect(second(stage, '4').code).toBe('CAL-106');
    expect(stage.set('4').asked).not.toBeNull();
  });

  it('is judged again when the second says it: the house may have changed', () => {
    const stage = unloaded(demo);
    ask(stage, '4', 'rail', FLY);
    const stop = { call: CALL, post: 'deck', set: null, words: 'a child on stage' };
    stage.send('stop called', 'house', stop, who('deck'));
    expect(second(stage, '4', 5)).toMatchObject({
      code: 'CAL-001',
      words: expect.stringContaining('a child on stage'),
    });
  });

  it('names the rule, what was found, and every other rule that is broken', () => {
    const stage = crewed(demo);
    find(stage, '4', { height: feet(3), stack: LADEN, items: {}, closed: [] });
    const { code, words } = ask(stage, '4', 'gallery:upper', REMOVE);
    expect(code).toBe('CAL-008');
    expect(words).toContain('A zone is not kept (marshal:drop:upper): nobody has closed it');
    expect(words).toMatch(/Also: .*ORD-104/);
  });
});
