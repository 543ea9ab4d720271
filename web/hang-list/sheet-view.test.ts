import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { withoutHang } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { reckon } from '../reckoning/reckon.ts';
import { COLUMNS, type Column, HIDEABLE } from './columns.ts';
import { hiddenIn } from './columns-on-device.ts';
import { type Filter, isFound, isMatch, NO_FILTER } from './row-filter.ts';
import { nextSort, sortedIds } from './row-sort.ts';
import {
  columnsShown,
  isRailOrder,
  RAIL_ORDER,
  rowsShown,
  seenWords,
  withFilter,
  withSort,
} from './sheet-view.ts';
import { blockedWords } from './standing-words.ts';

const reckoned = (show: JsonObject) => {
  const answer = reckon({ house: kestlemere, show, state: record as JsonObject }, 0);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const { sets, house, nowMs } = reckoned(clockmaker as JsonObject);
const TELLING = { house, nowMs };
const RAIL = sets.map(({ id }) => id);
const setOf = (id: string) => {
  const each = sets.find((set) => set.id === id);
  if (each === undefined) throw new Error(`no set ${id}`);
  return each;
};

const sorted = (column: Column, way: 'up' | 'down') => sortedIds(sets, { column, way }, TELLING);
const matching = (filter: Partial<Filter>) =>
  sets.filter((each) => isMatch(each, { ...NO_FILTER, ...filter }, TELLING)).map(({ id }) => id);

describe('the order of rows', () => {
  it('is by what is measured, the unknown and the empty last whichever way', () => {
    // Heights of in trims as the demo was written: 15 ft on set 36, 16 ft on M1, 40 ft on set 30.
    expect(sorted('in', 'up').slice(0, 2)).toEqual(['36', 'M1']);
    expect(sorted('in', 'down')[0]).toBe('30');
    const empty = RAIL.filter((id) => setOf(id).set.hang === null);
    expect(sorted('in', 'down').slice(-empty.length)).toEqual(empty);
    expect(sorted('in', 'up').slice(-empty.length)).toEqual(empty);
  });

  it('reads numbers in words as numbers, and leaves like rows in rail order', () => {
    expect(sorted('set', 'up').slice(0, 3)).toEqual(['1', '2', '3']);
    expect(sorted('set', 'up').indexOf('9')).toBeLessThan(sorted('set', 'up').indexOf('11'));
    const soft = sorted('kind', 'down').filter((id) => setOf(id).set.hang?.family === 'soft');
    expect(soft).toEqual(RAIL.filter((id) => soft.includes(id)));
  });

  it.each(COLUMNS)('loses no row by %s', (column) => {
    expect(sorted(column, 'up').toSorted()).toEqual(RAIL.toSorted());
  });

  it('asks first for the most of what weighs, then the other way, then rail order', () => {
    const first = nextSort(null, 'hung');
    expect(first).toEqual({ column: 'hung', way: 'down' });
    expect(nextSort(first, 'hung')).toEqual({ column: 'hung', way: 'up' });
    expect(nextSort(nextSort(first, 'hung'), 'hung')).toBeNull();
    expect(nextSort(first, 'item')).toEqual({ column: 'item', way: 'up' });
  });
});

describe('the rows that match', () => {
  it('go by kind, by use, and by what the rules found', () => {
    expect(matching({ family: 'electric' })).toEqual(['5', '19', '21', '32', '40']);
    expect(matching({ use: 'empty' })).toHaveLength(17);
    expect(matching({ use: 'keptEmpty' })).toHaveLength(17);
    expect(matching({ use: 'spare' })).toEqual([]);
    expect(matching({ use: 'hung' })).toHaveLength(28);
    expect(matching({ use: 'blocked' })).toEqual(expect.arrayContaining(['20', 'D3', 'M1']));
    const grave = matching({ findings: 'stop' });
    expect(grave).toEqual(
      RAIL.filter((id) => setOf(id).findings.some(({ level }) => level === 'stop')),
    );
    expect(matching({ findings: 'caution' })).toEqual(expect.arrayContaining(grave));
    expect(matching({ findings: 'some' }).length).toBeGreaterThan(grave.length);
  });

  it('have every word asked for, in a name, an item or a reason, without case or accents', () => {
    expect(isFound(setOf('1'), 'CÚRTAIN house', TELLING)).toBe(true);
    expect(isFound(setOf('5'), 'bar cable', TELLING)).toBe(true);
    expect(isFound(setOf('4'), 'depth of 5', TELLING)).toBe(true);
    expect(isFound(setOf('20'), 'locked out', TELLING)).toBe(true);
    expect(isFound(setOf('1'), 'curtain zebra', TELLING)).toBe(false);
    expect(isFound(setOf('1'), '  ', TELLING)).toBe(false);
  });

  it('say what a set is on, and what keeps it', () => {
    expect(blockedWords(setOf('1'), house)).toEqual([]);
    expect(blockedWords(setOf('D3'), house)).toEqual(['dead-hung']);
    expect(blockedWords(setOf('M1'), house)).toEqual(['on a motor']);
    expect(blockedWords(setOf('20'), house)[0]).toMatch(/^locked out: /);
  });
});

describe('the list as it is looked at', () => {
  const ids = (view: typeof RAIL_ORDER, of = sets) =>
    rowsShown(view, of, TELLING).map(({ id }) => id);
  const seen = { total: 45, house, hidden: new Set<Column>() };

  it('is in rail order with every row until something else is asked for', () => {
    expect(ids(RAIL_ORDER)).toEqual(RAIL);
    expect(isRailOrder(RAIL_ORDER)).toBe(true);
    expect(seenWords({ ...seen, view: RAIL_ORDER, shown: 45 })).toBe(
      'All 45 sets are shown, in rail order.',
    );
  });

  it('keeps a row that no longer matches under the hand, and shows one that comes to', () => {
    const view = withFilter(RAIL_ORDER, { ...NO_FILTER, use: 'empty' }, sets, TELLING);
    const after = reckoned(withoutHang(clockmaker as JsonObject, '9')).sets;
    expect(ids(view, after)).toEqual(RAIL.filter((id) => ids(view).includes(id) || id === '9'));
    const hung = withFilter(RAIL_ORDER, { ...NO_FILTER, use: 'hung' }, sets, TELLING);
    expect(ids(hung, after)).toContain('9');
  });

  it('keeps its order when a figure changes, and says that it is not rail order', () => {
    const sort = { column: 'in', way: 'up' } as const;
    const view = withSort(RAIL_ORDER, sort, sets, TELLING);
    const after = reckoned(withoutHang(clockmaker as JsonObject, '36')).sets;
    expect(ids(view, after)).toEqual(ids(view));
    expect(isRailOrder(view)).toBe(false);
    expect(ids(withSort(view, null, sets, TELLING))).toEqual(RAIL);
    const hidden = new Set<Column>(['stack', 'depth']);
    expect(seenWords({ ...seen, view, shown: 44, hidden })).toBe(
      '44 of 45 sets are shown, 1 is hidden, sorted by in trim, from the least, ' +
        'not in rail order. 2 columns are hidden: depth, stack.',
    );
    expect(seenWords({ ...seen, view, shown: 5, hidden: new Set(['stack']) })).toContain(
      '40 are hidden, sorted by in trim, from the least, not in rail order. 1 column is hidden',
    );
  });

  it('hides the columns that this device was told to, and never number, name and findings', () => {
    expect([...hiddenIn('stack set nonsense item findings atOut')]).toEqual(['stack', 'atOut']);
    expect(hiddenIn(null).size).toBe(0);
    expect(columnsShown(new Set(HIDEABLE))).toEqual(['set', 'item', 'findings']);
  });
});
