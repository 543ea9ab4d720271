import { type BalanceSet, balanceCurve, extremesOf, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { outside } from '../../unlike.ts';

const BARE: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0.4,
  batten: 80,
  carriage: 47.126,
  bricks: 100,
  lowStop: 1.003,
  highStop: 19.004,
  // 20 − (h − 1.003) − h at the wire's ends, less the 1.003 m put back here.
  arborTopAtLow: 18.997,
  wireEndAbove: 0,
  items: [],
};
const WITH_PIECE: BalanceSet = {
  ...BARE,
  items: [{ kind: 'standing', mass: 100, drop: 6, pick: 0.437 }],
};

const kilograms = (imbalanceN: number): number => imbalanceN / GRAVITY;
const extremes = (set: BalanceSet) => {
  const { least, most } = extremesOf(balanceCurve(set).nodes);
  return [least, most].map(({ height, imbalance }) => [height, kilograms(imbalance)] as const);
};

const WANTED = [
  [6.437, -52.874],
  [6.437, 47.126],
  [19.004, -103.142],
  [1.003, -31.138],
] as const;
const found = () => [...extremes(WITH_PIECE), ...extremes(BARE)];

const tableEvery = (stepM: number): readonly number[] =>
  Array.from({ length: Math.floor(18 / stepM) }, (_, index) => 2 + index * stepM)
    .filter((heightM) => heightM <= BARE.highStop)
    .map((heightM) => kilograms(imbalanceAt(WITH_PIECE, heightM)));

export const theCase: ValidationCase = {
  id: 'VAL-BAL-16',
  title: 'The worst imbalance lies at a jump between two heights of a table',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 1e-6,
  run: () => found().map(([, kg], index) => Math.abs(kg - (WANTED[index]?.[1] ?? Number.NaN))),
  also: [
    {
      what: 'heights of the extremes',
      unit: 'm',
      // As their six decimals are written.
      tolerance: 5e-7,
      run: () =>
        found().map(([heightM], index) => Math.abs(heightM - (WANTED[index]?.[0] ?? Number.NaN))),
    },
    {
      what: 'a table of heights misses them, so that the case is no easy one',
      unit: 'kg outside',
      tolerance: 0,
      run: () => [1, 0.1, 0.01].flatMap(tableEvery).map((kg) => outside(kg, -52.8739, 47.1259)),
    },
  ],
};
