/** What the parts of a house say of one another; line sets have a file of their own. */
import type { Bay, BrickKind, Gallery, House, LoftWell, Stage } from '#house';
import { boundsInOrder, metresText } from './bounds.ts';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import type { WrittenLineSet } from './line-set-shape.ts';
import { refuseDuplicates, refuseUnknown } from './references.ts';

const LISTS = [
  'brickKinds',
  'galleries',
  'rails',
  'bays',
  'loftWells',
  'eyes',
  'keepOuts',
  'openings',
  'equipment',
] as const;

export const checkHouse = (
  house: House,
  lineSets: readonly WrittenLineSet[],
  faults: Faults,
): void => {
  for (const list of LISTS) refuseDuplicates(house[list], list, faults);
  refuseDuplicates(lineSets, 'lineSets', faults);
  checkOperatingSide(house.stage, faults);
  for (const [index, kind] of house.brickKinds.entries()) checkLooks(kind, index, house, faults);
  for (const [index, gallery] of house.galleries.entries()) checkReach(gallery, index, faults);
  if (!faults.refusedAt('lineSets')) checkBays(house.bays, lineSets, faults);
  checkWells(house.loftWells, faults);
  checkBounds(house, faults);
};

/** Stage right is negative x. The centre line itself is no wall, and is on neither side. */
const checkOperatingSide = ({ operatingSide, operatingX }: Stage, faults: Faults): void => {
  if (!operatingX.known || !faults.sound('stage.operatingSide', 'stage.operatingX')) return;
  const side = operatingX.value < 0 ? 'stageRight' : 'stageLeft';
  if (side === operatingSide) return;
  faults.refuse('operatingSide', 'stage.operatingX', {
    found: `${metresText(operatingX.value)}, which is ${side}, with operatingSide ${operatingSide}`,
    accepted: 'a negative x for stageRight, a positive one for stageLeft',
  });
};

const checkLooks = (kind: BrickKind, index: number, house: House, faults: Faults): void => {
  const known = house.brickKinds.map(({ id }) => id);
  for (const [at, other] of kind.looksLike.entries()) {
    const path = pathTo(pathTo(pathTo('brickKinds', index), 'looksLike'), at);
    if (other !== '' && other === kind.id) {
      faults.refuse('looksLikeItself', path, {
        found: describe(other),
        accepted: 'ids of other kinds',
      });
    } else refuseUnknown('kindUnknown', { found: other, known, path }, faults);
  }
};

const checkReach = ({ reachLow, reachHigh }: Gallery, index: number, faults: Faults): void => {
  if (!reachLow.known || !reachHigh.known || reachLow.value < reachHigh.value) return;
  faults.refuse('reachReversed', pathTo(pathTo('galleries', index), 'reachLow'), {
    found: `${metresText(reachLow.value)}, with reachHigh ${metresText(reachHigh.value)}`,
    accepted: 'a lowest reach below the highest one',
  });
};

const checkBays = (
  bays: readonly Bay[],
  lineSets: readonly WrittenLineSet[],
  faults: Faults,
): void => {
  const known = lineSets.map(({ id }) => id);
  const bayOf = new Map<string, string>();
  for (const [index, bay] of bays.entries()) {
    for (const [at, set] of bay.sets.entries()) {
      const path = pathTo(pathTo(pathTo('bays', index), 'sets'), at);
      if (refuseUnknown('setUnknown', { found: set, known, path }, faults)) continue;
      const other = bayOf.get(set);
      if (set !== '' && other !== undefined) {
        faults.refuse('setInTwoBays', path, {
          found: `${describe(set)}, which is already in bay ${other}`,
          accepted: 'each line set in one bay, once',
        });
      } else bayOf.set(set, bay.id);
    }
  }
};

/** A millimetre: two wells may touch, and one written in feet touches one written in metres. */
const TOUCHING = 0.001;

const checkWells = (wells: readonly LoftWell[], faults: Faults): void => {
  for (const [index, well] of wells.entries()) {
    const path = pathTo('loftWells', index);
    const other = wells
      .slice(0, index)
      .findIndex(
        ({ x, width }, before) =>
          Math.abs(well.x - x) < (well.width + width) / 2 - TOUCHING &&
          faults.sound(pathTo('loftWells', before)),
      );
    if (other < 0 || !faults.sound(path)) continue;
    faults.refuse('wellsOverlap', pathTo(path, 'x'), {
      found: `${metresText(well.x)} and ${metresText(well.width)} wide, over loft well ${
        wells[other]?.id ?? ''
      }`,
      accepted: 'loft wells that lie beside one another',
    });
  }
};

/** Boxes are read from low to high; a bound that is null goes on without end. */
const checkBounds = ({ keepOuts, openings }: House, faults: Faults): void => {
  const boxes = [
    ...keepOuts.map((box, index) => ({ box, path: pathTo('keepOuts', index) })),
    ...openings.map((box, index) => ({ box, path: pathTo('openings', index) })),
  ];
  for (const { box, path } of boxes) {
    for (const [axis, bounds] of Object.entries({ ...box })) {
      if (!Array.isArray(bounds)) continue;
      const [low, high]: readonly (number | null)[] = bounds;
      const here = pathTo(path, axis);
      if (typeof low !== 'number' || typeof high !== 'number' || !faults.sound(here)) continue;
      boundsInOrder(low, high, { path: here, given: null, faults });
    }
  }
};
