/** Values of U on the travel that a card must show, and the worst among them. */
import type { SetPlan } from '#assessment';
import type { BalanceCurve, BalanceSet } from '#balance';
import { stretchesOf } from '#drawings';

/** Below and above a height where a piece meets the deck; `at` where the curve is whole. */
export type Side = 'below' | 'at' | 'above';

export type Reading = {
  readonly heightM: number;
  readonly side: Side;
  readonly valueN: number;
  readonly doubtN: number;
  /** An edge of what a piece that rests on the deck leaves open, and not the curve itself. */
  readonly isResting?: boolean;
};

const sideAt = (curve: BalanceCurve, heightM: number, side: Side): Side =>
  curve.jumps.some(({ height }) => height === heightM) ? side : 'at';

/**
 * Both ends of every straight piece of the curve, and both edges where a resting piece leaves the
 * value open. What lies below the low stop is no part of the travel.
 */
export const readingsOf = (set: BalanceSet, curve: BalanceCurve): readonly Reading[] =>
  stretchesOf(set, curve).flatMap(({ fromM, toM, from, to }) => [
    ...[...new Set([from.valueN, from.lowN, from.highN])].map((valueN) => ({
      heightM: fromM,
      side: fromM === set.lowStop ? ('at' as const) : sideAt(curve, fromM, 'above'),
      valueN,
      doubtN: from.doubtN,
      isResting: valueN !== from.valueN,
    })),
    ...[...new Set([to.valueN, to.lowN, to.highN])].map((valueN) => ({
      heightM: toM,
      side: sideAt(curve, toM, 'below'),
      valueN,
      doubtN: to.doubtN,
      isResting: valueN !== to.valueN,
    })),
  ]);

const greater = (size: (reading: Reading) => number) => (one: Reading, other: Reading) =>
  size(other) > size(one) ? other : one;

export type Worst = {
  readonly any: Reading;
  /** The worst each way; a set that never tips one way has its least there. */
  readonly arborHeavy: Reading;
  readonly battenHeavy: Reading;
  /** The largest size with every mass at its worst. */
  readonly withDoubt: Reading;
};

/** Null only for a curve without a travel. */
export const worstOf = (readings: readonly Reading[]): Worst | null => {
  const first = readings[0];
  if (first === undefined) return null;
  return {
    any: readings.reduce(
      greater(({ valueN }) => Math.abs(valueN)),
      first,
    ),
    arborHeavy: readings.reduce(
      greater(({ valueN }) => -valueN),
      first,
    ),
    battenHeavy: readings.reduce(
      greater(({ valueN }) => valueN),
      first,
    ),
    withDoubt: readings.reduce(
      greater(({ valueN, doubtN }) => Math.abs(valueN) + doubtN),
      first,
    ),
  };
};

const SAME_M = 1e-6;

export type NamedReading = Reading & { readonly name: string };

const at = (readings: readonly Reading[], heightM: number, side: Side): Reading | undefined =>
  readings.find(
    (each) =>
      Math.abs(each.heightM - heightM) <= SAME_M && (each.side === side || each.side === 'at'),
  );

/** A height of the plan by its name, on both sides where something meets the deck there. */
const namedAt = (plan: SetPlan, name: string, heightM: number): readonly NamedReading[] => {
  const { curve, set } = plan;
  const node = curve.nodes.find((each) => Math.abs(each.height - heightM) <= SAME_M);
  const trim = plan.trims.find((each) => Math.abs(each.height - heightM) <= SAME_M);
  const above = node?.above ?? trim?.imbalance;
  if (above === undefined) return [];
  const below = node?.below ?? trim?.below ?? above;
  const doubtN = node?.uncertainty ?? trim?.uncertainty ?? 0;
  const isJump = below !== above && heightM > set.lowStop + SAME_M;
  const upper: NamedReading = {
    name,
    heightM,
    side: isJump ? 'above' : 'at',
    valueN: above,
    doubtN,
  };
  return isJump ? [upper, { ...upper, side: 'below', valueN: below }] : [upper];
};

const isNew = (found: readonly NamedReading[], { heightM, side, valueN }: Reading): boolean =>
  !found.some(
    (each) =>
      Math.abs(each.heightM - heightM) <= SAME_M && each.side === side && each.valueN === valueN,
  );

const extremeName = ({ heightM, isResting }: Reading, highStopM: number): string => {
  if (isResting === true) return 'resting';
  return Math.abs(heightM - highStopM) <= SAME_M ? 'high stop' : 'at';
};

/**
 * The rows of a card from the highest down: each trim, each height at which something meets the
 * deck, working height, the low stop, and the worst each way where none of these is it.
 */
export const cardReadings = (plan: SetPlan): readonly NamedReading[] => {
  const { set, curve, trims, working } = plan;
  const readings = readingsOf(set, curve);
  const worst = worstOf(readings);
  const planned = trims.flatMap(({ trim, height }) => namedAt(plan, trim.name, height));
  const jumps = curve.jumps
    .filter(({ height }) => height > set.lowStop + SAME_M)
    .flatMap(({ height }) => namedAt(plan, '', height))
    .filter((reading) => isNew(planned, reading));
  const low = at(readings, set.lowStop, 'at');
  const ends: readonly NamedReading[] = [
    ...(working === null
      ? []
      : [
          {
            name: 'working',
            heightM: working.height,
            side: 'at' as const,
            valueN: working.imbalance,
            doubtN: 0,
          },
        ]),
    ...(low === undefined ? [] : [{ ...low, name: 'low stop' }]),
  ];
  const found = [...planned, ...jumps, ...ends];
  const extremes = worst === null ? [] : [worst.arborHeavy, worst.battenHeavy];
  const missing = extremes
    .filter((reading, index) => isNew(found, reading) && extremes.indexOf(reading) === index)
    .map((reading) => ({
      ...reading,
      name: extremeName(reading, set.highStop),
    }));
  const sideOrder = { above: 0, at: 1, below: 2 } as const;
  return [...found, ...missing].toSorted(
    (one, other) => other.heightM - one.heightM || sideOrder[one.side] - sideOrder[other.side],
  );
};
