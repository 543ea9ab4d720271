/** A step of a call judged as an order is: what holds, what a pull has shown, what was unheld. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { SetNow, Standing, Step } from '#state';
import {
  add,
  bullLine,
  ease,
  fly,
  hungAt,
  plantOf,
  release,
  remove,
  standingAt,
} from '../order/example-order.ts';
import { type Called, DROP, judged, judgedSet, READY, RUN, rulesOf } from './example-call.ts';

/** The drill of R8: a motor of 600 N, off by 250 N, on the low stop, and bricks one by one. */
const PIECES = { motor: { weightN: 600, doubtN: 250 } };
const facts = { physics: plantOf({ pieces: PIECES }) };
const withMotor = (bricks: number): Standing =>
  standingAt(1, bricks, { items: { motor: 'flying' }, closed: [RUN, DROP] });

/** As told since it was found with three bricks on. */
const drilled = (bricks: number, steps: readonly Step[]): Partial<SetNow> => ({
  standing: withMotor(bricks),
  since: { start: withMotor(3), steps },
});

describe('what a pull on the stop has shown', () => {
  it('counts for the next brick, which without it has no leave', () => {
    // It stayed under 250 N, so it is heavier than that by friction and no less.
    const stayed = ease(250, false);
    const plain: Called = { set: drilled(3, []), step: add(1), facts };
    expect(rulesOf(plain)).toEqual(['CAL-024']);
    expect(rulesOf({ ...plain, set: drilled(3, [stayed]) })).toEqual([]);
  });

  it('is replayed with the bricks that lay at the gallery then', () => {
    const steps = [ease(300, false), add(2), ease(100, false)];
    const set = drilled(5, steps);
    const now = { galleries: { upper: { stock: { B: 1 }, countedMs: null, countedBy: null } } };
    const called: Called = { set, step: add(1), facts: { physics: withStock(1) }, now };
    expect(rulesOf(called)).not.toContain('ORD-015');
    const none: Called = { ...called, facts: { physics: withStock(0) } };
    expect(rulesOf(none)).toContain('ORD-015');
  });

  it('is forgotten with a move, and where the record does not lead to how it stands', () => {
    const stayed = ease(250, false);
    const plain: Called = { set: drilled(3, []), step: add(1), facts };
    const moved = drilled(3, [stayed, fly(1.5), fly(1)]);
    expect(rulesOf({ ...plain, set: moved })).toEqual(['CAL-024']);
    const elsewhere = { ...drilled(3, [stayed]), standing: withMotor(4) };
    expect(rulesOf({ ...plain, set: elsewhere })).toEqual(['CAL-024']);
  });

  it('says that the set is held, where the list alone does not', () => {
    // With six bricks it is 40 N heavy as listed, and by the doubt anything from 210 N arbor heavy
    // on, where the lock holds 200 N. The pull with three on has shown more.
    const steps = [ease(400, false), add(3)];
    expect(judgedSet({ set: drilled(6, steps), facts })).toEqual({ held: 'held', rule: null });
    expect(judgedSet({ set: drilled(6, []), facts })).toEqual({ held: 'held', rule: 'CAL-024' });
  });
});

const withStock = (B: number) => {
  const physics = plantOf({ pieces: PIECES });
  const galleries = physics.galleries.map((each) =>
    each.id === 'upper' ? { ...each, stock: { B } } : each,
  );
  return { ...physics, galleries };
};

describe('a lock that nobody trusts', () => {
  it('holds nothing, and the stop still holds its way', () => {
    const high = { standing: standingAt(10, 0, { closed: [RUN] }), lockDoubt: 'wet' };
    expect(judgedSet({ set: { ...high, lockDoubt: null } })).toEqual({ held: 'held', rule: null });
    expect(judgedSet({ set: high })).toEqual({ held: 'unheld', rule: 'ORD-001' });
    expect(judgedSet({ set: { standing: READY, lockDoubt: 'wet' } }).held).toBe('held');
    expect(rulesOf({ set: high, step: { act: 'reopen', zone: RUN } })).toContain('CAL-005');
  });
});

describe('a set that is not held', () => {
  /** Eight bricks with the frame at half height: 550 N arbor heavy, where the lock holds 200 N. */
  const closed = [RUN, { zone: 'drop', gallery: 'mid' }] as const;
  const loose: Partial<SetNow> = { standing: hungAt(10, 8, { closed }) };
  const physics = plantOf({ more: { topOfStackM: () => 11 } });

  it('is made safe by what leaves it held, however it stood before', () => {
    expect(judgedSet({ set: loose, facts: { physics } })).toEqual({
      held: 'unheld',
      rule: 'ORD-001',
    });
    const rig = { act: 'rig', restraint: bullLine() } as const;
    expect(judged({ set: loose, step: rig, facts: { physics } })).toMatchObject({
      findings: [],
      expects: { restraints: [rig.restraint] },
    });
  });

  it('is not handled while it is not held, not even towards being held', () => {
    // With the fourth brick off it would be held, and with the first three it is not.
    expect(rulesOf({ set: loose, step: remove(4, 'B', 'mid'), facts: { physics } })).toContain(
      'ORD-004',
    );
    expect(rulesOf({ set: loose, step: fly(9), facts: { physics } })).toContain('ORD-007');
    expect(rulesOf({ set: loose, step: release('frame'), facts: { physics } })).toContain(
      'CAL-005',
    );
  });
});

describe('a set that stands with what the house does not have', () => {
  it('is not held, by the code of what cannot be read', () => {
    const strange = { ...READY, stack: [{ kind: 'X', count: 1, tag: 'show' }] } as const;
    expect(judgedSet({ set: { standing: strange } })).toEqual({ held: 'unheld', rule: 'ORD-103' });
    const item = { ...READY, items: { 'no such piece': 'flying' } } as const;
    expect(judgedSet({ set: { standing: item } }).held).toBe('unheld');
  });
});

describe('a step that cannot be replayed', () => {
  it('has the code of that refusal, what was found and what would be taken', () => {
    const [finding] = judged({ set: { standing: READY }, step: fly(30) }).findings;
    expect(finding).toMatchObject({ rule: 'ORD-107', isHold: true, finding: null });
    expect(finding?.says).toBe('Found: 30 m. Accepted: from 1 m to 19 m.');
    expect(judged({ set: { standing: READY }, step: fly(30) }).expects).toBeNull();
  });
});

describe('whose second word a step needs', () => {
  const secondOf = (called: Called) => judged(called).secondOf;
  const changed = { standing: READY, changed: true };
  const seen = (...steps: readonly Step[]): Partial<SetNow> => ({
    standing: READY,
    since: { start: READY, steps },
  });

  it('is the deck before the first brick of a visit (6.3, 1)', () => {
    expect(secondOf({ set: seen(), step: add(1) })).toBe('deck');
    expect(secondOf({ set: seen(add(1)), step: add(1) })).toBeNull();
    expect(secondOf({ set: seen(add(1, 'B', 'mid')), step: add(1) })).toBe('deck');
    expect(secondOf({ set: seen(add(1), { act: 'close', zone: DROP }), step: remove(1) })).toBe(
      'deck',
    );
    expect(
      secondOf({ set: seen(add(1), { act: 'close', zone: RUN }), step: remove(1) }),
    ).toBeNull();
  });

  it('is the head flyman before unlocking what has changed (6.3, 2 and 3)', () => {
    expect(secondOf({ set: changed, step: fly(2) })).toBe('headFly');
    expect(secondOf({ set: changed, step: ease(10, false) })).toBe('headFly');
    expect(secondOf({ set: seen(), step: fly(2) })).toBeNull();
    expect(secondOf({ set: seen(), step: ease(10, false) })).toBeNull();
  });

  it('is the head flyman where a restraint goes along or comes off (6.3, 4 and 6)', () => {
    const restraint = bullLine();
    const led = { standing: { ...READY, restraints: [restraint] } };
    expect(secondOf({ set: led, step: fly(2) })).toBe('headFly');
    expect(secondOf({ set: led, step: { act: 'unrig', restraint } })).toBe('headFly');
    const stands = bullLine({ kind: 'stands', rating: newtons(500) });
    expect(secondOf({ set: seen(), step: { act: 'rig', restraint: stands } })).toBeNull();
  });

  it('is the watcher where a piece lands (6.3, 8)', () => {
    const tower = (heightM: number): Partial<SetNow> => ({
      standing: standingAt(heightM, 5, { items: { tower: 'flying' }, closed: [RUN, DROP] }),
    });
    expect(secondOf({ set: tower(8), step: fly(6) })).toBe('watcher');
    expect(secondOf({ set: tower(8), step: fly(metres(6.5)) })).toBeNull();
    expect(secondOf({ set: tower(6), step: fly(8) })).toBeNull();
  });

  it('is nobody for the rest', () => {
    for (const step of [
      { act: 'close', zone: RUN },
      { act: 'reopen', zone: RUN },
      { act: 'attach', item: 'lamp', as: 'flying' },
      { act: 'takeUp', item: 'lamp' },
      { act: 'hangOnSteel' },
    ] as const) {
      expect(secondOf({ set: changed, step })).toBeNull();
    }
  });
});
