/**
 * How the list is looked at: which order, which rows, which columns. Order and rows are settled
 * when they are asked for, so that no row runs away from the hand that is typing into it; a row
 * that comes to match later is shown as well, since what is hidden may be what matters.
 */

import type { House } from '#house';
import { phrase, phraseCount } from '#texts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { Telling } from './cell-text.ts';
import { COLUMNS, type Column, headWords } from './columns.ts';
import { type Filter, isFiltering, isMatch, NO_FILTER } from './row-filter.ts';
import { type Sort, sortedIds } from './row-sort.ts';

export type SheetView = {
  readonly sort: Sort | null;
  /** All sets in the order asked for; empty in rail order. */
  readonly order: readonly string[];
  readonly filter: Filter;
  /** Those that matched when the filter was asked for. */
  readonly kept: ReadonlySet<string>;
};

/** Every row, as the house stands. */
export const RAIL_ORDER: SheetView = {
  sort: null,
  order: [],
  filter: NO_FILTER,
  kept: new Set(),
};

export const isRailOrder = ({ sort, filter }: SheetView): boolean =>
  sort === null && !isFiltering(filter);

export const withSort = (
  view: SheetView,
  sort: Sort | null,
  sets: readonly SetReckoning[],
  telling: Telling,
): SheetView => ({
  ...view,
  sort,
  order: sort === null ? [] : sortedIds(sets, sort, telling),
});

export const withFilter = (
  view: SheetView,
  filter: Filter,
  sets: readonly SetReckoning[],
  telling: Telling,
): SheetView => ({
  ...view,
  filter,
  kept: new Set(sets.filter((each) => isMatch(each, filter, telling)).map(({ id }) => id)),
});

/** The rows as they are shown now. */
export const rowsShown = (
  view: SheetView,
  sets: readonly SetReckoning[],
  telling: Telling,
): readonly SetReckoning[] => {
  const { order, filter, kept } = view;
  const place = new Map(order.map((id, index) => [id, index]));
  const placeOf = ({ id }: SetReckoning): number => place.get(id) ?? order.length;
  const ordered =
    order.length === 0 ? sets : sets.toSorted((one, other) => placeOf(one) - placeOf(other));
  if (!isFiltering(filter)) return ordered;
  return ordered.filter((each) => kept.has(each.id) || isMatch(each, filter, telling));
};

export const columnsShown = (hidden: ReadonlySet<Column>): readonly Column[] =>
  COLUMNS.filter((column) => !hidden.has(column));

const listed = (words: readonly string[]): string => words.join(', ');

type Seen = {
  readonly view: SheetView;
  readonly shown: number;
  readonly total: number;
  readonly hidden: ReadonlySet<Column>;
  readonly house: House;
};

const rowsWords = ({ shown, total, house }: Seen): string => {
  const away = total - shown;
  if (away === 0) return phrase(house, 'All {total} sets are shown', { total });
  return phraseCount(
    house,
    away,
    [
      '{shown} of {total} sets are shown, {count} is hidden',
      '{shown} of {total} sets are shown, {count} are hidden',
    ],
    { shown, total },
  );
};

const orderWords = ({ view: { sort }, house }: Seen): string => {
  if (sort === null) return phrase(house, 'in rail order');
  const way = sort.way === 'up' ? phrase(house, 'from the least') : phrase(house, 'from the most');
  return phrase(house, 'sorted by {head}, {way}, not in rail order', {
    head: headWords(sort.column, house),
    way,
  });
};

const columnsWords = ({ hidden, house }: Seen): string => {
  const away = COLUMNS.filter((column) => hidden.has(column));
  if (away.length === 0) return '';
  const words = listed(away.map((column) => headWords(column, house)));
  return phraseCount(
    house,
    away.length,
    [' {count} column is hidden: {words}.', ' {count} columns are hidden: {words}.'],
    { words },
  );
};

/** One sentence for what is to be seen and one for what is not. */
export const seenWords = (seen: Seen): string =>
  `${rowsWords(seen)}, ${orderWords(seen)}.${columnsWords(seen)}`;
