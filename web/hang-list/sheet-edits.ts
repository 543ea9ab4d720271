/**
 * Many cells of the hang list as one edit of the show. They only write; what may be written is
 * judged by `#documents`, which reads the result as a whole before it is taken.
 */
import { unreachable } from '#outcome';
import type { HangFamily } from '#show';
import {
  hangPath,
  withField,
  withHang,
  withLength,
  withoutHang,
  writtenHang,
} from '../editing/show-edits.ts';
import { twoTrims, withTrims } from '../editing/trims.ts';
import { writtenText } from '../editing/written.ts';
import { at, type JsonObject } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { TypedColumn } from './columns.ts';

/** What is typed into one row; a column that is absent stays as it is. */
export type RowEdit = {
  readonly each: SetReckoning;
  readonly texts: Readonly<Partial<Record<TypedColumn, string>>>;
};

const NO_TRIMS = { low: null, high: null };

/** An empty set gets its hang first; a kind is only read as one, so that "Soft" is soft. */
const withRow = (
  show: JsonObject,
  { each, texts }: RowEdit,
  railOrder: readonly string[],
): JsonObject => {
  const {
    id: set,
    set: { hang },
  } = each;
  const { item, depth } = texts;
  const kind = texts.kind?.toLowerCase() as HangFamily | undefined;
  const isNew = hangPath(show, set) === null;
  let next = show;
  if (isNew && item !== undefined) {
    next = withHang(next, { set, name: item, family: kind ?? 'other', railOrder });
  } else {
    if (item !== undefined) next = withField(next, set, ['name'], item);
    if (kind !== undefined) next = withField(next, set, ['family'], kind);
  }
  next = withTrims(next, set, texts, hang === null ? NO_TRIMS : twoTrims(hang));
  if (depth === undefined) return next;
  return depth === ''
    ? withField(next, set, ['halfDepth'], undefined)
    : withLength(next, set, ['halfDepth'], depth);
};

export const withRows = (
  show: JsonObject,
  edits: readonly RowEdit[],
  railOrder: readonly string[],
): JsonObject => edits.reduce((next, edit) => withRow(next, edit, railOrder), show);

/** What Delete takes: heights and depths. A name and a kind stay, since a hang has both. */
export const clearing = (each: SetReckoning, columns: readonly TypedColumn[]): RowEdit | null => {
  if (each.set.hang === null) return null;
  const texts = Object.fromEntries(columns.filter(isClearable).map((column) => [column, '']));
  return Object.keys(texts).length === 0 ? null : { each, texts };
};

export const isClearable = (column: TypedColumn): boolean => {
  switch (column) {
    case 'in':
    case 'out':
    case 'depth':
      return true;
    case 'item':
    case 'kind':
      return false;
    default:
      return unreachable(column);
  }
};

export const withoutHangs = (show: JsonObject, sets: readonly string[]): JsonObject =>
  sets.reduce((next, set) => withoutHang(next, set), show);

/** Which set and column a refusal of the whole document speaks of; null where it is another. */
export const placeOfRefusal = (
  path: string,
  show: JsonObject,
  edits: readonly RowEdit[],
): { readonly set: string; readonly column: TypedColumn } | null => {
  const [, index, rest = ''] = /^hangs\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
  const edit = edits.find(({ each }) => {
    const place = hangPath(show, each.id);
    return place !== null && index !== undefined && place[1] === Number(index);
  });
  if (edit === undefined) return null;
  return { set: edit.each.id, column: columnOf(rest, edit, show) };
};

const columnOf = (path: string, { each, texts }: RowEdit, show: JsonObject): TypedColumn => {
  if (path.startsWith('family')) return 'kind';
  if (path.startsWith('halfDepth')) return 'depth';
  const [, trim] = /^trims\[(\d+)\]/.exec(path) ?? [];
  if (trim === undefined) return 'item';
  const height = at(writtenHang(show, each.id) ?? undefined, ['trims', Number(trim), 'height']);
  return texts.out !== undefined && writtenText(height) === texts.out ? 'out' : 'in';
};
