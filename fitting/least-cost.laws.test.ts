/**
 * The exact search against HiGHS (npm `highs` 1.15.3), a general solver that knows nothing of
 * sets, on the same question as an integer program.
 */
import loadHighs, { type Highs } from 'highs';
import { describe, expect, it } from 'vitest';
import { leastCost, type Places } from '#fitting';

/** The package calls itself CommonJS to the compiler, and is a module. */
const openHighs = loadHighs as unknown as typeof loadHighs.default;

const SEED = 20_261_128;

/** Multiplies and mixes (mulberry32, from memory): good enough to spread cases. */
const drawFrom = (seed: number) => {
  let state = seed >>> 0;
  return (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

type Case = { readonly asked: Places; readonly costs: readonly (readonly (number | null)[])[] };

/** Pieces at places with depths, sets at places, some pairs barred, as a house gives them. */
const caseFrom = (draw: () => number): Case => {
  const pieces = 2 + Math.floor(draw() * 5);
  const sets = 2 + Math.floor(draw() * 6);
  const sorted = (count: number): number[] =>
    Array.from({ length: count }, () => draw() * 10).toSorted((one, other) => one - other);
  const [wanted, places] = [sorted(pieces), sorted(sets)];
  const depths = Array.from({ length: pieces }, () => draw() * 1.2);
  const costs = wanted.map((y) =>
    places.map((place) => (draw() < 0.2 ? null : (place - y) ** 2 + Math.floor(draw() * 3))),
  );
  const asked: Places = {
    pieces,
    sets,
    leftOut: 1000,
    cost: (piece, set) => costs[piece]?.[set] ?? null,
    clash: (piece, set, next, nextSet) =>
      (places[nextSet] ?? 0) - (places[set] ?? 0) < (depths[piece] ?? 0) + (depths[next] ?? 0),
  };
  return { asked, costs };
};

type Row = { readonly upper: number; readonly terms: readonly (readonly [number, number])[] };

const all = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

/**
 * x(i, j) is 1 where piece i hangs on set j. One set a piece, one piece a set, no two out of order,
 * and no two that clash unless another hangs between them.
 */
const rowsOf = ({ pieces, sets, clash }: Places): readonly Row[] => {
  const column = (piece: number, set: number): number => piece * sets + set;
  const rows: { readonly upper: number; readonly terms: readonly (readonly [number, number])[] }[] =
    [];
  for (const piece of all(pieces)) {
    rows.push({ upper: 1, terms: all(sets).map((set) => [column(piece, set), 1] as const) });
  }
  for (const set of all(sets)) {
    rows.push({ upper: 1, terms: all(pieces).map((piece) => [column(piece, set), 1] as const) });
  }
  for (const one of all(pieces)) {
    for (const other of all(pieces).filter((each) => each > one)) {
      const between = all(pieces).filter((each) => each > one && each < other);
      for (const set of all(sets)) {
        for (const otherSet of all(sets)) {
          const pair = [
            [column(one, set), 1],
            [column(other, otherSet), 1],
          ] as const;
          if (otherSet <= set) rows.push({ upper: 1, terms: pair });
          else if (clash(one, set, other, otherSet)) {
            const loosened = between.flatMap((each) =>
              all(sets).map((place) => [column(each, place), -1] as const),
            );
            rows.push({ upper: 1, terms: [...pair, ...loosened] });
          }
        }
      }
    }
  }
  return rows;
};

const byProgram = (highs: Highs, asked: Places): number => {
  const { pieces, sets, leftOut, cost } = asked;
  const rows = rowsOf(asked);
  const columns = pieces * sets;
  const starts = [0];
  for (const { terms } of rows) starts.push((starts.at(-1) ?? 0) + terms.length);
  const barred = all(columns).map((each) => cost(Math.floor(each / sets), each % sets) === null);
  const data = {
    numCols: columns,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: all(columns).map(
      (each) => (cost(Math.floor(each / sets), each % sets) ?? 0) - leftOut,
    ),
    colLower: all(columns).map(() => 0),
    colUpper: barred.map((isBarred) => (isBarred ? 0 : 1)),
    rowLower: rows.map(() => Number.NEGATIVE_INFINITY),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: all(columns).map(() => 1 as const),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: columns,
      starts,
      indices: rows.flatMap(({ terms }) => terms.map(([at]) => at)),
      values: rows.flatMap(({ terms }) => terms.map(([, value]) => value)),
    },
  };
  return highs.withModel(data, (model) => {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-9 });
    const { modelStatus } = model.run();
    if (modelStatus !== highs.constants.modelStatus.optimal) throw new Error(`${modelStatus}`);
    const hung = Array.from(model.getSolution().colValue).map(Math.round);
    return hung.reduce(
      (sum, isHung, each) =>
        sum + isHung * ((cost(Math.floor(each / sets), each % sets) ?? 0) - leftOut),
      pieces * leftOut,
    );
  });
};

const totalOf = ({ asked, costs }: Case, found: readonly (number | null)[]): number =>
  found.reduce<number>(
    (sum, set, piece) => sum + (set === null ? asked.leftOut : (costs[piece]?.[set] ?? Number.NaN)),
    0,
  );

describe('pieces on sets at least cost', () => {
  it(`finds what HiGHS finds on 300 random houses (seed ${SEED})`, async () => {
    const highs = await openHighs();
    const draw = drawFrom(SEED);
    let left = 0;
    for (let at = 0; at < 300; at += 1) {
      const one = caseFrom(draw);
      const found = leastCost(one.asked);
      // Costs are sums of a dozen numbers below a thousand: only their rounding may differ.
      expect(totalOf(one, found), `case ${at}`).toBeCloseTo(byProgram(highs, one.asked), 6);
      left += found.filter((set) => set === null).length;
    }
    expect(left).toBeGreaterThan(100);
  });

  it('keeps the order in depth, and no two neighbours touch', () => {
    const draw = drawFrom(SEED + 1);
    for (let at = 0; at < 300; at += 1) {
      const { asked } = caseFrom(draw);
      const hung = leastCost(asked).flatMap((set, piece) => (set === null ? [] : [{ piece, set }]));
      for (const [index, { piece, set }] of hung.entries()) {
        const next = hung[index + 1];
        if (next === undefined) continue;
        expect(next.set).toBeGreaterThan(set);
        expect(asked.clash(piece, set, next.piece, next.set)).toBe(false);
      }
    }
  });

  it('leaves out what can hang nowhere, and all where there is no set', () => {
    const asked = { pieces: 2, leftOut: 9, clash: () => false };
    expect(leastCost({ ...asked, sets: 0, cost: () => 0 })).toEqual([null, null]);
    const onlySecond = (piece: number): number | null => (piece === 0 ? null : 1);
    expect(leastCost({ ...asked, sets: 2, cost: onlySecond })).toEqual([null, 0]);
  });
});
