import type { Reckoned, Working } from '#findings';
import type { HouseRules } from '#house';
import type { Refusal } from '#outcome';
import { unreachable } from '#outcome';
import type { Metres } from '#quantities';
import type { Item } from '#show';
import { composeCloth } from './cloth.ts';
import type { Composition, WorkingDraft } from './composition.ts';
import { finishWorking } from './composition.ts';
import type { ToleranceByBasis } from './figure.ts';
import { composeFrame } from './frame.ts';
import { frameCentre } from './frame-centre.ts';
import { sizeFaults } from './item-sizes.ts';
import type { TakenMass, TakeoffLine } from './line.ts';
import { faultsOf, lineOf, massOf, toleranceNeedsOf, unique } from './line.ts';
import { centreAcross, positionFaults } from './loads-along-batten.ts';
import { composeLoom, composePipe } from './pipe-and-loom.ts';
import { composeHardware, composeUnits } from './units.ts';
import { composeMass } from './whole-mass.ts';

export type ItemTakeoff = {
  readonly item: Item;
  /** All but what is in the hem. For a loom, its full length. */
  readonly mass: Reckoned<TakenMass>;
  /** Pipe or chain in the hem, which leaves the deck all at once; null where there is none. */
  readonly hem: Reckoned<TakenMass> | null;
  readonly total: Reckoned<TakenMass>;
  /** Where the mass lies across the stage. */
  readonly centreX: Reckoned<Metres>;
  /** Centre of gravity above the foot, as a share of the drop; null unless parts give it. */
  readonly centre: Reckoned<number> | null;
  /** The take-off sheet, line by line. */
  readonly lines: readonly TakeoffLine[];
  /** What is missing for the mass, in words with the field; empty where it is known. */
  readonly needs: readonly string[];
  /** What is missing for its uncertainty: until then no worst case can be given. */
  readonly toleranceNeeds: readonly string[];
  /** Values that were not taken, anywhere in the item. */
  readonly faults: readonly Refusal[];
  readonly working: Working;
  readonly hemWorking: Working | null;
  readonly centreWorking: Working | null;
};

/**
 * What an item weighs and where. Masses in kg, x in m. Nothing is taken for granted: a value that
 * is unknown or out of its range leaves the mass unknown, and `needs` names every one of them.
 *
 * Source  the-job.md C9 to C13; each kind's file
 */
export const takeOff = (
  item: Item,
  { toleranceByBasis }: Pick<HouseRules, 'toleranceByBasis'>,
): ItemTakeoff => {
  const made = compose(item, toleranceByBasis);
  const hemDrafts = made.hemDrafts ?? [];
  const drafts = [...made.drafts, ...hemDrafts];
  const listNeeds = made.faults.map(({ path, found, accepted }) => {
    return `lines of the take-off (${path}): found ${found}, wanted ${accepted}`;
  });
  const mass = massOf(made.drafts, listNeeds);
  const hem = made.hemDrafts && massOf(hemDrafts, []);
  const total = massOf(drafts, listNeeds);
  const lines = drafts.map(lineOf);
  const centre = item.takeoff.by === 'frame' ? frameCentre(item.takeoff, item.drop) : null;
  return {
    item,
    mass,
    hem,
    total,
    centreX: centreAcross(item, { lines, total }),
    centre: centre?.centre ?? null,
    lines,
    needs: total.known ? [] : total.needs,
    toleranceNeeds: toleranceNeedsOf(drafts),
    faults: distinct([
      ...made.faults,
      ...faultsOf(drafts),
      ...(centre?.faults ?? []),
      ...sizeFaults(item),
      ...positionFaults(item),
    ]),
    working: worked(made.working, 'm', mass),
    hemWorking: made.hemWorking && worked(made.hemWorking, 'm_hem', hem),
    centreWorking: centre?.working ?? null,
  };
};

const compose = (item: Item, toleranceByBasis: ToleranceByBasis): Composition => {
  const { takeoff } = item;
  switch (takeoff.by) {
    case 'mass':
      return composeMass(takeoff, item.name, toleranceByBasis);
    case 'cloth':
      return composeCloth(takeoff, item.drop, toleranceByBasis);
    case 'frame':
      return composeFrame(takeoff, toleranceByBasis);
    case 'units':
      return composeUnits(takeoff, toleranceByBasis);
    case 'loom':
      return composeLoom(takeoff, toleranceByBasis);
    case 'pipe':
      return composePipe(takeoff, toleranceByBasis);
    case 'hardware':
      return composeHardware(takeoff, toleranceByBasis);
    default:
      return unreachable(takeoff);
  }
};

const worked = (draft: WorkingDraft, symbol: string, mass: Reckoned<TakenMass> | null): Working =>
  finishWorking(draft, symbol, mass?.known ? mass.value : null);

/** One fault a field: the drop of a cloth is read as its size and as its drop. */
const distinct = (faults: readonly Refusal[]): readonly Refusal[] => {
  const keys = unique(faults.map(({ code, path }) => `${code} ${path}`));
  return keys
    .map((key) => faults.find(({ code, path }) => `${code} ${path}` === key))
    .filter((fault) => fault !== undefined);
};
