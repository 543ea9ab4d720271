/** Every breach in full: its numbers by hand, where it lies, and what its sentence is told. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import {
  add,
  attach,
  BARE,
  bullLine,
  DROPS,
  fly,
  hungAt,
  RUN,
  release,
  remove,
  standingAt,
} from './example-order.ts';
import { told } from './example-told.ts';

const hung = { frame: 'flying' } as const;
const closed = [RUN, ...DROPS];

describe('what is not held at rest', () => {
  it('[ORD-001] before the first step', () => {
    // 40 − 10 · 4.1 − 200 = −201 N.
    expect(told('ORD-001', { start: standingAt(5.1, 2) })).toMatchInlineSnapshot(`
      "step -1 at 5.1 m, 1 N past it
      ORD-001 stop at set 7, heightM 5.1
      measured -201 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 5.1 length
      - what: the rope lock"
    `);
  });

  it('[ORD-002] with an item put on, and [ORD-005] with one taken off', () => {
    // 40 − 20 − 100 + 300 = 220 N; 40 − 300 = −260 N.
    const steps = [attach('frame')];
    expect(told('ORD-002', { start: standingAt(3, 1), steps })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 20 N past it
      ORD-002 stop at set 7, heightM 3, item frame
      measured 220 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock"
    `);
    const off = { start: standingAt(1, 3, { items: hung }), steps: [release('frame')] };
    expect(told('ORD-005', off)).toMatchInlineSnapshot(`
      "step 0 at 1 m, 60 N past it
      ORD-005 stop at set 7, heightM 1, item frame
      measured -260 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 1 length
      - what: the rope lock"
    `);
  });

  it('[ORD-003] with bricks put on, and [ORD-004] with bricks taken off', () => {
    const start = { ...BARE, closed: DROPS };
    expect(told('ORD-003', { start, steps: [add(5)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, 60 N past it
      ORD-003 stop at set 7, heightM 1
      measured -260 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 1 length
      - what: the rope lock
      - plate: 3 count"
    `);
    const loaded = standingAt(3, 4, { items: hung });
    expect(told('ORD-004', { start: loaded, steps: [remove(3)] })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 20 N past it
      ORD-004 stop at set 7, heightM 3
      measured 220 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock
      - plate: 3 count"
    `);
  });

  it('[ORD-006] with a piece taken up', () => {
    const start = standingAt(1, 9, { items: { tower: 'attachedSlack' } });
    const steps = [{ act: 'takeUp', item: 'tower' }] as const;
    expect(told('ORD-006', { start, steps })).toMatchInlineSnapshot(`
      "step 0 at 1 m, 160 N past it
      ORD-006 stop at set 7, heightM 1, item tower
      measured -360 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 1 length
      - what: the rope lock"
    `);
  });
});

describe('a move, in full', () => {
  it('[ORD-007] unlocked past the lock', () => {
    expect(told('ORD-007', { start: hungAt(1, 1), steps: [fly(2)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, 40 N past it
      ORD-007 stop at set 7, heightM 1
      measured 240 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 1 length
      - what: the rope lock"
    `);
  });

  it('[ORD-008] past what holds on the way', () => {
    expect(told('ORD-008', { start: hungAt(2, 4), steps: [fly(17)] })).toMatchInlineSnapshot(`
      "step 0 at 17 m, 20 N past it
      ORD-008 stop at set 7, heightM 17
      measured -220 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 17 length
      - what: the rope lock
      - from: 2 length
      - to: 17 length
      - passes: 15 length"
    `);
  });

  it('[ORD-009] past what hands can do', () => {
    const plant = { more: { handsBriefN: 379 } };
    expect(told('ORD-009', { plant, start: hungAt(8, 6), steps: [fly(2)] })).toMatchInlineSnapshot(`
      "step 0 at 8 m, 1 N past it
      ORD-009 stop at set 7, heightM 8
      measured -330 imbalance, limit 379 force (trade formula; pull of a person by house
          rule)
      - height: 8 length
      - what: hands on the hand line
      - from: 8 length
      - to: 2 length
      - passes: 8 length
      - friction: 50 force"
    `);
  });

  it('[ORD-010] where a piece lands', () => {
    const start = standingAt(10, 5, { items: { tower: 'flying' }, closed });
    expect(told('ORD-010', { start, steps: [fly(5.9)] })).toMatchInlineSnapshot(`
      "step 0 at 6 m, 310 N past it
      ORD-010 stop at set 7, heightM 6
      measured -510 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 6 length
      - what: the rope lock
      - from: 10 length
      - to: 5.9 length
      - passes: 6 length"
    `);
  });

  it('[ORD-011] of what is tied, and [ORD-012] through an open zone', () => {
    const restraints = [bullLine({ kind: 'arborSling', from: metres(3), to: metres(3) })];
    expect(
      told('ORD-011', { start: hungAt(3, 3, { restraints }), steps: [fly(4)] }),
    ).toMatchInlineSnapshot(`
        "step 0 at 3 m, no limit in newtons
        ORD-011 stop at set 7, heightM 3
        measured none, limit none (common practice, no source)
        - height: 3 length
        - what: the sling on the arbor"
      `);
    const open = hungAt(3, 3, { closed: DROPS });
    expect(told('ORD-012', { start: open, steps: [fly(4)] })).toMatchInlineSnapshot(`
      "step 0 at 3 m, no limit in newtons
      ORD-012 stop at set 7, heightM 3
      measured none, limit none (common practice, no source)
      - height: 3 length"
    `);
  });
});

describe('bricks, in full', () => {
  it('[ORD-013] over people, and [ORD-036] under a zone above', () => {
    const start = standingAt(1, 0, { closed: [RUN] });
    expect(told('ORD-013', { start, steps: [add(1)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-013 stop at set 7, heightM 1, gallery upper
      measured none, limit none (common practice, no source)
      - height: 1 length
      - gallery: Upper gallery"
    `);
    const below = standingAt(9, 0, {
      closed: [{ zone: 'drop', gallery: 'mid' }, ...DROPS],
      items: { lamp: 'flying' },
    });
    expect(told('ORD-036', { start: below, steps: [add(1, 'B', 'mid')] })).toMatchInlineSnapshot(`
      "step 0 at 9 m, no limit in newtons
      ORD-036 caution at set 7, heightM 9, gallery mid
      measured none, limit none (common practice, no source)
      - height: 9 length
      - gallery: Mid gallery
      - upper: Upper gallery"
    `);
  });

  it('[ORD-014] out of reach', () => {
    const gallery = { id: 'upper', name: 'Upper gallery', floorM: 18, stock: { B: 20 } };
    const galleries = [{ ...gallery, reachFromM: 19, reachToM: 19.53 }];
    const trial = { plant: { more: { galleries } }, start: standingAt(1, 0), steps: [add(2)] };
    expect(told('ORD-014', trial)).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-014 stop at set 7, heightM 1, gallery upper
      measured 19.56 length, limit none (trade formula; reach by house rule)
      - height: 1 length
      - plate: 2 count
      - gallery: Upper gallery
      - lower: 19 length
      - upper: 19.53 length"
    `);
  });

  it('[ORD-015] more than there are, [ORD-016] higher than the rods, [ORD-017] pipe weight', () => {
    const items = { motor: 'flying' } as const;
    const mid = standingAt(9, 0, { items, closed: [{ zone: 'drop', gallery: 'mid' }] });
    expect(told('ORD-015', { start: mid, steps: [add(1, 'C', 'mid')] })).toMatchInlineSnapshot(`
      "step 0 at 9 m, no limit in newtons
      ORD-015 stop at set 7, heightM 9, gallery mid
      measured 1 count, limit 0 count (house rule)
      - height: 9 length
      - kind: C
      - gallery: Mid gallery"
    `);
    const rods = { plant: { more: { rodM: 0.09 } }, start: standingAt(1, 0, { items }) };
    expect(told('ORD-016', { ...rods, steps: [add(3)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-016 stop at set 7, heightM 1
      measured 0.12 length, limit 0.09 length (house rule)
      - height: 1 length
      - plate: 3 count"
    `);
    const pipe = { start: standingAt(1, 1), steps: [remove(2)] };
    expect(told('ORD-017', pipe)).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-017 stop at set 7, heightM 1
      measured none, limit none (common practice, no source)
      - height: 1 length
      - plate: 2 count"
    `);
  });
});
