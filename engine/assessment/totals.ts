/** What bays, wells and galleries carry of all sets together: as planned, bare, and as recorded. */
import { blocked, type Reckoned, reckoned } from '#findings';
import type { Bay, BrickKind, Gallery, House } from '#house';
import {
  arborWireMass,
  bayTotals,
  floorLoad,
  floorRow,
  type SetOnSteel,
  type Total,
  wellTotals,
} from '#lines';
import { unreachable } from '#outcome';
import { GRAVITY, kilograms, metres, newtons } from '#quantities';
import type { HouseState } from '#state';
import { pipeCountOf } from './bricks.ts';
import { gather } from './plant.ts';
import type {
  BayTotal,
  FloorTotal,
  HouseTotals,
  StructureState,
  TotalState,
  WellTotal,
} from './structure-types.ts';
import { TOTAL_STATES } from './structure-types.ts';
import type { SetAssessment } from './types.ts';

/** Totals of a house in every state; a bay or well with one unknown set is unknown, by its name. */
export const totalsOf = (
  house: House,
  sets: readonly SetAssessment[],
  state: HouseState | null,
): HouseTotals => {
  const lined = sets.filter(({ lineSet }) => lineSet.lineXs !== null);
  return {
    bays: house.bays.flatMap((bay) => {
      const inBay = sets.filter(({ lineSet }) => bay.sets.includes(lineSet.id));
      const wire = wireOf(inBay, house);
      return TOTAL_STATES.map((when) => bayTotalOf({ bay, house, inBay, when, wire }));
    }),
    wells: (['planned', 'bare'] as const).flatMap((when) => wellsOf(house, lined, when)),
    floors: house.galleries.flatMap((gallery) => [
      floorOf(gallery, { when: 'recorded', stock: countedStock(gallery, house, state) }),
      floorOf(gallery, { when: 'allBack', stock: everyShowBrick(house) }),
    ]),
    linesOnNoWell: wellTotals(
      lined.map((set) => withLines(set, null)),
      { wells: house.loftWells, movingShare: 0 },
    ).linesOnNoWell.map(({ set, x }) => ({ set, x: metres(x) })),
  };
};

/** Whole arbor in a state; a set that steel holds keeps its pipe weight on the arbor. */
export const arborMassIn = (
  { plan, hang, bare, recorded }: Pick<SetAssessment, 'plan' | 'hang' | 'bare' | 'recorded'>,
  when: TotalState,
): Reckoned<number> => {
  const pipeOnly = bare.known
    ? reckoned<number>(bare.value.set.carriage + bare.value.set.bricks)
    : bare;
  switch (when) {
    case 'recorded':
      return recorded.arborMass;
    case 'bare':
      return pipeOnly;
    case 'planned':
      if (hang === null || hang.items.length === 0 || hang.deadHungAt !== null) return pipeOnly;
      return plan.known ? reckoned<number>(plan.value.stack.arborMass) : plan;
    default:
      return unreachable(when);
  }
};

type BayWork = {
  readonly bay: Bay;
  readonly house: House;
  readonly inBay: readonly SetAssessment[];
  readonly when: TotalState;
  readonly wire: BayTotal['wire'];
};

const bayTotalOf = ({ bay, house, inBay, when, wire }: BayWork): BayTotal => {
  const got = gather();
  const onSteel = inBay.map((set): SetOnSteel => {
    const arbor = arborMassIn(set, when);
    const { id } = set.lineSet;
    if (!arbor.known) got.need(`arbor of set ${id}: ${arbor.needs.join(', ')}`);
    const arborMass = arbor.known ? arbor.value : 0;
    const handLineMass = got.number(set.lineSet.lift.handLineMass, `hand line of set ${id}`);
    return { ...withLines(set, bay.id), arborMass, handLineMass };
  });
  const known = got.give(() => bayTotals(onSteel, { bays: [bay.id], movingShare: 0 })[0]);
  const total = known.known && known.value !== undefined ? known.value : null;
  const needs = known.known ? [] : known.needs;
  return {
    bay: bay.id,
    when,
    vertical: total === null ? blocked(needs) : reckoned(total.vertical),
    horizontal: total === null ? blocked(needs) : reckoned(total.horizontal),
    wire,
    moving: total === null ? blocked(needs) : movingOf(house, bay, onSteel),
  };
};

/** A set without an arbor has no purchase; its total is blocked before that could matter. */
const withLines = ({ lineSet, bare }: SetAssessment, bay: string | null): SetOnSteel => ({
  set: lineSet.id,
  bay,
  purchase: bare.known ? bare.value.set.purchase : 1,
  arborMass: 0,
  handLineMass: 0,
  arborWireMass: 0,
  lines: (lineSet.lineXs ?? []).map((x) => ({ x, tension: 0 })),
  moving: false,
});

const wireOf = (inBay: readonly SetAssessment[], house: House): BayTotal['wire'] => {
  const got = gather();
  const headZ = got.number(house.stage.headBlockHeight, 'height of the head blocks');
  const sumKg = inBay.reduce((sum, { lineSet, bare }) => {
    if (!bare.known) {
      got.need(`lines of set ${lineSet.id}: ${bare.needs.join(', ')}`);
      return sum;
    }
    const { purchase, lines, lineMassPerLength, wireEndAbove, arborTopAtLow, lowStop, highStop } =
      bare.value.set;
    return (
      sum +
      arborWireMass({
        purchase,
        lines,
        massPerLength: lineMassPerLength,
        headZ,
        wireEndZ: highStop + wireEndAbove,
        attachZ: arborTopAtLow - (highStop - lowStop) / purchase,
      })
    );
  }, 0);
  return got.give(() => newtons(GRAVITY * sumKg));
};

const movingOf = (house: House, bay: Bay, onSteel: readonly SetOnSteel[]): BayTotal['moving'] => {
  const got = gather();
  const movingShare = got.number(house.rules.movingShare, 'share that moving adds to a load');
  const heaviest = onSteel.reduce<SetOnSteel | null>(
    (most, set) => (most === null || set.arborMass > most.arborMass ? set : most),
    null,
  );
  if (heaviest === null) got.need('a set in this bay');
  return got.give(() => {
    const moved = onSteel.map((set) => ({ ...set, moving: set === heaviest }));
    const [total] = bayTotals(moved, { bays: [bay.id], movingShare });
    return {
      set: heaviest?.set ?? '',
      vertical: newtons(total?.vertical.value ?? 0),
      horizontal: newtons(total?.horizontal.value ?? 0),
    };
  });
};

/** The heaviest stable state in which it hangs, or the bare batten. */
const stateIn = (
  states: readonly StructureState[],
  when: 'planned' | 'bare',
): StructureState | undefined => {
  const hung = states.filter(({ kind, lines }) => kind === 'hung' && lines.length > 0);
  const [bare] = states;
  if (when === 'bare' || hung.length === 0) return bare;
  return hung.reduce((most, state) => (state.mass > most.mass ? state : most));
};

const wellsOf = (
  house: House,
  sets: readonly SetAssessment[],
  when: 'planned' | 'bare',
): readonly WellTotal[] => {
  const lacks = new Map<string, string>();
  const onSteel = sets.map((set): SetOnSteel => {
    const lines = tensionsAtLoft(set, when);
    if (!lines.known) lacks.set(set.lineSet.id, lines.needs.join(', '));
    const bare = withLines(set, null);
    return lines.known ? { ...bare, lines: lines.value } : bare;
  });
  const { wells } = wellTotals(onSteel, { wells: house.loftWells, movingShare: 0 });
  return wells.map((total) => ({ well: total.id, when, force: known(total, lacks) }));
};

/** A total in which a set with unknown lines stands is unknown. */
const known = (total: Total, lacks: ReadonlyMap<string, string>): Reckoned<Total> => {
  const needs = total.sets.flatMap(({ set }) => {
    const why = lacks.get(set);
    return why === undefined ? [] : [`lines of set ${set}: ${why}`];
  });
  return needs.length > 0 ? blocked(needs) : reckoned(total);
};

const tensionsAtLoft = (
  { structure, hang }: SetAssessment,
  when: 'planned' | 'bare',
): Reckoned<SetOnSteel['lines']> => {
  if (!structure.known) return structure;
  const { states, hungNeeds } = structure.value;
  // Where steel holds the batten, the pipe weight on the arbor still pulls as on a bare one.
  const onSteel = hang !== null && hang.deadHungAt !== null;
  if (when === 'planned' && hungNeeds.length > 0 && !onSteel) return blocked(hungNeeds);
  const state = stateIn(states, when);
  if (state === undefined || 'unstable' in state.beam) return blocked(['a batten that is stable']);
  const got = gather();
  const lines = state.lines.map(({ x, top }) => {
    if (!top.known) top.needs.forEach(got.need);
    return { x, tension: top.known ? top.value : 0 };
  });
  return got.give(() => lines);
};

type Stock = Reckoned<readonly { readonly kind: BrickKind; readonly count: number }[]>;

/** Loose bricks as they were counted; a kind that nobody counted leaves the whole unknown. */
const countedStock = (gallery: Gallery, house: House, state: HouseState | null): Stock => {
  const stock = state?.galleries[gallery.id]?.stock;
  if (stock === undefined) return blocked([`a count of the bricks on the ${gallery.name}`]);
  return reckoned(
    house.brickKinds.flatMap((kind) => {
      const count = stock[kind.id];
      return count === undefined ? [] : [{ kind, count }];
    }),
  );
};

const everyShowBrick = (house: House): Stock => {
  const got = gather();
  const stock = house.brickKinds
    .filter(({ serves }) => serves.show)
    .map((kind) => {
      const owned = got.number(kind.owned, `number of bricks ${kind.id}`);
      return { kind, count: Math.max(0, owned - pipeCountOf(house, kind.id)) };
    });
  return got.give(() => stock);
};

const floorOf = (
  gallery: Gallery,
  { when, stock }: { readonly when: FloorTotal['when']; readonly stock: Stock },
): FloorTotal => {
  const [mass, floor, row] = [gather(), gather(), gather()];
  if (!stock.known) for (const got of [mass, floor, row]) stock.needs.forEach(got.need);
  const counts = stock.known ? stock.value : [];
  const weighed = counts.map(({ kind, count }) => ({
    count,
    massKg: mass.number(kind.mass, `mass of brick ${kind.id}`),
    floorLengthM: row.number(kind.floorLength, `floor that brick ${kind.id} takes`),
  }));
  if (stock.known) for (const got of [floor, row]) mass.needs.forEach(got.need);
  const bricksKg = weighed.reduce((sum, { count, massKg }) => sum + count * massKg, 0);
  const peopleAndToolsKg = floor.number(
    gallery.peopleAndTools,
    `people and tools on the ${gallery.name}`,
  );
  const lengthM = floor.number(gallery.length, `length of the ${gallery.name}`);
  const widthM = floor.number(gallery.width, `width of the ${gallery.name}`);
  if (!gallery.length.known) row.need(`length of the ${gallery.name}`);
  const rowOf = () => floorRow(weighed, lengthM);
  return {
    gallery: gallery.id,
    when,
    bricks: mass.give(() => kilograms(bricksKg)),
    pressure: floor.give(() => floorLoad({ bricksKg, peopleAndToolsKg, lengthM, widthM })),
    courses: row.give(() => rowOf().courses),
    lineLoad: row.give(() => rowOf().lineLoad),
  };
};
