/** What the pair can do next: a deed of one set, a flight of one, or a flight of both. */
import { assert } from '#outcome';
import { metres } from '#quantities';
import type { OrderPhysics, Standing, Step } from '#state';
import { SAME_M } from '../span.ts';
import {
  apartOf,
  type Coupling,
  couplingOf,
  endsHalf,
  isInBand,
  otherOf,
  SIDES,
  type Side,
} from './coupling.ts';
import type { Course } from './course.ts';
import { canFlyTo, isHeldWithShare, raised } from './holding.ts';
import { givenAfter, isInStock } from './stock.ts';
import type { PairBand, PairState, SharedPiece } from './types.ts';

export type Match = {
  readonly courses: Readonly<Record<Side, Course>>;
  readonly physics: Readonly<Record<Side, OrderPhysics>>;
  readonly shared: readonly SharedPiece[];
  readonly band: PairBand;
  readonly doubtShare: number;
};

/** So many deeds of each order are done, and here the battens are. */
export type Spot = {
  readonly done: Readonly<Record<Side, number>>;
  readonly heightM: Readonly<Record<Side, number>>;
};

export type Act =
  | { readonly act: 'deed'; readonly side: Side; readonly step: Step }
  | { readonly act: 'together'; readonly toM: Readonly<Record<Side, number>> };

export type Next = { readonly act: Act; readonly spot: Spot };

/** Zones apart, which are the pair's own. */
export const standingsAt = ({ courses }: Match, { done, heightM }: Spot): PairState => {
  const at = (side: Side) => {
    const point = courses[side].points[done[side]] ?? courses[side].points[0];
    assert(point !== undefined, 'an order has a start');
    return raised(point.standing, heightM[side]);
  };
  return { first: at('first'), second: at('second') };
};

export const nextOf = (match: Match, spot: Spot): readonly Next[] => {
  const coupling = couplingOf(match.shared, standingsAt(match, spot));
  const deeds = SIDES.flatMap((side) => deedOf(match, spot, side, coupling));
  if (coupling.half.length > 0) return deeds;
  return coupling.on.length > 0
    ? [...deeds, ...flightsOfBoth(match, spot)]
    : [...deeds, ...SIDES.flatMap((side) => flightOfOne(match, spot, side))];
};

const plannedM = ({ courses }: Match, { done }: Spot, side: Side): number | undefined =>
  courses[side].points[done[side]]?.standing.height;

const isAtPlan = (match: Match, spot: Spot, side: Side): boolean =>
  Math.abs((plannedM(match, spot, side) ?? Number.NaN) - spot.heightM[side]) <= SAME_M;

/** One thing done at rest, where the order of that set has it. */
const deedOf = (match: Match, spot: Spot, side: Side, coupling: Coupling): readonly Next[] => {
  const step = match.courses[side].deeds[spot.done[side]]?.step;
  if (step === undefined || step.act === 'fly' || !isAtPlan(match, spot, side)) return [];
  if (coupling.half.length > 0 && !endsHalf(coupling, side, step)) return [];
  const next: Spot = { ...spot, done: { ...spot.done, [side]: spot.done[side] + 1 } };
  if (step.act === 'add' && !bothInStock(match, next, step)) return [];
  const standings = standingsAt(match, next);
  const after = couplingOf(match.shared, standings);
  if (after.on.length > 0 && !isInBand(match.band, apartOf(standings))) return [];
  if (!isHalfHeld(match, standings, after)) return [];
  if (isAtBatten(step) && !isHeldIfLetGo(match, standings, side)) return [];
  return [{ act: { act: 'deed', side, step }, spot: next }];
};

export const isAtBatten = ({ act }: Step): boolean =>
  act === 'attach' || act === 'release' || act === 'takeUp' || act === 'rest';

const bothInStock = (
  { courses, physics }: Match,
  { done }: Spot,
  step: { readonly gallery: string; readonly kind: string },
): boolean => {
  const given = (side: Side) =>
    givenAfter(courses[side].deeds.map((deed) => deed.step))[done[side]];
  return isInStock(physics.first, [given('first'), given('second')], step);
};

/** Half on, nobody knows its share: the set that has it is held with none of it and with all. */
const isHalfHeld = (match: Match, standings: PairState, { half }: Coupling): boolean =>
  SIDES.every((side) => {
    const pieces = half.filter(({ has }) => has === side).map(({ piece }) => piece);
    return isHeldWith(match, standings[side], { side, pieces, share: 'any' });
  });

/** With hands on one set a piece may be let go there, and the other one has all of it. */
export const isHeldIfLetGo = (match: Match, standings: PairState, at: Side): boolean => {
  const side = otherOf(at);
  const { on } = couplingOf(match.shared, standings);
  return isHeldWith(match, standings[side], { side, pieces: on, share: 'all' });
};

type Sharing = {
  readonly side: Side;
  readonly pieces: readonly SharedPiece[];
  readonly share: 'all' | 'any';
};

const isHeldWith = (
  { physics, doubtShare }: Match,
  standing: Standing,
  { side, pieces, share }: Sharing,
): boolean => {
  if (pieces.length === 0) return true;
  const wholeN = pieces.reduce(
    (sum, { first, second }) =>
      sum + physics.first.itemMostN(first) + physics.second.itemMostN(second),
    0,
  );
  const items = pieces.map((piece) => piece[side]);
  return isHeldWithShare({ physics: physics[side], doubtShare }, standing, {
    items,
    wholeN,
    share,
  });
};

type Going = { readonly toM: number; readonly done: number };

/** Where its own order takes a set next: on its flight, or back to where it has work to do. */
const goingOf = (match: Match, spot: Spot, side: Side): readonly Going[] => {
  const { deeds } = match.courses[side];
  const done = spot.done[side];
  const step = deeds[done]?.step;
  const standing = standingsAt(match, spot)[side];
  const holding = { physics: match.physics[side], doubtShare: match.doubtShare };
  const isThere = isAtPlan(match, spot, side);
  const back = plannedM(match, spot, side);
  const going: Going[] = [];
  if (step?.act === 'fly' && (isThere || canFlyTo(holding, standing, step.to))) {
    going.push({ toM: step.to, done: done + 1 });
  }
  if (!isThere && back !== undefined && canFlyTo(holding, standing, back)) {
    going.push({ toM: back, done });
  }
  return going;
};

const flightOfOne = (match: Match, spot: Spot, side: Side): readonly Next[] =>
  goingOf(match, spot, side).map(({ toM, done }) => ({
    act: { act: 'deed', side, step: { act: 'fly', to: metres(toM) } },
    spot: {
      done: { ...spot.done, [side]: done },
      heightM: { ...spot.heightM, [side]: toM },
    },
  }));

const flightsOfBoth = (match: Match, spot: Spot): readonly Next[] => {
  const going = { first: goingOf(match, spot, 'first'), second: goingOf(match, spot, 'second') };
  const both = going.first.flatMap((first) =>
    going.second.map((second) => together(match, { first, second })),
  );
  const ridden = SIDES.flatMap((side) =>
    going[side].flatMap((goes) =>
      ridesOf(match, spot, otherOf(side), goes.toM).map((toM) => {
        const rides = { toM, done: spot.done[otherOf(side)] };
        return together(
          match,
          side === 'first' ? { first: goes, second: rides } : { first: rides, second: goes },
        );
      }),
    ),
  );
  return [...both, ...ridden].filter((next) => next !== null);
};

const together = (
  { band }: Match,
  { first, second }: Readonly<Record<Side, Going>>,
): Next | null => {
  if (!isInBand(band, second.toM - first.toM)) return null;
  const heightM = { first: first.toM, second: second.toM };
  return {
    act: { act: 'together', toM: heightM },
    spot: { done: { first: first.done, second: second.done }, heightM },
  };
};

/**
 * Where a set may go only because the other one goes: as far apart as before, or as near to that
 * as the band has it; or else as little as the band has it.
 */
const ridesOf = (match: Match, spot: Spot, side: Side, otherToM: number): readonly number[] => {
  const { leastM, mostM } = match.band;
  const [lo, hi] =
    side === 'second'
      ? [otherToM + leastM, otherToM + mostM]
      : [otherToM - mostM, otherToM - leastM];
  const wasM = spot.heightM[side];
  const paceM = wasM + otherToM - spot.heightM[otherOf(side)];
  const standing = standingsAt(match, spot)[side];
  const holding = { physics: match.physics[side], doubtShare: match.doubtShare };
  const within = [paceM, wasM].map((heightM) => Math.min(Math.max(heightM, lo), hi));
  return [...new Set(within)].filter((toM) => canFlyTo(holding, standing, toM));
};
