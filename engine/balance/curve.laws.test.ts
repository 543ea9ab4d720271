import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import type { BalanceSet } from './balance-set.ts';
import { breakHeights, carriedMass, fullMass } from './carried-mass.ts';
import { balanceCurve, extremesOf, slopeAt } from './curve.ts';
import { feet } from './example-sets.ts';
import { contactInterval, imbalanceAt, imbalanceBelow, imbalanceUncertainty } from './imbalance.ts';
import type { BalanceItem } from './item.ts';

const SEED = 48_271;
const RUNS = { seed: SEED, numRuns: 400 };

/** Lengths as typed: whole quarter feet, so that contacts fall on stops and on one another. */
const quarterFeet = (from: number, to: number): fc.Arbitrary<number> =>
  fc.integer({ min: from * 4, max: to * 4 }).map((n) => feet(n / 4));
const metric = (from: number, to: number): fc.Arbitrary<number> =>
  fc.double({ min: from, max: to, noNaN: true });
const length = (from: number, to: number): fc.Arbitrary<number> =>
  fc.oneof(quarterFeet(Math.ceil(from * 4), Math.floor(to * 3)), metric(from, to));
/** Nothing, or more than a gram: masses that arithmetic can no longer tell apart are no masses. */
const mass = (max: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 12, arbitrary: fc.double({ min: 1e-3, max, noNaN: true }) },
  );

const sizes = { mass: mass(400), drop: length(0.5, 12), pick: length(0, 3), uncertainty: mass(20) };
const cable = { massPerLength: mass(6), length: length(1, 20), uncertainty: mass(9) };

const centre = fc.oneof(fc.constantFrom(0, 1), metric(0.01, 0.99));

const item: fc.Arbitrary<BalanceItem> = fc.oneof(
  fc.record({ kind: fc.constant('clear' as const), ...sizes }),
  fc.record({ kind: fc.constant('clear' as const), mass: mass(400), uncertainty: mass(20) }),
  fc.record({
    kind: fc.constant('cloth' as const),
    mass: mass(300),
    drop: length(0.5, 12),
    tie: length(0, 2),
    hem: mass(40),
    uncertainty: mass(30),
    hemUncertainty: mass(4),
  }),
  fc.record({ kind: fc.constant('tipping' as const), ...sizes, centre }),
  fc.record({ kind: fc.constant('standing' as const), ...sizes }),
  fc.record({ kind: fc.constant('loom' as const), ...cable, fixedAt: length(0, 15) }),
  fc.record({ kind: fc.constant('deckLoom' as const), ...cable }),
);

const anySet: fc.Arbitrary<BalanceSet> = fc
  .record({
    purchase: fc.constantFrom(1 as const, 2 as const),
    lines: fc.integer({ min: 1, max: 9 }),
    lineMassPerLength: mass(0.4),
    batten: mass(150),
    carriage: mass(120),
    bricks: mass(600),
    lowStop: length(0, 2),
    travelM: length(1, 20),
    arborTopAtLow: length(5, 25),
    wireEndAbove: length(0, 1),
    items: fc.array(item, { maxLength: 5 }),
    battenUncertainty: mass(5),
    carriageUncertainty: mass(5),
    brickUncertainty: mass(10),
  })
  .map(({ travelM, ...set }) => ({ ...set, highStop: set.lowStop + travelM }));

const scaleN = (set: BalanceSet): number => {
  const itemsKg = set.items.reduce((sum, each) => sum + fullMass(each), 0);
  return GRAVITY * (set.batten + set.carriage + set.bricks + itemsKg + 300);
};
/** What a micrometre of travel can change: heights closer than that are one height. */
const micrometreN = ({ items }: BalanceSet): number =>
  items.reduce((sum, each) => {
    if (each.kind === 'cloth') return sum + (GRAVITY * each.mass * 1e-6) / each.drop;
    return 'massPerLength' in each ? sum + GRAVITY * each.massPerLength * 1e-6 : sum;
  }, 0);
const noiseOf = (set: BalanceSet): number => 1e-10 * scaleN(set) + 2 * micrometreN(set);
const close = (found: number, wanted: number, set: BalanceSet): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(noiseOf(set));
};
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
const heightIn = (set: BalanceSet, part: number): number =>
  set.lowStop + part * (set.highStop - set.lowStop);
const isNearBreak = (set: BalanceSet, heightM: number): boolean =>
  set.items.flatMap(breakHeights).some((breakM) => Math.abs(breakM - heightM) < 1e-5);

describe(`the curve is the whole truth (seed ${SEED})`, () => {
  it(`is a straight line between neighbouring nodes (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, share, (set, part) => {
        const { nodes } = balanceCurve(set);
        for (const [index, upper] of nodes.slice(1).entries()) {
          const lower = nodes[index];
          if (lower === undefined || upper.height - lower.height < 1e-3) continue;
          const heightM = lower.height + part * (upper.height - lower.height);
          if (isNearBreak(set, heightM)) continue;
          const wantedN = lower.above + part * (upper.below - lower.above);
          close(imbalanceAt(set, heightM), wantedN, set);
          const slope = slopeAt({ nodes, jumps: [], equilibria: [] }, heightM) ?? Number.NaN;
          close(slope * (upper.height - lower.height), upper.below - lower.above, set);
        }
      }),
      RUNS,
    );
  });

  it(`has nothing worse at any height than its extremes, and reaches both (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, fc.array(share, { minLength: 1, maxLength: 20 }), (set, parts) => {
        const { nodes } = balanceCurve(set);
        const { least, most } = extremesOf(nodes);
        const values = [
          ...parts.map((part) => heightIn(set, part)),
          ...set.items.flatMap(breakHeights),
        ]
          .filter((heightM) => heightM >= set.lowStop && heightM <= set.highStop)
          .flatMap((heightM) => [imbalanceAt(set, heightM), imbalanceBelow(set, heightM)]);
        expect(Math.min(...values)).toBeGreaterThanOrEqual(least.imbalance - noiseOf(set));
        expect(Math.max(...values)).toBeLessThanOrEqual(most.imbalance + noiseOf(set));
        for (const { height, imbalance } of [least, most]) {
          const reached = [imbalanceAt(set, height), imbalanceBelow(set, height)];
          expect(reached).toContain(imbalance);
        }
      }),
      RUNS,
    );
  });

  it(`steps up at its jumps and nowhere else (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, (set) => {
        const { nodes, jumps } = balanceCurve(set);
        for (const { height, below, above } of nodes) {
          const isJump = jumps.some((jump) => jump.height === height);
          expect(above - below).toBeGreaterThanOrEqual(-1e-10 * scaleN(set));
          expect(isJump).toBe(above !== below);
        }
        for (const { height, below, above, items } of jumps) {
          const stepKg = items
            .map((index) => carriedMass(set.items[index] as BalanceItem, height))
            .reduce((sum, { massKg, lowKg }) => sum + massKg - lowKg, 0);
          close(above - below, GRAVITY * stepKg, set);
        }
      }),
      RUNS,
    );
  });

  it(`has an equilibrium where the heavy side changes, and says which way (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, share, share, (set, one, other) => {
        const [fromM, toM] = [one, other]
          .map((part) => heightIn(set, part))
          .toSorted((a, b) => a - b) as [number, number];
        const { equilibria } = balanceCurve(set, fromM, toM);
        const [fromN, toN] = [imbalanceAt(set, fromM), imbalanceBelow(set, toM)];
        if (fromN * toN < 0) expect(equilibria.length % 2).toBe(1);
        for (const { height, settles } of equilibria) {
          const { low, high } = contactInterval(set, height);
          expect(low).toBeLessThanOrEqual(noiseOf(set));
          expect(high).toBeGreaterThanOrEqual(-noiseOf(set));
          const upperN = imbalanceAt(set, height + 1e-4);
          const isFree = !isNearBreak(set, height) && !isNearBreak(set, height + 1e-4);
          if (isFree && Math.abs(upperN) > noiseOf(set)) expect(upperN > 0).toBe(settles);
        }
      }),
      RUNS,
    );
  });
});

describe(`what a set does, its kin does in proportion (seed ${SEED})`, () => {
  const twice = (each: BalanceItem): BalanceItem => {
    switch (each.kind) {
      case 'loom':
      case 'deckLoom':
        return { ...each, massPerLength: 2 * each.massPerLength };
      case 'cloth':
        return { ...each, mass: 2 * each.mass, hem: 2 * each.hem };
      default:
        return { ...each, mass: 2 * each.mass };
    }
  };

  it(`doubles to the last bit with every mass doubled (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, share, (set, part) => {
        const double = {
          ...set,
          lineMassPerLength: 2 * set.lineMassPerLength,
          batten: 2 * set.batten,
          carriage: 2 * set.carriage,
          bricks: 2 * set.bricks,
          items: set.items.map(twice),
        };
        const heightM = heightIn(set, part);
        expect(imbalanceAt(double, heightM)).toBe(2 * imbalanceAt(set, heightM));
        const jumps = balanceCurve(set).jumps.map(({ height }) => height);
        expect(balanceCurve(double).jumps.map(({ height }) => height)).toEqual(jumps);
      }),
      RUNS,
    );
  });

  it(`is the same with lengths in feet and masses per foot as in metres (seed ${SEED})`, () => {
    const inFeet = (each: BalanceItem): BalanceItem => {
      const lengths = Object.entries(each).map(([name, value]) =>
        ['drop', 'pick', 'tie', 'length', 'fixedAt'].includes(name)
          ? [name, (value as number) / feet(1)]
          : name === 'massPerLength'
            ? [name, (value as number) * feet(1)]
            : [name, value],
      );
      return Object.fromEntries(lengths) as BalanceItem;
    };
    fc.assert(
      fc.property(anySet, share, (set, part) => {
        const heightM = heightIn(set, part);
        fc.pre(!isNearBreak(set, heightM));
        const typed: BalanceSet = {
          ...set,
          lineMassPerLength: set.lineMassPerLength * feet(1),
          lowStop: set.lowStop / feet(1),
          highStop: set.highStop / feet(1),
          arborTopAtLow: set.arborTopAtLow / feet(1),
          wireEndAbove: set.wireEndAbove / feet(1),
          items: set.items.map(inFeet),
        };
        close(imbalanceAt(typed, heightM / feet(1)), imbalanceAt(set, heightM), set);
      }),
      RUNS,
    );
  });

  it(`is its own mirror: arbor and batten change places, U its sign (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, share, (set, part) => {
        const heightM = heightIn(set, part);
        const bare = { ...set, purchase: 1 as const, items: [] };
        const arborTopM = bare.arborTopAtLow - (heightM - bare.lowStop);
        const mirrored: BalanceSet = {
          ...bare,
          batten: bare.carriage + bare.bricks,
          carriage: bare.batten,
          bricks: 0,
          lowStop: heightM,
          arborTopAtLow: heightM + bare.wireEndAbove,
          wireEndAbove: arborTopM - heightM,
        };
        close(imbalanceAt(mirrored, heightM), -imbalanceAt(bare, heightM), set);
      }),
      RUNS,
    );
  });

  it(`does not depend on the order in which items are listed (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, share, (set, part) => {
        const heightM = heightIn(set, part);
        const other = { ...set, items: set.items.toReversed() };
        close(imbalanceAt(other, heightM), imbalanceAt(set, heightM), set);
      }),
      RUNS,
    );
  });
});

describe(`bricks and lines (seed ${SEED})`, () => {
  it(`bricks shift the whole curve by their share, and no jump (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, mass(300), share, (set, extraKg, part) => {
        const heightM = heightIn(set, part);
        const more = { ...set, bricks: set.bricks + extraKg };
        const shiftN = (-GRAVITY * extraKg) / set.purchase;
        close(imbalanceAt(more, heightM) - imbalanceAt(set, heightM), shiftN, set);
        const [before, after] = [balanceCurve(set), balanceCurve(more)];
        expect(after.nodes.map(({ height }) => height)).toEqual(
          before.nodes.map(({ height }) => height),
        );
        expect(after.jumps.map(({ items }) => items)).toEqual(
          before.jumps.map(({ items }) => items),
        );
      }),
      RUNS,
    );
  });

  it(`lines alone slope −2·n·w on single and −1.5·n·w on double purchase (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anySet, (set) => {
        const bare = { ...set, items: [] };
        const slope = slopeAt(balanceCurve(bare), bare.lowStop) ?? Number.NaN;
        const perLine = set.purchase === 1 ? -2 : -1.5;
        const wanted = perLine * set.lines * set.lineMassPerLength * GRAVITY;
        const travelM = bare.highStop - bare.lowStop;
        close(slope * travelM, wanted * travelM, set);
      }),
      RUNS,
    );
  });
});

describe(`doubt (seed ${SEED})`, () => {
  const shifted = (each: BalanceItem, sign: number): BalanceItem => {
    const byKg = sign * (each.uncertainty ?? 0);
    switch (each.kind) {
      case 'loom':
      case 'deckLoom':
        return { ...each, massPerLength: each.massPerLength + byKg / each.length };
      case 'cloth':
        return {
          ...each,
          mass: each.mass + byKg,
          hem: each.hem + sign * (each.hemUncertainty ?? 0),
        };
      default:
        return { ...each, mass: each.mass + byKg };
    }
  };
  const moved = (set: BalanceSet, signs: readonly number[]): BalanceSet => {
    const [batten = 0, carriage = 0, bricks = 0, ...items] = signs;
    return {
      ...set,
      batten: set.batten + batten * (set.battenUncertainty ?? 0),
      carriage: set.carriage + carriage * (set.carriageUncertainty ?? 0),
      bricks: set.bricks + bricks * (set.brickUncertainty ?? 0),
      items: set.items.map((each, index) => shifted(each, items[index] ?? 0)),
    };
  };
  const hasMass = (set: BalanceSet): boolean => set.items.every((each) => fullMass(each) > 1);
  /** A clear piece that rests is doubted whole, though nothing of it need hang. */
  const hangsFree = (set: BalanceSet, heightM: number): boolean =>
    set.items.every((each) => {
      const { lowKg, highKg } = carriedMass(each, heightM);
      return lowKg === highKg;
    });
  const sign = fc.double({ min: -1, max: 1, noNaN: true });

  it(`no mass within its tolerance moves U further, and the worst does (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        anySet.filter(hasMass),
        share,
        fc.array(sign, { minLength: 8, maxLength: 8 }),
        (set, part, signs) => {
          const heightM = heightIn(set, part);
          fc.pre(hangsFree(set, heightM) && !isNearBreak(set, heightM));
          const before = imbalanceAt(set, heightM);
          const limitN = imbalanceUncertainty(set, heightM);
          const after = imbalanceAt(moved(set, signs), heightM);
          expect(Math.abs(after - before)).toBeLessThanOrEqual(limitN + 1e-10 * scaleN(set));
          const worst = [1, -1, -1, ...set.items.map(() => 1)];
          close(imbalanceAt(moved(set, worst), heightM) - before, limitN, set);
        },
      ),
      RUNS,
    );
  });
});
