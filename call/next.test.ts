/** What a post is offered, and how its step is said. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { betweenOf, nextFor } from './index.ts';
import {
  ask,
  CALL,
  count,
  empty,
  FLY,
  OFF,
  type Stage,
  second,
  unloaded,
  who,
} from './stage-for-tests.ts';

const demo = openExample('kestlemere');

const told = (stage: Stage): Stage => {
  const payload = { call: CALL, job: 'strike' as const, steps: [OFF, FLY] };
  stage.send('plan told', stage.on('4'), payload, who('headFly'));
  return stage;
};

describe('what a post is offered', () => {
  it('is the next step of an order, at the post whose work it is', () => {
    const stage = told(empty(demo));
    const next = { set: '4', step: OFF, number: 1, of: 2 };
    expect(nextFor(stage.now(), 'gallery:upper').next).toEqual([next]);
    expect(nextFor(stage.now(), 'rail')).toEqual({ next: [], waits: [], doing: [] });
  });

  it('is what waits for its word, then what it does, and nothing new until that is told', () => {
    const stage = told(empty(demo));
    ask(stage, '4', 'gallery:upper', OFF);
    expect(nextFor(stage.now(), 'deck').waits).toMatchObject([{ set: '4', asked: { step: OFF } }]);
    expect(nextFor(stage.now(), 'gallery:upper').next).toEqual([]);
    second(stage, '4');
    expect(nextFor(stage.now(), 'deck').waits).toEqual([]);
    expect(nextFor(stage.now(), 'gallery:upper').doing).toMatchObject([
      { set: '4', leave: { step: OFF } },
    ]);
  });

  it('is nothing once the order is done or dropped', () => {
    const stage = told(empty(demo));
    stage.send('set doubted', stage.on('4'), { call: CALL, why: 'touched' }, who('deck'));
    expect(nextFor(stage.now(), 'gallery:upper').next).toEqual([]);
  });
});

describe('a step between how the set stands and how it would', () => {
  it('has both states and its number', () => {
    const stage = told(empty(demo));
    const between = betweenOf(stage.now(), '4', OFF, stage.desk);
    expect(between).toMatchObject({ step: OFF, number: 1, proofs: ['count the plates aloud'] });
    expect(between?.before.standing).toEqual(stage.set('4').standing);
    expect(between?.after.standing.stack.at(-1)).toMatchObject({ kind: 'F', count: 2 });
    expect(betweenOf(unloaded(demo).now(), '4', FLY, stage.desk)?.number).toBe(2);
  });

  it('of bricks that are on their way begins where they began', () => {
    const stage = empty(demo);
    ask(stage, '4', 'gallery:upper', OFF);
    second(stage, '4');
    count(stage, '4', 1);
    const between = betweenOf(stage.now(), '4', OFF, stage.desk);
    expect(between?.before.standing.stack.at(-1)).toMatchObject({ kind: 'F', count: 3 });
  });

  it('is null where the set, its physics or the step is not known', () => {
    const stage = empty(demo);
    expect(betweenOf(stage.now(), '99', OFF, stage.desk)).toBeNull();
    expect(betweenOf(stage.now(), 'M1', FLY, stage.desk)).toBeNull();
    expect(betweenOf(stage.now(), '4', { ...OFF, kind: 'O' }, stage.desk)).toBeNull();
  });
});
