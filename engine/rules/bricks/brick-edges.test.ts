import { describe, expect, it } from 'vitest';
import { kilograms } from '#quantities';
import { exampleStack, found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  brickB,
  brickC,
  exampleArbor,
  exampleHang,
  exampleHouse,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
  weighed,
} from '../example-house.ts';

const [upper] = exampleHouse.galleries;

const kinds = (...brickKinds: readonly (typeof brickB)[]): Scene => ({ house: { brickKinds } });

const stocked = (galleries: Readonly<Record<string, Readonly<Record<string, number>>>>): Scene => ({
  galleries: Object.fromEntries(
    Object.entries(galleries).map(([id, stock]) => [
      id,
      { stock, reserved: [], countedAt: null, countedBy: null },
    ]),
  ),
});

/** Nothing hangs and no arbor has pipe weight: no brick is in use but what lies loose. */
const idle = {
  hang: null,
  lineSet: { ...exampleSet, arbor: { ...exampleArbor, pipeWeight: [] } },
};

const alike = kinds(brickB, {
  ...brickC,
  mass: weighed(kilograms(9), 0.1),
  looksLike: ['B'],
});

describe('bricks, in full', () => {
  it('[BRK-001] shows show bricks and pipe weight', () => {
    expect(full('BRK-001', kinds({ ...brickB, owned: given(9) }))).toMatchInlineSnapshot(`
      "BRK-001 stop at brickKind B
      measured 11 count, limit 9 count (house rule, example)
      - kind: B
      Bricks of one kind: s + p
        s = 10 count: show bricks on all arbors
        p = 1 count: pipe weight on all arbors
        bricks = 11 count: bricks on all arbors
        limit 9 count (house rule, example)
        by trade formula C62"
    `);
  });

  it('[BRK-002] shows the kinds and how far they differ', () => {
    expect(
      full('BRK-002', { ...alike, ...stocked({ upper: { B: 1, C: 1 } }) }),
    ).toMatchInlineSnapshot(`
        "BRK-002 caution at brickKind B, gallery upper
        measured 1 mass, limit none (common practice, no source)
        - kind: B
        - other: C
        - where: both loose on the upper gallery"
      `);
    expect(full('BRK-002', { ...alike, ...stocked({ upper: { C: 1 } }) })).toMatchInlineSnapshot(`
      "BRK-002 caution at brickKind B
      measured 1 mass, limit none (common practice, no source)
      - kind: B
      - other: C
      - where: both in use in this house"
    `);
  });

  it('[BRK-003] shows the mass and who stands behind it', () => {
    const mass = given(kilograms(10), undefined, 'published');
    expect(full('BRK-003', kinds({ ...brickB, mass }))).toMatchInlineSnapshot(`
      "BRK-003 caution at brickKind B
      measured 10 mass, limit none (common practice, no source)
      - kind: B
      - basis: published, example
      - missing: , and has no tolerance"
    `);
  });
});

describe('bricks that are counted', () => {
  it('[BRK-001] adds up the runs of one kind, over all sets', () => {
    const pipeWeight = [
      { kind: 'B', count: 2 },
      { kind: 'C', count: 50 },
      { kind: 'B', count: 3 },
    ];
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, pipeWeight } };
    const scene = {
      lineSet,
      otherSets: [
        { ...lineSet, id: '8' },
        { ...motorSet, id: '9' },
      ],
    };
    // 2 · 5 of pipe weight and 10 of show bricks.
    expect(found('BRK-001', { ...scene, ...kinds({ ...brickB, owned: given(20) }) })).toEqual([]);
    expect(found('BRK-001', { ...scene, ...kinds({ ...brickB, owned: given(19) }) })).toMatchObject(
      [{ measured: { value: 20 }, limit: { value: 19 } }],
    );
  });

  it('[BRK-001] counts the plan where nobody fixed the bricks of that kind', () => {
    const hang = { ...exampleHang, bricks: { counts: { C: 1 }, reason: 'as is' } };
    const scene = { hang, ...kinds({ ...brickB, owned: given(10) }) };
    expect(found('BRK-001', scene)).toMatchObject([{ measured: { value: 11 } }]);
    const stack = { ...exampleStack, show: [{ kind: 'C', count: 1 }] };
    expect(found('BRK-001', { ...scene, plan: { stack } })).toEqual([]);
    expect(found('BRK-001', { ...scene, plan: null })).toEqual([]);
    const unfixed = { ...scene, hang: { ...exampleHang, bricks: null } };
    expect(found('BRK-001', unfixed)).toMatchObject([{ measured: { value: 11 } }]);
    const none = { ...exampleHang, bricks: { counts: { B: 0 }, reason: 'as is' } };
    expect(found('BRK-001', { ...scene, hang: none })).toEqual([]);
  });

  it('[UNK-001] asks for no stock of a kind that is not in use', () => {
    expect(missed({ ...idle, ...kinds({ ...brickB, owned: nobodyKnows }) })).toBe('');
  });

  it('[UNK-001] says what an uncounted pipe weight blocks, and asks none of a motor', () => {
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, pipeWeight: null } };
    expect(missed({ lineSet, hang: null })).toBe(
      'pipe weight of set 7 | bricks against what is owned',
    );
    expect(missed({ lineSet: motorSet, hang: null })).toBe('');
    const owned = kinds({ ...brickB, owned: nobodyKnows });
    expect(missed(owned)).toContain('bricks against what is owned');
  });
});

describe('bricks that look alike, where they lie', () => {
  it('[BRK-002] takes either kind’s word for it, and asks once', () => {
    const scene = stocked({ upper: { B: 1, C: 1 } });
    const first = kinds({ ...brickB, looksLike: ['C'] }, { ...brickC, looksLike: [] });
    expect(found('BRK-002', { ...first, ...scene })).toHaveLength(1);
    const both = kinds({ ...brickB, looksLike: ['C'] }, { ...brickC, looksLike: ['B'] });
    expect(found('BRK-002', { ...both, ...scene })).toHaveLength(1);
  });

  it('[BRK-002] asks nothing of a kind that is said to look like itself', () => {
    const self = kinds({ ...brickB, looksLike: ['B'] }, brickC);
    expect(found('BRK-002', { ...self, ...stocked({ upper: { B: 1, C: 1 } }) })).toEqual([]);
  });

  it('[BRK-002] names the gallery where both lie, and not one where one lies', () => {
    const galleries =
      upper === undefined ? [] : [{ ...upper, id: 'low', name: 'low gallery' }, upper];
    const house = { ...alike.house, galleries };
    const scene = { house, ...stocked({ upper: { B: 1, C: 1 }, low: { B: 5, C: 0 } }) };
    expect(found('BRK-002', scene)).toMatchObject([{ at: { gallery: 'upper' } }]);
    const other = { house, ...stocked({ low: { C: 5, B: 0 } }) };
    expect(found('BRK-002', other)[0]?.at).toEqual({ brickKind: 'B' });
  });

  it('[BRK-002] counts a kind on an arbor and a kind on a gallery as about', () => {
    expect(found('BRK-002', { ...alike, ...idle, ...stocked({ upper: { C: 1 } }) })).toEqual([]);
    expect(found('BRK-002', { ...alike, ...idle, ...stocked({ upper: { B: 1 } }) })).toEqual([]);
    const pipeWeight = [{ kind: 'C', count: 1 }];
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, pipeWeight } };
    expect(
      found('BRK-002', { ...alike, hang: null, lineSet, ...stocked({ upper: { B: 1 } }) }),
    ).toHaveLength(1);
    const show = { ...exampleHang, bricks: { counts: { B: 1, C: 1 }, reason: 'as is' } };
    expect(found('BRK-002', { ...alike, hang: show, lineSet: idle.lineSet })).toHaveLength(1);
  });

  it('[UNK-001] misses the mass of a kind that looks like another one', () => {
    const scene = stocked({ upper: { B: 1, C: 1 } });
    const one = kinds(brickB, { ...brickC, mass: nobodyKnows, looksLike: ['B'] });
    expect(missed({ ...one, ...scene })).toBe(
      'mass of brick C | bricks that look alike; all that lies on an arbor',
    );
    expect(found('BRK-002', { ...one, ...scene })).toEqual([]);
    const other = kinds({ ...brickB, mass: nobodyKnows }, { ...brickC, looksLike: ['B'] });
    expect(missed({ ...other, ...scene })).toContain(
      'mass of brick B | bricks that look alike; all that lies on an arbor',
    );
  });
});
