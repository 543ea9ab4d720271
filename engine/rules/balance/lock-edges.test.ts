import { describe, expect, it } from 'vitest';
import { reckoned } from '#findings';
import { metres } from '#quantities';
import type { Cue } from '#show';
import {
  balanceSet,
  curveOf,
  found,
  type Node,
  type Scene,
  trimOf,
} from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import { doubleSet, exampleHang, nobodyKnows, playingTrim } from '../example-house.ts';

const along = (...nodes: readonly Node[]): Scene => ({ plan: { curve: curveOf(nodes) } });

const cueTo = (toM: number, fromM = 10): Cue => ({
  number: '4',
  set: '7',
  from: metres(fromM),
  to: metres(toM),
  duration: null,
  releases: false,
});

const bare = (...nodes: readonly Node[]): Scene => ({
  hang: null,
  set: { bare: reckoned({ set: { ...balanceSet, items: [] }, curve: curveOf(nodes) }) },
});

const landing = (...nodes: readonly Node[]): Scene => ({
  plan: {
    curve: curveOf(nodes),
    liftOff: metres(5),
    freeRange: { from: metres(5), to: metres(10) },
  },
});

const released = (...nodes: readonly Node[]): Scene => ({
  plan: { after: [{ how: 'snow falls', set: balanceSet, curve: curveOf(nodes) }] },
});

describe('held by the lock, in full', () => {
  it('[BAL-001] shows the parts of the imbalance on single purchase', () => {
    // The lines: 5 · 0.16 ( 20.3 − 9 − 10 − 0.6 ) = 0.56 kg.
    const plan = { trims: [trimOf(playingTrim, [10, 300])] };
    expect(full('BAL-001', { plan })).toMatchInlineSnapshot(`
      "BAL-001 stop at set 7, heightM 10
      measured 300 imbalance, limit 200 force (house rule, example)
      - trim: playing
      - height: 10 length
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 130.031486 mass: what the items carry at this height
        W = 0.56 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = 300 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
  });

  it('[BAL-001] halves arbor and its way on double purchase', () => {
    // The arbor goes down half of 9 m: 5 · 0.16 ( 20.3 − 4.5 − 10 − 0.6 ) = 4.16 kg.
    const plan = {
      trims: [trimOf(playingTrim, [10, 300])],
      set: { ...balanceSet, purchase: 2 as const },
    };
    expect(full('BAL-001', { plan, lineSet: doubleSet })).toMatchInlineSnapshot(`
      "BAL-001 stop at set 7, heightM 10
      measured 300 imbalance, limit 200 force (house rule, example)
      - trim: playing
      - height: 10 length
      Imbalance: B + C + W − A / 2
        B = 50 mass: batten with its fittings
        C = 51.4314864 mass: what the items carry at this height
        W = 4.16 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = 300 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
  });

  it('[BAL-002] shows a cue, the way and the empty set', () => {
    const scene = along([1, 0], [5, 250], [10, 0], [19, 0]);
    expect(full('BAL-002', { ...scene, cues: [cueTo(5)] })).toMatchInlineSnapshot(`
      "BAL-002 stop at set 7, heightM 5
      measured 250 imbalance, limit 200 force (house rule, example)
      - height: 5 length
      - where: after cue 4
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 116.932905 mass: what the items carry at this height
        W = 8.56 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = 250 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
    expect(full('BAL-002', scene)).toMatchInlineSnapshot(`
      "BAL-002 caution at set 7, heightM 5
      measured 250 imbalance, limit 200 force (house rule, example)
      - height: 5 length
      - where: on the way
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 116.932905 mass: what the items carry at this height
        W = 8.56 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = 250 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
    expect(full('BAL-002', bare([1, 0], [5, -250], [19, 0]))).toMatchInlineSnapshot(`
      "BAL-002 caution at set 7, heightM 5
      measured -250 imbalance, limit 200 force (house rule, example)
      - height: 5 length
      - where: empty
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 65.9470947 mass: what the items carry at this height
        W = 8.56 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = -250 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
  });

  it('[BAL-003] shows where it passes and where it leaves the deck', () => {
    expect(full('BAL-003', landing([1, -300], [5, -100, 25], [19, -60]))).toMatchInlineSnapshot(`
      "BAL-003 caution at set 7, heightM 1
      measured -300 imbalance, limit 200 force (house rule, example)
      - height: 1 length
      - passes: 3 length
      - liftOff: 5 length
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 54.4485136 mass: what the items carry at this height
        W = 14.96 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = -300 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
  });

  it('[BAL-004] shows imbalance and tolerance', () => {
    const scene = along([1, 0, 0, 0], [5, -150, -150, 60], [19, 0, 0, 0]);
    expect(full('BAL-004', scene)).toMatchInlineSnapshot(`
      "BAL-004 caution at set 7, heightM 5
      measured -210 imbalance, limit 200 force (house rule, example)
      - height: 5 length
      - nominal: -150 imbalance
      - tolerance: 60 force
      Imbalance with every mass at its worst: |U| + Δ
        U = -150 imbalance: imbalance as listed
        Δ = 60 force: all tolerances together, as they act there
        worst = -210 imbalance: imbalance at its worst
        limit 200 force (house rule, example)
        by trade formula C86"
    `);
  });

  it('[BAL-007] shows what has left', () => {
    expect(full('BAL-007', released([1, 0], [10, -250], [19, 0]))).toMatchInlineSnapshot(`
      "BAL-007 stop at set 7, heightM 10
      measured -250 imbalance, limit 200 force (house rule, example)
      - how: snow falls
      - height: 10 length
      Imbalance: B + C + W − A
        B = 50 mass: batten with its fittings
        C = 73.9470947 mass: what the items carry at this height
        W = 0.56 mass: lift lines, n · w · (z_t − z_e)
        A = 150 mass: whole arbor
        U = -250 imbalance: imbalance at the batten
        limit 200 force (house rule, example)
        by trade formula C15
        leaves out friction, which hides imbalance and never makes any"
    `);
  });

  it('[UNK-001] says what a lock of unknown limit blocks', () => {
    expect(missed({ rules: { lockLimit: nobodyKnows } })).toBe(
      'limit of the rope lock (nobody looked) | imbalance against what the lock holds',
    );
  });
});

describe('held by the lock elsewhere, place by place', () => {
  it('[BAL-002] takes the worst of two places of rest', () => {
    const scene = along([1, 210], [1.2, 210], [5, 250], [10, 0], [19, 0]);
    expect(found('BAL-002', { ...scene, cues: [cueTo(5)] })).toMatchObject([
      { level: 'stop', measured: { value: 250 }, facts: { where: 'after cue 4' } },
    ]);
    const first = along([1, 260], [1.2, 260], [5, 250], [10, 0], [19, 0]);
    expect(found('BAL-002', { ...first, cues: [cueTo(5)] })).toMatchObject([
      { facts: { where: 'working height' } },
    ]);
  });

  it('[BAL-002] reads a place of rest with the piece in the air', () => {
    const scene = along([1, 0], [5, -250, 0], [10, 0], [19, 0]);
    expect(found('BAL-002', { ...scene, cues: [cueTo(5)] })).toMatchObject([
      { level: 'caution', facts: { where: 'on the way' } },
    ]);
    const over = along([1, 0], [5, 0, -250], [10, 0], [19, 0]);
    expect(found('BAL-002', { ...over, cues: [cueTo(5)] })).toMatchObject([{ level: 'stop' }]);
  });

  it('[BAL-002] leaves any trim to BAL-001, also where a cue ends on it', () => {
    const curve = curveOf([
      [1, 0],
      [5, 250],
      [10, 0],
      [19, 0],
    ]);
    const trims = [trimOf(playingTrim, [10, 0]), trimOf(playingTrim, [5, 250])];
    expect(found('BAL-002', { plan: { curve, trims }, cues: [cueTo(5)] })).toEqual([]);
  });

  it('[BAL-002] judges a cue that ends off the curve, or above every trim', () => {
    expect(found('BAL-002', { ...along([1, 0], [19, 0]), cues: [cueTo(25)] })).toEqual([]);
    const scene = along([1, 0], [12, 0], [15, 250], [19, 0]);
    expect(found('BAL-002', { ...scene, cues: [cueTo(15)] })).toMatchObject([{ level: 'stop' }]);
  });

  it('[BAL-002] leaves a place of rest below lift-off to BAL-003', () => {
    const low: readonly Node[] = [
      [1, 0],
      [3, 250],
      [5, 0],
      [19, 0],
    ];
    expect(found('BAL-002', { ...landing(...low), cues: [cueTo(3)] })).toEqual([]);
    const at: readonly Node[] = [
      [1, 0],
      [5, 0, 250],
      [19, 0],
    ];
    expect(found('BAL-002', { ...landing(...at), cues: [cueTo(5 - 5e-7)] })).toMatchObject([
      { level: 'stop' },
    ]);
  });

  it('[BAL-002] rests nowhere where no working height is known', () => {
    const curve = curveOf([
      [1, 250],
      [1.2, 250],
      [19, 0],
    ]);
    expect(found('BAL-002', { plan: { curve, working: null } })).toMatchObject([
      { level: 'caution', facts: { where: 'on the way' } },
    ]);
  });

  it('[BAL-002] has nothing to say of a curve without a node on the free travel', () => {
    expect(found('BAL-002', along())).toEqual([]);
    expect(found('BAL-002', bare())).toEqual([]);
    expect(found('BAL-002', along([18, 500], [19, 500]))).toEqual([]);
  });

  it('[BAL-002] judges an empty set by its whole travel, and only where it is known', () => {
    expect(found('BAL-002', bare([1, 0], [19, -201]))).toMatchObject([
      { at: { heightM: 19 }, measured: { value: -201 } },
    ]);
    expect(found('BAL-002', bare([1, 201], [19, 0]))).toMatchObject([{ at: { heightM: 1 } }]);
    expect(found('BAL-002', bare([1, 0], [5, 0], [19, 201]))).toHaveLength(1);
    const unknown = { bare: { known: false, needs: ['mass of the batten'] } as const };
    expect(found('BAL-002', { hang: null, set: unknown })).toEqual([]);
  });

  it('[BAL-002] judges by the plan, and not by the bare set, where something hangs', () => {
    const { set } = bare([1, 250], [19, -250]);
    expect(found('BAL-002', { hang: exampleHang, set: set ?? {} })).toEqual([]);
  });
});

describe('held by the lock below lift-off, side by side', () => {
  it('[BAL-003] looks at both sides of a node on the way in', () => {
    expect(found('BAL-003', landing([1, 0], [3, -250, 0], [5, 0, 25], [19, 0]))).toMatchObject([
      { at: { heightM: 3 }, measured: { value: -250 } },
    ]);
    expect(found('BAL-003', landing([1, 0], [3, 0, -250], [5, 0, 25], [19, 0]))).toMatchObject([
      { at: { heightM: 3 }, measured: { value: -250 } },
    ]);
  });

  it('[BAL-003] looks no higher than lift-off', () => {
    expect(found('BAL-003', landing([1, 0], [5, 0, 900], [7, 900], [19, 0]))).toEqual([]);
  });

  it('[BAL-003] has nothing to say without a node below lift-off', () => {
    expect(found('BAL-003', landing([6, 900], [19, 900]))).toEqual([]);
    expect(found('BAL-003', landing())).toEqual([]);
  });

  it('[BAL-003] takes a lift-off a hair beside its node for the node', () => {
    const scene = landing([1, 0], [5 + 5e-7, -250, 900], [19, 0]);
    expect(found('BAL-003', scene)).toMatchObject([{ measured: { value: -250 } }]);
  });
});

describe('held by the lock at its worst, place by place', () => {
  it('[BAL-004] counts a trim outside the free travel', () => {
    const curve = curveOf([
      [1, 0, 0, 0],
      [10, 0, 0, 0],
      [15, 150, 150, 60],
      [19, 0, 0, 0],
    ]);
    const trims = [trimOf(playingTrim, [15, 150])];
    expect(found('BAL-004', { plan: { curve } })).toEqual([]);
    expect(found('BAL-004', { plan: { curve, trims } })).toMatchObject([{ at: { heightM: 15 } }]);
  });

  it('[BAL-004] reads a trim with the piece in the air', () => {
    const trims = [trimOf(playingTrim, [15, 0])];
    const at = (belowN: number, aboveN: number) => ({
      plan: {
        trims,
        curve: curveOf([
          [1, 0, 0, 0],
          [10, 0, 0, 0],
          [15, belowN, aboveN, 60],
          [19, 0, 0, 0],
        ]),
      },
    });
    expect(found('BAL-004', at(150, 0))).toEqual([]);
    expect(found('BAL-004', at(0, 150))).toHaveLength(1);
  });

  it('[BAL-004] has nothing to say of a trim off the curve, or without a curve', () => {
    const trims = [trimOf(playingTrim, [30, 150])];
    expect(found('BAL-004', { plan: { trims } })).toEqual([]);
    expect(found('BAL-004', along())).toEqual([]);
  });

  it('[BAL-004] calls a set that balances exactly batten heavy at its worst', () => {
    const scene = along([1, 0, 0, 0], [5, 0, 0, 201], [19, 0, 0, 0]);
    expect(found('BAL-004', scene)).toMatchObject([{ measured: { value: 201 } }]);
  });
});

describe('held by the lock after a release, place by place', () => {
  it('[BAL-007] reads the trim with the piece in the air', () => {
    expect(found('BAL-007', released([1, 0], [10, -250, 0], [19, 0]))).toEqual([]);
    expect(found('BAL-007', released([1, 0], [10, 0, -250], [19, 0]))).toHaveLength(1);
  });

  it('[BAL-007] has nothing to say of a curve that does not reach the trim', () => {
    expect(found('BAL-007', released([11, 900], [19, 900]))).toEqual([]);
    expect(found('BAL-007', released())).toEqual([]);
    const short = released([9, 0], [10, -250], [19, 0]);
    expect(found('BAL-007', { ...short, cues: [cueTo(5)] })).toHaveLength(1);
  });

  it('[BAL-007] judges each release, and a trim that is a cue once', () => {
    const scene = released([1, 0], [10, -250], [19, 0]);
    const [one] = scene.plan?.after ?? [];
    const after = one === undefined ? [] : [one, { ...one, how: 'leaves fall' }];
    expect(found('BAL-007', { plan: { after }, cues: [cueTo(5)] })).toMatchObject([
      { at: { heightM: 10 }, facts: { how: 'snow falls' } },
      { at: { heightM: 10 }, facts: { how: 'leaves fall' } },
    ]);
  });
});
