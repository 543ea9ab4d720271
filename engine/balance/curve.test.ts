import { describe, expect, it } from 'vitest';
import { newtons } from '#quantities';
import type { BalanceSet } from './balance-set.ts';
import { balanceCurve, type CurveNode, extremesOf, slopeAt } from './curve.ts';
import {
  asPounds,
  DOUBLE_PURCHASE,
  feet,
  hung,
  pounds,
  poundsPerFoot,
  SEVEN_LINES,
  SIX_LINES,
} from './example-sets.ts';
import type { BalanceItem } from './item.ts';

const TOWER: BalanceItem = {
  kind: 'tipping',
  mass: pounds(640),
  drop: feet(22),
  pick: feet(1),
  centre: 0.46,
};
const CURTAIN: BalanceItem = {
  kind: 'cloth',
  mass: pounds(520),
  drop: feet(30),
  tie: feet(0.5),
  hem: pounds(22),
};
const tower = hung(SIX_LINES, 637.5, [TOWER]);
const curtain = hung(SIX_LINES, 537.5, [CURTAIN]);

const inFeet = (heightM: number): number => heightM / feet(1);
const heightsOf = (nodes: readonly CurveNode[]) => nodes.map(({ height }) => inFeet(height));

/** A set in round numbers: no lines, 100 kg on each side but for `heavyKg` on the batten. */
const plain = (heavyKg: number, items: readonly BalanceItem[] = []): BalanceSet => ({
  purchase: 1,
  lines: 1,
  lineMassPerLength: 0,
  batten: 100 + heavyKg,
  carriage: 100,
  bricks: 0,
  lowStop: 1,
  highStop: 20,
  arborTopAtLow: 21,
  wireEndAbove: 0,
  items,
});
const block = (mass: number, contactM: number): BalanceItem => ({
  kind: 'standing',
  mass,
  drop: contactM,
  pick: 0,
});

describe('balanceCurve', () => {
  it('has a node at each end and where a load changes, and nowhere else', () => {
    expect(heightsOf(balanceCurve(SIX_LINES).nodes)).toEqual([3, 61]);
    expect(heightsOf(balanceCurve(curtain).nodes)).toEqual([3, 30.5, 61]);
    expect(heightsOf(balanceCurve({ ...curtain, lowStop: 0 }).nodes)).toEqual([0, 0.5, 30.5, 61]);
  });

  it('covers the stretch that is asked for', () => {
    const { nodes } = balanceCurve(tower, feet(23), feet(60));
    expect(heightsOf(nodes)).toEqual([23, 60]);
    expect(asPounds(nodes[0]?.below ?? 0)).toBeCloseTo(-320.91, 9);
    expect(heightsOf(balanceCurve(tower, feet(10), feet(10)).nodes)).toEqual([10]);
  });

  it('has one node where two pieces meet the deck at one height', () => {
    const twins = plain(0, [block(30, 8), { kind: 'clear', mass: 20, drop: 7.7, pick: 0.3 }]);
    const { jumps } = balanceCurve(twins);
    expect(jumps.map(({ height, items }) => [height, items])).toEqual([[8, [0, 1]]]);
    expect((jumps[0]?.above ?? 0) - (jumps[0]?.below ?? 0)).toBeCloseTo(50 * 9.80665, 9);
  });

  it('keeps contacts apart that are more than a micrometre apart, however many lie between', () => {
    const row = [8, 8 + 0.9e-6, 8 + 1.8e-6].map((contactM) => block(10, contactM));
    const { nodes } = balanceCurve(plain(0, row));
    expect(nodes.map(({ height }) => height)).toEqual([1, 8, 8 + 1.8e-6, 20]);
  });
});

describe('jumps', () => {
  it('are the steps up, with both values and the piece', () => {
    const [jump, ...more] = balanceCurve(tower).jumps;
    expect(more).toEqual([]);
    expect(inFeet(jump?.height ?? 0)).toBeCloseTo(23, 9);
    expect(asPounds(jump?.below ?? 0)).toBeCloseTo(-320.91, 9);
    expect(asPounds(jump?.above ?? 0)).toBeCloseTo(24.69, 9);
    expect(jump?.items).toEqual([0]);
  });

  it('do not name a piece that only rests while another lands', () => {
    const resting: BalanceItem = { kind: 'clear', mass: 20, drop: 12, pick: 0.5 };
    const { jumps } = balanceCurve(plain(0, [resting, block(30, 8)]));
    expect(jumps.map(({ height, items }) => [height, items])).toEqual([
      [8, [1]],
      [12.5, [0]],
    ]);
  });

  it('name a tilting piece where its picks come taut', () => {
    const tilting: BalanceItem = { kind: 'tipping', mass: 50, drop: 4, pick: 2, centre: 0.5 };
    const { jumps } = balanceCurve(plain(0, [tilting]));
    expect(jumps.map(({ height, items }) => [height, items])).toEqual([
      [2, [0]],
      [6, [0]],
    ]);
  });

  it('are none where a cloth has no hem weight', () => {
    const cloth: BalanceItem = { kind: 'cloth', mass: 50, drop: 6, tie: 0.5, hem: 0 };
    expect(balanceCurve(plain(0, [cloth])).jumps).toEqual([]);
  });
});

describe('equilibria', () => {
  it('run away where the lines alone decide, and settle where cloth piles up', () => {
    const [bare] = balanceCurve(SIX_LINES).equilibria;
    expect(bare?.settles).toBe(false);
    // B + 0.66·(66.5 + 3 − 2 − 2h) − A = 0, in pounds and feet.
    expect(inFeet(bare?.height ?? 0)).toBeCloseTo((169 + 0.66 * 67.5 - 161) / 1.32, 9);
    const piled = balanceCurve(hung(SIX_LINES, 287.5, [CURTAIN])).equilibria[0];
    expect(piled?.settles).toBe(true);
    // Slope of the cloth 520/30 a foot, less 1.32 of the lines.
    expect(inFeet(piled?.height ?? 0)).toBeCloseTo(
      (161 + 287.5 - 169 - 0.66 * 67.5 + (0.5 * 520) / 30) / (520 / 30 - 1.32),
      9,
    );
  });

  it('rest at a jump through zero: the piece half stands on the deck', () => {
    const found = balanceCurve(plain(-10, [block(30, 8)])).equilibria;
    expect(found).toEqual([{ height: 8, settles: true }]);
  });

  it('are found once where a straight piece ends exactly at zero', () => {
    const falling = { lines: 1, lineMassPerLength: 1, arborTopAtLow: 19 } as const;
    // Lines alone: 19 − (h − 1) − h = 20 − 2h, so zero at 10, where a block of 5 kg arrives.
    expect(balanceCurve({ ...plain(0), ...falling }).equilibria).toEqual([
      { height: 10, settles: false },
    ]);
    expect(balanceCurve({ ...plain(0), ...falling, highStop: 10 }).equilibria).toEqual([
      { height: 10, settles: false },
    ]);
    expect(
      balanceCurve({ ...plain(0), ...falling, lowStop: 10, arborTopAtLow: 10 }).equilibria,
    ).toEqual([{ height: 10, settles: false }]);
    const landing = balanceCurve({ ...plain(0, [block(5, 10)]), ...falling });
    expect(landing.equilibria.map(({ height }) => height)).toEqual([10, 12.5]);
    const rope: BalanceItem = { kind: 'deckLoom', massPerLength: 3, length: 10 };
    const kinked = balanceCurve({ ...plain(-30, [rope]), ...falling, arborTopAtLow: 19 });
    expect(kinked.equilibria.map(({ height }) => height)).toEqual([10]);
  });

  it('are none where the set is heavy one way all along, or level at zero', () => {
    expect(balanceCurve(plain(5)).equilibria).toEqual([]);
    expect(balanceCurve(plain(-5)).equilibria).toEqual([]);
    expect(balanceCurve(plain(0)).equilibria).toEqual([]);
  });
});

describe('extremesOf', () => {
  it('finds the worst at a jump between two heights of a table', () => {
    const { least, most } = extremesOf(balanceCurve(curtain, feet(4)).nodes);
    expect(inFeet(most.height)).toBeCloseTo(30.5, 9);
    expect(asPounds(most.imbalance)).toBeCloseTo(16.79, 9);
    expect(inFeet(least.height)).toBe(4);
    const towerLeast = extremesOf(balanceCurve(tower, feet(4)).nodes).least;
    expect(inFeet(towerLeast.height)).toBeCloseTo(23, 9);
    expect(asPounds(towerLeast.imbalance)).toBeCloseTo(-320.91, 9);
  });

  it('counts an end from inside only where the range was cut there', () => {
    const { nodes } = balanceCurve(tower, feet(23), feet(60));
    expect(asPounds(extremesOf(nodes).least.imbalance)).toBeCloseTo(-320.91, 9);
    const inside = extremesOf(nodes, 'inside');
    expect(asPounds(inside.least.imbalance)).toBeCloseTo(-24.15, 9);
    expect(inFeet(inside.least.height)).toBe(60);
    expect(asPounds(inside.most.imbalance)).toBeCloseTo(24.69, 9);
    const upTo = extremesOf(balanceCurve(tower, feet(10), feet(23)).nodes, 'inside');
    expect(asPounds(upTo.most.imbalance)).toBeLessThan(-300);
  });

  it('takes a range of one height from above', () => {
    const { nodes } = balanceCurve(tower, feet(23), feet(23));
    const { least, most } = extremesOf(nodes, 'inside');
    expect(least).toEqual(most);
    expect(asPounds(least.imbalance)).toBeCloseTo(24.69, 9);
  });

  it('has no answer without a node', () => {
    expect(() => extremesOf([])).toThrow('at least one node');
  });
});

describe('slopeAt', () => {
  const perFoot = (set: BalanceSet, heightFt: number): number =>
    asPounds(slopeAt(balanceCurve(set), feet(heightFt)) ?? Number.NaN) * feet(1);

  it('is −2·n·w of the lines on single and −1.5·n·w on double purchase', () => {
    expect(perFoot(SIX_LINES, 20)).toBeCloseTo(-1.32, 9);
    expect(perFoot(SEVEN_LINES, 61)).toBeCloseTo(-1.54, 9);
    expect(perFoot(DOUBLE_PURCHASE, 3)).toBeCloseTo(-1.155, 9);
  });

  it('has what hangs on top, each to its own side of a node', () => {
    expect(perFoot(curtain, 20)).toBeCloseTo(520 / 30 - 1.32, 9);
    expect(perFoot(curtain, 30.5)).toBeCloseTo(-1.32, 9);
    const loom = { kind: 'loom', massPerLength: poundsPerFoot(3.1), length: feet(50) } as const;
    const electric = { ...SIX_LINES, items: [{ ...loom, fixedAt: feet(38) }] };
    expect(perFoot(electric, 5)).toBeCloseTo(3.1 - 1.32, 9);
    expect(perFoot(electric, 12)).toBeCloseTo(1.55 - 1.32, 9);
    expect(perFoot(electric, 40)).toBeCloseTo(1.55 - 1.32, 9);
  });

  it('is that of the piece above at a height whose sum of feet falls a hair short', () => {
    expect(perFoot(curtain, 30.5 - 1e-9)).toBeCloseTo(-1.32, 9);
  });

  it('is none off the curve and none at a single height', () => {
    const curve = balanceCurve(SIX_LINES);
    expect(slopeAt(curve, feet(2.9))).toBeNull();
    expect(slopeAt(curve, feet(61.1))).toBeNull();
    expect(slopeAt(balanceCurve(SIX_LINES, feet(9), feet(9)), feet(9))).toBeNull();
    expect(slopeAt({ nodes: [], jumps: [], equilibria: [] }, newtons(0))).toBeNull();
  });
});
