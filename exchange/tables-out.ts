/** The two tables of a show as it was written: its own figures and units, nothing worked out. */
import type { Json, JsonObject, ShowDocument } from '#documents';
import type { House } from '#house';
import {
  bricksHeading,
  type Field,
  SCHEDULE_FIELDS,
  TAKEOFF_FIELDS,
  TRIM_REFERENCES,
  type TrimReference,
  trimHeading,
} from './fields.ts';
import {
  type Given,
  givenIn,
  givenText,
  isObject,
  listOf,
  valueIn,
  valueText,
} from './notation.ts';
import { partsText, placementText, releasesText } from './parts.ts';
import type { TextTable } from './sheet.ts';

/** The value at a path, and the "given" that holds where it stands. */
export const lookUp = (
  root: JsonObject,
  path: readonly string[],
  above: Given,
): { readonly value: Json | undefined; readonly given: Given } => {
  let value: Json | undefined = root;
  let given = givenIn(root, above);
  for (const [depth, key] of path.entries()) {
    value = isObject(value) ? value[key] : undefined;
    if (depth < path.length - 1) given = givenIn(value, given);
  }
  return { value, given };
};

export const textAt = (root: JsonObject, one: Field, above: Given): string => {
  const { value, given } = lookUp(root, one.at ?? [], above);
  if (one.reads.is === 'measure' || one.reads.is === 'number') {
    return valueText(valueIn(value, given), givenIn(root, above));
  }
  return typeof value === 'string' ? value : '';
};

export type TrimColumn = { readonly name: string; readonly reference: TrimReference };

const isSameTrim = (one: TrimColumn, other: TrimColumn): boolean =>
  one.name === other.name && one.reference === other.reference;

const trimsOf = (hang: JsonObject): readonly (TrimColumn & { readonly trim: JsonObject })[] =>
  listOf(hang['trims'])
    .filter(isObject)
    .map((trim) => ({
      name: String(trim['name']),
      reference: TRIM_REFERENCES.find((one) => one === trim['reference']) ?? 'batten',
      trim,
    }));

/** Each trim once, behind the one that it follows on its own set. */
const trimColumns = (hangs: readonly JsonObject[]): readonly TrimColumn[] => {
  const columns: TrimColumn[] = [];
  for (const hang of hangs) {
    let after = -1;
    for (const { name, reference } of trimsOf(hang)) {
      const found = columns.findIndex((one) => isSameTrim(one, { name, reference }));
      if (found < 0) columns.splice(after + 1, 0, { name, reference });
      after = found < 0 ? after + 1 : Math.max(after, found);
    }
  }
  return columns;
};

export const trimText = (hang: JsonObject, column: TrimColumn, above: Given): string => {
  const row = givenIn(hang, above);
  const found = trimsOf(hang).find((one) => isSameTrim(one, column));
  if (found === undefined) return '';
  const height = valueIn(found.trim['height'], givenIn(found.trim, row));
  return valueText(height ?? { unknown: 'not said' }, row);
};

const bricksOf = (hang: JsonObject): JsonObject => {
  const bricks = hang['bricks'];
  const counts = isObject(bricks) ? bricks['counts'] : undefined;
  return isObject(counts) ? counts : {};
};

export const hangText = (hang: JsonObject, one: Field, above: Given): string => {
  const bricks = hang['bricks'];
  switch (one.field) {
    case 'bricksWhy':
      return isObject(bricks) ? String(bricks['reason']) : '';
    case 'coupledWith':
      return listOf(hang['coupledWith']).join('; ');
    case 'knownBy':
      return givenText(givenIn(hang, above));
    default:
      return textAt(hang, one, above);
  }
};

const scheduleOf = (house: House, raw: JsonObject): TextTable => {
  const above = givenIn(raw, null);
  const hangs = listOf(raw['hangs']).filter(isObject);
  const trims = trimColumns(hangs);
  const kinds = house.brickKinds.filter(({ serves }) => serves.show).map(({ id }) => id);
  const [set, name, family, ...rest] = SCHEDULE_FIELDS.map(({ heading }) => heading);
  const head = [
    ...[set, name, family].map(String),
    ...trims.map((one) => trimHeading(one.name, one.reference)),
    ...kinds.map(bricksHeading),
    ...rest,
  ];
  const kept = isObject(raw['keptEmpty']) ? raw['keptEmpty'] : {};
  const rows = house.lineSets.map(({ id }) => {
    const hang = hangs.find((one) => one['set'] === id);
    if (hang === undefined) {
      return head.map((heading) => {
        if (heading === set) return id;
        return heading === 'Kept empty' ? String(kept[id] ?? '') : '';
      });
    }
    const texts = SCHEDULE_FIELDS.slice(1).map((one) => hangText(hang, one, above));
    return [
      id,
      ...texts.slice(0, 2),
      ...trims.map((one) => trimText(hang, one, above)),
      ...kinds.map((kind) => String(bricksOf(hang)[kind] ?? '')),
      ...texts.slice(2),
    ];
  });
  return { name: 'Schedule', rows: [head, ...rows] };
};

export const itemText = (item: JsonObject, one: Field, above: Given): string => {
  const takeoff = isObject(item['takeoff']) ? item['takeoff'] : {};
  const given = givenIn(item, above);
  switch (one.field) {
    case 'item':
      return String(item['id']);
    case 'by':
      return String(takeoff['by']);
    case 'parts':
      return partsText(takeoff, givenIn(takeoff, given), given);
    case 'placement':
      return placementText(item['placement']);
    case 'releases':
      return releasesText(item['releases'], given, given);
    case 'carriesPerson':
      return item['carriesPerson'] === true ? 'yes' : '';
    case 'knownBy':
      return givenText(given);
    default:
      return textAt(item, one, above);
  }
};

const takeoffOf = (house: House, raw: JsonObject): TextTable => {
  const hangs = listOf(raw['hangs']).filter(isObject);
  const rows = house.lineSets.flatMap(({ id }) => {
    const hang = hangs.find((one) => one['set'] === id);
    if (hang === undefined) return [];
    const above = givenIn(hang, givenIn(raw, null));
    return listOf(hang['items'])
      .filter(isObject)
      .map((item) => [id, ...TAKEOFF_FIELDS.slice(1).map((one) => itemText(item, one, above))]);
  });
  return { name: 'Take-off', rows: [TAKEOFF_FIELDS.map(({ heading }) => heading), ...rows] };
};

/** One row a set in rail order, also where nothing hangs; and one row an item. */
export const tablesOut = (
  house: House,
  { raw }: ShowDocument,
): { readonly schedule: TextTable; readonly takeoff: TextTable } => ({
  schedule: scheduleOf(house, raw),
  takeoff: takeoffOf(house, raw),
});
