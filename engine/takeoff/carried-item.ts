import type { Reckoned } from '#findings';
import { blocked, reckoned } from '#findings';
import { unreachable } from '#outcome';
import { kilograms } from '#quantities';
import type { CarriedItem, Item } from '#show';
import type { Figure } from './figure.ts';
import { dropOf, givenCentreOf, loomEndOf, pickOf } from './item-sizes.ts';
import type { TakenMass } from './line.ts';
import { unique } from './line.ts';
import type { ItemTakeoff } from './take-off.ts';

/**
 * What the balance needs to know of an item, or what is missing for it. An item whose lowest
 * point is not known is not taken for clear of the deck. A piece that carries a person is out of
 * scope and is never carried.
 *
 * Source  the-job.md C16 to C21; calculations.md, `compute balance`
 */
export const carriedItem = (item: Item, takeoff: ItemTakeoff): Reckoned<CarriedItem> => {
  if (item.carriesPerson) return blocked([PERSON]);
  switch (item.kind) {
    case 'clear':
    case 'standing':
      return hung(item, takeoff, item.kind);
    case 'tipping':
      return tipping(item, takeoff);
    case 'cloth':
      return cloth(item, takeoff);
    case 'loom':
    case 'deckLoom':
      return loom(item, takeoff, item.kind);
    default:
      return unreachable(item.kind);
  }
};

const PERSON = 'another method (carriesPerson): a piece that carries a person is out of scope here';

const hung = (
  item: Item,
  { total }: ItemTakeoff,
  kind: 'clear' | 'standing',
): Reckoned<CarriedItem> => {
  const drop = dropOf(item);
  const pick = pickOf(item);
  if (!total.known || drop.value === null || pick.value === null) {
    return blocked(needsOf([total], [drop, pick]));
  }
  const { massKg } = total.value;
  const sizes = { mass: massKg, drop: drop.value, pick: pick.value };
  return reckoned({ kind, ...sizes, ...uncertaintyOf(total.value) });
};

/** A centre that was measured stands before one that is worked out from parts. */
const tipping = (item: Item, takeoff: ItemTakeoff): Reckoned<CarriedItem> => {
  const { total } = takeoff;
  const drop = dropOf(item);
  const pick = pickOf(item);
  const centre = centreOf(item, takeoff);
  if (
    !total.known ||
    !centre.known ||
    drop.value === null ||
    drop.value === 0 ||
    pick.value === null
  ) {
    return blocked(unique([...needsOf([total, centre], [drop, pick]), ...flatNeeds(drop)]));
  }
  return reckoned({
    kind: 'tipping',
    mass: total.value.massKg,
    drop: drop.value,
    pick: pick.value,
    centre: centre.value,
    ...uncertaintyOf(total.value),
  });
};

const centreOf = (item: Item, takeoff: ItemTakeoff): Reckoned<number> => {
  const given = givenCentreOf(item);
  if (given.value !== null) return reckoned(given.value);
  const isWrong = given.faults.length > 0;
  return isWrong || takeoff.centre === null ? blocked(given.needs) : takeoff.centre;
};

const cloth = (item: Item, takeoff: ItemTakeoff): Reckoned<CarriedItem> => {
  const { mass } = takeoff;
  const hem = takeoff.hem ?? NO_HEM;
  const drop = dropOf(item);
  const tie = pickOf(item);
  if (!mass.known || !hem.known || drop.value === null || drop.value === 0 || tie.value === null) {
    return blocked(unique([...needsOf([mass, hem], [drop, tie]), ...flatNeeds(drop)]));
  }
  const { massKg: hemKg, uncertaintyKg: hemUncertaintyKg } = hem.value;
  return reckoned({
    kind: 'cloth',
    mass: mass.value.massKg,
    drop: drop.value,
    tie: tie.value,
    hem: hemKg,
    ...uncertaintyOf(mass.value),
    ...(hemUncertaintyKg === null ? {} : { hemUncertainty: hemUncertaintyKg }),
  });
};

/** The take-off says that there is nothing in the hem: it is known, and nothing. */
const NO_HEM: Reckoned<Pick<TakenMass, 'massKg' | 'uncertaintyKg'>> = reckoned({
  massKg: kilograms(0),
  uncertaintyKg: kilograms(0),
});

const loom = (
  { takeoff }: Item,
  { mass }: ItemTakeoff,
  kind: 'loom' | 'deckLoom',
): Reckoned<CarriedItem> => {
  if (takeoff.by !== 'loom') return blocked([NOT_BY_LENGTH]);
  const end = loomEndOf(takeoff.fixedAt);
  const needs = needsOf([mass], kind === 'loom' ? [end] : []);
  const { massPerLength, length } = takeoff;
  if (!mass.known || !massPerLength.known || !length.known) return blocked(needs);
  const run = {
    massPerLength: massPerLength.value,
    length: length.value,
    ...uncertaintyOf(mass.value),
  };
  if (kind === 'deckLoom') {
    return end.value ? blocked([NOT_TO_DECK]) : reckoned({ kind, ...run });
  }
  return end.value === null ? blocked(needs) : reckoned({ kind, ...run, fixedAt: end.value });
};

const NOT_BY_LENGTH = 'mass per length and length of the loom (takeoff): it is not taken off so';

const NOT_TO_DECK =
  'far end of the loom (takeoff.fixedAt): above the deck, on a loom that goes to the deck';

/** A piece without height tips nothing and piles nothing up: somebody left its drop at 0. */
const flatNeeds = ({ value }: Figure): readonly string[] =>
  value === 0 ? ['drop, from its top to its lowest point (drop): found 0 m'] : [];

const needsOf = (
  parts: readonly Reckoned<unknown>[],
  figures: readonly Figure[],
): readonly string[] =>
  unique([
    ...parts.flatMap((part) => (part.known ? [] : part.needs)),
    ...figures.flatMap(({ needs }) => needs),
  ]);

const uncertaintyOf = ({ uncertaintyKg }: TakenMass): { readonly uncertainty?: number } =>
  uncertaintyKg === null ? {} : { uncertainty: uncertaintyKg };
