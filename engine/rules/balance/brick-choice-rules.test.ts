import { describe, expect, it } from 'vitest';
import { reckoned } from '#findings';
import { GRAVITY, kilograms, metres, newtons } from '#quantities';
import type { SetState } from '#state';
import {
  balanceSet,
  choiceOf,
  curveOf,
  exampleStack,
  extremes,
  found,
  noChoice,
  type Scene,
} from '../example-assessment.ts';
import {
  doubleSet,
  exampleHang,
  exampleItem,
  exampleLoom,
  exampleRecord,
} from '../example-house.ts';

describe('the choice of bricks', () => {
  // Half of what the smallest brick of 5 kg shifts is 24.5 N; the program's choice leaves 30 N.
  const person = (worstN: number): Scene => ({
    set: { choice: reckoned(choiceOf(30)) },
    plan: {
      curve: curveOf([
        [1, 0],
        [5, worstN],
        [10, 0],
        [19, 0],
      ]),
    },
  });

  it('[BAL-005] takes a person’s bricks within half the smallest brick of the program’s', () => {
    expect(found('BAL-005', person(54.5))).toEqual([]);
    expect(found('BAL-005', person(-54.5))).toEqual([]);
  });

  it('[BAL-005] notes what is worse, with the reason that the person gave', () => {
    expect(found('BAL-005', person(-54.6))).toMatchObject([
      {
        level: 'note',
        measured: { value: 54.6, kind: 'force' },
        limit: { value: 54.5 },
        facts: { bricks: '10 B', best: '10 B', least: { value: 30 }, reason: 'as weighed' },
      },
    ]);
  });

  it('[BAL-005] counts what a release leaves', () => {
    const after = [
      {
        how: 'it falls',
        set: balanceSet,
        curve: curveOf([
          [1, -60],
          [19, -60],
        ]),
      },
    ];
    const scene = person(0);
    expect(found('BAL-005', { ...scene, plan: { ...scene.plan, after } })).toHaveLength(1);
  });

  it('[BAL-005] has nothing to say of the program’s own choice', () => {
    const stack = { ...exampleStack, chosenBy: 'program' as const };
    const scene = person(500);
    expect(found('BAL-005', { ...scene, plan: { ...scene.plan, stack } })).toEqual([]);
  });

  it('[BAL-006] takes a least worst of 200 N and cautions past it', () => {
    const least = (leastN: number) => ({ set: { choice: reckoned(choiceOf(leastN + 9, leastN)) } });
    expect(found('BAL-006', least(200))).toEqual([]);
    expect(found('BAL-006', least(200.1))).toMatchObject([
      { level: 'caution', limit: { value: 200 }, facts: { best: '9 B, 2 C' } },
    ]);
  });

  it('[BAL-006] cautions where no mix exists at all, also without a plan', () => {
    const reason = 'No arbor mass lies inside all the holds.';
    const choice = reckoned(noChoice('holdsTooWeak', reason));
    expect(found('BAL-006', { plan: null, set: { choice } })).toMatchObject([
      { measured: null, facts: { why: reason, least: 'none' } },
    ]);
  });

  it('[UNK-001] says that a search gave up, and not that there is no mix', () => {
    const choice = reckoned(noChoice('notFound', 'None found in 7 states: stop and ask.'));
    expect(found('BAL-006', { set: { choice } })).toEqual([]);
    expect(found('UNK-001', { set: { choice } })[0]?.facts['what']).toBe(
      'a mix of bricks (None found in 7 states: stop and ask.)',
    );
  });
});

describe('bricks on double purchase', () => {
  // 240 kg of show bricks balance 120 kg. U in the middle is what the missing ones leave.
  const double = (showKg: number, missingKg: number): Scene => {
    const middleN = (GRAVITY * missingKg) / 2;
    return {
      lineSet: doubleSet,
      plan: {
        set: { ...balanceSet, purchase: 2 },
        stack: { ...exampleStack, showMass: kilograms(showKg) },
        freeExtremes: extremes(middleN - 30, middleN + 30),
      },
    };
  };

  it('[BAL-010] cautions where bricks were counted one for one', () => {
    const [finding] = found('BAL-010', double(120, 120));
    expect(finding).toMatchObject({ level: 'caution', measured: { value: 120 } });
    expect(finding?.limit?.value).toBeCloseTo(240, 9);
  });

  it('[BAL-010] allows half a brick of the largest kind, 10 kg, either way', () => {
    // Half of 240 kg is 120 kg: 125 kg is counted one for one, 125.1 kg is something else.
    expect(found('BAL-010', double(125, 115))).toHaveLength(1);
    expect(found('BAL-010', double(125.1, 114.9))).toEqual([]);
    expect(found('BAL-010', double(114.9, 125.1))).toEqual([]);
  });

  it('[BAL-010] is quiet where no more than one brick is missing, and on single purchase', () => {
    expect(found('BAL-010', double(10, 10))).toEqual([]);
    expect(found('BAL-010', double(10.1, 10.1))).toHaveLength(1);
    const single = double(120, 120);
    expect(found('BAL-010', { plan: { ...single.plan, set: balanceSet } })).toEqual([]);
  });

  it('[BAL-010] is quiet where the set balances', () => {
    expect(found('BAL-010', double(240, 0))).toEqual([]);
  });
});

describe('pull test against the list', () => {
  // By the list −10 N at the trim of 10 m, with 20 N of tolerance.
  const pulled = (measuredN: number, changes: Partial<SetState> = {}): Scene => ({
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
    recorded: { pull: reckoned({ imbalance: newtons(measuredN), friction: newtons(30) }) },
  });

  it('[BAL-011] takes a difference of the whole tolerance', () => {
    expect(found('BAL-011', pulled(10))).toEqual([]);
    expect(found('BAL-011', pulled(-30))).toEqual([]);
  });

  it('[BAL-011] cautions past it and suggests the mass that would explain it', () => {
    const [finding] = found('BAL-011', pulled(-10 + 10 * GRAVITY));
    expect(finding).toMatchObject({
      level: 'caution',
      at: { heightM: 10 },
      limit: { value: 20, kind: 'force' },
      facts: { suspect: 'Frame', was: { value: 100 } },
    });
    // 10 kg more at the batten: the frame of 100 kg has 110.
    expect(finding?.facts['suggested']).toEqual({
      kind: 'mass',
      value: expect.closeTo(110, 9),
    });
  });

  it('[BAL-011] takes the list with the bricks that were on the arbor', () => {
    // One brick of 10 kg fewer than planned leaves the list 98.1 N more batten heavy.
    const scene = pulled(-10 + 10 * GRAVITY);
    const recorded = { ...scene.recorded, arborMass: reckoned(kilograms(140)) };
    expect(found('BAL-011', { ...scene, recorded })).toEqual([]);
  });

  it('[BAL-011] halves the bricks that were off on double purchase', () => {
    // Ten kilograms fewer than planned on the arbor are five at the batten.
    const plan = { set: { ...balanceSet, purchase: 2 as const } };
    const arborMass = reckoned(kilograms(140));
    const scene = pulled(-10 + 5 * GRAVITY);
    const recorded = { ...scene.recorded, arborMass };
    expect(found('BAL-011', { ...scene, recorded, plan })).toEqual([]);
    expect(found('BAL-011', { ...scene, recorded })).toHaveLength(1);
  });

  it('[BAL-011] names all that hangs where it is more than one item, loom aside', () => {
    const other = { ...exampleItem, id: 'other', name: 'Other' };
    const scene = (items: readonly (typeof exampleItem)[]): Scene => ({
      ...pulled(200, { items: items.map(({ id }) => ({ item: id, phase: 'flying' })) }),
      hang: { ...exampleHang, items },
    });
    expect(found('BAL-011', scene([exampleItem, other]))[0]?.facts['suspect']).toBe(
      'all that hangs, without loom',
    );
    expect(found('BAL-011', scene([exampleItem, exampleLoom]))[0]?.facts['suspect']).toBe('Frame');
  });

  it('[BAL-011] suggests no mass for what lay on the deck', () => {
    const scene = pulled(200);
    const plan = { liftOff: metres(10.1) };
    expect(found('BAL-011', { ...scene, plan })[0]?.facts['suspect']).toBe('what lies on the deck');
    const free = { liftOff: metres(10) };
    expect(found('BAL-011', { ...scene, plan: free })[0]?.facts['suspect']).toBe('Frame');
  });

  it('[BAL-004] takes a pull test with the planned bricks on in place of the tolerances', () => {
    // −150 N by the list; 60 N of tolerance would pass the lock, 50 N found by pull does not.
    const curve = curveOf([
      [1, -150, -150, 60],
      [19, -150, -150, 60],
    ]);
    const plan = { curve };
    expect(found('BAL-004', { plan })).toHaveLength(1);
    expect(found('BAL-004', { ...pulled(-200), plan })).toEqual([]);
    expect(found('BAL-004', { ...pulled(-201), plan })).toHaveLength(1);
    const scene = pulled(-200);
    const recorded = { ...scene.recorded, arborMass: reckoned(kilograms(151)) };
    expect(found('BAL-004', { ...scene, recorded, plan })).toHaveLength(1);
    const onDeck = { ...plan, liftOff: metres(11) };
    expect(found('BAL-004', { ...pulled(-200), plan: onDeck })).toHaveLength(1);
  });

  it('[UNK-001] misses what hung and what was on the arbor at the test', () => {
    const whatIs = (scene: Scene) => found('UNK-001', scene)[0]?.facts['what'];
    expect(whatIs(pulled(200, { items: null }))).toBe('what hung at the pull test, as recorded');
    expect(whatIs(pulled(200, { stack: null }))).toBe('the stack at the pull test, as counted');
  });
});
