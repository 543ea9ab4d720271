import type { Reckoned } from '#findings';
import { blocked, reckoned } from '#findings';
import type { Refusal } from '#outcome';
import { unreachable } from '#outcome';
import type { Kilograms, Metres } from '#quantities';
import { kilograms, metres } from '#quantities';
import type { Item, Placement } from '#show';
import type { TakenMass, TakeoffLine } from './line.ts';
import { refuse } from './refusal-codes.ts';
import { isPlaced } from './units.ts';

/** A mass at one x, or spread evenly between two; x positive to stage left. */
export type BattenLoad =
  | { readonly x: Metres; readonly massKg: Kilograms }
  | { readonly from: Metres; readonly to: Metres; readonly massKg: Kilograms };

export type Weighed = {
  readonly lines: readonly TakeoffLine[];
  readonly total: Reckoned<TakenMass>;
};

/**
 * What an item puts where along its batten, its whole mass hanging; loads in order across the
 * stage, points first.
 *
 *     m_i = m / n      at each of n picks
 *     q   = m / (b − a)  between a and b, spread evenly
 *
 * Units with positions of their own hang there; the rest goes where the item's placement says.
 *
 * Source  equal sharing, common practice, no source
 * Holds   the mass is known, every part has a place
 * Omits   that a stiff piece on three picks or more shares by its stiffness and trim, so that one
 *         pick may carry far more than its share; for a loom, that only part of it hangs
 * Check   VAL-TKO-13
 */
export const loadsAlongBatten = (
  item: Item,
  { lines, total }: Weighed,
): Reckoned<readonly BattenLoad[]> => {
  if (!total.known) return blocked(total.needs);
  const faults = positionFaults(item);
  if (faults.length > 0) return blocked(faults.map(needOfFault));
  const placed = lines.flatMap(({ xs, eachKg }) =>
    (xs ?? []).map((x) => ({ x, massKg: eachKg ?? 0 })),
  );
  const loose = lines.filter(({ xs }) => xs === null);
  if (loose.length > 0 && item.placement === null) return blocked([placeNeed(loose)]);
  const looseKg = loose.reduce((sum, { totalKg }) => sum + (totalKg ?? 0), 0);
  const resting =
    item.placement === null || loose.length === 0 ? [] : placedLoads(item.placement, looseKg);
  const points = [...placed, ...resting.filter((load) => 'x' in load)];
  return reckoned([...merged(points), ...resting.filter((load) => 'from' in load)]);
};

/**
 * Where the mass of an item lies across the stage.
 *
 *     x̄ = Σ m · x / Σ m
 *
 * Source  centre of parallel forces; a spread load acts at its middle
 * Holds   Σ m > 0; where all parts go by the item's placement, the mass need not be known
 * Omits   nothing beyond the placement itself
 * Check   VAL-TKO-13
 */
export const centreAcross = (item: Item, weighed: Weighed): Reckoned<Metres> => {
  const { placement } = item;
  const faults = positionFaults(item);
  if (faults.length > 0) return blocked(faults.map(needOfFault));
  if (placement !== null && weighed.lines.every(({ xs }) => xs === null)) {
    return reckoned(centreOf(placedLoads(placement, 1)));
  }
  const loads = loadsAlongBatten(item, weighed);
  if (!loads.known) return loads;
  if (loads.value.every(({ massKg }) => massKg === 0)) return blocked(['mass (takeoff): found 0']);
  return reckoned(centreOf(loads.value));
};

/** Positions that are no numbers, or not one for each unit. */
export const positionFaults = ({ takeoff, placement }: Item): readonly Refusal[] => {
  const units = takeoff.by === 'units' ? takeoff.units : [];
  const rows = units.flatMap((unit, index) =>
    unit.xs === null || isPlaced(unit)
      ? []
      : [
          refuse('positions', `takeoff.units[${index}].xs`, {
            found: `${unit.xs.length} positions (${unit.xs.join(', ')})`,
            accepted: `${unit.count} finite numbers, one for each unit`,
          }),
        ],
  );
  return [...rows, ...(placement === null ? [] : placementFaults(placement))];
};

const placementFaults = (placement: Placement): readonly Refusal[] => {
  const xs = endsOf(placement);
  if (xs.length > 0 && xs.every(Number.isFinite)) return [];
  const found = xs.length === 0 ? 'no position' : xs.join(', ');
  return [refuse('positions', 'placement', { found, accepted: 'one finite number or more' })];
};

const endsOf = (placement: Placement): readonly number[] => {
  switch (placement.at) {
    case 'points':
      return placement.xs;
    case 'spread':
      return [placement.from, placement.to];
    default:
      return unreachable(placement);
  }
};

const needOfFault = ({ path, found, accepted }: Refusal): string =>
  `position across the stage (${path}): found ${found}, wanted ${accepted}`;

const placeNeed = (lines: readonly TakeoffLine[]): string =>
  `position across the stage of ${lines.map(({ name }) => name).join(', ')} (placement): not given`;

const placedLoads = (placement: Placement, massKg: number): readonly BattenLoad[] => {
  switch (placement.at) {
    case 'points':
      return placement.xs.map((x) => ({ x, massKg: kilograms(massKg / placement.xs.length) }));
    case 'spread': {
      const from = metres(Math.min(placement.from, placement.to));
      const to = metres(Math.max(placement.from, placement.to));
      return [from === to ? { x: from, massKg: kilograms(massKg) } : spread(from, to, massKg)];
    }
    default:
      return unreachable(placement);
  }
};

const spread = (from: Metres, to: Metres, massKg: number): BattenLoad => ({
  from,
  to,
  massKg: kilograms(massKg),
});

/** A unit and its clamp pull at one x: one load. */
const merged = (
  points: readonly { readonly x: Metres; readonly massKg: number }[],
): readonly BattenLoad[] => {
  const byX = new Map<Metres, number>();
  for (const { x, massKg } of points) byX.set(x, (byX.get(x) ?? 0) + massKg);
  return [...byX]
    .toSorted(([one], [other]) => one - other)
    .map(([x, massKg]) => ({ x, massKg: kilograms(massKg) }));
};

const centreOf = (loads: readonly BattenLoad[]): Metres => {
  const massKg = loads.reduce((sum, load) => sum + load.massKg, 0);
  const momentKgM = loads.reduce(
    (sum, load) => sum + load.massKg * ('x' in load ? load.x : (load.from + load.to) / 2),
    0,
  );
  return metres(momentKgM / massKg);
};
