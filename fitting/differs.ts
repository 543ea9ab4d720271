/** What of the plant is not the same in both houses: of the house, and of two sets. */
import { type Measure, measure } from '#findings';
import type { House, Known, LineSet } from '#house';
import { message } from '#texts';
import type { Differs } from './types.ts';

type Side = Differs['there'];
type Row<T> = {
  readonly what: string;
  readonly of: (holder: T) => Side;
};

const known = (value: Known<number>, kind: Measure['kind']): Side =>
  value.known ? measure(value.value, kind) : null;

const length = (value: Known<number>): Side => known(value, 'length');
const force = (value: Known<number>): Side => known(value, 'force');
const mass = (value: Known<number>): Side => known(value, 'mass');

/** In the house's own order, from the bottom up. */
const listed = (names: readonly string[]): Side =>
  names.length === 0 ? message('none') : names.join(', ');

const SUSPENSIONS: Readonly<Record<LineSet['suspension'], string>> = {
  singlePurchase: message('single purchase'),
  doublePurchase: message('double purchase'),
  motor: message('motor'),
  hemp: message('hemp'),
  deadHung: message('fixed, on steel'),
};

const spread = (
  sets: readonly LineSet[],
  of: (set: LineSet) => Known<number>,
): readonly [number, number] | null => {
  const values = sets.flatMap((set) => {
    const value = of(set);
    return value.known ? [value.value] : [];
  });
  return values.length === 0 ? null : [Math.min(...values), Math.max(...values)];
};

/** The furthest upstage that anything hangs. */
const depthOf = ({ lineSets }: House): Side => {
  const ends = spread(lineSets, ({ y }) => y);
  return ends === null ? null : measure(ends[1], 'length');
};

const HOUSE_ROWS: readonly Row<House>[] = [
  {
    what: message('units'),
    of: ({ units }) => (units === 'metric' ? message('metric') : message('feet and pounds')),
  },
  {
    what: message('operating side'),
    of: ({ stage }) =>
      stage.operatingSide === 'stageLeft' ? message('stage left') : message('stage right'),
  },
  { what: message('width of the opening'), of: ({ stage }) => length(stage.openingWidth) },
  { what: message('height of the opening'), of: ({ stage }) => length(stage.openingHeight) },
  { what: message('back wall, from the plaster line'), of: ({ stage }) => length(stage.backWall) },
  { what: message('height of the grid'), of: ({ stage }) => length(stage.gridHeight) },
  { what: message('height of the head blocks'), of: ({ stage }) => length(stage.headBlockHeight) },
  { what: message('line sets'), of: ({ lineSets }) => `${lineSets.length}` },
  { what: message('furthest set upstage'), of: depthOf },
  { what: message('what a rope lock may hold'), of: ({ rules }) => force(rules.lockLimit) },
  { what: message('working load of the hand line'), of: ({ rules }) => force(rules.handLineLimit) },
  {
    what: message('people on one hand line'),
    of: ({ rules }) => (rules.peoplePerHandLine.known ? `${rules.peoplePerHandLine.value}` : null),
  },
  {
    what: message('design factor of the lift lines'),
    of: ({ rules }) => (rules.lineDesignFactor.known ? `${rules.lineDesignFactor.value}` : null),
  },
  {
    what: message('loading galleries'),
    of: ({ galleries }) => listed(galleries.map(({ name }) => name)),
  },
  { what: message('head block bays'), of: ({ bays }) => listed(bays.map(({ id }) => id)) },
];

const SET_ROWS: readonly Row<LineSet>[] = [
  { what: message('how it is carried'), of: ({ suspension }) => SUSPENSIONS[suspension] },
  { what: message('low stop'), of: ({ lowStop }) => length(lowStop.height) },
  { what: message('high stop'), of: ({ highStop }) => length(highStop.height) },
  { what: message('load that it may carry'), of: ({ liveLimit }) => mass(liveLimit) },
  { what: message('load at one place'), of: ({ pointLimit }) => mass(pointLimit) },
  { what: message('batten, from'), of: ({ batten }) => length(batten.left) },
  { what: message('batten, to'), of: ({ batten }) => length(batten.right) },
  {
    what: message('lift lines'),
    of: ({ lineXs }) => (lineXs === null ? null : `${lineXs.length}`),
  },
  { what: message('lift lines, at most apart'), of: ({ lineXs }) => apart(lineXs) },
  { what: message('load of one lift line'), of: ({ lineLimit }) => force(lineLimit) },
  {
    what: message('whole arbor at most'),
    of: ({ arbor }) => (arbor ? mass(arbor.massLimit) : message('none')),
  },
  {
    what: message('rod for the stack'),
    of: ({ arbor }) => (arbor ? length(arbor.usableRod) : message('none')),
  },
];

const apart = (xs: LineSet['lineXs']): Side => {
  if (xs === null) return null;
  const gaps = xs.slice(1).map((x, index) => x - (xs[index] ?? x));
  return gaps.length === 0 ? message('one line') : measure(Math.max(...gaps), 'length');
};

/** Nearer than half a millimetre, a gram or a hundredth of a newton nobody measures. */
const SAME = { length: 5e-4, mass: 1e-3, force: 1e-2 } as const;

const isSame = (there: Side, here: Side): boolean => {
  if (there === null || here === null) return there === here;
  if (typeof there === 'string' || typeof here === 'string') return there === here;
  const room = SAME[there.kind as keyof typeof SAME] ?? 0;
  return Math.abs(there.value - here.value) <= room;
};

const apartIn = <T>(rows: readonly Row<T>[], there: T, here: T): readonly Differs[] =>
  rows
    .map(({ what, of }) => ({ what, there: of(there), here: of(here) }))
    .filter((row) => !isSame(row.there, row.here));

/** Gallery by gallery from the bottom up, and kind of brick by kind. */
const floorsOf = ({ galleries }: House) =>
  galleries.toSorted((one, other) =>
    one.floor.known && other.floor.known ? one.floor.value - other.floor.value : 0,
  );

const galleryDiffers = (there: House, here: House): readonly Differs[] => {
  const [old, fresh] = [floorsOf(there), floorsOf(here)];
  return Array.from({ length: Math.max(old.length, fresh.length) }, (_, index) => {
    const [one, other] = [old[index], fresh[index]];
    return {
      what: `floor of loading gallery ${index + 1} from below`,
      there: one === undefined ? message('none') : length(one.floor),
      here: other === undefined ? message('none') : length(other.floor),
    };
  }).filter((row) => !isSame(row.there, row.here));
};

const brickDiffers = (there: House, here: House): readonly Differs[] => {
  const ids = [...there.brickKinds, ...here.brickKinds].map(({ id }) => id);
  const kindIn = ({ brickKinds }: House, id: string) => brickKinds.find((each) => each.id === id);
  return [...new Set(ids)].flatMap((id): readonly Differs[] => {
    const [one, other] = [kindIn(there, id), kindIn(here, id)];
    const name = one?.name ?? other?.name ?? id;
    return [
      {
        what: `brick ${id} (${name})`,
        there: one === undefined ? message('none') : mass(one.mass),
        here: other === undefined ? message('none') : mass(other.mass),
      },
      {
        what: `bricks ${id} owned`,
        there: one === undefined ? message('none') : one.owned.known ? `${one.owned.value}` : null,
        here:
          other === undefined ? message('none') : other.owned.known ? `${other.owned.value}` : null,
      },
    ].filter((row) => !isSame(row.there, row.here));
  });
};

export const houseDiffers = (there: House, here: House): readonly Differs[] => [
  ...apartIn(HOUSE_ROWS, there, here),
  ...galleryDiffers(there, here),
  ...brickDiffers(there, here),
];

export const setDiffers = (there: LineSet, here: LineSet): readonly Differs[] =>
  apartIn(SET_ROWS, there, here);
