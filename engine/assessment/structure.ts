/** A set's batten, lines and blocks in every state that the show knows of. */

import { type BalanceItem, carriedMass } from '#balance';
import { type BattenSolution, type Load, solveBatten } from '#beam';
import { blocked, type Reckoned, reckoned } from '#findings';
import type { House, LineSet } from '#house';
import { headBlockForce, restrainedForce, tensionsAtRest } from '#lines';
import { kilograms, type Metres, metres } from '#quantities';
import type { Hang } from '#show';
import { type ItemTakeoff, loadsAlongBatten } from '#takeoff';
import type { BattenModel } from './batten-model.ts';
import { type LinePlant, lineStatesOf } from './line-states.ts';
import { battenAtTrim, type CarriedHang } from './plan.ts';
import { gather } from './plant.ts';
import type { PlantOf } from './plant-once.ts';
import type {
  PlacedLoad,
  SetStructure,
  StructureChange,
  StructureState,
} from './structure-types.ts';

export type StructureWork = {
  readonly house: House;
  readonly lineSet: LineSet;
  readonly hang: Hang | null;
  readonly takeoffs: readonly ItemTakeoff[];
  readonly carried: Reckoned<CarriedHang>;
  /** Whole arbor as the show plans it, bare where nothing hangs. */
  readonly arborMass: Reckoned<number>;
};

export const structureOf = (work: StructureWork, plantOf: PlantOf): Reckoned<SetStructure> => {
  const { house, lineSet } = work;
  const { model: known, lines: plant, bare } = plantOf(lineSet, house);
  if (!known.known) return known;
  const model = known.value;
  const placed = placedOf(work, model);
  const scenes = placed.known ? merged(hungScenes(work, model, placed.value)) : [];
  const states = [
    bare(() => stateOf(model, plant, bareScene(lineSet, model))),
    ...scenes.map((scene) => stateOf(model, plant, scene)),
  ];
  const hungNeeds = placed.known ? [] : placed.needs;
  return reckoned(wholeOf(work, { model, plant, states, hungNeeds }));
};

type Parts = {
  readonly model: BattenModel;
  readonly plant: LinePlant;
  readonly states: readonly StructureState[];
  readonly hungNeeds: readonly string[];
};

const wholeOf = (work: StructureWork, { model, plant, states, hungNeeds }: Parts): SetStructure => {
  const { lineSet } = work;
  return {
    pipe: model.pipe,
    wall: lineSet.batten.pipe.wall,
    left: model.left,
    right: model.right,
    lines: model.lines,
    splices: model.splices,
    trimsMeasured: lineSet.lift.lineTrims !== null,
    splicesKnown: lineSet.batten.splices?.every(({ strength }) => strength.known) ?? false,
    freeLengths: model.freeLengths,
    hungNeeds,
    states,
    headBlock: headBlockOf(work, model, heaviestOf(states)),
    headBlockIn: (state) => headBlockOf(work, model, isStable(state) ? state : undefined),
    restrained: restrainedOf(work, model, states),
    rework: (state, change) => reworkedBy({ model, plant }, state, change),
  };
};

/** What hangs of each item along the batten, whole, with its carried form and full mass. */
type PlacedItem = {
  readonly name: string;
  readonly loads: readonly Load[];
  readonly fullKg: number;
  readonly uncertaintyKg: number | null;
};

/** As the beam has it: lengths that were rounded twice may end a hair beyond the pipe. */
const HAIR_M = 1e-9;

const isOnBatten = (load: Load, { left, right }: BattenModel): boolean => {
  const [fromM, toM] = 'x' in load ? [load.x, load.x] : [load.from, load.to];
  return fromM >= left - HAIR_M && toM <= right + HAIR_M;
};

/** An item that is said to pull past the end of the pipe needs another place, or another pipe. */
const placedOf = (
  { hang, takeoffs, carried }: StructureWork,
  model: BattenModel,
): Reckoned<readonly PlacedItem[]> => {
  if (hang !== null && hang.deadHungAt !== null) {
    return blocked(['how the steel holds it: its lines do not']);
  }
  const got = gather();
  if (!carried.known) carried.needs.forEach(got.need);
  const items = takeoffs.map((takeoff): PlacedItem => {
    const { item, total } = takeoff;
    const loads = loadsAlongBatten(item, takeoff);
    for (const need of loads.known ? [] : loads.needs) got.need(`${item.name}: ${need}`);
    const along = (loads.known ? loads.value : []).map((load): Load => {
      const { massKg: mass } = load;
      return 'x' in load ? { x: load.x, mass } : { from: load.from, to: load.to, mass };
    });
    if (!along.every((load) => isOnBatten(load, model))) {
      got.need(`${item.name}: a place that is on the batten`);
    }
    return {
      name: item.name,
      loads: along,
      fullKg: total.known ? total.value.massKg : 0,
      uncertaintyKg: total.known ? total.value.uncertaintyKg : null,
    };
  });
  return got.give(() => items);
};

type Scene = Pick<StructureState, 'name' | 'kind' | 'height' | 'loads'>;

const bareScene = ({ lowStop, workingHeight }: LineSet, model: BattenModel): Scene => ({
  name: 'bare',
  kind: 'bare',
  height: workingHeight.known ? workingHeight.value : heightOf(lowStop),
  loads: model.fittings,
});

const heightOf = ({ height }: LineSet['lowStop']): Metres =>
  height.known ? height.value : metres(0);

/** As hung: each trim, working height, high stop; and the highest trim after each release. */
const hungScenes = (
  { lineSet, hang, carried }: StructureWork,
  model: BattenModel,
  placed: readonly PlacedItem[],
): readonly Scene[] => {
  if (hang === null || hang.items.length === 0 || !carried.known) return [];
  const low = heightOf(lineSet.lowStop);
  const working = lineSet.workingHeight.known ? lineSet.workingHeight.value : low;
  const { items, after } = carried.value;
  const trims = hang.trims.flatMap((trim) => {
    const got = gather();
    const heightM = battenAtTrim(trim, items, got);
    return got.needs.length > 0 ? [] : [{ name: trim.name, height: metres(heightM) }];
  });
  // Looms hang most at the top of the travel, where no trim need be.
  const top = lineSet.highStop.height.known
    ? [{ name: 'high stop', height: lineSet.highStop.height.value }]
    : [];
  const hung = [...trims, { name: 'working height', height: working }, ...top].map(
    ({ name, height }): Scene => ({
      name,
      kind: 'hung',
      height,
      loads: [...model.fittings, ...loadsAt(placed, items, height)],
    }),
  );
  const highest = metres(Math.max(low, ...trims.map(({ height }) => height)));
  const released = after.map(
    ({ how, items: left }): Scene => ({
      name: `after ${how}`,
      kind: 'released',
      height: highest,
      loads: [...model.fittings, ...loadsAt(placed, left, highest)],
    }),
  );
  return [...hung, ...released];
};

/** At a contact the batten may carry the most that the deck leaves to it. */
const loadsAt = (
  placed: readonly PlacedItem[],
  items: readonly BalanceItem[],
  heightM: number,
): readonly PlacedLoad[] =>
  placed.flatMap(({ name, loads, fullKg, uncertaintyKg }, index) => {
    const item = items[index];
    if (item === undefined || fullKg === 0) return [];
    const share = carriedMass(item, heightM).highKg / fullKg;
    return loads.map((load): PlacedLoad => {
      const mass = load.mass * share;
      const doubtKg = uncertaintyKg === null ? null : (uncertaintyKg * load.mass * share) / fullKg;
      return { of: name, load: { ...load, mass }, uncertaintyKg: doubtKg };
    });
  });

/** States with the same loads are one, under all their names. */
const merged = (scenes: readonly Scene[]): readonly Scene[] => {
  const kept: Scene[] = [];
  for (const scene of scenes) {
    const same = kept.findIndex((one) => one.kind === scene.kind && isSame(one.loads, scene.loads));
    const before = kept[same];
    if (before === undefined) kept.push(scene);
    else kept[same] = { ...before, name: `${before.name}, ${scene.name}` };
  }
  return kept;
};

const isSame = (one: readonly PlacedLoad[], other: readonly PlacedLoad[]): boolean =>
  one.length === other.length &&
  one.every(({ load }, index) => load.mass === other[index]?.load.mass);

const stateOf = (model: BattenModel, plant: LinePlant, scene: Scene): StructureState => {
  const { pipe, left, right, lines, splices, battenMassKg } = model;
  const loads = scene.loads.map(({ load }) => load);
  const solved = solveBatten({ pipe, left, right, lines, splices, loads });
  if (!solved.ok) {
    const said = solved.error.map(({ path, found }) => `${path}: ${found}`).join('; ');
    throw new Error(`defect: documents let a batten through that is none: ${said}`);
  }
  const beam = solved.value;
  const fittingsKg = model.fittings.reduce((sum, { load }) => sum + load.mass, 0);
  const hungKg = loads.reduce((sum, { mass }) => sum + mass, 0) - fittingsKg;
  return {
    ...scene,
    mass: kilograms(battenMassKg + hungKg),
    beam,
    lines: 'unstable' in beam ? [] : lineStatesOf(model, plant, scene, beam),
  };
};

const reworkedBy = (
  { model, plant }: Pick<Parts, 'model' | 'plant'>,
  state: StructureState,
  { trims, loads = state.loads }: StructureChange,
): StructureState => {
  const lines =
    trims === undefined
      ? model.lines
      : model.lines.map((line, index) => ({ ...line, trim: trims[index] ?? 0 }));
  return stateOf({ ...model, lines }, plant, { ...state, loads });
};

/**
 * The same set with loads moved or lines turned, for a person who asks what would happen. Nothing
 * of it is kept.
 */
export const reworked = (
  structure: SetStructure,
  state: StructureState,
  change: StructureChange,
): StructureState => structure.rework(state, change);

const isStable = (
  state: StructureState,
): state is StructureState & { readonly beam: BattenSolution } => !('unstable' in state.beam);

/** The heaviest stable state. */
const heaviestOf = (states: readonly StructureState[]): StructureState | undefined =>
  states
    .filter(isStable)
    .reduce<StructureState | undefined>(
      (most, state) => (most === undefined || state.mass > most.mass ? state : most),
      undefined,
    );

const headBlockOf = (
  { lineSet }: StructureWork,
  model: BattenModel,
  state: StructureState | undefined,
): SetStructure['headBlock'] => {
  const got = gather();
  const perLengthKg = got.number(lineSet.lineMassPerLength, 'mass per length of a lift line');
  const handLineKg = got.number(lineSet.lift.handLineMass, 'mass of the hand line');
  if (state === undefined) got.need('a state in which the batten is stable');
  return got.give(() => {
    const runs = model.runsAt(state?.height ?? 0);
    const lines = runs.map((run, index) => {
      const tensionN = state?.lines[index]?.tension ?? 0;
      return { run, tension: tensionsAtRest(run, tensionN, perLengthKg).head };
    });
    return headBlockForce({ lines, handLineMass: handLineKg }).block;
  });
};

const restrainedOf = (
  { house, lineSet, arborMass }: StructureWork,
  model: BattenModel,
  states: readonly StructureState[],
): SetStructure['restrained'] => {
  const got = gather();
  if (!arborMass.known) arborMass.needs.forEach(got.need);
  const perLengthKg = got.number(lineSet.lineMassPerLength, 'mass per length of a lift line');
  const headZ = got.number(house.stage.headBlockHeight, 'height of the head blocks');
  const state = heaviestOf(states);
  const [run] = model.runsAt(state?.height ?? 0);
  if (run === undefined || state === undefined) got.need('a state in which the batten is stable');
  return got.give(() => {
    const set = {
      purchase: run?.purchase ?? 1,
      lines: model.lines.length,
      massPerLength: perLengthKg,
      headZ,
      wireEndZ: run?.wireEndZ ?? 0,
      attachZ: run?.attachZ ?? 0,
    };
    const arborMassKg = arborMass.known ? arborMass.value : 0;
    const sides = restrainedForce(set, { battenSideKg: state?.mass ?? 0, arborMassKg });
    return { arborSide: sides.arborSide, battenSide: sides.battenSide };
  });
};
