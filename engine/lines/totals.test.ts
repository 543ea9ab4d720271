import { describe, expect, it } from 'vitest';
import { GRAVITY, newtons, POUND, POUND_FORCE } from '#quantities';
import { bayTotals, wellTotals, worstOver } from './totals.ts';
import type { SetOnSteel } from './types.ts';

const setOf = (set: string, change: Partial<SetOnSteel> = {}): SetOnSteel => ({
  set,
  bay: 'A',
  purchase: 1,
  arborMass: 100,
  handLineMass: 0,
  arborWireMass: 0,
  lines: [],
  moving: false,
  ...change,
});
const kgf = (forceN: number): number => forceN / GRAVITY;

describe('totals of the bays of the demo', () => {
  /** Whole arbors in lb, hung sets first, from the hung plan of the demo; the rest are bare. */
  const BAYS = {
    A: { hungLb: [698.5, 411, 286, 986, 298.5, 286, 323.5, 798.5], bare: 5, bareLb: 161 },
    B: { hungLb: [332.5, 307.5, 282.5, 770, 307.5, 370, 432.5, 395], bare: 6, bareLb: 195 },
    C: { hungLb: [332.5, 307.5, 257.5, 945, 270, 707.5, 332.5, 557.5], bare: 5, bareLb: 195 },
  };
  const DOUBLE_LB = [415, 1215, 415, 802.5];
  const HAND_LINE_LB = 20.4;

  const inBay = (bay: keyof typeof BAYS): readonly SetOnSteel[] => {
    const { hungLb, bare, bareLb } = BAYS[bay];
    const singles = [...hungLb, ...Array<number>(bare).fill(bareLb)];
    const doubles = bay === 'C' ? DOUBLE_LB : [];
    return [...singles, ...doubles].map((arborLb, index) =>
      setOf(`${bay}${index}`, {
        bay,
        purchase: index < singles.length ? 1 : 2,
        arborMass: arborLb * POUND,
        handLineMass: HAND_LINE_LB * POUND,
      }),
    );
  };
  const sets = [...inBay('A'), ...inBay('B'), ...inBay('C')];
  const totals = bayTotals(sets, { bays: ['A', 'B', 'C'], movingShare: 0 });

  it('are those of the design, with 44 arbors, hung or bare', () => {
    expect(sets).toHaveLength(44);
    expect(totals.map(({ vertical }) => Math.round(vertical.value / POUND_FORCE))).toEqual([
      5158, 4653, 7879,
    ]);
    expect(totals.map(({ vertical }) => (vertical.value / 1000).toFixed(1))).toEqual([
      '22.9',
      '20.7',
      '35.0',
    ]);
    expect(totals.map(({ horizontal }) => (horizontal.value / 1000).toFixed(1))).toEqual([
      '21.8',
      '19.4',
      '27.2',
    ]);
  });

  it('use 64, 57 and 92 % of the steel, and 98 % while the speaker frame is released', () => {
    const limitsN = [36_000, 36_000, 38_000];
    const used = totals.map(({ vertical }, index) => vertical.value / (limitsN[index] ?? 0));
    expect(used.map((share) => Math.round(100 * share))).toEqual([64, 57, 92]);
    const released = sets.map((set) =>
      set.set === 'C15' ? { ...set, arborMass: set.arborMass + 475 * POUND } : set,
    );
    const [, , bayC] = bayTotals(released, { bays: ['A', 'B', 'C'], movingShare: 0 });
    expect(Math.round((100 * (bayC?.vertical.value ?? 0)) / 38_000)).toBe(98);
  });
});

describe('totals of bays', () => {
  it('count the whole arbor down and, on double purchase, half of it sideways', () => {
    const [bay] = bayTotals([setOf('1'), setOf('D', { purchase: 2 })], {
      bays: ['A'],
      movingShare: 0.25,
    });
    expect(kgf(bay?.vertical.value ?? 0)).toBeCloseTo(200, 9);
    expect(kgf(bay?.horizontal.value ?? 0)).toBeCloseTo(150, 9);
    expect(bay?.vertical.dynamic).toBe(0);
  });

  it('add hand line to the vertical part only, and wire to both', () => {
    const [bay] = bayTotals([setOf('D', { purchase: 2, handLineMass: 9, arborWireMass: 20 })], {
      bays: ['A'],
      movingShare: 0,
    });
    expect(kgf(bay?.vertical.value ?? 0)).toBeCloseTo(129, 9);
    expect(kgf(bay?.horizontal.value ?? 0)).toBeCloseTo(60, 9);
  });

  it('raise only the sets that move', () => {
    const sets = [setOf('1', { moving: true }), setOf('2')];
    const [bay] = bayTotals(sets, { bays: ['A'], movingShare: 0.25 });
    expect(bay?.vertical.sets.map(({ value }) => kgf(value))).toEqual([125, 100]);
    expect(kgf(bay?.vertical.dynamic ?? 0)).toBeCloseTo(25, 9);
    expect(kgf(bay?.vertical.value ?? 0)).toBeCloseTo(225, 9);
    expect(kgf(bay?.horizontal.dynamic ?? 0)).toBeCloseTo(25, 9);
  });

  it('leave out a set on steel of its own, and give an empty bay nothing', () => {
    const sets = [setOf('M1', { bay: null }), setOf('1', { bay: 'B' })];
    const [bayA, bayB] = bayTotals(sets, { bays: ['A', 'B'], movingShare: 0 });
    expect(bayA?.vertical).toEqual({ id: 'A', sets: [], value: 0, dynamic: 0 });
    expect(bayB?.vertical.sets.map(({ set }) => set)).toEqual(['1']);
  });
});

describe('totals of loft wells', () => {
  const wells = [
    { id: 'W1', x: -4, width: 0.5 },
    { id: 'W2', x: 4, width: 0.5 },
  ];
  const line = (x: number, tension: number) => ({ x, tension });

  it('add up the lines that stand within half of the width, ends included', () => {
    const sets = [
      setOf('1', { lines: [line(-4.25, 100), line(4, 110)] }),
      setOf('2', { lines: [line(-3.75, 200), line(4.2501, 210)] }),
    ];
    const found = wellTotals(sets, { wells, movingShare: 0 });
    expect(found.wells.map(({ value }) => value)).toEqual([300, 110]);
    expect(found.linesOnNoWell).toEqual([{ set: '2', x: 4.2501 }]);
    expect(found.wells[0]?.sets).toEqual([
      { set: '1', value: 100 },
      { set: '2', value: 200 },
    ]);
  });

  it('take a line whose place comes from feet with the last figure off', () => {
    const sets = [setOf('1', { lines: [line(-4.25 - 1e-12, 100)] })];
    expect(wellTotals(sets, { wells, movingShare: 0 }).linesOnNoWell).toEqual([]);
  });

  it('raise the sets that move, and count two lines of one set together', () => {
    const sets = [setOf('1', { lines: [line(-4.1, 100), line(-3.9, 60)], moving: true })];
    const [well] = wellTotals(sets, { wells, movingShare: 0.5 }).wells;
    expect(well).toEqual({ id: 'W1', sets: [{ set: '1', value: 240 }], value: 240, dynamic: 80 });
  });

  it('put a line on the nearer of two wells, and on the first of two as near', () => {
    const wide = [
      { id: 'W1', x: 0, width: 4 },
      { id: 'W2', x: 2, width: 4 },
    ];
    const at = (x: number) =>
      wellTotals([setOf('1', { lines: [line(x, 1)] })], { wells: wide, movingShare: 0 })
        .wells.filter(({ value }) => value > 0)
        .map(({ id }) => id);
    expect([0.9, 1, 1.1].map((x) => at(x))).toEqual([['W1'], ['W1'], ['W2']]);
  });
});

describe('the worst over many states', () => {
  const total = (id: string, valueN: number) => ({
    id,
    sets: [],
    value: newtons(valueN),
    dynamic: newtons(0),
  });

  it('is found for each bay by itself, with the first state where it comes up', () => {
    const worst = worstOver([
      { state: 'bare', totals: [total('A', 10), total('B', 30)] },
      { state: 'loaded', totals: [total('A', 20), total('B', 30)] },
      { state: 'struck', totals: [total('A', 15), total('B', 25)] },
    ]);
    expect(worst.map(({ state, total: { id, value } }) => [id, state, value])).toEqual([
      ['A', 'loaded', 20],
      ['B', 'bare', 30],
    ]);
  });

  it('of no states is none', () => {
    expect(worstOver([])).toEqual([]);
  });
});
