import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, imbalanceBelow } from '#balance';
import { FOOT, POUND } from '#quantities';
import {
  asNumber,
  compare,
  type Exact,
  exact,
  GRAVITY_EXACTLY,
  greatest,
  least,
  minus,
  over,
  POUND_EXACTLY,
  plus,
  times,
} from '../../exact.ts';
import { record } from '../../record.ts';

const SEED = 20_275;
const TOLERANCE = 1e-13;

/** Pounds and feet as typed, with two decimals. */
type Typed = {
  readonly purchase: 1 | 2;
  readonly lines: number;
  readonly perFoot: string;
  readonly batten: string;
  readonly arbor: string;
  readonly arborTop: string;
  readonly chain: string;
  readonly kind: 'cloth' | 'tipping' | 'standing';
  readonly mass: string;
  readonly hem: string;
  readonly drop: string;
  readonly pick: string;
  readonly centre: string;
  readonly height: string;
};

const quarters = (from: number, to: number): fc.Arbitrary<string> =>
  fc.integer({ min: from * 4, max: to * 4 }).map((n) => (n / 4).toFixed(2));
const hundredths = (from: number, to: number): fc.Arbitrary<string> =>
  fc.integer({ min: from * 100, max: to * 100 }).map((n) => (n / 100).toFixed(2));

const typed: fc.Arbitrary<Typed> = fc
  .record({
    purchase: fc.constantFrom(1 as const, 2 as const),
    lines: fc.integer({ min: 3, max: 9 }),
    perFoot: fc.constantFrom('0.11', '0.065', '0.173'),
    batten: quarters(100, 250),
    arbor: quarters(150, 1200),
    arborTop: quarters(60, 70),
    chain: quarters(0, 3),
    kind: fc.constantFrom('cloth' as const, 'tipping' as const, 'standing' as const),
    mass: quarters(20, 700),
    hem: quarters(0, 60),
    drop: quarters(4, 35),
    pick: quarters(0, 3),
    centre: hundredths(0, 1),
    free: quarters(3, 61),
    touches: fc.boolean(),
  })
  .map(({ free, touches, ...set }) => {
    const contact = (Number(set.drop) + Number(set.pick)).toFixed(2);
    return { ...set, height: touches ? contact : free };
  });

const NONE = exact('0');
const ONE = exact('1');

/** Pounds on the batten: with the piece just up where it touches, or just not. */
const carried = (the: Typed, side: 'above' | 'below'): Exact => {
  const [mass, drop, pick, height] = [the.mass, the.drop, the.pick, the.height].map(exact) as [
    Exact,
    Exact,
    Exact,
    Exact,
  ];
  const order = compare(height, plus(pick, drop));
  const isUp = order > 0 || (order === 0 && side === 'above');
  if (the.kind === 'standing') return isUp ? mass : NONE;
  if (the.kind === 'tipping') {
    const taut = compare(height, pick);
    const isTaut = taut > 0 || (taut === 0 && side === 'above');
    return isUp ? mass : isTaut ? times(exact(the.centre), mass) : NONE;
  }
  const share = least(ONE, greatest(NONE, over(minus(height, pick), drop)));
  return plus(times(mass, share), isUp ? exact(the.hem) : NONE);
};

const exactly = (the: Typed, side: 'above' | 'below'): Exact => {
  const height = exact(the.height);
  const purchase = exact(String(the.purchase));
  const arborTop = minus(exact(the.arborTop), over(minus(height, exact('3')), purchase));
  const wire = minus(arborTop, plus(height, exact(the.chain)));
  const lines = times(exact(String(the.lines)), exact(the.perFoot), wire);
  const pounds = plus(exact(the.batten), carried(the, side), lines);
  const heavy = minus(pounds, over(exact(the.arbor), purchase));
  return times(heavy, POUND_EXACTLY, GRAVITY_EXACTLY);
};

const itemOf = (the: Typed): BalanceItem => {
  const mass = Number(the.mass) * POUND;
  const drop = Number(the.drop) * FOOT;
  const pick = Number(the.pick) * FOOT;
  switch (the.kind) {
    case 'cloth':
      return { kind: 'cloth', mass, drop, tie: pick, hem: Number(the.hem) * POUND };
    case 'tipping':
      return { kind: 'tipping', mass, drop, pick, centre: Number(the.centre) };
    case 'standing':
      return { kind: 'standing', mass, drop, pick };
  }
};

const setOf = (the: Typed): BalanceSet => ({
  purchase: the.purchase,
  lines: the.lines,
  lineMassPerLength: (Number(the.perFoot) * POUND) / FOOT,
  batten: Number(the.batten) * POUND,
  carriage: 0,
  bricks: Number(the.arbor) * POUND,
  lowStop: 3 * FOOT,
  highStop: 61 * FOOT,
  arborTopAtLow: Number(the.arborTop) * FOOT,
  wireEndAbove: Number(the.chain) * FOOT,
  items: [itemOf(the)],
});

it(`VAL-BAL-15 U is the exact fraction, at contacts too (seed ${SEED})`, () => {
  const sets = fc.sample(typed, { seed: SEED, numRuns: 300 });
  const errors = sets.flatMap((the) => {
    const set = setOf(the);
    const heightM = Number(the.height) * FOOT;
    const scaleN = 9.80665 * (set.batten + set.bricks + Number(the.mass) * POUND);
    return [
      Math.abs(imbalanceAt(set, heightM) - asNumber(exactly(the, 'above'))) / scaleN,
      Math.abs(imbalanceBelow(set, heightM) - asNumber(exactly(the, 'below'))) / scaleN,
    ];
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-15', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  const touching = sets.filter(
    ({ drop, pick, height }) => Number(drop) + Number(pick) === Number(height),
  );
  expect(touching.length).toBeGreaterThan(100);
});
