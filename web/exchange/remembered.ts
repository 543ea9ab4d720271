/**
 * Mappings that a person made on this device, by the headings of the columns that they are for. A
 * device that keeps nothing asks again; what was altered there is not taken.
 */
import { type Mapping, type Target, unitsFor } from '#exchange';

export type Remembered = {
  readonly name: string;
  readonly heads: readonly string[];
  readonly table: Mapping['table'];
  readonly columns: readonly { readonly to: Target | null; readonly unit: string | null }[];
};

type TextStorage = Pick<Storage, 'getItem' | 'setItem'>;

const KEY = 'counterpoise.mappings';
/** The oldest goes when there are more. */
const KEPT_MAX = 20;
const NAME_MAX = 60;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown): value is string => typeof value === 'string';

const isTarget = (value: unknown): value is Target => {
  if (!isRecord(value)) return false;
  if (value['is'] === 'field') return isText(value['field']);
  if (value['is'] === 'bricks') return isText(value['kind']);
  const references = ['batten', 'lowestPoint', 'lens'];
  return (
    value['is'] === 'trim' &&
    isText(value['name']) &&
    references.some((one) => one === value['reference'])
  );
};

const isColumn = (value: unknown): value is Remembered['columns'][number] =>
  isRecord(value) &&
  (value['to'] === null || isTarget(value['to'])) &&
  (value['unit'] === null || isText(value['unit']));

const isRemembered = (value: unknown): value is Remembered =>
  isRecord(value) &&
  isText(value['name']) &&
  (value['table'] === 'schedule' || value['table'] === 'takeoff') &&
  Array.isArray(value['heads']) &&
  value['heads'].every(isText) &&
  Array.isArray(value['columns']) &&
  value['columns'].every(isColumn);

const all = (storage: TextStorage): readonly Remembered[] => {
  try {
    const value: unknown = JSON.parse(storage.getItem(KEY) ?? '[]');
    return Array.isArray(value) ? value.filter(isRemembered) : [];
  } catch {
    return [];
  }
};

const put = (storage: TextStorage, kept: readonly Remembered[]): boolean => {
  try {
    storage.setItem(KEY, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
};

export const headsOf = ({ columns }: Mapping): readonly string[] =>
  columns.map(({ heading }) => heading);

const isSame = (one: readonly string[], other: readonly string[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Those for just these headings, the newest first. */
export const rememberedFor = (
  storage: TextStorage,
  heads: readonly string[],
): readonly Remembered[] => all(storage).filter((one) => isSame(one.heads, heads));

/** False where the device would not take it. */
export const remember = (storage: TextStorage, name: string, mapping: Mapping): boolean => {
  const fresh: Remembered = {
    name: name.trim().slice(0, NAME_MAX),
    heads: headsOf(mapping),
    table: mapping.table,
    columns: mapping.columns.map(({ to, unit }) => ({ to, unit })),
  };
  const others = all(storage).filter(
    (one) => one.name !== fresh.name || !isSame(one.heads, fresh.heads),
  );
  return put(storage, [fresh, ...others].slice(0, KEPT_MAX));
};

export const forget = (storage: TextStorage, gone: Remembered): boolean =>
  put(
    storage,
    all(storage).filter((one) => one.name !== gone.name || !isSame(one.heads, gone.heads)),
  );

/** The mapping as it was made; a unit that no longer fits its field is asked for again. */
export const asRemembered = (mapping: Mapping, { table, columns }: Remembered): Mapping => ({
  ...mapping,
  table,
  columns: mapping.columns.map((one, at) => {
    const { to, unit } = columns[at] ?? { to: null, unit: null };
    const fits = to !== null && unit !== null && unitsFor(table, to).includes(unit);
    return { ...one, to, unit: fits ? unit : null };
  }),
});
