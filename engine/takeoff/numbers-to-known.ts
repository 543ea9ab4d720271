/** Plain SI numbers of a question, turned into values with their basis and tolerance. */
import type { Basis, Known } from '#house';
import { known, unknownValue } from '#house';
import type { Refusal } from '#outcome';
import { unreachable } from '#outcome';
import type { Metres } from '#quantities';
import type { ClothTakeoff, FrameTakeoff, PipeTakeoff, Takeoff, UnitsTakeoff } from '#show';
import { refuse } from './refusal-codes.ts';

/** A number in SI units, or one with what it may be off by and what it rests on. */
export type Amount =
  | number
  | {
      readonly value: number;
      /** Half width in the unit of the value. */
      readonly tolerance?: number;
      /** Half width as a share of the value. */
      readonly relative?: number;
      readonly basis?: Basis;
      readonly source?: string;
    };

type Part = { readonly name: string; readonly count: number };
type FramePart = Part & { readonly z?: Amount };

export type ClothNumbers = {
  readonly kind: 'cloth';
  readonly width: Amount;
  readonly areaMass: Amount;
  /** Shares added, as parts of one: 0.5 is one and a half widths. */
  readonly fullness: Amount;
  readonly hemAllowance: Amount;
  readonly paint: Amount;
  readonly moisture: Amount;
  readonly bottomMassPerLength?: Amount;
  readonly ties?: { readonly count: Amount; readonly each: Amount };
};

export type FrameNumbers = {
  readonly kind: 'frame';
  readonly members?: readonly (FramePart & {
    readonly length: Amount;
    readonly massPerLength: Amount;
  })[];
  readonly sheets?: readonly (FramePart & {
    readonly area: Amount;
    readonly massPerArea: Amount;
  })[];
  readonly hardware?: readonly (FramePart & { readonly each: Amount })[];
  readonly allowance: Amount;
};

export type UnitsNumbers = {
  readonly kind: 'units';
  readonly units: readonly (Part & {
    readonly each: Amount;
    readonly clampEach?: Amount;
    readonly xs?: readonly number[];
  })[];
};

export type TakeoffNumbers =
  | { readonly kind: 'mass'; readonly mass: Amount; readonly hem?: Amount }
  | ClothNumbers
  | FrameNumbers
  | UnitsNumbers
  | {
      readonly kind: 'loom';
      readonly massPerLength: Amount;
      readonly length: Amount;
      readonly fixedAt?: Amount;
    }
  | {
      readonly kind: 'pipe';
      readonly massPerLength: Amount;
      readonly length: Amount;
      readonly fittings?: Amount;
    }
  | { readonly kind: 'hardware'; readonly lines: readonly (Part & { readonly each: Amount })[] };

/**
 * Brands a number as it stands: whether it is in its range is judged where every number is, so
 * that all faults come out together.
 */
export type Reader = <Quantity extends number>(amount: Amount) => Known<Quantity>;

export const knownReader =
  (basis: Basis): Reader =>
  <Quantity extends number>(amount: Amount): Known<Quantity> => {
    if (typeof amount === 'number') return known(amount as Quantity, { basis });
    const { value, tolerance, relative, source } = amount;
    const halfWidth = tolerance ?? (relative === undefined ? undefined : relative * value);
    return known(
      value as Quantity,
      { basis: amount.basis ?? basis, ...(source === undefined ? {} : { source }) },
      halfWidth,
    );
  };

export const takeoffOf = (numbers: TakeoffNumbers, read: Reader): Takeoff => {
  switch (numbers.kind) {
    case 'mass':
      return { by: 'mass', mass: read(numbers.mass), hem: orNone(numbers.hem, read) };
    case 'cloth':
      return clothOf(numbers, read);
    case 'frame':
      return frameOf(numbers, read);
    case 'units':
      return unitsOf(numbers, read);
    case 'loom':
      return { by: 'loom', ...runOf(numbers, read), fixedAt: orUnknown(numbers.fixedAt, read) };
    case 'pipe':
      return { by: 'pipe', ...runOf(numbers, read), fittings: orNone(numbers.fittings, read) };
    case 'hardware':
      return {
        by: 'hardware',
        lines: numbers.lines.map(({ name, count, each }) => ({ name, count, each: read(each) })),
      };
    default:
      return unreachable(numbers);
  }
};

/** A number may be off by so much, or by such a share of itself, but not by both. */
export const amountFaults = (part: unknown, path = ''): readonly Refusal[] => {
  if (typeof part !== 'object' || part === null) return [];
  if ('tolerance' in part && 'relative' in part) {
    const said = { found: 'both tolerance and relative', accepted: 'one of the two' };
    return [refuse('toleranceTwice', path, said)];
  }
  return Object.entries(part).flatMap(([key, inner]) =>
    amountFaults(inner, Array.isArray(part) ? `${path}[${key}]` : path + (path && '.') + key),
  );
};

const orNone = <Quantity extends number>(
  amount: Amount | undefined,
  read: Reader,
): Known<Quantity> | null => (amount === undefined ? null : read<Quantity>(amount));

const orUnknown = <Quantity extends number>(
  amount: Amount | undefined,
  read: Reader,
): Known<Quantity> => (amount === undefined ? unknownValue() : read<Quantity>(amount));

const runOf = (
  { length, massPerLength }: { readonly length: Amount; readonly massPerLength: Amount },
  read: Reader,
): Pick<PipeTakeoff, 'length' | 'massPerLength'> => ({
  length: read(length),
  massPerLength: read(massPerLength),
});

const clothOf = (numbers: ClothNumbers, read: Reader): ClothTakeoff => ({
  by: 'cloth',
  width: read(numbers.width),
  areaMass: read(numbers.areaMass),
  fullness: read(numbers.fullness),
  hemAllowance: read(numbers.hemAllowance),
  paint: read(numbers.paint),
  moisture: read(numbers.moisture),
  bottomMassPerLength: orNone(numbers.bottomMassPerLength, read),
  ties:
    numbers.ties === undefined
      ? null
      : { count: read(numbers.ties.count), each: read(numbers.ties.each) },
});

const frameOf = (
  { members = [], sheets = [], hardware = [], allowance }: FrameNumbers,
  read: Reader,
): FrameTakeoff => ({
  by: 'frame',
  members: members.map(({ name, count, z, length, massPerLength }) => ({
    name,
    count,
    z: orUnknown(z, read),
    length: read(length),
    massPerLength: read(massPerLength),
  })),
  sheets: sheets.map(({ name, count, z, area, massPerArea }) => ({
    name,
    count,
    z: orUnknown(z, read),
    area: read(area),
    massPerArea: read(massPerArea),
  })),
  hardware: hardware.map(({ name, count, z, each }) => ({
    name,
    count,
    z: orUnknown(z, read),
    each: read(each),
  })),
  allowance: read(allowance),
});

const unitsOf = ({ units }: UnitsNumbers, read: Reader): UnitsTakeoff => ({
  by: 'units',
  units: units.map(({ name, count, each, clampEach, xs }) => ({
    name,
    count,
    each: read(each),
    clampEach: orNone(clampEach, read),
    xs: xs === undefined ? null : (xs as readonly Metres[]),
  })),
});
