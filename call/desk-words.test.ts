/** Overrides, orders, stops, tags and notes; and what the server says of how the house is held. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { CALL_REFUSALS, openDesk, platesOf } from './index.ts';
import {
  ask,
  CALL,
  CREW,
  count,
  crewed,
  empty,
  FLY,
  feet,
  find,
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
const CLOSE_DROP = { act: 'close', zone: { zone: 'drop', gallery: 'upper' } } as const;

describe('an override', () => {
  /** Set 17 at its trim: held as its sign is written, and not if that is a quarter heavier. */
  const doubtful = (): Stage => {
    const stage = crewed(demo);
    find(stage, '17', { closed: [{ zone: 'run' }] });
    return stage;
  };
  const UP = { act: 'fly', to: feet(57) } as const;
  const rules = ['CAL-024'];

  it('[CAL-107] has a reason in words', () => {
    const stage = doubtful();
    expect(ask(stage, '17', 'rail', UP).code).toBe('CAL-024');
    expect(ask(stage, '17', 'rail', UP, { override: { why: ' ', rules } }).code).toBe('CAL-107');
  });

  it('covers what it names, with the word of the head flyman, and stays to be seen', () => {
    const stage = doubtful();
    const override = { why: 'flown so all season', rules };
    expect(
      ask(stage, '17', 'rail', UP, { override: { ...override, rules: ['CAL-022'] } }).code,
    ).toBe('CAL-024');
    expect(ask(stage, '17', 'rail', UP, { override }).code).toBe('taken');
    expect(stage.set('17')).toMatchObject({ leave: null, asked: { secondOf: 'headFly' } });
    second(stage, '17', platesOf(stage.set('17').standing?.stack ?? []));
    expect(stage.set('17').overrides).toMatchObject([
      { ...override, first: { by: 'pers_rail' }, second: { by: 'pers_head' } },
    ]);
  });

  it('covers nothing that would leave a weight unheld, though it names the rule', () => {
    const stage = empty(demo);
    const step = { act: 'add', kind: 'F', count: 6, gallery: 'upper' } as const;
    const override = { why: 'in a hurry', rules: ['ORD-003', 'ORD-028', 'ORD-029', 'ORD-025'] };
    expect(ask(stage, '4', 'gallery:upper', step, { override })).toMatchObject({ code: 'ORD-003' });
  });
});

describe('an order that is told', () => {
  const told = (stage: Stage, steps: readonly object[], speaks = who('headFly')) =>
    stage.send(
      'plan told',
      stage.on('4'),
      // Steps of the test are steps of an order.
      { call: CALL, job: 'strike', steps: steps as never },
      speaks,
    );

  it('is taken where no step of it breaks a rule, and may be taken back', () => {
    const stage = empty(demo);
    expect(told(stage, [OFF, FLY]).code).toBe('taken');
    expect(stage.set('4').plan).toMatchObject({ job: 'strike', done: 0 });
    expect(told(stage, []).code).toBe('taken');
  });

  it('[CAL-108] is refused with the first step that breaks one', () => {
    const stage = empty(demo);
    expect(told(stage, [OFF, { ...OFF, act: 'add', count: 6 }])).toMatchObject({
      code: 'CAL-108',
      words: expect.stringContaining('Step 2 breaks ORD-003'),
    });
    expect(told(stage, [OFF, { ...OFF, kind: 'O' }]).words).toContain('Step 2: found O');
    stage.send('set doubted', stage.on('4'), { call: CALL, why: 'x' }, who('deck'));
    expect(told(stage, [OFF]).words).toContain('not known');
    const none = stage.send(
      'plan told',
      stage.on('M1'),
      { call: CALL, job: 'load', steps: [FLY] },
      who('headFly'),
    );
    expect(none.code).toBe('CAL-108');
  });

  it('[CAL-109] is told by the head flyman', () => {
    expect(told(empty(demo), [OFF], who('rail')).code).toBe('CAL-109');
  });
});

describe('a stop', () => {
  const call = (stage: Stage, speaks: Speaks, post: string | null = 'deck'): number =>
    stage.send('stop called', 'house', { call: CALL, post, set: null, words: '' }, speaks).seq;
  const agree = (stage: Stage, stop: number, speaks: Speaks) =>
    stage.send('stop agreed', 'house', { call: CALL, stop }, speaks);
  const lift = (
    stage: Stage,
    stop: number,
    substitute: { name: string; why: string } | null = null,
    speaks = who('headFly'),
  ) =>
    stage.send('stop lifted', 'house', { call: CALL, post: 'headFly', stop, substitute }, speaks);

  it('[CAL-109] is lifted by the head flyman', () => {
    const stage = empty(demo);
    const stop = call(stage, who('deck'));
    agree(stage, stop, who('deck'));
    expect(lift(stage, stop, null, who('rail')).code).toBe('CAL-109');
    expect(lift(stage, stop).code).toBe('taken');
    expect(stage.now().stops).toEqual([]);
  });

  it('[CAL-110] stands until whoever said it agrees, and nobody else', () => {
    const stage = empty(demo);
    const stop = call(stage, who('deck'));
    expect(lift(stage, stop).code).toBe('CAL-110');
    agree(stage, stop, who('rail'));
    expect(lift(stage, stop).code).toBe('CAL-110');
    expect(lift(stage, stop, { name: 'Ida', why: ' ' }).code).toBe('CAL-110');
    expect(lift(stage, stop, { name: 'Ida', why: 'the deck lead was hurt' }).code).toBe('taken');
  });

  it('[CAL-110] of the head flyman is not lifted by the head flyman alone', () => {
    const stage = empty(demo);
    const stop = call(stage, who('headFly'), 'headFly');
    agree(stage, stop, who('headFly'));
    expect(lift(stage, stop).code).toBe('CAL-110');
    expect(lift(stage, stop, { name: 'pers_head', why: 'all is well' }).code).toBe('CAL-105');
  });

  it('[CAL-104] that stands no more is not lifted', () => {
    expect(lift(empty(demo), 99_999).code).toBe('CAL-104');
  });
});

describe('tags and notes', () => {
  const tag = { number: '12', reason: 'head block' };
  const tagged = (): Stage => {
    const stage = empty(demo);
    const placed = { call: CALL, tag, service: 'lockedOut' as const };
    stage.send('tag placed', stage.on('4'), placed, who('rail'));
    return stage;
  };
  const back = (stage: Stage, number: string, repairedBy: string, speaks = who('headFly')) =>
    stage.send(
      'tag returned',
      stage.on('4'),
      { call: CALL, number, repairedBy, words: 'new pin' },
      speaks,
    );

  it('a tag keeps every step from the set', () => {
    const stage = tagged();
    expect(ask(stage, '4', 'rail', FLY).code).toBe('CAL-015');
  });

  it('[CAL-111] is given back by its number', () => {
    expect(back(tagged(), '13', 'Bo').code).toBe('CAL-111');
  });

  it('[CAL-105] is not given back by whoever mended it', () => {
    const stage = tagged();
    expect(back(stage, '12', 'pers_head').code).toBe('CAL-105');
    expect(back(stage, '12', 'Bo').code).toBe('taken');
    expect(stage.set('4')).toMatchObject({ tag: null, standing: { service: 'in' } });
  });

  it('[CAL-103] is given back by an inspector or the head flyman, at a post of the call', () => {
    const stage = tagged();
    expect(back(stage, '12', 'Bo', who('rail')).code).toBe('CAL-103');
    const nobody: Speaks = { by: 'pers_x', device: 'dev_x', tasks: ['inspector'] };
    expect(back(stage, '12', 'Bo', nobody).code).toBe('CAL-102');
    expect(back(stage, '12', 'Bo', { ...who('rail'), tasks: ['inspector'] }).code).toBe('taken');
  });

  const noted = (speaks: Speaks): { stage: Stage; note: number } => {
    const stage = empty(demo);
    const text = { text: 'two bricks off, on paper', writtenMs: 5 };
    const { seq } = stage.send('note written', stage.on('4'), text, speaks);
    return { stage, note: seq };
  };
  const settle = (stage: Stage, note: number, speaks: Speaks) =>
    stage.send('note settled', stage.on('4'), { call: CALL, note, words: 'as counted' }, speaks);

  it('[CAL-112] a note that does not wait is not settled', () => {
    const { stage } = noted(who('rail'));
    expect(settle(stage, 99_999, who('headFly')).code).toBe('CAL-112');
  });

  it('[CAL-105] a note keeps the set from work until another than its writer settles it', () => {
    const { stage, note } = noted(who('rail'));
    expect(ask(stage, '4', 'gallery:upper', OFF).code).toBe('CAL-023');
    expect(settle(stage, note, who('rail')).code).toBe('CAL-105');
    const stranger: Speaks = { by: 'pers_x', device: 'dev_x', tasks: [] };
    expect(settle(stage, note, stranger).code).toBe('CAL-102');
    expect(settle(stage, note, who('headFly')).code).toBe('taken');
    expect(ask(stage, '4', 'gallery:upper', OFF).code).toBe('taken');
  });
});

describe('what the server says of how the house is held', () => {
  it('of every set when the call begins', () => {
    const stage = openStage(demo);
    expect(stage.set('9')).toMatchObject({ held: 'held', rule: null });
    expect(stage.set('M1')).toMatchObject({ held: 'unknown', rule: 'CAL-004' });
    expect(stage.set('17')).toMatchObject({ held: 'held', rule: 'CAL-024' });
  });

  it('a lock that slips holds nothing, and only making safe is left', () => {
    const stage = crewed(demo);
    const wet = { call: CALL, why: 'slipped a hand' };
    stage.send('lock doubted', stage.on('7'), wet, who('rail'));
    expect(stage.set('7')).toMatchObject({ held: 'unheld', rule: 'ORD-001' });
    expect(ask(stage, '7', 'marshal:run', CLOSE_RUN).code).toBe('taken');
    report(stage, '7');
    expect(ask(stage, '7', 'rail', { act: 'fly', to: feet(60) }).code).toMatch(/^ORD-00[78]$/);
    stage.send('lock doubted', stage.on('7'), { call: CALL, why: null }, who('rail'));
    expect(stage.set('7')).toMatchObject({ held: 'held', rule: null });
  });

  it('a find with the ring off is not at rest', () => {
    const stage = crewed(demo);
    find(stage, '9', {}, { ring: 'off' });
    expect(stage.set('9')).toMatchObject({ held: 'unheld', rule: 'CAL-006' });
    find(stage, '9', {}, { collar: 'loose' });
    expect(stage.set('9')).toMatchObject({ held: 'unheld', rule: 'CAL-007' });
    find(stage, '9');
    expect(stage.set('9')).toMatchObject({ held: 'held', rule: null });
  });

  it('who steps back into the drop zone, or leaves it unkept, while bricks are in hand', () => {
    const stage = empty(demo);
    ask(stage, '4', 'gallery:upper', OFF);
    second(stage, '4');
    const said = (isClear: boolean) =>
      stage.send('post said', 'house', { call: CALL, post: 'rail', isClear }, who('rail'));
    said(false);
    expect(stage.set('4')).toMatchObject({ held: 'unheld', rule: 'CAL-009' });
    said(true);
    expect(stage.set('4')).toMatchObject({ held: 'held', rule: null });
    const left = { call: CALL, post: 'marshal:drop:upper' };
    stage.send('post left', 'house', left, who('marshal:drop:upper'));
    expect(stage.set('4')).toMatchObject({ held: 'unheld', rule: 'CAL-008' });
  });

  it('more bricks than leave was given for, counted aloud, are judged as they stand', () => {
    const stage = unloaded(demo);
    const on = { ...OFF, act: 'add' } as const;
    ask(stage, '4', 'gallery:upper', on);
    expect(stage.set('4').leave?.step).toEqual(on);
    count(stage, '4', 1);
    expect(stage.set('4').held).toBe('held');
    count(stage, '4', 6);
    expect(stage.set('4')).toMatchObject({ held: 'unheld', rule: 'ORD-001' });
  });
});

describe('the refusals of a call', () => {
  it('have a code each, in order', () => {
    expect(Object.values(CALL_REFUSALS).map(({ code }) => code)).toEqual(
      Object.keys(CALL_REFUSALS).map((_, index) => `CAL-${101 + index}`),
    );
  });

  it('are asked of a crew that has somebody for each post of the demo', () => {
    for (const { id } of demo.house.galleries) expect(CREW[`gallery:${id}`]).toBeDefined();
    expect(openDesk(demo).physicsOf(openStage(demo).now(), '9')?.set).toBe('9');
    expect(CLOSE_DROP.zone.gallery).toBe('upper');
  });
});
