import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { kilogramsPerMetre, metres } from '#quantities';
import type { Hang, Item } from '#show';
import {
  assessmentOf,
  balanceSet,
  curveOf,
  found,
  plainNodes,
  type Scene,
} from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleItem,
  exampleLoom,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import type { AmongCase } from '../rule.ts';
import { coupledAlone } from './coupled-alone.ts';

const hung = (changes: Partial<Hang>): Scene => ({ hang: { ...exampleHang, ...changes } });

const steel = (changes: Partial<Hang> = {}): Scene => ({
  ...hung({ deadHungAt: given(metres(6.4)), bricks: { counts: { B: 3, C: 2 }, reason: 'as is' } }),
  plan: null,
  ...(Object.keys(changes).length === 0
    ? {}
    : hung({ deadHungAt: given(metres(6.4)), ...changes })),
});

const loomed = (takeoff: object, kind: 'loom' | 'deckLoom' = 'loom'): Scene => {
  const item: Item = {
    ...exampleLoom,
    kind,
    takeoff: { ...exampleLoom.takeoff, ...takeoff } as Item['takeoff'],
  };
  return hung({ items: [item] });
};

describe('what hangs, in full', () => {
  it('[PER-001] names the piece', () => {
    const items = [{ ...exampleItem, carriesPerson: true }];
    expect(full('PER-001', hung({ items }))).toMatchInlineSnapshot(`
      "PER-001 stop at set 7, item frame
      measured none, limit none (out of scope)
      - piece: Frame"
    `);
  });

  it('[KIN-001] names bricks and suspension', () => {
    const bricks = { counts: { B: 3, C: 2 }, reason: 'none' };
    const scene = { ...hung({ bricks }), lineSet: motorSet, plan: null };
    expect(full('KIN-001', scene)).toMatchInlineSnapshot(`
      "KIN-001 stop at set 7
      measured none, limit none (trade formula)
      - bricks: 3 B, 2 C
      - suspension: motor"
    `);
  });

  it('[KIN-002] shows bare set, load and bricks', () => {
    // 10 + 9.80665 ( 100 − 3 · 10 − 2 · 5 ) = 598.399 N.
    expect(full('KIN-002', steel())).toMatchInlineSnapshot(`
      "KIN-002 caution at set 7, heightM 6.4
      measured 598.399 imbalance, limit none (trade formula)
      - height: 6.4 length
      Imbalance without the steel: U_0 + C − b / r
        U_0 = 10 imbalance: bare set at this height
        C = 100 mass: all that hangs
        b = 40 mass: show bricks on the arbor
        r = 1 count: batten travel over arbor travel
        U = 598.399 imbalance: imbalance without the steel
        by trade formula C15
        leaves out what the steel itself leaves in the lines"
    `);
  });

  it('[LOM-001] shows where the loom is shortest', () => {
    const cables = { length: given(metres(4)), fixedAt: given(metres(5)) };
    expect(full('LOM-001', loomed(cables))).toMatchInlineSnapshot(`
      "LOM-001 stop at set 7, item loom, heightM 10
      measured 5 length, limit 4 length (length of the loom, from the show)
      - piece: Loom
      - where: trim playing
      - height: 10 length"
    `);
  });

  it('[LOM-002] shows what lies on the deck', () => {
    expect(full('LOM-002', loomed({ fixedAt: given(metres(10)) }))).toMatchInlineSnapshot(`
      "LOM-002 note at set 7, item loom, heightM 1.2
      measured 8.8 length, limit none (trade formula)
      - piece: Loom
      - height: 1.2 length"
    `);
  });

  it('[COU-001] shows both ways to be coupled by halves', () => {
    const hang = { ...exampleHang, coupledWith: ['8', '9'] };
    const otherHangs = [{ ...exampleHang, set: '9' }];
    expect(full('COU-001', { hang, otherHangs })).toMatchInlineSnapshot(`
      "COU-001 stop at set 7
      measured none, limit none (trade formula)
      - hang: Frame
      - partner: 8
      - trouble: nothing hangs there

      COU-001 caution at set 7
      measured none, limit none (trade formula)
      - hang: Frame
      - partner: 9
      - trouble: the hang there does not name this set"
    `);
  });
});

describe('kinds of set and coupled sets', () => {
  it('[KIN-001] says hemp and dead-hung as words', () => {
    const on = (suspension: 'hemp' | 'deadHung') =>
      found('KIN-001', { lineSet: { ...motorSet, suspension }, plan: null })[0]?.facts[
        'suspension'
      ];
    expect([on('hemp'), on('deadHung')]).toEqual(['hemp', 'dead-hung']);
  });

  it('[KIN-001] says nothing of a motor set on which nothing hangs', () => {
    expect(found('KIN-001', { lineSet: motorSet, hang: null })).toEqual([]);
  });

  it('[COU-001] judges no empty set, and stops a coupled one without a show', () => {
    expect(found('COU-001', { hang: null })).toEqual([]);
    const hang = { ...exampleHang, coupledWith: ['8'] };
    const the = { show: null, set: assessmentOf({ hang }) } as unknown as AmongCase;
    expect(coupledAlone(the)).toMatchObject([{ level: 'stop' }]);
  });
});

describe('a set that steel holds', () => {
  it('[KIN-002] halves the bricks of a double purchase set', () => {
    // 10 + 9.80665 ( 100 − 40 / 2 ) = 794.532 N.
    const bare = reckoned({
      set: { ...balanceSet, purchase: 2 as const, items: [] },
      curve: curveOf(plainNodes),
    });
    const [finding] = found('KIN-002', { ...steel(), set: { bare } });
    expect(finding?.measured?.value).toBeCloseTo(794.532, 9);
  });

  it('[KIN-002] reads the bare set as it goes up from there, where its imbalance jumps', () => {
    // 30 + 9.80665 ( 100 − 3 · 10 − 2 · 5 ) = 618.399 N; under that height it would be 20 N less.
    const bare = reckoned({
      set: { ...balanceSet, items: [] },
      curve: curveOf([
        [1, 40],
        [6.4, 10, 30],
        [19, -60],
      ]),
    });
    const [finding] = found('KIN-002', { ...steel(), set: { bare } });
    expect(finding?.measured?.value).toBeCloseTo(618.399, 9);
  });

  it('[KIN-002] takes no show brick where nobody fixed any', () => {
    const [finding] = found('KIN-002', steel({ bricks: null }));
    expect(finding?.working?.terms[2]).toMatchObject({ symbol: 'b', value: { value: 0 } });
  });

  it('[KIN-002] says nothing of a set without an arbor, an empty set, or one on its lock', () => {
    expect(found('KIN-002', { ...steel(), lineSet: motorSet })).toEqual([]);
    expect(found('KIN-002', { hang: null })).toEqual([]);
    expect(found('KIN-002', { plan: null })).toEqual([]);
  });

  it('[KIN-002] leaves a mass that nobody knows to UNK-001', () => {
    const set = { hung: blocked(['mass of the lamp']) };
    expect(found('KIN-002', { ...steel(), set })).toEqual([]);
    const bare = { bare: blocked(['mass of the batten']) };
    expect(found('KIN-002', { ...steel(), set: bare })).toEqual([]);
  });

  it('[KIN-002] says nothing of a height that the curve does not reach', () => {
    expect(found('KIN-002', steel({ deadHungAt: given(metres(30)) }))).toEqual([]);
  });

  it('[UNK-001] misses the mass of a brick that is on, known to the house or not', () => {
    const scene = steel({ bricks: { counts: { Z: 2 }, reason: 'as is' } });
    expect(missed(scene)).toContain('mass of brick Z | ');
    expect(missed(scene)).toContain('imbalance if the steel lets go');
    expect(found('KIN-002', scene)).toEqual([]);
  });

  it('[UNK-001] misses what is not known of a loom that steel holds', () => {
    const items = [{ ...exampleLoom, takeoff: exampleItem.takeoff }];
    const scene = steel({ items });
    expect(found('KIN-002', scene)).toEqual([]);
    expect(missed(scene)).toContain('length and mass per length of Loom');
  });
});

describe('looms of which something is not known', () => {
  it('[UNK-001] names each value of a loop, and judges it by none', () => {
    expect(missed(loomed({ length: nobodyKnows, massPerLength: nobodyKnows }))).toBe(
      'mass per length of Loom; length of Loom | loom of the set',
    );
    expect(missed(loomed({ fixedAt: nobodyKnows }))).toBe(
      'height of the far end of Loom | loom of the set',
    );
    expect(found('LOM-001', loomed({ fixedAt: nobodyKnows, length: given(metres(1)) }))).toEqual(
      [],
    );
    const heavy = { massPerLength: nobodyKnows, length: given(metres(1)) };
    expect(found('LOM-001', loomed(heavy))).toEqual([]);
  });

  it('[LOM-001] asks no far end of a loom that only drops to the deck', () => {
    const drop = { fixedAt: nobodyKnows, length: given(metres(9)) };
    expect(missed(loomed(drop, 'deckLoom'))).toBe('');
    expect(found('LOM-001', loomed(drop, 'deckLoom'))).toHaveLength(1);
  });

  it('[LOM-001] does not go by the far end of a loom that only drops to the deck', () => {
    // Fixed at 10 m it would just reach; dropping, 10 m of batten height need 10 m.
    const drop = { fixedAt: given(metres(10)), length: given(metres(9)) };
    expect(found('LOM-001', loomed(drop, 'deckLoom'))).toMatchObject([{ measured: { value: 10 } }]);
  });

  it('[UNK-001] misses a loom whose masses were given as those of something else', () => {
    const scene = hung({ items: [{ ...exampleLoom, takeoff: exampleItem.takeoff }] });
    expect(missed(scene)).toBe('length and mass per length of Loom | loom of the set');
  });

  it('[LOM-001] [LOM-002] judge nothing where nothing hangs', () => {
    expect(found('LOM-001', { hang: null })).toEqual([]);
    expect(found('LOM-002', { hang: null })).toEqual([]);
  });

  it('[LOM-001] goes by the trims alone where the working height is not known', () => {
    const lineSet = { ...exampleSet, workingHeight: nobodyKnows };
    // From 10 m down to 1.2 m it would need 8.8 m; at the trim of 10 m it needs nothing.
    const scene = { ...loomed({ length: given(metres(1)) }), lineSet };
    expect(found('LOM-001', scene)).toEqual([]);
    expect(found('LOM-002', scene)).toEqual([]);
  });

  it('[LOM-001] judges nothing where no height is known at which the batten rests', () => {
    const { hang } = loomed({ length: given(metres(1)) });
    const lineSet = { ...exampleSet, workingHeight: nobodyKnows };
    const scene = { hang: { ...exampleHang, ...hang, trims: [] }, plan: null, lineSet };
    expect(found('LOM-001', scene)).toEqual([]);
  });

  it('[LOM-001] keeps the first of two places that ask the same', () => {
    const trims = [
      { name: 'high', height: given(metres(10)), reference: 'batten' as const },
      { name: 'low', height: given(metres(2)), reference: 'batten' as const },
    ];
    const { hang } = loomed({ length: given(metres(3)), fixedAt: given(metres(6)) });
    const scene = { hang: { ...exampleHang, ...hang, trims }, plan: null };
    expect(found('LOM-001', scene)).toMatchObject([
      { measured: { value: 4.8 }, facts: { where: 'working height' } },
    ]);
  });

  it('[LOM-002] weighs a loom of any mass by its length alone', () => {
    const light = loomed({ massPerLength: given(kilogramsPerMetre(0.1)) });
    expect(found('LOM-002', light)).toMatchObject([{ measured: { value: 8.8 } }]);
  });
});
