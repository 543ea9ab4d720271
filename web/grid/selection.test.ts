import { describe, expect, it } from 'vitest';
import {
  extended,
  isOneCell,
  rangeOf,
  type Selection,
  wholeRows,
  wholeSheet,
} from './selection.ts';

const SHOWN = { rows: ['1', '2', 'M1', '3'], columns: ['set', 'item', 'in', 'out'] };

const choice = (from: string, to: string): Selection => {
  const place = (words: string) => {
    const [row = '', column = ''] = words.split(' ');
    return { row, column };
  };
  return { from: place(from), to: place(to) };
};

describe('several cells', () => {
  it('go from one corner to the other, whichever is above', () => {
    const range = { rows: ['2', 'M1'], columns: ['in', 'out'], isWholeRows: false };
    expect(rangeOf(choice('2 in', 'M1 out'), SHOWN)).toEqual(range);
    expect(rangeOf(choice('M1 out', '2 in'), SHOWN)).toEqual(range);
  });

  it('follow the order in which rows are shown, and the columns that are shown', () => {
    const shown = { rows: ['3', '2', '1'], columns: ['set', 'in'] };
    expect(rangeOf(choice('3 in', '2 in'), shown)?.rows).toEqual(['3', '2']);
    expect(rangeOf(choice('3 in', 'M1 in'), shown)).toBeNull();
    expect(rangeOf(choice('3 out', '2 in'), shown)).toBeNull();
  });

  it('are whole rows from the column that heads the rows', () => {
    expect(rangeOf(choice('2 set', 'M1 set'), SHOWN)).toEqual({
      rows: ['2', 'M1'],
      columns: SHOWN.columns,
      isWholeRows: true,
    });
    expect(wholeRows(choice('2 in', '3 out'), SHOWN)).toEqual(choice('2 set', '3 out'));
    expect(wholeSheet(SHOWN)).toEqual(choice('1 set', '3 out'));
    expect(wholeSheet({ rows: [], columns: ['set'] })).toBeNull();
  });

  it('grow and shrink by arrows, stop at the edge, and go to it at once when asked', () => {
    const by = (key: string, isFar = false) =>
      extended(choice('2 in', '2 in'), SHOWN, { key, isFar })?.to;
    expect(by('ArrowDown')).toEqual({ row: 'M1', column: 'in' });
    expect(by('ArrowDown', true)).toEqual({ row: '3', column: 'in' });
    expect(by('ArrowLeft', true)).toEqual({ row: '2', column: 'set' });
    expect(by('a')).toBeUndefined();
    const atEdge = extended(choice('2 in', '1 in'), SHOWN, { key: 'ArrowUp', isFar: false });
    expect(atEdge).toEqual(choice('2 in', '1 in'));
  });

  it('may be one', () => {
    expect(isOneCell({ rows: ['1'], columns: ['in'] })).toBe(true);
    expect(isOneCell({ rows: ['1'], columns: ['in', 'out'] })).toBe(false);
  });
});
