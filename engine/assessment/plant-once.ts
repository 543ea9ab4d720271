/** Sets built alike have the same batten on the same lines: reckoned once in a house. */
import type { Reckoned } from '#findings';
import type { House, LineSet } from '#house';
import { type BattenModel, battenModelOf } from './batten-model.ts';
import { type LinePlant, linePlantOf } from './line-states.ts';
import type { StructureState } from './structure-types.ts';

export type Plant = {
  readonly model: Reckoned<BattenModel>;
  readonly lines: LinePlant;
  /** The bare state, once it has been asked for. */
  readonly bare: (make: () => StructureState) => StructureState;
};

export type PlantOf = (lineSet: LineSet, house: House) => Plant;

const PARTS = [
  'suspension',
  'lineXs',
  'lineMassPerLength',
  'wireEndAbove',
  'batten',
  'lift',
  'lowStop',
  'workingHeight',
  'arbor',
] as const satisfies readonly (keyof LineSet)[];

/** Equal in every part; values that a set type gives are the very same objects, so it is quick. */
const isSame = (one: unknown, other: unknown): boolean => {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) {
    return false;
  }
  const [left, right] = [Object.entries(one), Object.entries(other)];
  return (
    left.length === right.length &&
    left.every(([key, value]) => isSame(value, (other as Readonly<Record<string, unknown>>)[key]))
  );
};

const isBuiltAlike = (one: LineSet, other: LineSet): boolean =>
  PARTS.every((part) => isSame(one[part], other[part]));

const plantOf: PlantOf = (lineSet, house) => {
  let kept: StructureState | null = null;
  return {
    model: battenModelOf(lineSet, house),
    lines: linePlantOf(lineSet),
    bare: (make) => {
      kept ??= make();
      return kept;
    },
  };
};

/** Plants of one house, each made once for all sets that are built alike. */
export const plantsOnce = (): PlantOf => {
  const made: { readonly lineSet: LineSet; readonly plant: Plant }[] = [];
  return (lineSet, house) => {
    const same = made.find((each) => isBuiltAlike(each.lineSet, lineSet));
    if (same !== undefined) return same.plant;
    const plant = plantOf(lineSet, house);
    made.push({ lineSet, plant });
    return plant;
  };
};
