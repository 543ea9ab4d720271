/** The order of the rows, by what any one column says. Rail order is how the house stands. */
import { LEVELS, worstLevel } from '#findings';
import type { Known } from '#house';
import { unreachable } from '#outcome';
import { type PlacedTrim, twoTrims } from '../editing/trims.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { cellText, type Telling } from './cell-text.ts';
import type { Column } from './columns.ts';
import { balanceAt } from './row-words.ts';

export type Sort = { readonly column: Column; readonly way: 'up' | 'down' };

/** Null where nobody knows, or where there is nothing: such rows come last, whichever way. */
type Key = number | string | null;

const known = (value: Known<number> | undefined): Key => (value?.known ? value.value : null);

const trimOf = ({ set }: SetReckoning, which: 'low' | 'high'): PlacedTrim | null =>
  set.hang === null ? null : twoTrims(set.hang)[which];

const sizeAt = (each: SetReckoning, which: 'low' | 'high'): number | null => {
  const balance = balanceAt(each.set, trimOf(each, which)?.trim);
  return balance === undefined ? null : Math.abs(balance.imbalance);
};

const largest = (each: SetReckoning): Key => {
  const sizes = [sizeAt(each, 'low'), sizeAt(each, 'high')].filter((size) => size !== null);
  return sizes.length === 0 ? null : Math.max(...sizes);
};

const bricksOf = ({ set }: SetReckoning): Key =>
  set.plan.known ? set.plan.value.stack.show.reduce((total, { count }) => total + count, 0) : null;

/** The gravest degree first, then how many there are of it. */
const gravity = ({ findings }: SetReckoning): number => {
  const worst = worstLevel(findings);
  if (worst === null) return 0;
  const count = findings.filter(({ level }) => level === worst).length;
  return (LEVELS.indexOf(worst) + 1) * 1000 + count;
};

const wordsIn = (each: SetReckoning, column: Column, telling: Telling): Key =>
  cellText(each, column, telling) || null;

const keyOf = (each: SetReckoning, column: Column, telling: Telling): Key => {
  const { set } = each;
  switch (column) {
    case 'set':
      return each.id;
    case 'position':
      return known(set.lineSet.y);
    case 'item':
    case 'kind':
    case 'knownBy':
      return wordsIn(each, column, telling);
    case 'items':
      return set.hang?.items.length ?? null;
    case 'in':
      return known(trimOf(each, 'low')?.trim.height);
    case 'out':
      return known(trimOf(each, 'high')?.trim.height);
    case 'depth':
      return known(set.hang?.halfDepth);
    case 'hung':
      return set.hang !== null && set.hung.known ? set.hung.value.withoutLoom : null;
    case 'bricks':
      return bricksOf(each);
    case 'stack':
      return set.plan.known ? set.plan.value.stack.height : null;
    case 'balance':
      return largest(each);
    case 'atIn':
      return sizeAt(each, 'low');
    case 'atOut':
      return sizeAt(each, 'high');
    case 'findings':
      return gravity(each);
    default:
      return unreachable(column);
  }
};

/** Numbers inside words count as numbers: 9 before 11. One order in every browser. */
const COLLATOR = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const compare = (one: number | string, other: number | string): number =>
  typeof one === 'number' && typeof other === 'number'
    ? one - other
    : COLLATOR.compare(String(one), String(other));

/** Ids in the order asked for; rows that say the same stay in rail order among themselves. */
export const sortedIds = (
  sets: readonly SetReckoning[],
  sort: Sort | null,
  telling: Telling,
): readonly string[] => {
  if (sort === null) return sets.map(({ id }) => id);
  const keyed = sets.map((each) => ({ id: each.id, key: keyOf(each, sort.column, telling) }));
  const sign = sort.way === 'up' ? 1 : -1;
  const sorted = keyed.toSorted(({ key: one }, { key: other }) => {
    if (one === null || other === null) return Number(one === null) - Number(other === null);
    return sign * compare(one, other);
  });
  return sorted.map(({ id }) => id);
};

/** What a person asks first of a column: the heaviest and the gravest; else from the least. */
const FROM_THE_MOST: readonly Column[] = [
  'items',
  'hung',
  'bricks',
  'stack',
  'balance',
  'atIn',
  'atOut',
  'findings',
];

/** Once as a person asks first, once the other way round, then rail order again. */
export const nextSort = (now: Sort | null, column: Column): Sort | null => {
  const first = FROM_THE_MOST.includes(column) ? 'down' : 'up';
  if (now?.column !== column) return { column, way: first };
  return now.way === first ? { column, way: first === 'up' ? 'down' : 'up' } : null;
};
