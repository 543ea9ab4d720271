/** The physics of one set for an order of work, from the same balance that every sheet uses. */
import type { BalanceItem, BalanceSet } from '#balance';
import { blocked, type Reckoned } from '#findings';
import { type Arbor, type BrickKind, type House, type LineSet, lockHoldOf } from '#house';
import type { HouseState, OrderGallery, OrderPhysics } from '#state';
import { carriedItem } from '#takeoff';
import { gather, uncertaintyOf } from './plant.ts';
import { type OrderPlant, physicsOfPlant } from './plant-physics.ts';
import type { SetAssessment } from './types.ts';

/**
 * Everything that a search for an order, or a judge of one, asks of a set; blocked where a value is
 * not known.
 *
 * Source  `physicsOfPlant`, of the set as house, show and state have it
 */
export const orderPhysicsOf = (
  { lineSet, takeoffs, bare }: SetAssessment,
  house: House,
  state: HouseState | null,
): Reckoned<OrderPhysics> => {
  if (!bare.known) return bare;
  const { arbor } = lineSet;
  if (arbor === null) return blocked(['arbor']);
  const got = gather();
  const balance = bare.value.set;
  if (balance.battenUncertainty === undefined) got.need('tolerance of the batten');
  if (balance.carriageUncertainty === undefined) got.need('tolerance of the arbor without bricks');
  const plant: OrderPlant = {
    set: lineSet.id,
    balance,
    items: itemsOf(takeoffs, got),
    bricks: bricksOf(house, got),
    spreader: spreaderOf(house, got),
    friction: {
      share: got.number(house.rules.frictionShare, 'share of friction'),
      constantN: got.number(house.rules.frictionConstant, 'constant of friction'),
    },
    ...arborOf(arbor, got),
    ...numbersOf(lineSet, house, balance, got),
    galleries: galleriesOf(house, state, got),
  };
  return got.give(() => physicsOfPlant(plant));
};

type Got = ReturnType<typeof gather>;

const arborOf = (
  { panAtLow, panThickness, usableRod, massLimit }: Arbor,
  got: Got,
): Pick<OrderPlant, 'panAtLowM' | 'panThicknessM' | 'rodM' | 'arborMassLimitKg'> => ({
  panAtLowM: got.number(panAtLow, 'height of the arbor with the batten in'),
  panThicknessM: got.number(panThickness, 'thickness of the pan'),
  rodM: got.number(usableRod, 'usable rod'),
  arborMassLimitKg: massLimit.known ? massLimit.value : null,
});

/** Stops, working height, lock and hands. */
const numbersOf = (
  lineSet: LineSet,
  { rules }: House,
  set: BalanceSet,
  got: Got,
): Pick<
  OrderPhysics,
  'lowStop' | 'highStop' | 'workingM' | 'lockLimitN' | 'handsBriefN' | 'handsSteadyN'
> => {
  const people = got.number(rules.peoplePerHandLine, 'people on a hand line');
  return {
    lowStop: {
      heightM: set.lowStop,
      ratedN: got.number(lineSet.lowStop.rated, 'rating of the low stop'),
    },
    highStop: {
      heightM: set.highStop,
      ratedN: got.number(lineSet.highStop.rated, 'rating of the high stop'),
    },
    workingM: got.number(lineSet.workingHeight, 'working height'),
    lockLimitN: got.number(lockHoldOf(lineSet, rules), 'what the lock holds'),
    handsBriefN: people * got.number(rules.pullBrief, 'brief pull of one person'),
    handsSteadyN: people * got.number(rules.pullSteady, 'steady pull of one person'),
  };
};

const itemsOf = (
  takeoffs: SetAssessment['takeoffs'],
  got: Got,
): ReadonlyMap<string, BalanceItem> => {
  const items = new Map<string, BalanceItem>();
  for (const takeoff of takeoffs) {
    const carried = carriedItem(takeoff.item, takeoff);
    if (carried.known) {
      items.set(takeoff.item.id, carried.value);
      for (const need of doubtsUnsaidOf(carried.value)) got.need(`${takeoff.item.name}: ${need}`);
    } else for (const need of carried.needs) got.need(`${takeoff.item.name}: ${need}`);
  }
  return items;
};

/** At its worst a mass needs to be known to so much; one of which nobody has said is not exact. */
const doubtsUnsaidOf = (item: BalanceItem): readonly string[] => [
  ...(item.uncertainty === undefined ? ['tolerance'] : []),
  ...(item.kind === 'cloth' && item.hem > 0 && item.hemUncertainty === undefined
    ? ['tolerance of what is in its hem']
    : []),
];

const bricksOf = ({ brickKinds, rules }: House, got: Got): OrderPlant['bricks'] =>
  brickKinds.map((kind) => {
    const massKg = got.number(kind.mass, `mass of brick ${kind.id}`);
    const thicknessM = got.number(kind.thickness, `thickness of brick ${kind.id}`);
    const doubtKg = uncertaintyOf(kind.mass, rules);
    if (doubtKg === null) got.need(`tolerance of brick ${kind.id}`);
    const looksLike = takenFor(kind, brickKinds);
    return { id: kind.id, massKg, thicknessM, looksLike, doubtKg: doubtKg ?? 0 };
  });

/** Two kinds look alike whichever of them says so. */
const takenFor = ({ id, looksLike }: BrickKind, kinds: House['brickKinds']): readonly string[] =>
  kinds
    .filter((other) => looksLike.includes(other.id) || other.looksLike.includes(id))
    .map((other) => other.id);

/** A carriage that has the plates in its mass needs no mass of one. */
const spreaderOf = ({ spreader }: House, got: Got): OrderPlant['spreader'] => {
  if (spreader === null) return null;
  return {
    massKg: spreader.inCarriage ? 0 : got.number(spreader.mass, 'mass of a spreader plate'),
    thicknessM: got.number(spreader.thickness, 'thickness of a spreader plate'),
    everyM: got.number(spreader.every, 'spacing of spreader plates'),
    rule: 'floor',
  };
};

const galleriesOf = (
  { galleries }: House,
  state: HouseState | null,
  got: Got,
): readonly OrderGallery[] =>
  galleries.map((gallery) => {
    const floorM = got.number(gallery.floor, `floor of the ${gallery.name}`);
    return {
      id: gallery.id,
      name: gallery.name,
      floorM,
      reachFromM: floorM + got.number(gallery.reachLow, `lowest reach at the ${gallery.name}`),
      reachToM: floorM + got.number(gallery.reachHigh, `highest reach at the ${gallery.name}`),
      stock: state?.galleries[gallery.id]?.stock ?? {},
    };
  });
