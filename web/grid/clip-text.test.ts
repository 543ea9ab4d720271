import { describe, expect, it } from 'vitest';
import {
  cellsOfText,
  htmlOfCells,
  isManyCells,
  PASTE_CHARACTERS_MAX,
  PASTE_COLUMNS_MAX,
  PASTE_ROWS_MAX,
  textOfCells,
} from './clip-text.ts';

const cellsOf = (text: string) => {
  const answer = cellsOfText(text);
  return answer.ok ? answer.cells : answer;
};

describe('text of cells', () => {
  it('parts rows by line ends of any kind, cells by tabs, and drops the last line end', () => {
    const rows = [
      ['Net', '24 ft'],
      ['', '7 m'],
    ];
    for (const end of ['\n', '\r\n', '\r']) {
      expect(cellsOf(`Net\t24 ft${end}\t7 m${end}`)).toEqual(rows);
    }
    expect(cellsOf('Net\n\nDrop\n\n')).toEqual([['Net'], [''], ['Drop']]);
    expect(cellsOf('')).toEqual([['']]);
  });

  it('takes marks round a cell off where they hold what needed them, and no others', () => {
    expect(cellsOf('"two\nlines"\t"a ""b"" c"')).toEqual([['two lines', 'a "b" c']]);
    expect(cellsOf('"Net" drop\t"quoted"\t6"')).toEqual([['"Net" drop', '"quoted"', '6"']]);
    expect(cellsOf('"never closed\tx')).toEqual([['"never closed', 'x']]);
  });

  it('gives back what it wrote, marks, tabs and beginnings like a formula too', () => {
    const cells = [
      ['=1+1', '+4', '-3 ft', '@x', '＝1'],
      ['"x"', 'a "b"', "'quote", '', 'plain'],
    ];
    expect(cellsOf(textOfCells(cells))).toEqual(cells);
  });

  it('never lets a text out that a spreadsheet would reckon', () => {
    expect(textOfCells([['=1+1', "it's 1=1"]])).toBe("'=1+1\tit's 1=1");
    expect(textOfCells([["'=1+1"]])).toBe("''=1+1");
    expect(cellsOf("''=1+1")).toEqual([["'=1+1"]]);
    expect(htmlOfCells([['=1+1']])).toContain("<td>'=1+1</td>");
  });

  it('writes markup in a name as letters', () => {
    expect(htmlOfCells([['<img src=x onerror="y">', 'a & b']])).toBe(
      '<table><tbody><tr><td>&lt;img src=x onerror=&quot;y&quot;&gt;</td>' +
        '<td>a &amp; b</td></tr></tbody></table>',
    );
  });

  it('takes as many rows, columns and characters as it says, and not one more', () => {
    const rows = (count: number): string => Array.from({ length: count }, () => 'x').join('\n');
    expect(cellsOfText(rows(PASTE_ROWS_MAX)).ok).toBe(true);
    expect(cellsOfText(rows(PASTE_ROWS_MAX + 1))).toMatchObject({ ok: false, found: '501 rows' });
    const columns = (count: number): string => '\t'.repeat(count - 1);
    expect(cellsOfText(columns(PASTE_COLUMNS_MAX)).ok).toBe(true);
    expect(cellsOfText(columns(PASTE_COLUMNS_MAX + 1))).toMatchObject({ found: '65 columns' });
    expect(cellsOfText('x'.repeat(PASTE_CHARACTERS_MAX)).ok).toBe(true);
    expect(cellsOfText('x'.repeat(PASTE_CHARACTERS_MAX + 1)).ok).toBe(false);
  });

  it('knows one cell from many', () => {
    expect([isManyCells('24 ft'), isManyCells('24 ft\r\n')]).toEqual([false, false]);
    expect([isManyCells('a\tb'), isManyCells('a\nb')]).toEqual([true, true]);
  });
});
