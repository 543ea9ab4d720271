/** The take-off of one item from plain SI numbers, as `compute takeoff` is asked for it. */
import type { Reckoned, Working } from '#findings';
import type { Basis, Known } from '#house';
import { unknownValue } from '#house';
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { Metres } from '#quantities';
import type { CarriedItem, Item, ItemKind, Placement } from '#show';
import { carriedItem } from './carried-item.ts';
import type { ToleranceByBasis } from './figure.ts';
import type { TakenMass, TakeoffLine } from './line.ts';
import type { BattenLoad } from './loads-along-batten.ts';
import { loadsAlongBatten } from './loads-along-batten.ts';
import type { Amount, Reader, TakeoffNumbers } from './numbers-to-known.ts';
import { amountFaults, knownReader, takeoffOf } from './numbers-to-known.ts';
import { takeOff } from './take-off.ts';

export type TakeoffQuestion = TakeoffNumbers & {
  readonly name?: string;
  /** What the numbers rest on, where one does not say so itself. */
  readonly basis: Basis;
  /** Share by which a number may be off, by its basis, where it does not say so itself. */
  readonly toleranceByBasis?: ToleranceByBasis;
  readonly drop?: Amount;
  readonly pick?: Amount;
  readonly centre?: Amount;
  readonly placement?:
    | { readonly points: readonly number[] }
    | { readonly from: number; readonly to: number };
  /** How it loads the batten as it travels; without it no carried item is worked out. */
  readonly carriedAs?: ItemKind;
};

type MassAnswer = {
  readonly mass: number;
  readonly uncertainty: number | null;
  readonly uncertaintyRss: number | null;
};

export type TakeoffAnswer = {
  readonly mass: MassAnswer | null;
  readonly hem: MassAnswer | null;
  readonly total: MassAnswer | null;
  readonly centre: number | null;
  readonly centreX: number | null;
  readonly loads: readonly BattenLoad[] | null;
  readonly carried: CarriedItem | null;
  readonly lines: readonly TakeoffLine[];
  /** What is missing for each answer that is null. */
  readonly needs: Readonly<Record<string, readonly string[]>>;
  readonly toleranceNeeds: readonly string[];
  readonly working: Working;
};

/**
 * What an item weighs and where, from SI numbers (kg, m, kg/m, kg/m²; shares as parts of one).
 * Errors: every number out of its range, all at once, each with its path.
 *
 * Source  calculations.md section 1; the same arithmetic as `takeOff`
 */
export const takeOffNumbers = (
  question: TakeoffQuestion,
): Result<TakeoffAnswer, readonly Refusal[]> => {
  const item = itemOf(question);
  const takeoff = takeOff(item, { toleranceByBasis: question.toleranceByBasis ?? {} });
  const faults = [...amountFaults(question), ...takeoff.faults.map(inQuestion)];
  if (faults.length > 0) return fail(faults);
  const loads = loadsAlongBatten(item, takeoff);
  const carried = question.carriedAs === undefined ? null : carriedItem(item, takeoff);
  const { hem, centre, centreX, lines, toleranceNeeds, working } = takeoff;
  return ok({
    mass: massAnswer(takeoff.mass),
    hem: hem && massAnswer(hem),
    total: massAnswer(takeoff.total),
    centre: centre && valueOrNull(centre),
    centreX: valueOrNull(centreX),
    loads: valueOrNull(loads),
    carried: carried && valueOrNull(carried),
    lines,
    needs: needsOf({ mass: takeoff.mass, hem, centre, centreX, loads, carried }),
    toleranceNeeds,
    working,
  });
};

const itemOf = (question: TakeoffQuestion): Item => {
  const read = knownReader(question.basis);
  return {
    id: 'item',
    name: question.name ?? 'item',
    kind: question.carriedAs ?? 'clear',
    takeoff: takeoffOf(question, read),
    drop: optional(question.drop, read),
    pick: optional(question.pick, read),
    centre: optional(question.centre, read),
    placement: question.placement === undefined ? null : placementOf(question.placement),
    releases: [],
    carriesPerson: false,
  };
};

const optional = <Quantity extends number>(
  amount: Amount | undefined,
  read: Reader,
): Known<Quantity> => (amount === undefined ? unknownValue() : read<Quantity>(amount));

const placementOf = (placement: NonNullable<TakeoffQuestion['placement']>): Placement =>
  'points' in placement
    ? { at: 'points', xs: placement.points as readonly Metres[] }
    : { at: 'spread', from: placement.from as Metres, to: placement.to as Metres };

/** In the question the numbers of the take-off stand at the top. */
const inQuestion = (fault: Refusal): Refusal => ({
  ...fault,
  path: fault.path.replace(/^takeoff\.?/, ''),
});

const valueOrNull = <Value>(part: Reckoned<Value>): Value | null =>
  part.known ? part.value : null;

const massAnswer = (mass: Reckoned<TakenMass>): MassAnswer | null =>
  mass.known
    ? {
        mass: mass.value.massKg,
        uncertainty: mass.value.uncertaintyKg,
        uncertaintyRss: mass.value.uncertaintyRssKg,
      }
    : null;

const needsOf = (
  parts: Readonly<Record<string, Reckoned<unknown> | null>>,
): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(
    Object.entries(parts).flatMap(([name, part]) =>
      part === null || part.known
        ? []
        : [[name, part.needs.map((need) => need.replace('(takeoff.', '('))]],
    ),
  );
