/** A value with who stands behind it, as the fields of one row, and back into the document. */
import { BASES, type Basis } from '#house';
import { unreachable } from '#outcome';
import { ENGLISH, message, phrase, type Voice } from '#texts';
import { shownText } from '../grid/typed-marks.ts';
import { isObject, type Json } from '../keeping/json.ts';
import type { SourcedOf } from './form.ts';

/** `given` is what stands above it, `kind` what its kind of set says, `open` not said yet. */
export type HowKnown = 'unknown' | 'kind' | 'given' | 'open' | Basis;

export type SourcedText = {
  readonly value: string;
  readonly tolerance: string;
  readonly how: HowKnown;
  /** Where it is from; of an unknown value, why nobody knows it. */
  readonly source: string;
  readonly by: string;
  readonly on: string;
};

export type SourcedAbove = {
  /** Whether a "given" above the value says how it is known. */
  readonly hasGiven: boolean;
  /** Whether the kind of the set, or what that extends, has a value for it. */
  readonly hasKind: boolean;
};

const textOf = (value: Json | undefined): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};

const EMPTY = { value: '', tolerance: '', source: '', by: '', on: '' } as const;

const isBasis = (value: Json | undefined): value is Basis => BASES.some((basis) => basis === value);

export const sourcedText = (json: Json | undefined, { hasKind }: SourcedAbove): SourcedText => {
  if (json === undefined) return { ...EMPTY, how: hasKind ? 'kind' : 'unknown' };
  if (!isObject(json)) return { ...EMPTY, value: textOf(json), how: 'given' };
  if (json['unknown'] !== undefined) {
    return { ...EMPTY, how: 'unknown', source: textOf(json['unknown']) };
  }
  return {
    value: textOf(json['value']),
    tolerance: textOf(json['tolerance']),
    how: isBasis(json['basis']) ? json['basis'] : 'given',
    source: textOf(json['source']),
    by: textOf(json['by']),
    on: textOf(json['on']),
  };
};

/** A value typed anew is no longer unknown; how it is known is the person's to say. */
export const withTyped = (
  text: SourcedText,
  value: string,
  { hasGiven }: SourcedAbove,
): SourcedText => {
  const wasNone = text.how === 'unknown' || text.how === 'kind';
  if (!wasNone || value.trim() === '') return { ...text, value };
  return { ...text, value, source: '', how: hasGiven ? 'given' : 'open' };
};

/** A plain number as the document wants it; what is none stays a text, and is refused as such. */
export const numberOr = (text: string): Json => {
  const trimmed = text.trim();
  return /^[+-]?\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : trimmed;
};

const typedJson = (text: string, of: SourcedOf): Json => {
  if (of === 'flag') return text === 'yes' ? true : text === 'no' ? false : text;
  return of === 'number' || of === 'count' ? numberOr(text) : text.trim();
};

const toleranceOf = (text: string, of: SourcedOf): Json =>
  of === 'number' || of === 'count' ? numberOr(text) : text.trim();

/** What is to be written; undefined takes the field away. Or what is still missing, in words. */
export type ToWrite = { readonly json: Json | undefined } | { readonly missing: string };

type Beside = SourcedAbove & { readonly of: SourcedOf; readonly before: Json | undefined };

export const sourcedJson = (text: SourcedText, beside: Beside): ToWrite => {
  switch (text.how) {
    case 'kind':
      return { json: undefined };
    case 'unknown':
      return unknownJson(text, beside);
    case 'open':
      return text.value.trim() === ''
        ? { json: undefined }
        : { missing: message('how it is known') };
    case 'given':
      return givenJson(text, beside);
    default:
      return basisJson({ ...text, how: text.how }, beside);
  }
};

const unknownJson = ({ source }: SourcedText, { hasKind }: SourcedAbove): ToWrite => {
  const why = source.trim();
  if (why !== '') return { json: { unknown: why } };
  return hasKind ? { missing: message('why this set has it unknown') } : { json: undefined };
};

/** An emptied value is unknown again; one that was never there is still waited for. */
const withoutValue = ({ before }: Beside): ToWrite => {
  const wasKnown = before !== undefined && !(isObject(before) && before['unknown'] !== undefined);
  return wasKnown ? { json: undefined } : { missing: message('the value') };
};

const givenJson = (text: SourcedText, beside: Beside): ToWrite => {
  if (text.value.trim() === '') return withoutValue(beside);
  const own = [text.source, text.by, text.on].some((each) => each.trim() !== '');
  if (own || !beside.hasGiven) return { missing: message('how it is known') };
  const value = typedJson(text.value, beside.of);
  if (text.tolerance.trim() === '') return { json: value };
  return { json: { value, tolerance: toleranceOf(text.tolerance, beside.of) } };
};

const basisJson = (text: SourcedText & { readonly how: Basis }, beside: Beside): ToWrite => {
  if (text.value.trim() === '') return withoutValue(beside);
  const { tolerance, source, by, on } = text;
  const words = Object.entries({ source, by, on })
    .map(([key, words]) => [key, words.trim()] as const)
    .filter(([, words]) => words !== '');
  return {
    json: {
      value: typedJson(text.value, beside.of),
      ...(tolerance.trim() === '' ? {} : { tolerance: toleranceOf(tolerance, beside.of) }),
      basis: text.how,
      ...Object.fromEntries(words),
    },
  };
};

/** As its kind has it, in one line: `5.5 ft, measured`. */
export const writtenWords = (
  json: Json | undefined,
  sayBasis: (basis: Basis) => string,
  voice: Voice = ENGLISH,
): string => {
  const { how, source, ...text } = sourcedText(json, { hasGiven: false, hasKind: false });
  const value = shownText(text.value, voice.tongue?.decimalMark ?? '.');
  switch (how) {
    case 'unknown':
      return source === ''
        ? phrase(voice, 'unknown')
        : phrase(voice, 'unknown: {why}', { why: source });
    case 'given':
    case 'open':
    case 'kind':
      return value;
    case 'weighed':
    case 'measured':
    case 'published':
    case 'calculated':
    case 'estimated':
    case 'houseRule':
    case 'commonPractice':
    case 'assumption':
    case 'invented':
      return `${value}, ${sayBasis(how)}`;
    default:
      return unreachable(how);
  }
};
