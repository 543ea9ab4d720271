/** What is weighed and pulled in a call: what the desk reckons with from then on. */
import { describe, expect, it } from 'vitest';
import { GRAVITY, POUND } from '#quantities';
import type { OrderPhysics } from '#state';
import { openExample } from '../examples/open-example.ts';
import { ask, CALL, crewed, feet, find, type Stage, second, who } from './stage-for-tests.ts';

const demo = openExample('kestlemere');
const LBF = POUND * GRAVITY;

const physicsOf = (stage: Stage, set: string): OrderPhysics => {
  const physics = stage.desk.physicsOf(stage.now(), set);
  if (physics === null) throw new Error(`set ${set} of the demo is known`);
  return physics;
};

const imbalanceOf = (stage: Stage, set: string) => {
  const { standing } = stage.set(set);
  if (standing === null) throw new Error(`set ${set} is known`);
  return physicsOf(stage, set).at(standing);
};

const weigh = (stage: Stage, set: string, item: string, massKg: number) =>
  stage.send(
    'item weighed',
    stage.on(set),
    { call: CALL, post: 'deck', item, mass: massKg },
    who('deck'),
  );

const pull = (stage: Stage, set: string, imbalanceN: number, frictionN: number) => {
  const { standing } = stage.set(set);
  if (standing === null) throw new Error(`set ${set} is known`);
  // One hand line per batten on these sets: F_out = U + f, F_in = f - U.
  const pulls = { out: imbalanceN + frictionN, in: frictionN - imbalanceN };
  const payload = { call: CALL, post: 'rail', ...pulls, height: standing.height };
  return stage.send('pull tested', stage.on(set), payload, who('rail'));
};

const UP = { act: 'fly', to: feet(57) } as const;

/** Set 17, the shop sign: 85 lb as somebody estimated it, a quarter more or less. */
const sign = (): Stage => {
  const stage = crewed(demo);
  find(stage, '17', { closed: [{ zone: 'run' }] });
  return stage;
};

describe('an item that was weighed', () => {
  it('counts with what the scale showed, and with the tolerance of a scale', () => {
    const stage = sign();
    const before = imbalanceOf(stage, '17');
    weigh(stage, '17', 'sign', 90 * POUND);
    const after = imbalanceOf(stage, '17');
    // By hand: 5 lb more hang. The doubt loses 21.25 lb and gains 2 % of 90 lb.
    expect((after.lowN - before.lowN) / LBF).toBeCloseTo(5, 6);
    expect((before.doubtN - after.doubtN) / LBF).toBeCloseTo(21.25 - 1.8, 6);
  });

  it('[CAL-024] needs no two people any more', () => {
    const stage = sign();
    expect(ask(stage, '17', 'rail', UP).code).toBe('CAL-024');
    weigh(stage, '17', 'sign', 85 * POUND);
    expect(stage.set('17')).toMatchObject({ held: 'held', rule: null });
    expect(ask(stage, '17', 'rail', UP).code).toBe('taken');
  });

  it('that is far heavier than listed leaves the set unheld', () => {
    const stage = sign();
    weigh(stage, '17', 'sign', 200 * POUND);
    expect(stage.set('17')).toMatchObject({ held: 'unheld', rule: 'ORD-001' });
    weigh(stage, '17', 'sign', 85 * POUND);
    expect(stage.set('17').held).toBe('held');
  });

  it('that is none of the set changes nothing of it', () => {
    const stage = sign();
    const before = imbalanceOf(stage, '17');
    weigh(stage, '17', 'moon', 500);
    expect(imbalanceOf(stage, '17')).toEqual(before);
  });

  it('of a cloth is weighed with what is in its hem', () => {
    const stage = crewed(demo);
    find(stage, '9', { height: feet(40) });
    const before = imbalanceOf(stage, '9');
    weigh(stage, '9', 'cloth', 180 * POUND);
    // 175 lb were listed: 119 of cloth and 56 in the hem.
    expect((imbalanceOf(stage, '9').lowN - before.lowN) / LBF).toBeCloseTo(5, 6);
  });
});

describe('a pull test', () => {
  it('sets the imbalance right, and leaves only the error of a pull in doubt', () => {
    const stage = sign();
    const before = imbalanceOf(stage, '17');
    pull(stage, '17', before.lowN + 12 * LBF, 10 * LBF);
    const after = imbalanceOf(stage, '17');
    expect((after.lowN - before.lowN) / LBF).toBeCloseTo(12, 6);
    // 1.5 % of a sign that is now 97 lb, and of a batten of 196.26 lb: 4.4 lb.
    expect(after.doubtN / LBF).toBeLessThan(4.5);
    expect(after.doubtN).toBeGreaterThan(0);
    expect(ask(stage, '17', 'rail', UP).code).toBe('taken');
  });

  it('says of bricks that come off what they may themselves be off by, and no more', () => {
    const stage = sign();
    pull(stage, '17', imbalanceOf(stage, '17').lowN, 10 * LBF);
    const { standing } = stage.set('17');
    if (standing === null) throw new Error('set 17 is known');
    const physics = physicsOf(stage, '17');
    const pulled = physics.at(standing);
    const fewer = { ...standing, stack: standing.stack.slice(0, -1) };
    // One half brick: 0.3 lb by the sample of the house.
    expect((physics.at(fewer).doubtN - pulled.doubtN) / LBF).toBeCloseTo(0.3, 6);
    const bare = physics.at({ ...standing, items: {} }).doubtN;
    expect(bare).toBeGreaterThan(pulled.doubtN);
    const other = {
      ...standing,
      stack: [...fewer.stack, { kind: 'O', count: 1, tag: 'show' }],
    } as const;
    expect(physics.at(other).doubtN).toBeGreaterThan(10 * LBF);
  });

  it('is the friction that hands have to overcome from then on', () => {
    const stage = sign();
    const { items } = stage.set('17').standing ?? { items: {} };
    const reckonedN = physicsOf(stage, '17').frictionN(items);
    pull(stage, '17', imbalanceOf(stage, '17').lowN, 2 * reckonedN);
    expect(physicsOf(stage, '17').frictionN(items)).toBeCloseTo(2 * reckonedN, 6);
  });

  it('that no tolerance explains puts the set in doubt: something was not counted', () => {
    const stage = sign();
    const { lowN } = imbalanceOf(stage, '17');
    const { seq } = pull(stage, '17', lowN - 60 * LBF, 10 * LBF);
    expect(stage.log.after(seq, 2)).toMatchObject([
      { kind: 'set doubted', by: null },
      { kind: 'set judged', payload: { held: 'unknown', rule: 'CAL-004' } },
    ]);
    expect(stage.set('17').doubt).toContain('Count bricks and items again');
  });

  it('at a contact says nothing of the sum', () => {
    const stage = crewed(demo);
    find(stage, '9', { height: feet(28.25) });
    const before = imbalanceOf(stage, '9');
    pull(stage, '9', before.lowN + 5 * LBF, 10 * LBF);
    expect(imbalanceOf(stage, '9')).toEqual(before);
  });

  it('of a set without items corrects no item', () => {
    const stage = crewed(demo);
    find(stage, '4', { height: feet(3), items: {} });
    const before = imbalanceOf(stage, '4');
    pull(stage, '4', before.lowN + 2 * LBF, 5 * LBF);
    expect(imbalanceOf(stage, '4')).toEqual(before);
  });

  it('is asked for two people no more, and the count is', () => {
    const stage = sign();
    pull(stage, '17', imbalanceOf(stage, '17').lowN, 10 * LBF);
    ask(stage, '17', 'rail', UP);
    expect(second(stage, '17').code).toBe('CAL-106');
  });
});
