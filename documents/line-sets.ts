/** Puts set types and line sets together into the line sets that the engine takes. */
import type { Arbor, LineSet, RopeLock, Stop, Suspension } from '#house';
import { unknownValue } from '#house';
import type { Faults } from './faults.ts';
import { describe, isObject, pathTo } from './json.ts';
import { battenOf, liftOf } from './lift-parts.ts';
import type { WrittenLineSet, WrittenSet, WrittenType } from './line-set-shape.ts';
import { nearestName } from './nearest-name.ts';

export type SetTypes = Readonly<Record<string, WrittenType>>;

const unsaid = unknownValue();

/** One written over the other, field by field. */
const over = <T extends object>(below: T | undefined, above: T | undefined): T | undefined =>
  below && above ? { ...below, ...above } : (above ?? below);

/** Parts put together field by field; what is written in neither stays out. */
const partsOver = <T extends object>(
  below: T,
  above: T,
  parts: readonly (keyof T)[],
): Partial<T> => {
  const both: Partial<T> = {};
  for (const part of parts) {
    const merged = over(below[part] as object | undefined, above[part] as object | undefined);
    if (merged) both[part] = merged as T[keyof T];
  }
  return both;
};

/** Blocks go field by field, since where lines run to them differs from set to set. */
const liftOver = (
  below: WrittenSet['lift'] = {},
  above: WrittenSet['lift'] = {},
): NonNullable<WrittenSet['lift']> => ({
  ...below,
  ...above,
  ...partsOver(below, above, ['loftBlock', 'headBlock']),
});

const setOver = (below: WrittenSet, above: WrittenSet): WrittenSet => ({
  ...below,
  ...above,
  ...partsOver(below, above, ['batten', 'lowStop', 'highStop', 'arbor']),
  lift: liftOver(below.lift, above.lift),
});

/** A type with what it extends put under it. Faults of the chain are told once, in `checkTypes`. */
const resolvedType = (types: SetTypes, typeId: string): WrittenSet => {
  const { extends: baseId, ...own } = types[typeId] ?? {};
  const base = baseId === undefined ? undefined : types[baseId];
  if (!base) return own;
  const { extends: _further, ...below } = base;
  return setOver(below, own);
};

/** Every set type extends at most one other, which itself extends none. */
export const checkTypes = (types: SetTypes, faults: Faults): void => {
  for (const [typeId, { extends: baseId }] of Object.entries(types)) {
    if (baseId === undefined || baseId === '') continue;
    const path = pathTo(pathTo('setTypes', typeId), 'extends');
    const base = types[baseId];
    if (!base) refuseType(types, baseId, path, faults);
    else if (comesBack(types, typeId)) {
      faults.refuse('typeCycle', path, {
        found: `${describe(typeId)} extends ${describe(baseId)}, and so on back to itself`,
        accepted: 'a set type that does not come back to this one',
      });
    } else if (base.extends !== undefined) {
      faults.refuse('typeChain', path, {
        found: `${describe(baseId)}, which extends ${describe(base.extends)}`,
        accepted: 'a set type that extends none',
      });
    }
  }
};

const comesBack = (types: SetTypes, from: string): boolean => {
  const seen = new Set<string>();
  let at = types[from]?.extends;
  while (at !== undefined && !seen.has(at)) {
    if (at === from) return true;
    seen.add(at);
    at = types[at]?.extends;
  }
  return false;
};

const refuseType = (types: SetTypes, found: string, path: string, faults: Faults): void => {
  if (faults.refusedAt('setTypes')) return;
  const names = Object.keys(types);
  const near = nearestName(found, names);
  faults.refuse('typeUnknown', path, {
    found: describe(found),
    accepted:
      near === undefined ? `one of ${names.join(', ') || 'no types yet'}` : `perhaps ${near}`,
  });
};

/** A line set with its place in the file, where its faults are told. */
export type PlacedSet = { readonly set: LineSet; readonly index: number };

/** All line sets in rail order: by distance upstage; one without keeps its place in the file. */
export const lineSetsOf = (
  types: SetTypes,
  written: readonly WrittenLineSet[],
  faults: Faults,
): readonly PlacedSet[] => {
  let reached = -1e9;
  return written
    .map((one, index) => {
      const set = lineSetOf(types, one, pathTo('lineSets', index), faults);
      reached = set.y.known ? set.y.value : reached;
      return { set, index, order: reached };
    })
    .sort((one, other) => one.order - other.order)
    .map(({ set, index }) => ({ set, index }));
};

const lineSetOf = (
  types: SetTypes,
  written: WrittenLineSet,
  path: string,
  faults: Faults,
): LineSet => {
  const { id, type, y, lock, ...own } = written;
  if (type !== '' && !Object.hasOwn(types, type)) {
    refuseType(types, type, pathTo(path, 'type'), faults);
  }
  const whole = setOver(resolvedType(types, type), own);
  return {
    id,
    typeId: type,
    suspension: suspensionOf(whole, { path, type }, faults),
    y: y ?? unsaid,
    lineXs: whole.lines ?? null,
    lineMassPerLength: whole.lineMassPerLength ?? unsaid,
    lineLimit: whole.lineLimit ?? unsaid,
    wireEndAbove: whole.wireEndAbove ?? unsaid,
    batten: battenOf(whole.batten),
    lift: liftOf(whole.lift),
    liveLimit: whole.liveLimit ?? unsaid,
    pointLimit: whole.pointLimit ?? unsaid,
    perLengthLimit: whole.perLengthLimit ?? unsaid,
    lowStop: stopOf(whole.lowStop),
    highStop: stopOf(whole.highStop),
    workingHeight: whole.workingHeight ?? unsaid,
    arbor: arborOf(whole.arbor),
    handLinePerBatten: whole.handLinePerBatten ?? unsaid,
    lock: lockOf(lock),
    railId: whole.rail ?? null,
    ...(whole.remark === undefined ? {} : { remark: whole.remark }),
  };
};

/** A set that does not say how it is carried is read as dead hung until the whole is refused. */
const suspensionOf = (
  whole: WrittenSet,
  { path, type }: { readonly path: string; readonly type: string },
  faults: Faults,
): Suspension => {
  if (whole.suspension !== undefined) return whole.suspension;
  const here = pathTo(path, 'suspension');
  const isTold = !faults.sound(pathTo(path, 'type'), here, pathTo('setTypes', type));
  if (!isTold && !faults.refusedAt('setTypes')) {
    faults.refuse('fieldMissing', here, {
      found: 'nothing, nor in its set type',
      accepted: 'how the batten is carried, here or in the set type',
    });
  }
  return 'deadHung';
};

const stopOf = (stop: WrittenSet['lowStop'] = {}): Stop => ({
  height: stop.height ?? unsaid,
  rated: stop.rated ?? unsaid,
});

const lockOf = ({ grip, failed, remark }: NonNullable<WrittenLineSet['lock']> = {}): RopeLock => ({
  grip: grip ?? unsaid,
  failed: failed ?? unsaid,
  ...(remark === undefined ? {} : { remark }),
});

const arborOf = (arbor: WrittenSet['arbor']): Arbor | null =>
  arbor === undefined
    ? null
    : {
        carriageMass: arbor.carriageMass ?? unsaid,
        pipeWeight: arbor.pipeWeight ?? null,
        length: arbor.length ?? unsaid,
        usableRod: arbor.usableRod ?? unsaid,
        panAtLow: arbor.panAtLow ?? unsaid,
        panThickness: arbor.panThickness ?? unsaid,
        attachAbovePan: arbor.attachAbovePan ?? unsaid,
        massLimit: arbor.massLimit ?? unsaid,
        topClearance: arbor.topClearance ?? unsaid,
        bottomClearance: arbor.bottomClearance ?? unsaid,
      };

/**
 * Path of a field of a line set where it is written: in the set, in its type, or in what that
 * extends; in the set where it is written nowhere.
 */
export const whereWritten = (
  types: SetTypes,
  written: WrittenLineSet | undefined,
  index: number,
  keys: readonly string[],
): string => {
  const own = pathTo('lineSets', index);
  const typeId = written?.type ?? '';
  const baseId = types[typeId]?.extends ?? '';
  const holders: readonly (readonly [unknown, string])[] = [
    [written, own],
    [types[typeId], pathTo('setTypes', typeId)],
    [types[baseId], pathTo('setTypes', baseId)],
  ];
  const holder = holders.find(([fields]) => holds(fields, keys))?.[1] ?? own;
  return keys.reduce(pathTo, holder);
};

const holds = (fields: unknown, keys: readonly string[]): boolean => {
  let at = fields;
  for (const key of keys) {
    if (!isObject(at) || at[key] === undefined) return false;
    at = at[key];
  }
  return true;
};
