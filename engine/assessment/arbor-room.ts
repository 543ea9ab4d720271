/** How much an arbor takes beside its pipe weight: by mass, by rod, by the reach of a loader. */
import { blocked, type Reckoned, reckoned } from '#findings';
import type { BrickKind, HeightSpan, House, LineSet } from '#house';
import { type Kilograms, kilograms, type Metres, metres } from '#quantities';
import { gather, pipeWeightOf, spreadersFor, windowsOf } from './plant.ts';
import type { GalleryWindow } from './types.ts';

export type ArborRoom = {
  /** The heaviest brick of the show kinds: all numbers of bricks are of it. */
  readonly brick: BrickKind;
  readonly byMass: Reckoned<{ readonly mass: Kilograms; readonly bricks: number }>;
  readonly byRod: Reckoned<{ readonly length: Metres; readonly bricks: number }>;
  /** With the batten in; `isAll` where a loader reaches all that the rod takes. */
  readonly byReach: Reckoned<{ readonly bricks: number; readonly isAll: boolean }>;
  /** Batten heights for the first brick, and for the last that the rod takes. */
  readonly first: readonly GalleryWindow[];
  readonly last: readonly GalleryWindow[];
};

/** A stack typed in inches comes back from metres with the last figure off. */
const ROUNDING_M = 1e-9;
const ROUNDING_KG = 1e-9;
/** No rod takes more; reaching it is an unknown, not an answer. */
const MOST_BRICKS = 500;

/**
 * Room on the arbor of a set for show bricks of one kind, pipe weight on.
 *
 *     by mass   A0 + P + N·b + S ≤ limit
 *     by rod    pipe weight + N·t + spreaders ≤ usable rod
 *     by reach  every plate from the first to the Nth, put on or taken off with the batten between
 *               its low stop and its working height, is within the reach of some gallery
 *
 *     A0, P, S  kg  carriage, pipe weight, spreader plates that the carriage does not count
 *     b, t      kg, m  one brick
 *
 * Source  definition; the-job.md C3, C4, C6
 * Holds   one kind of brick on top of the pipe weight; null where there is no arbor
 * Omits   collars and locking plate above the stack (fewer bricks by rod)
 * Check   arbor-room.test.ts
 */
export const arborRoomOf = (lineSet: LineSet, house: House): Reckoned<ArborRoom> | null => {
  const { arbor } = lineSet;
  if (arbor === null) return null;
  const brick = heaviestShowBrick(house);
  if (brick === null) return blocked(['mass of a show brick']);
  const work = { lineSet, house, brick, pipe: pipeWeightOf(arbor, house) };
  const byRod = roomByRod(work);
  const stackM = (bricks: number): Reckoned<number> => stackWith(work, bricks);
  const full: Reckoned<number> = byRod.known ? stackM(byRod.value.bricks) : byRod;
  return reckoned({
    brick,
    byMass: roomByMass(work),
    byRod,
    byReach: byRod.known ? roomByReach(work, byRod.value.bricks) : byRod,
    first: windowsOf(lineSet, house, stackM(0)),
    last: windowsOf(lineSet, house, full),
  });
};

const heaviestShowBrick = ({ brickKinds }: House): BrickKind | null => {
  let [heaviest, mostKg]: [BrickKind | null, number] = [null, 0];
  for (const kind of brickKinds) {
    if (!kind.serves.show || !kind.mass.known || kind.mass.value <= mostKg) continue;
    [heaviest, mostKg] = [kind, kind.mass.value];
  }
  return heaviest;
};

type Work = {
  readonly lineSet: LineSet;
  readonly house: House;
  readonly brick: BrickKind;
  readonly pipe: ReturnType<typeof pipeWeightOf>;
};

const brickThicknessOf = ({ brick, pipe }: Work, bricks: number): Reckoned<number> => {
  const got = gather();
  if (!pipe.known) pipe.needs.forEach(got.need);
  const eachM = got.number(brick.thickness, `thickness of brick ${brick.id}`);
  return got.give(() => (pipe.known ? pipe.value.thicknessM : 0) + bricks * eachM);
};

const stackWith = (work: Work, bricks: number): Reckoned<number> => {
  const thickness = brickThicknessOf(work, bricks);
  if (!thickness.known) return thickness;
  const spreaders = spreadersFor(work.house, thickness.value);
  return spreaders.known ? reckoned<number>(spreaders.value.height) : spreaders;
};

const massWith = (work: Work, bricks: number): Reckoned<number> => {
  const got = gather();
  const { brick, pipe, house, lineSet } = work;
  const carriageKg =
    lineSet.arbor === null
      ? 0
      : got.number(lineSet.arbor.carriageMass, 'mass of the arbor without bricks');
  if (!pipe.known) pipe.needs.forEach(got.need);
  const eachKg = got.number(brick.mass, `mass of brick ${brick.id}`);
  const thickness = brickThicknessOf(work, bricks);
  const spreaders = thickness.known ? spreadersFor(house, thickness.value) : thickness;
  if (!spreaders.known) spreaders.needs.forEach(got.need);
  return got.give(
    () =>
      carriageKg +
      (pipe.known ? pipe.value.massKg : 0) +
      bricks * eachKg +
      (spreaders.known ? spreaders.value.massKg : 0),
  );
};

/** The largest number for which `fits` holds, each number before it too. */
const mostFitting = (fits: (bricks: number) => boolean, most: number): number => {
  for (let bricks = 0; bricks <= most; bricks += 1) if (!fits(bricks)) return bricks - 1;
  return most;
};

const roomByMass = (work: Work): ArborRoom['byMass'] => {
  const got = gather();
  const limitKg =
    work.lineSet.arbor === null
      ? 0
      : got.number(work.lineSet.arbor.massLimit, 'mass limit of the arbor');
  const bare = massWith(work, 0);
  if (!bare.known) bare.needs.forEach(got.need);
  return got.give(() => {
    const fits = (bricks: number): boolean => {
      const massKg = massWith(work, bricks);
      return massKg.known && massKg.value <= limitKg + ROUNDING_KG;
    };
    const left = limitKg - (bare.known ? bare.value : 0);
    return {
      mass: kilograms(Math.max(0, left)),
      bricks: Math.max(0, mostFitting(fits, MOST_BRICKS)),
    };
  });
};

const roomByRod = (work: Work): ArborRoom['byRod'] => {
  const got = gather();
  const rodM =
    work.lineSet.arbor === null
      ? 0
      : got.number(work.lineSet.arbor.usableRod, 'usable rod of the arbor');
  const bare = stackWith(work, 0);
  if (!bare.known) bare.needs.forEach(got.need);
  return got.give(() => {
    const fits = (bricks: number): boolean => {
      const stackM = stackWith(work, bricks);
      return stackM.known && stackM.value <= rodM + ROUNDING_M;
    };
    const left = rodM - (bare.known ? bare.value : 0);
    return {
      length: metres(Math.max(0, left)),
      bricks: Math.max(0, mostFitting(fits, MOST_BRICKS)),
    };
  });
};

const meets = (span: HeightSpan | null, fromM: number, toM: number): boolean =>
  span !== null && span.from <= toM + ROUNDING_M && span.to >= fromM - ROUNDING_M;

const roomByReach = (work: Work, most: number): ArborRoom['byReach'] => {
  const { lineSet, house } = work;
  const got = gather();
  const lowM = got.number(lineSet.lowStop.height, 'height of the low stop');
  const workingM = got.number(lineSet.workingHeight, 'working height');
  const windows = windowsOf(lineSet, house, stackWith(work, 0));
  if (windows.length === 0) got.need('a loading gallery');
  for (const { window } of windows) if (!window.known) window.needs.forEach(got.need);
  return got.give(() => {
    const reached = (bricks: number): boolean =>
      windowsOf(lineSet, house, stackWith(work, bricks)).some(
        ({ window }) => window.known && meets(window.value, lowM, workingM),
      );
    const bricks = Math.max(0, mostFitting(reached, most));
    return { bricks, isAll: bricks === most };
  });
};
