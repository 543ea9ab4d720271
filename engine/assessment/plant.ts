import type { BalanceSet } from '#balance';
import { blocked, type Reckoned, reckoned } from '#findings';
import {
  type Arbor,
  type BrickKind,
  type HeightSpan,
  type House,
  type HouseRules,
  type Known,
  type LineSet,
  purchaseOf,
  reachWindow,
  spreaderCount,
  stackHeight,
  travelRoom,
} from '#house';
import { type Metres, metres } from '#quantities';
import type { GalleryWindow } from './types.ts';

/** Reads known values by name, and keeps the names of those that are not known. */
export const gather = () => {
  const needs: string[] = [];
  return {
    needs: needs as readonly string[],
    number: (value: Known<number>, what: string): number => {
      if (value.known) return value.value;
      needs.push(value.why === undefined ? what : `${what} (${value.why})`);
      return Number.NaN;
    },
    need: (what: string): void => {
      needs.push(what);
    },
    give: <T>(value: () => T): Reckoned<T> =>
      needs.length === 0 ? reckoned(value()) : blocked(needs),
  };
};

/**
 * Half width of what a value may be off by: its own tolerance, else the share that the house gives
 * to its basis, else null: nobody has said.
 */
export const uncertaintyOf = (value: Known<number>, rules: HouseRules): number | null => {
  if (!value.known) return null;
  if (value.tolerance !== undefined) return value.tolerance;
  const share = rules.toleranceByBasis[value.provenance.basis];
  return share === undefined ? null : share * value.value;
};

export const NO_ARBOR = {
  motor: 'a motor set takes no bricks: its machine holds it',
  hemp: 'a hemp set takes no bricks: it is held at the pin rail',
  deadHung: 'a dead-hung set takes no bricks: steel holds it',
} as const;

/** Mass, thickness and uncertainty of the bricks that stay on the arbor. */
export type PipeWeight = {
  readonly massKg: number;
  readonly uncertaintyKg: number | null;
  readonly thicknessM: number;
};

export const pipeWeightOf = (arbor: Arbor, house: House): Reckoned<PipeWeight> => {
  const got = gather();
  let massKg = 0;
  let uncertaintyKg: number | null = 0;
  let thicknessM = 0;
  if (arbor.pipeWeight === null) got.need('pipe weight');
  for (const { kind, count } of arbor.pipeWeight ?? []) {
    const brick = brickKindOf(house, kind);
    if (brick === undefined) {
      got.need(`brick kind ${kind}`);
      continue;
    }
    massKg += count * got.number(brick.mass, `mass of brick ${kind}`);
    thicknessM += count * got.number(brick.thickness, `thickness of brick ${kind}`);
    const each = uncertaintyOf(brick.mass, house.rules);
    uncertaintyKg = each === null || uncertaintyKg === null ? null : uncertaintyKg + count * each;
  }
  return got.give(() => ({ massKg, uncertaintyKg, thicknessM }));
};

export const brickKindOf = (house: House, kind: string): BrickKind | undefined =>
  house.brickKinds.find(({ id }) => id === kind);

/**
 * The set without items and with pipe weight only, as `balance` takes it. A set without an arbor
 * is blocked and says what holds it, so that nobody reads a balance where there is none.
 */
export const barePlant = (lineSet: LineSet, house: House): Reckoned<BalanceSet> => {
  const purchase = purchaseOf(lineSet.suspension);
  const { arbor, suspension } = lineSet;
  if (purchase === null || arbor === null) {
    return blocked([suspension in NO_ARBOR ? NO_ARBOR[suspension as never] : 'arbor']);
  }
  const got = gather();
  if (lineSet.lineXs === null) got.need('lift lines');
  const pipe = pipeWeightOf(arbor, house);
  if (!pipe.known) pipe.needs.forEach(got.need);
  const set: BalanceSet = {
    purchase,
    lines: lineSet.lineXs?.length ?? 0,
    lineMassPerLength: got.number(lineSet.lineMassPerLength, 'mass per length of a lift line'),
    batten: got.number(lineSet.batten.mass, 'mass of the batten with its fittings'),
    carriage: got.number(arbor.carriageMass, 'mass of the arbor without bricks'),
    bricks: pipe.known ? pipe.value.massKg : Number.NaN,
    lowStop: got.number(lineSet.lowStop.height, 'height of the low stop'),
    highStop: got.number(lineSet.highStop.height, 'height of the high stop'),
    arborTopAtLow:
      got.number(arbor.panAtLow, 'height of the arbor with the batten in') +
      got.number(arbor.attachAbovePan, 'where the lines meet the arbor'),
    wireEndAbove: got.number(lineSet.wireEndAbove, 'length of the trim chain'),
    items: [],
    ...given('battenUncertainty', uncertaintyOf(lineSet.batten.mass, house.rules)),
    ...given('carriageUncertainty', uncertaintyOf(arbor.carriageMass, house.rules)),
    ...given('brickUncertainty', pipe.known ? pipe.value.uncertaintyKg : null),
  };
  return got.give(() => set);
};

/** A field that is there only where somebody has said its value. */
export const given = <K extends string>(
  name: K,
  value: number | null,
): { readonly [P in K]?: number } =>
  (value === null ? {} : { [name]: value }) as { readonly [P in K]?: number };

/** Masses of a set whose doubt nobody has stated; its band is then too narrow, and says so. */
export const doubtsUnsaid = (set: BalanceSet): readonly string[] => [
  ...(set.battenUncertainty === undefined ? ['tolerance of the batten'] : []),
  ...(set.carriageUncertainty === undefined ? ['tolerance of the arbor without bricks'] : []),
  ...(set.brickUncertainty === undefined ? ['tolerance of the bricks'] : []),
  ...(set.items.some(({ uncertainty }) => uncertainty === undefined)
    ? ['tolerance of an item']
    : []),
];

/** Room above the arbor with the batten in, and below it with the batten out (C2). */
export const roomOf = (
  lineSet: LineSet,
  house: House,
): Reckoned<{ readonly above: Metres; readonly below: Metres }> => {
  const purchase = purchaseOf(lineSet.suspension);
  const { arbor } = lineSet;
  if (purchase === null || arbor === null) return blocked(['arbor']);
  const got = gather();
  const numbers = {
    panAtLowM: got.number(arbor.panAtLow, 'height of the arbor with the batten in'),
    arborLengthM: got.number(arbor.length, 'length of the arbor'),
    headBlockM: got.number(house.stage.headBlockHeight, 'height of the head blocks'),
    lowStopM: got.number(lineSet.lowStop.height, 'height of the low stop'),
    highStopM: got.number(lineSet.highStop.height, 'height of the high stop'),
    purchase,
  };
  return got.give(() => travelRoom(numbers));
};

/** Where each gallery reaches the next plate of a stack this thick (C4). */
export const windowsOf = (
  lineSet: LineSet,
  house: House,
  stackM: Reckoned<number>,
): readonly GalleryWindow[] => {
  const purchase = purchaseOf(lineSet.suspension);
  const { arbor } = lineSet;
  if (purchase === null || arbor === null) return [];
  return house.galleries.map((gallery) => {
    const got = gather();
    if (!stackM.known) stackM.needs.forEach(got.need);
    const geometry = {
      panAtLowM: got.number(arbor.panAtLow, 'height of the arbor with the batten in'),
      panThicknessM: got.number(arbor.panThickness, 'thickness of the pan'),
      lowStopM: got.number(lineSet.lowStop.height, 'height of the low stop'),
      highStopM: got.number(lineSet.highStop.height, 'height of the high stop'),
      purchase,
      galleryFloorM: got.number(gallery.floor, `floor of the ${gallery.name}`),
      reachLowM: got.number(gallery.reachLow, `lowest reach at the ${gallery.name}`),
      reachHighM: got.number(gallery.reachHigh, `highest reach at the ${gallery.name}`),
    };
    const window = got.give<HeightSpan | null>(() =>
      reachWindow(geometry, stackM.known ? stackM.value : 0),
    );
    return { gallery: gallery.id, window };
  });
};

/** Spreader plates for a thickness of bricks; none are counted twice with the carriage. */
export const spreadersFor = (
  house: House,
  brickThicknessM: number,
): Reckoned<{
  readonly count: number;
  readonly massKg: number;
  readonly height: Metres;
}> => {
  const { spreader } = house;
  if (spreader === null) return reckoned({ count: 0, massKg: 0, height: metres(brickThicknessM) });
  const got = gather();
  const everyM = got.number(spreader.every, 'spacing of spreader plates');
  const thicknessM = got.number(spreader.thickness, 'thickness of a spreader plate');
  const massKg = spreader.inCarriage ? 0 : got.number(spreader.mass, 'mass of a spreader plate');
  return got.give(() => {
    const height = stackHeight({ brickThicknessM, spreader: { thicknessM, everyM } });
    const count = spreaderCount(brickThicknessM, everyM);
    return { count, massKg: count * massKg, height };
  });
};
