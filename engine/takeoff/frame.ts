import type { Known } from '#house';
import type { FrameTakeoff } from '#show';
import type { Composition } from './composition.ts';
import { emptyListFaults, ONE, sumTerms } from './composition.ts';
import type { Figure, FigureName, ToleranceByBasis } from './figure.ts';
import { countOf, figureOf, termOf } from './figure.ts';
import type { Draft, Factor } from './line.ts';
import { times } from './line.ts';

/** A part of the frame, with the height of its centre above the foot of the piece. */
export type FramePart = { readonly draft: Draft; readonly z: Figure };

/**
 * Mass of built scenery.
 *
 *     m = ( Σ n · ℓ · w  +  Σ n · A · σ  +  Σ n · h ) · (1 + a)
 *
 *     n, ℓ, w  -, m, kg/m    members   how many, length, mass per length
 *     n, A, σ  -, m², kg/m²  sheets    how many, area, mass per area
 *     n, h     -, kg         hardware  how many, each
 *     a        -             allowance paint, glue and fixings
 *     m        kg            returned
 *
 * Source  sum of the parts, the-job.md C11
 * Holds   all figures >= 0, one part or more
 * Omits   moisture that timber takes up (heavier)
 * Check   VAL-TKO-07, VAL-TKO-08, VAL-TKO-10, VAL-TKO-15
 */
export const composeFrame = (
  frame: FrameTakeoff,
  toleranceByBasis: ToleranceByBasis,
): Composition => {
  const drafts = frameParts(frame, toleranceByBasis).map(({ draft }) => draft);
  const allowance = figureOf(frame.allowance, ALLOWANCE, toleranceByBasis);
  const sum = sumTerms(drafts);
  return {
    drafts: [...drafts, allowanceDraft(drafts, allowance)],
    hemDrafts: null,
    faults: emptyListFaults(drafts, 'takeoff'),
    working: {
      title: 'mass of the built piece',
      formula: `( ${sum.formula} ) · ( 1 + a )`,
      terms: [...sum.terms, termOf(allowance)],
      source: 'sum of the parts; paint, glue and fixings are a share of it, common practice',
      omits: 'moisture that timber takes up: the piece may be heavier',
    },
    hemWorking: null,
  };
};

/** The parts in the order of the list: members, sheets, hardware. */
export const frameParts = (
  { members, sheets, hardware }: FrameTakeoff,
  toleranceByBasis: ToleranceByBasis,
): readonly FramePart[] => {
  const read: Reader = (given, name) => figureOf(given, name, toleranceByBasis);
  return [
    ...members.map((member, index) => memberPart(member, `takeoff.members[${index}]`, read)),
    ...sheets.map((sheet, index) => sheetPart(sheet, `takeoff.sheets[${index}]`, read)),
    ...hardware.map((piece, index) => hardwarePart(piece, `takeoff.hardware[${index}]`, read)),
  ];
};

type Reader = (given: Known<number>, name: FigureName) => Figure;
type Part = Pick<FrameTakeoff['hardware'][number], 'name' | 'count' | 'z'>;

const memberPart = (
  member: FrameTakeoff['members'][number],
  at: string,
  read: Reader,
): FramePart => {
  const { name } = member;
  const length: FigureName = {
    symbol: 'ℓ',
    meaning: `length of ${name}`,
    kind: 'length',
    field: `${at}.length`,
  };
  const massPerLength: FigureName = {
    symbol: 'w',
    meaning: `mass per length of ${name}`,
    kind: 'massPerLength',
    field: `${at}.massPerLength`,
  };
  const figures = [read(member.length, length), read(member.massPerLength, massPerLength)];
  return partOf(member, at, figures, read);
};

const sheetPart = (sheet: FrameTakeoff['sheets'][number], at: string, read: Reader): FramePart => {
  const { name } = sheet;
  const area: FigureName = {
    symbol: 'A',
    meaning: `area of ${name}`,
    kind: 'area',
    field: `${at}.area`,
  };
  const massPerArea: FigureName = {
    symbol: 'σ',
    meaning: `mass per area of ${name}`,
    kind: 'massPerArea',
    field: `${at}.massPerArea`,
  };
  return partOf(sheet, at, [read(sheet.area, area), read(sheet.massPerArea, massPerArea)], read);
};

const hardwarePart = (
  piece: FrameTakeoff['hardware'][number],
  at: string,
  read: Reader,
): FramePart => {
  const each: FigureName = {
    symbol: 'h',
    meaning: `mass of one ${piece.name}`,
    kind: 'mass',
    field: `${at}.each`,
  };
  return partOf(piece, at, [read(piece.each, each)], read);
};

const partOf = (
  { name, count, z }: Part,
  at: string,
  figures: readonly Figure[],
  read: Reader,
): FramePart => ({
  draft: {
    name,
    count: countOf(count, `${at}.count`, `number of ${name}`),
    products: [figures.map(times)],
    xs: null,
    isHem: false,
  },
  z: read(z, {
    symbol: 'z',
    meaning: `height of the centre of ${name} above the foot`,
    kind: 'length',
    field: `${at}.z`,
  }),
});

const ALLOWANCE: FigureName = {
  symbol: 'a',
  meaning: 'paint, glue and fixings, as a share of the parts',
  kind: 'ratio',
  field: 'takeoff.allowance',
  ifNone: '0 %',
};

/** The share of every part, as one line, so that the sheet adds up as it is read. */
const allowanceDraft = (parts: readonly Draft[], allowance: Figure): Draft => ({
  name: 'paint, glue and fixings',
  count: ONE,
  products: parts.flatMap(({ count, products }) =>
    products.map((product): readonly Factor[] => [times(count), ...product, times(allowance)]),
  ),
  xs: null,
  isHem: false,
});
