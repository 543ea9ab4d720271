/** The figures from which the mass of an item is worked out, with their places in the document. */
import type { Dimension } from '#quantities';
import {
  at,
  isList,
  isObject,
  type Json,
  type JsonObject,
  type JsonPath,
} from '../keeping/json.ts';

export type TakeoffField = {
  readonly words: string;
  /** From the item. */
  readonly path: JsonPath;
  readonly dimension: Dimension;
  /** A plain number of pieces, which has neither tolerance nor basis of its own. */
  readonly isCount: boolean;
};

const field = (words: string, path: JsonPath, dimension: Dimension): TakeoffField => ({
  words,
  path: ['takeoff', ...path],
  dimension,
  isCount: false,
});

const pieces = (words: string, path: JsonPath): TakeoffField => ({
  ...field(words, path, 'count'),
  isCount: true,
});

/** Only where somebody wrote it: no row asks for a clamp that is not there. */
const ifWritten = (takeoff: JsonObject, each: TakeoffField): readonly TakeoffField[] =>
  at(takeoff, each.path.slice(1)) === undefined ? [] : [each];

const nameOf = (part: Json): string => (isObject(part) ? String(part['name'] ?? '') : '');

const partsOf = (takeoff: JsonObject, list: string): readonly Json[] => {
  const parts = takeoff[list];
  return isList(parts) ? parts : [];
};

const fieldsOfList = (
  takeoff: JsonObject,
  list: string,
  figures: readonly (readonly [words: string, key: string, dimension: Dimension])[],
): readonly TakeoffField[] =>
  partsOf(takeoff, list).flatMap((part, index) => [
    pieces(`${nameOf(part)}: how many`, [list, index, 'count']),
    ...figures.map(([words, key, dimension]) =>
      field(`${nameOf(part)}: ${words}`, [list, index, key], dimension),
    ),
  ]);

const CLOTH = [
  field('finished width', ['width'], 'length'),
  field('cloth, mass for each area', ['areaMass'], 'massPerArea'),
  field('fullness added', ['fullness'], 'ratio'),
  field('hems and webbing added', ['hemAllowance'], 'ratio'),
  field('paint added', ['paint'], 'ratio'),
  field('moisture added', ['moisture'], 'ratio'),
];

const LOOM = [
  field('cable, mass for each length', ['massPerLength'], 'massPerLength'),
  field('full length', ['length'], 'length'),
  field('far end fixed at', ['fixedAt'], 'length'),
];

const PIPE = [
  field('length', ['length'], 'length'),
  field('mass for each length', ['massPerLength'], 'massPerLength'),
];

const clothFields = (takeoff: JsonObject): readonly TakeoffField[] => [
  ...CLOTH,
  ...ifWritten(
    takeoff,
    field('in the hem, mass for each length', ['bottomMassPerLength'], 'massPerLength'),
  ),
  ...ifWritten(takeoff, field('ties: each', ['ties', 'each'], 'mass')),
];

const unitFields = (takeoff: JsonObject): readonly TakeoffField[] =>
  partsOf(takeoff, 'units').flatMap((unit, index) => [
    pieces(`${nameOf(unit)}: how many`, ['units', index, 'count']),
    field(`${nameOf(unit)}: each`, ['units', index, 'each'], 'mass'),
    ...ifWritten(
      takeoff,
      field(`${nameOf(unit)}: clamp, each`, ['units', index, 'clampEach'], 'mass'),
    ),
  ]);

const frameFields = (takeoff: JsonObject): readonly TakeoffField[] => [
  ...fieldsOfList(takeoff, 'members', [
    ['length', 'length', 'length'],
    ['mass for each length', 'massPerLength', 'massPerLength'],
  ]),
  ...fieldsOfList(takeoff, 'sheets', [
    ['area', 'area', 'area'],
    ['mass for each area', 'massPerArea', 'massPerArea'],
  ]),
  ...fieldsOfList(takeoff, 'hardware', [['each', 'each', 'mass']]),
  field('paint, glue and fixings added', ['allowance'], 'ratio'),
];

/** Beyond the mass itself, which has a column of its own. */
export const takeoffFields = (item: JsonObject): readonly TakeoffField[] => {
  const { takeoff } = item;
  if (!isObject(takeoff)) return [];
  switch (takeoff['by']) {
    case 'mass':
      return ifWritten(takeoff, field('pipe or chain in the hem', ['hem'], 'mass'));
    case 'cloth':
      return clothFields(takeoff);
    case 'frame':
      return frameFields(takeoff);
    case 'units':
      return unitFields(takeoff);
    case 'loom':
      return LOOM;
    case 'pipe':
      return [...PIPE, ...ifWritten(takeoff, field('fittings', ['fittings'], 'mass'))];
    case 'hardware':
      return fieldsOfList(takeoff, 'lines', [['each', 'each', 'mass']]);
    default:
      return [];
  }
};

export const isByMass = (item: JsonObject): boolean => at(item, ['takeoff', 'by']) === 'mass';
