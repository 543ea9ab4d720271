import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, imbalanceBelow } from '#balance';
import { FOOT, POUND } from '#quantities';
import { type Draw, drawn, type Make } from '../../draw.ts';
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
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';

const SEED = 20_275;

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

const quarters = ({ whole }: Draw, from: number, to: number): string =>
  (whole(from * 4, to * 4) / 4).toFixed(2);
const hundredths = ({ whole }: Draw, from: number, to: number): string =>
  (whole(from * 100, to * 100) / 100).toFixed(2);

/** Every second one at the very height at which the piece lifts. */
const typed: Make<Typed> = (draw) => {
  const [drop, pick] = [quarters(draw, 4, 35), quarters(draw, 0, 3)];
  return {
    purchase: draw.oneOf([1, 2]),
    lines: draw.whole(3, 9),
    perFoot: draw.oneOf(['0.11', '0.065', '0.173']),
    batten: quarters(draw, 100, 250),
    arbor: quarters(draw, 150, 1200),
    arborTop: quarters(draw, 60, 70),
    chain: quarters(draw, 0, 3),
    kind: draw.oneOf(['cloth', 'tipping', 'standing']),
    mass: quarters(draw, 20, 700),
    hem: quarters(draw, 0, 60),
    drop,
    pick,
    centre: hundredths(draw, 0, 1),
    height: draw.chance(0.5) ? (Number(drop) + Number(pick)).toFixed(2) : quarters(draw, 3, 61),
  };
};

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

export const theCase: ValidationCase = {
  id: 'VAL-BAL-15',
  title: 'Imbalance in exact fractions of pounds and feet',
  calculation: 'balance',
  unit: 'relative',
  tolerance: 1e-13,
  run: () => {
    const sets = drawn(typed, { seed: SEED, count: 300 });
    const touching = sets.filter(
      ({ drop, pick, height }) => Number(drop) + Number(pick) === Number(height),
    );
    enough(touching, 101);
    return sets.flatMap((the) => {
      const set = setOf(the);
      const heightM = Number(the.height) * FOOT;
      const scaleN = 9.80665 * (set.batten + set.bricks + Number(the.mass) * POUND);
      return [
        Math.abs(imbalanceAt(set, heightM) - asNumber(exactly(the, 'above'))) / scaleN,
        Math.abs(imbalanceBelow(set, heightM) - asNumber(exactly(the, 'below'))) / scaleN,
      ];
    });
  },
};
