import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { GRAVITY, kilograms, metres, newtons } from '#quantities';
import type { SetState } from '#state';
import {
  balanceSet,
  choiceOf,
  curveOf,
  exampleStack,
  extremes,
  found,
  type Node,
  noChoice,
  type Scene,
  trimOf,
} from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  brickB,
  brickC,
  doubleSet,
  exampleHang,
  exampleItem,
  exampleLoom,
  exampleRecord,
  given,
  nobodyKnows,
  playingTrim,
} from '../example-house.ts';

const along = (...nodes: readonly Node[]): Scene => ({ plan: { curve: curveOf(nodes) } });

const pulled = (
  measuredN: number,
  changes: Partial<SetState> = {},
  recorded: Scene['recorded'] = {},
): Scene => ({
  record: {
    ...exampleRecord,
    pullTest: {
      out: newtons(1),
      in: newtons(1),
      height: metres(10),
      at: '2026-11-25T12:00:00Z',
      by: 'rail operator',
    },
    ...changes,
  },
  recorded: {
    pull: reckoned({ imbalance: newtons(measuredN), friction: newtons(30) }),
    ...recorded,
  },
});

const double = (showKg: number, missingKg: number, house: Scene['house'] = {}): Scene => {
  const middleN = (GRAVITY * missingKg) / 2;
  return {
    house,
    lineSet: doubleSet,
    plan: {
      set: { ...balanceSet, purchase: 2 },
      stack: { ...exampleStack, showMass: kilograms(showKg) },
      freeExtremes: extremes(middleN - 30, middleN + 30),
    },
  };
};

describe('choice and proof of balance, in full', () => {
  it('[BAL-005] shows both mixes', () => {
    const scene = along([1, 0], [5, 90], [10, 0], [19, 0]);
    expect(
      full('BAL-005', { ...scene, set: { choice: reckoned(choiceOf(30)) } }),
    ).toMatchInlineSnapshot(`
      "BAL-005 note at set 7
      measured 90 force, limit 54.5 force (the program’s choice, and half of what the
          smallest brick shifts)
      - bricks: 10 B
      - best: 10 B
      - least: 30 force
      - reason: as weighed"
    `);
  });

  it('[BAL-006] shows the mix that leaves least, or that there is none', () => {
    const some = { set: { choice: reckoned(choiceOf(260, 250)) } };
    expect(full('BAL-006', some)).toMatchInlineSnapshot(`
      "BAL-006 caution at set 7
      measured 250 force, limit 200 force (house rule, example)
      - why: Its imbalance changes too much over the travel.
      - least: 250 force
      - best: 9 B, 2 C"
    `);
    const none = { set: { choice: reckoned(noChoice('holdsTooWeak', 'The holds are too weak.')) } };
    expect(full('BAL-006', none)).toMatchInlineSnapshot(`
      "BAL-006 caution at set 7
      measured none, limit 200 force (house rule, example)
      - why: The holds are too weak.
      - least: none
      - best: no mix is within the limits"
    `);
  });

  it('[BAL-008] shows the free travel', () => {
    expect(full('BAL-008', along([1.2, 40], [10, -60]))).toMatchInlineSnapshot(`
      "BAL-008 note at set 7
      measured 100 force, limit none (trade formula)
      - from: 1.2 length
      - to: 10 length"
    `);
  });

  it('[BAL-009] shows whether friction was measured', () => {
    const plan = {
      trims: [trimOf(playingTrim, [10, -50])],
      friction: reckoned({ force: newtons(60), measured: true }),
    };
    expect(full('BAL-009', { plan })).toMatchInlineSnapshot(`
      "BAL-009 note at set 7, heightM 10
      measured 60 force, limit none (trade formula)
      - basis: from a pull test
      - trim: playing
      - height: 10 length
      - imbalance: -50 imbalance"
    `);
  });

  it('[BAL-010] shows bricks, purchase and imbalance', () => {
    // 9.80665 · 120 / 2 = 588.399 N in the middle; 120 + 2 · 588.399 / 9.80665 = 240 kg.
    expect(full('BAL-010', double(120, 120))).toMatchInlineSnapshot(`
      "BAL-010 caution at set 7
      measured 120 mass, limit 240 mass (balance in the middle of the free travel)
      Show bricks that would balance: b + r · U / g
        b = 120 mass: show bricks as planned
        r = 2 count: batten travel over arbor travel
        U = 588.399 imbalance: imbalance in the middle of the free travel
        wanted = 240 mass: show bricks that would balance
        by trade formula C29"
    `);
  });

  it('[BAL-011] shows pull, list and what would explain the difference', () => {
    expect(full('BAL-011', pulled(-10 + 10 * GRAVITY))).toMatchInlineSnapshot(`
      "BAL-011 caution at set 7, heightM 10
      measured 88.0665 imbalance, limit 20 force (tolerances of all masses of the set,
          linear)
      - height: 10 length
      - listed: -10 imbalance
      - difference: 98.0665 force
      - suspect: Frame
      - suggested: 110 mass
      - was: 100 mass
      Pull test against the list: |U_p − U|
        U_p = 88.0665 imbalance: imbalance by pull test
        U = -10 imbalance: imbalance by the list
        difference = 98.0665 force: difference
        limit 20 force (tolerances, linear)
        by trade formula C25
        leaves out friction that differs with direction: half the difference goes into U"
    `);
    const onDeck = { plan: { liftOff: metres(10.1) } };
    expect(full('BAL-011', { ...pulled(90), ...onDeck })).toContain(
      '- suspect: what lies on the deck\n- suggested: what no pull can tell',
    );
  });
});

describe('mixes', () => {
  it('[BAL-005] says so where the program would put on no show brick', () => {
    const choice = choiceOf(30);
    const none = 'chosen' in choice ? { ...choice.chosen, counts: { B: 0 } } : null;
    const scene = along([1, 0], [5, 90], [10, 0], [19, 0]);
    const set = { choice: reckoned({ ...choice, chosen: none }) } as Scene['set'];
    expect(found('BAL-005', { ...scene, set: set ?? {} })).toMatchObject([
      { facts: { best: 'no show bricks' } },
    ]);
  });

  it('[BAL-005] judges nothing without a curve, or without the program’s choice', () => {
    expect(found('BAL-005', along())).toEqual([]);
    const set = { choice: blocked(['mass of the lamp']) };
    expect(found('BAL-005', { ...along([1, 500], [19, 500]), set })).toEqual([]);
    const reason = 'The holds are too weak.';
    const none = { choice: reckoned(noChoice('holdsTooWeak', reason)) };
    expect(found('BAL-005', { ...along([1, 500], [19, 500]), set: none })).toEqual([]);
  });

  it('[BAL-006] judges nothing where the choice could not be asked for', () => {
    expect(found('BAL-006', { set: { choice: blocked(['mass of the lamp']) } })).toEqual([]);
  });

  it('[UNK-001] says what a search that gave up leaves open', () => {
    const choice = reckoned(noChoice('notFound', 'None found in 7 states.'));
    expect(missed({ set: { choice } })).toBe(
      'a mix of bricks (None found in 7 states.) | whether any mix of bricks keeps within the lock',
    );
  });
});

describe('a set that runs away', () => {
  it('[BAL-008] is quiet on a free travel of one height, and on one off the curve', () => {
    const at = (fromM: number, toM: number): Scene => ({
      plan: { freeRange: { from: metres(fromM), to: metres(toM) } },
    });
    expect(found('BAL-008', at(5, 5))).toEqual([]);
    expect(found('BAL-008', at(0.5, 10))).toEqual([]);
    expect(found('BAL-008', at(5, 25))).toEqual([]);
    expect(found('BAL-008', at(0.5, 25))).toEqual([]);
    expect(found('BAL-008', along())).toEqual([]);
  });

  it('[BAL-008] counts a piece that leaves the deck as the free travel begins or ends', () => {
    const ends = (...nodes: readonly Node[]) => found('BAL-008', along(...nodes));
    // What happens under 1.2 m or over 10 m is not on the free travel.
    expect(ends([1, 0], [1.2, -500, 40], [10, -60, 300], [19, 400])).toMatchObject([
      { measured: { value: 100 } },
    ]);
    expect(ends([1, 0], [1.2, 40, -100], [10, -60], [19, -70])).toEqual([]);
    expect(ends([1, 40], [10, -60], [19, 0])).toHaveLength(1);
  });

  it('[BAL-008] is quiet where a stretch of the way is level', () => {
    expect(found('BAL-008', along([1, 40], [4, 10], [6, 10], [19, -60]))).toEqual([]);
  });

  it('[BAL-008] takes two nodes of one height for one', () => {
    const scene = along([1, 40], [5, 10], [5 + 5e-7, 10], [19, -60]);
    expect(found('BAL-008', scene)).toHaveLength(1);
  });
});

describe('friction', () => {
  it('[BAL-009] takes the trim at which it hides most', () => {
    const trims = [
      trimOf({ ...playingTrim, name: 'low' }, [5, 20]),
      trimOf({ ...playingTrim, name: 'high' }, [10, -50]),
      trimOf({ ...playingTrim, name: 'past' }, [12, 61]),
    ];
    const friction = reckoned({ force: newtons(60), measured: true });
    expect(found('BAL-009', { plan: { trims, friction } })).toMatchObject([
      { facts: { trim: 'high' } },
    ]);
    expect(found('BAL-009', { plan: { trims: trims.toReversed(), friction } })).toMatchObject([
      { facts: { trim: 'high' } },
    ]);
  });
});

describe('bricks counted as for single purchase', () => {
  it('[BAL-010] goes by the largest brick that serves the show', () => {
    const big = { ...brickB, id: 'P', mass: given(kilograms(40)) };
    const pipeOnly = { ...big, serves: { pipeWeight: true, show: false } };
    // 130 of 240 kg are within half of 40 kg, and not within half of 10 kg.
    expect(found('BAL-010', double(130, 110, { brickKinds: [brickB, big] }))).toHaveLength(1);
    expect(found('BAL-010', double(130, 110, { brickKinds: [brickB, pipeOnly] }))).toEqual([]);
    const unknown = { ...big, mass: nobodyKnows };
    expect(found('BAL-010', double(130, 110, { brickKinds: [brickB, unknown] }))).toEqual([]);
    expect(found('BAL-010', double(120, 120, { brickKinds: [unknown, brickC] }))).toHaveLength(1);
  });

  it('[BAL-010] judges nothing without a brick of known mass', () => {
    const brickKinds = [{ ...brickB, mass: nobodyKnows }];
    expect(found('BAL-010', double(120, 120, { brickKinds }))).toEqual([]);
    expect(found('BAL-010', double(120, 120, { brickKinds: [] }))).toEqual([]);
  });

  it('[BAL-010] says nothing of a single purchase set with half of its bricks on', () => {
    const middleN = GRAVITY * 120;
    const plan = {
      stack: { ...exampleStack, showMass: kilograms(120) },
      freeExtremes: extremes(middleN - 30, middleN + 30),
    };
    expect(found('BAL-010', { plan })).toEqual([]);
  });
});

describe('pull test against the list, with what was recorded', () => {
  const up = (...items: NonNullable<SetState['items']>): Scene => pulled(200, { items });

  it('[BAL-011] takes a piece that rests attached as one that hangs', () => {
    expect(found('BAL-011', up({ item: 'frame', phase: 'attachedResting' }))).toHaveLength(1);
  });

  it('[UNK-001] misses what hung where only a part of the hang was up', () => {
    const notUp = 'what hung at the pull test, as recorded | pull test against the list';
    expect(missed(up({ item: 'frame', phase: 'beside' }))).toBe(notUp);
    expect(found('BAL-011', up({ item: 'frame', phase: 'beside' }))).toEqual([]);
    const other = { ...exampleItem, id: 'other', name: 'Other' };
    const hang = { ...exampleHang, items: [exampleItem, other] };
    expect(missed({ ...up({ item: 'frame', phase: 'flying' }), hang })).toBe(notUp);
    expect(missed(pulled(200, { items: null }))).toBe(notUp);
  });

  it('[BAL-011] judges nothing without a pull, or without its imbalance', () => {
    expect(found('BAL-011', pulled(200, { pullTest: null }))).toEqual([]);
    expect(found('BAL-011', pulled(200, {}, { pull: null }))).toEqual([]);
    expect(found('BAL-011', pulled(200, {}, { pull: blocked(['pull in']) }))).toEqual([]);
    expect(missed(pulled(200, {}, { pull: null }))).toBe('');
    expect(missed(pulled(200, { pullTest: null, items: null }))).toBe('');
  });

  it('[BAL-011] judges nothing at a height off the curve', () => {
    const { pullTest } = pulled(200).record ?? {};
    const at =
      pullTest === undefined || pullTest === null ? null : { ...pullTest, height: metres(25) };
    expect(found('BAL-011', pulled(200, { pullTest: at }))).toEqual([]);
  });

  it('[BAL-011] reads the list with the piece in the air', () => {
    const curve = curveOf([
      [1, 0],
      [10, -1400, 190],
      [19, 0],
    ]);
    const plan = { curve, liftOff: metres(10) };
    expect(found('BAL-011', { ...pulled(200), plan })).toEqual([]);
  });

  it('[BAL-011] suggests a mass above lift-off, and none where none is listed', () => {
    const plan = { liftOff: metres(9) };
    expect(found('BAL-011', { ...pulled(200), plan })[0]?.facts['suspect']).toBe('Frame');
    const set = { hung: blocked(['mass of the lamp']) };
    expect(found('BAL-011', { ...pulled(200), set })[0]?.facts['suspect']).toBe(
      'what lies on the deck',
    );
  });

  it('[BAL-011] leaves a loom that lies on the deck aside as well', () => {
    const deckLoom = { ...exampleLoom, kind: 'deckLoom' as const };
    const items = [exampleItem, deckLoom];
    const scene = up({ item: 'frame', phase: 'flying' }, { item: 'loom', phase: 'flying' });
    const [finding] = found('BAL-011', { ...scene, hang: { ...exampleHang, items } });
    expect(finding?.facts['suspect']).toBe('Frame');
  });

  it('[BAL-004] keeps the tolerances where no pull test speaks for the planned bricks', () => {
    const curve = curveOf([
      [1, -150, -150, 60],
      [19, -150, -150, 60],
    ]);
    const judged = (scene: Scene) => found('BAL-004', { ...scene, plan: { curve } }).length;
    expect(judged(pulled(-160))).toBe(0);
    expect(judged(pulled(-160, { pullTest: null }))).toBe(1);
    expect(judged(pulled(-160, {}, { pull: null }))).toBe(1);
    expect(judged(pulled(-160, {}, { arborMass: blocked(['stack']) }))).toBe(1);
    expect(judged(pulled(-160, {}, { arborMass: reckoned(kilograms(149)) }))).toBe(1);
    expect(judged(pulled(-160, { items: [] }))).toBe(1);
  });
});
