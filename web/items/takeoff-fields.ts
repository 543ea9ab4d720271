/** The figures from which the mass of an item is worked out, with their places in the document. */
import type { Dimension } from '#quantities';
import { message, phrase, type Voice } from '#texts';
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

/** A field with its words still to be said; a list of parts names the part in them. */
type Unsaid = Omit<TakeoffField, 'words'> & { readonly text: string; readonly name: string };

const field = (text: string, path: JsonPath, dimension: Dimension, name = ''): Unsaid => ({
  text,
  name,
  path: ['takeoff', ...path],
  dimension,
  isCount: false,
});

const pieces = (name: string, path: JsonPath): Unsaid => ({
  ...field(message('{name}: how many'), path, 'count', name),
  isCount: true,
});

/** Only where somebody wrote it: no row asks for a clamp that is not there. */
const ifWritten = (takeoff: JsonObject, each: Unsaid): readonly Unsaid[] =>
  at(takeoff, each.path.slice(1)) === undefined ? [] : [each];

const nameOf = (part: Json): string => (isObject(part) ? String(part['name'] ?? '') : '');

const partsOf = (takeoff: JsonObject, list: string): readonly Json[] => {
  const parts = takeoff[list];
  return isList(parts) ? parts : [];
};

const fieldsOfList = (
  takeoff: JsonObject,
  list: string,
  figures: readonly (readonly [text: string, key: string, dimension: Dimension])[],
): readonly Unsaid[] =>
  partsOf(takeoff, list).flatMap((part, index) => [
    pieces(nameOf(part), [list, index, 'count']),
    ...figures.map(([text, key, dimension]) =>
      field(text, [list, index, key], dimension, nameOf(part)),
    ),
  ]);

const EACH = message('{name}: each');

const CLOTH = [
  field(message('finished width'), ['width'], 'length'),
  field(message('cloth, mass for each area'), ['areaMass'], 'massPerArea'),
  field(message('fullness added'), ['fullness'], 'ratio'),
  field(message('hems and webbing added'), ['hemAllowance'], 'ratio'),
  field(message('paint added'), ['paint'], 'ratio'),
  field(message('moisture added'), ['moisture'], 'ratio'),
];

const LOOM = [
  field(message('cable, mass for each length'), ['massPerLength'], 'massPerLength'),
  field(message('full length'), ['length'], 'length'),
  field(message('far end fixed at'), ['fixedAt'], 'length'),
];

const PIPE = [
  field(message('length'), ['length'], 'length'),
  field(message('mass for each length'), ['massPerLength'], 'massPerLength'),
];

const clothFields = (takeoff: JsonObject): readonly Unsaid[] => [
  ...CLOTH,
  ...ifWritten(
    takeoff,
    field(message('in the hem, mass for each length'), ['bottomMassPerLength'], 'massPerLength'),
  ),
  ...ifWritten(takeoff, field(message('ties: each'), ['ties', 'each'], 'mass')),
];

const unitFields = (takeoff: JsonObject): readonly Unsaid[] =>
  partsOf(takeoff, 'units').flatMap((unit, index) => [
    pieces(nameOf(unit), ['units', index, 'count']),
    field(EACH, ['units', index, 'each'], 'mass', nameOf(unit)),
    ...ifWritten(
      takeoff,
      field(message('{name}: clamp, each'), ['units', index, 'clampEach'], 'mass', nameOf(unit)),
    ),
  ]);

const frameFields = (takeoff: JsonObject): readonly Unsaid[] => [
  ...fieldsOfList(takeoff, 'members', [
    [message('{name}: length'), 'length', 'length'],
    [message('{name}: mass for each length'), 'massPerLength', 'massPerLength'],
  ]),
  ...fieldsOfList(takeoff, 'sheets', [
    [message('{name}: area'), 'area', 'area'],
    [message('{name}: mass for each area'), 'massPerArea', 'massPerArea'],
  ]),
  ...fieldsOfList(takeoff, 'hardware', [[EACH, 'each', 'mass']]),
  field(message('paint, glue and fixings added'), ['allowance'], 'ratio'),
];

/** Beyond the mass itself, which has a column of its own. */
export const takeoffFields = (item: JsonObject, voice: Voice): readonly TakeoffField[] =>
  fieldsOf(item).map(({ text, name, ...rest }) => ({
    ...rest,
    words: phrase(voice, text, { name }),
  }));

const fieldsOf = (item: JsonObject): readonly Unsaid[] => {
  const { takeoff } = item;
  if (!isObject(takeoff)) return [];
  switch (takeoff['by']) {
    case 'mass':
      return ifWritten(takeoff, field(message('pipe or chain in the hem'), ['hem'], 'mass'));
    case 'cloth':
      return clothFields(takeoff);
    case 'frame':
      return frameFields(takeoff);
    case 'units':
      return unitFields(takeoff);
    case 'loom':
      return LOOM;
    case 'pipe':
      return [...PIPE, ...ifWritten(takeoff, field(message('fittings'), ['fittings'], 'mass'))];
    case 'hardware':
      return fieldsOfList(takeoff, 'lines', [[EACH, 'each', 'mass']]);
    default:
      return [];
  }
};

export const isByMass = (item: JsonObject): boolean => at(item, ['takeoff', 'by']) === 'mass';
