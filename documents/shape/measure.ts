/** Measures as typed text: `"24'-6 1/2\""`, `"7.48 m"`, `"35 lb"`. */
import type { Dimension, Metres, Newtons, Seconds } from '#quantities';
import { metres, newtons, parseQuantity, seconds, unitsOf } from '#quantities';
import { describe } from '../json.ts';
import type { Limits } from './limits.ts';
import {
  ACROSS,
  CUE_DURATION,
  FORCE,
  FORCE_OR_NONE,
  HEIGHT,
  LENGTH,
  LEVEL,
  LINE_TRIM,
  PULL,
  UPSTAGE,
} from './limits.ts';
import type { JsonSchema, Place, Shape } from './shape.ts';
import { readNumber } from './words.ts';

/** How the bare value of a measure is read, before anybody asks who stands behind it. */
export type Measure<T> = {
  readonly schema: JsonSchema;
  /** Name of the measure among the definitions of a published schema. */
  readonly called: string;
  /** Undefined where it was refused. */
  readonly read: (value: unknown, place: Place) => T | undefined;
  /** The half width that a tolerance gives to this value, in its unit. */
  readonly tolerance: (value: T, written: unknown, place: Place) => number | undefined;
};

export const EXAMPLES: Readonly<Record<Dimension, readonly [string, string]>> = {
  length: ['24\'-6 1/2"', '7.48 m'],
  mass: ['35 lb', '15.9 kg'],
  force: ['50 lbf', '0.22 kN'],
  massPerLength: ['0.110 lb/ft', '0.164 kg/m'],
  massPerArea: ['16 oz/yd²', '540 g/m²'],
  energy: ['100 ft·lbf', '140 J'],
  duration: ['6 s', '4 h'],
  speed: ['4 ft/s', '1.2 m/s'],
  pressure: ['150 psf', '7.2 kPa'],
  forcePerLength: ['525 lbf/ft', '7.7 kN/m'],
  moment: ['361 lbf·ft', '490 N·m'],
  area: ['12 ft²', '1.1 m²'],
  sectionModulus: ['0.326 in³', '5.35 cm³'],
  secondMoment: ['0.310 in⁴', '12.9 cm⁴'],
  angle: ['30 deg', '0.5 rad'],
  ratio: ['5 %', '50 %'],
  count: ['12', '480'],
};

export const acceptedWords = (dimension: Dimension): string =>
  `a text with its unit (${unitsOf(dimension).join(', ')}), such as ${EXAMPLES[dimension]
    .map((one) => JSON.stringify(one))
    .join(' or ')}`;

/** The value of a measure in SI within its limits, or undefined where it was refused. */
export const readMeasure = (
  dimension: Dimension,
  limits: Limits,
  value: unknown,
  place: Place,
): number | undefined => {
  if (typeof value !== 'string') {
    const refusal = value === null ? 'nullWritten' : 'wrongType';
    place.faults.refuse(typeof value === 'number' ? 'measureWithoutUnit' : refusal, place.path, {
      found: describe(value),
      accepted: acceptedWords(dimension),
    });
    return undefined;
  }
  const parsed = parseQuantity(dimension, value, { signed: true });
  if (!parsed.ok) {
    place.faults.pass(parsed.error, place.path);
    return undefined;
  }
  return isWithin(parsed.value, limits, describe(value), place) ? parsed.value : undefined;
};

export const isWithin = (value: number, limits: Limits, found: string, place: Place): boolean => {
  const refuse = (name: 'negative' | 'zero' | 'beyondReason', accepted: string): false => {
    place.faults.refuse(name, place.path, { found, accepted });
    return false;
  };
  if (value < 0 && limits.min >= 0) {
    return refuse('negative', `${limits.zero ? 'zero' : 'more than zero'} up to ${limits.most}`);
  }
  if (value === 0 && !limits.zero) return refuse('zero', `more than zero, up to ${limits.most}`);
  if (value < limits.min || value > limits.max) return refuse('beyondReason', limits.most);
  return true;
};

/** Something a person can read as a number with a unit; the program itself reads more strictly. */
const WITH_UNIT = '[0-9½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒]\\s*[A-Za-z%°\'"′″’”ʹʺ‘“]';

export const measureSchema = (dimension: Dimension): JsonSchema => ({
  type: 'string',
  maxLength: 60,
  pattern: dimension === 'ratio' ? '%|[Pp][Ee][Rr] ?[Cc][Ee][Nn][Tt]' : WITH_UNIT,
  examples: EXAMPLES[dimension],
  description: `A measure with its unit: ${unitsOf(dimension).join(', ')}.`,
});

export const measure = <T extends number>(
  dimension: Dimension,
  limits: Limits,
  brand: (si: number) => T,
): Measure<T> => ({
  schema: { $ref: `#/$defs/${dimension}` },
  called: dimension,
  read: (value, place) => {
    const si = readMeasure(dimension, limits, value, place);
    return si === undefined ? undefined : brand(si);
  },
  tolerance: (value, written, place) => {
    const half = readTolerance(dimension, value, written, place);
    return half !== undefined && isBelowValue(half, value, limits, written, place)
      ? half
      : undefined;
  },
});

/** A tolerance may be as large as it likes where the value may be either side of nothing. */
export const isBelowValue = (
  half: number,
  value: number,
  limits: Limits,
  written: unknown,
  place: Place,
): boolean => {
  if (limits.min < 0 || value === 0 || half <= value) return true;
  place.faults.refuse('toleranceTooLarge', place.path, {
    found: describe(written),
    accepted: 'no more than the value itself, or the value as {"unknown": "why"}',
  });
  return false;
};

const ANY_SIZE: Limits = { min: 0, max: Number.MAX_VALUE, zero: true, most: 'the value' };

/**
 * Half width in the unit of the value. A share is a share of the value; the tolerance of a share
 * is in points of per cent, which for values below 100 % is the wider of the two readings.
 */
const readTolerance = (
  dimension: Dimension,
  value: number,
  written: unknown,
  place: Place,
): number | undefined => {
  const isShare = typeof written === 'string' && /%|per ?cent/i.test(written);
  if (isShare && dimension !== 'ratio') return readShareOf(value, written, place);
  if (typeof written === 'string') {
    const parsed = parseQuantity(dimension, written, { signed: true });
    if (!parsed.ok && ['QTY-007', 'QTY-008'].includes(parsed.error.code)) {
      place.faults.refuse('toleranceOther', place.path, {
        found: describe(written),
        accepted: `a share of the value, "2 %", or ${acceptedWords(dimension)}`,
      });
      return undefined;
    }
  }
  return readMeasure(dimension, ANY_SIZE, written, place);
};

export const readShareOf = (value: number, written: string, place: Place): number | undefined => {
  const share = readMeasure('ratio', ANY_SIZE, written, place);
  if (share === undefined) return undefined;
  if (share > 1) {
    place.faults.refuse('toleranceTooLarge', place.path, {
      found: describe(written),
      accepted: 'at most 100 %, or the value as {"unknown": "why"}',
    });
    return undefined;
  }
  return share * Math.abs(value);
};

/** A JSON number: how many, or how much of one in another. */
export const plainNumber = (
  limits: Limits,
  { whole }: { readonly whole: boolean },
): Measure<number> => ({
  schema: { type: whole ? 'integer' : 'number', minimum: limits.min, maximum: limits.max },
  called: whole ? 'count' : 'number',
  read: (value, place) => {
    const read = readNumber(value, place, `a ${whole ? 'whole ' : ''}number up to ${limits.most}`);
    if (read === undefined) return undefined;
    if (whole && read >= 0 && !Number.isInteger(read)) {
      place.faults.refuse('notWhole', place.path, {
        found: describe(read),
        accepted: `a whole number up to ${limits.most}`,
      });
      return undefined;
    }
    return isWithin(read, limits, describe(read), place) ? read : undefined;
  },
  tolerance: (value, written, place) => {
    const half =
      typeof written === 'string'
        ? readShareOf(value, written, place)
        : readNumber(written, place, 'a number, or a share such as "2 %"');
    if (half === undefined || !isWithin(half, ANY_SIZE, describe(written), place)) return undefined;
    return isBelowValue(half, value, limits, written, place) ? half : undefined;
  },
});

/** A measure that carries no source: the places and sizes of plain geometry. */
export const plain = <T extends number>(of: Measure<T>, standIn: T): Shape<T> => ({
  schema: of.schema,
  standIn,
  read: (value, place) => of.read(value, place) ?? standIn,
});

const length = (limits: Limits): Shape<Metres> =>
  plain(measure('length', limits, metres), metres(0));

export const across = length(ACROSS);
export const upstage = length(UPSTAGE);
export const level = length(LEVEL);
export const height = length(HEIGHT);
export const width = length(LENGTH);
export const lineTrim = length(LINE_TRIM);
export const pull: Shape<Newtons> = plain(measure('force', PULL, newtons), newtons(0));
/** How hard somebody pulls in the direction that the step says; it may be nothing. */
export const effort: Shape<Newtons> = plain(measure('force', FORCE_OR_NONE, newtons), newtons(0));
export const rating: Shape<Newtons> = plain(measure('force', FORCE, newtons), newtons(0));
export const cueDuration: Shape<Seconds> = plain(
  measure('duration', CUE_DURATION, seconds),
  seconds(0),
);
