import { describe, expect, it } from 'vitest';
import { readShowValue } from '#documents';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { type Cells, cellsOfText, textOfCells } from '../grid/clip-text.ts';
import type { JsonObject } from '../keeping/json.ts';
import { reckon } from '../reckoning/reckon.ts';
import { cellText } from './cell-text.ts';
import { COLUMNS, type Column, TYPED_COLUMNS } from './columns.ts';
import { fillOf, fillPlan, pastePlan, type Sheet, spreadOver } from './paste-plan.ts';
import { clearing, placeOfRefusal, withoutHangs, withRows } from './sheet-edits.ts';

const SHOW = clockmaker as JsonObject;

const reckoned = (show: JsonObject) => {
  const answer = reckon({ house: kestlemere, show, state: record as JsonObject }, 0);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const sheetOf = (show: JsonObject): Sheet => {
  const { sets, house, nowMs } = reckoned(show);
  return { sets, rows: sets.map(({ id }) => id), columns: COLUMNS, telling: { house, nowMs } };
};

const SHEET = sheetOf(SHOW);
const RAIL = SHEET.rows;

const textOf = (sheet: Sheet, set: string, column: Column): string => {
  const each = sheet.sets.find(({ id }) => id === set);
  if (each === undefined) throw new Error(`no set ${set}`);
  return cellText(each, column, sheet.telling);
};

const rowTexts = (sheet: Sheet, set: string) =>
  TYPED_COLUMNS.map((column) => textOf(sheet, set, column));

const planned = (cells: Cells, row: string, column: Column, sheet = SHEET) =>
  pastePlan(cells, { row, column }, sheet);

const pasted = (cells: Cells, row: string, column: Column, sheet = SHEET): JsonObject => {
  const plan = planned(cells, row, column, sheet);
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  return withRows(SHOW, plan.edits, RAIL);
};

const faultsOf = (cells: Cells, row: string, column: Column, sheet = SHEET) => {
  const plan = planned(cells, row, column, sheet);
  return plan.ok ? [] : plan.faults;
};

/** A name for each of the 45 sets; the second and third columns are no columns typed into. */
const FORTY_FIVE: Cells = RAIL.map((_, index) => [
  `Piece ${index + 1}`,
  '',
  'soft',
  '24 ft',
  `${40 + index * 0.25} ft`,
  '4 in',
]);

const PLAIN: Sheet = { ...SHEET, columns: ['set', 'item', 'kind', 'in', 'out', 'depth'] };

describe('a pasted text', () => {
  it('of 45 rows goes over the whole list as one document that is understood', () => {
    const cells = FORTY_FIVE.map((row) => row.filter((_, index) => index !== 1));
    const show = pasted(cells, '1', 'item', PLAIN);
    const after = sheetOf(show);
    expect(RAIL.map((set) => textOf(after, set, 'item'))).toEqual(cells.map(([name]) => name));
    expect(rowTexts(after, '4')).toEqual(['Piece 4', 'soft', '24 ft', '40.75 ft', '4 in']);
    expect(rowTexts(after, '2')).toEqual(['Piece 2', 'soft', '24 ft', '40.25 ft', '4 in']);
    expect(after.sets.find(({ id }) => id === '4')?.keptEmpty).toBeNull();
  });

  it('of the list itself changes nothing, with every column that is worked out', () => {
    const cells = RAIL.map((set) => COLUMNS.map((column) => textOf(SHEET, set, column)));
    const read = cellsOfText(textOfCells(cells));
    expect(read.ok && planned(read.cells, '1', 'set')).toEqual({ ok: true, edits: [] });
  });

  it('names every cell that is not understood, and is then taken in no part', () => {
    const faults = faultsOf(
      [
        ['Net', '', 'silk', '24', '40 ft', 'four'],
        ['', '', '', '25 ft'],
        ['', '', 'hard'],
        ['x', '2'],
      ],
      '3',
      'item',
    );
    expect(faults.map(({ where, found }) => `${where}: ${found}`)).toEqual([
      'row 1, set 3, kind: “silk”',
      'row 1, set 3, in trim: “24”',
      'row 1, set 3, depth: “four”',
      'row 2, set 4, in trim: “25 ft”',
      'row 3, set 5, item: nothing',
      'row 4, set 6, items: “2”',
    ]);
    expect(faults[0]?.accepted).toBe('soft, hard, electric or other');
    expect(faults[1]?.accepted).toMatch(/ft/);
    expect(faults[3]?.accepted).toContain('a name under item');
  });

  it('says what stands in a column that is worked out, and of a long text its beginning', () => {
    const [fault] = faultsOf([['x'.repeat(99)]], '1', 'hung');
    expect(fault?.found).toBe(`“${'x'.repeat(60)} …”`);
    expect(fault?.accepted).toContain(textOf(SHEET, '1', 'hung'));
    expect(faultsOf([['']], '1', 'hung')).toEqual([]);
  });

  it('is refused where it reaches below the list or beside it', () => {
    expect(faultsOf([['a'], ['b'], ['c']], 'D3', 'item')).toEqual([
      { where: 'row 3', found: '“c”', accepted: 'nothing: the list ends above' },
    ]);
    expect(faultsOf([['', 'x']], '1', 'knownBy')).toEqual([
      {
        where: 'row 1, set 1, column 2 of the text',
        found: '“x”',
        accepted: 'nothing: the list ends before',
      },
    ]);
  });

  it('goes by the number of the set where it begins with it, each set once', () => {
    const show = pasted(
      [
        ['9', 'Nine'],
        ['4', 'Four'],
      ],
      '1',
      'set',
      PLAIN,
    );
    const after = sheetOf(show);
    expect([textOf(after, '9', 'item'), textOf(after, '4', 'item')]).toEqual(['Nine', 'Four']);
    const hidden = { ...PLAIN, rows: RAIL.filter((set) => set !== '4') };
    const faults = faultsOf([['9'], ['9'], ['99'], ['4']], '1', 'set', hidden);
    expect(faults.map(({ where, found, accepted }) => `${where}: ${found}, ${accepted}`)).toEqual([
      'row 2, set: set 9 a second time, each set once',
      'row 3, set: “99”, the number of a set of this house',
      'row 4, set: “4”, a set that is shown: this one is hidden by the filter',
    ]);
  });

  it('keeps a text that begins like a formula as a text, whatever it says', () => {
    const read = cellsOfText('=HYPERLINK("x")');
    if (!read.ok) throw new Error(read.found);
    expect(textOf(sheetOf(pasted(read.cells, '1', 'item')), '1', 'item')).toBe('=HYPERLINK("x")');
  });

  it('takes away heights where it is blank, and types the other in the same edit', () => {
    const after = sheetOf(pasted([['', '50 ft', '']], '1', 'in'));
    expect(rowTexts(after, '1').slice(2)).toEqual(['50 ft', '', '']);
    const both = sheetOf(pasted([['10 ft', '50 ft']], '2', 'in'));
    expect(rowTexts(both, '2').slice(2, 4)).toEqual(['10 ft', '50 ft']);
  });

  it('of one cell goes into all that are chosen', () => {
    const range = { rows: ['1', '2'], columns: ['in', 'out'] };
    expect(spreadOver([['9 ft']], range)).toEqual([
      ['9 ft', '9 ft'],
      ['9 ft', '9 ft'],
    ]);
    expect(spreadOver([['a', 'b']], range)).toEqual([['a', 'b']]);
    expect(spreadOver([['a'], ['b']], range)).toEqual([['a'], ['b']]);
  });
});

describe('filling down', () => {
  const filled = (rows: readonly string[], columns: readonly Column[]) => {
    const fill = fillOf({ rows, columns }, SHEET);
    if (fill === null) return null;
    const plan = fillPlan(fill, SHEET);
    return plan.ok ? sheetOf(withRows(SHOW, plan.edits, RAIL)) : plan.faults;
  };

  it('takes the first row into the others, as it was written, and only what is typed', () => {
    const after = filled(['7', '8', '9'], ['depth', 'hung']);
    expect(after).toMatchObject({ rows: RAIL });
    for (const set of ['7', '8', '9']) expect(textOf(after as Sheet, set, 'depth')).toBe('3 in');
  });

  it('takes the row above into one row alone, and from the first row nothing', () => {
    const after = filled(['8'], ['in']) as Sheet;
    expect(textOf(after, '8', 'in')).toBe(textOf(SHEET, '7', 'in'));
    expect(filled(['1'], ['in'])).toBeNull();
  });

  it('hangs a name on empty sets, and refuses a height where there is none', () => {
    const after = filled(['3', '4'], ['item', 'kind']) as Sheet;
    expect(rowTexts(after, '4').slice(0, 2)).toEqual(['Clock-face gauze', 'soft']);
    expect(filled(['3', '4'], ['in'])).toMatchObject([{ where: 'row 1, set 4, in trim' }]);
  });
});

describe('clearing', () => {
  it('takes heights and depths, and leaves name and kind', () => {
    const [first, , , fourth] = SHEET.sets;
    if (first === undefined || fourth === undefined) throw new Error('the demo has sets');
    const edit = clearing(first, TYPED_COLUMNS);
    const after = sheetOf(withRows(SHOW, edit === null ? [] : [edit], RAIL));
    expect(rowTexts(after, '1')).toEqual(['House curtain', 'soft', '', '', '']);
    expect(clearing(first, ['item', 'kind'])).toBeNull();
    expect(clearing(fourth, ['in'])).toBeNull();
  });

  it('leaves whole rows empty in this show', () => {
    const after = sheetOf(withoutHangs(SHOW, ['1', '4', '5']));
    expect(after.sets.filter(({ set }) => set.hang === null).map(({ id }) => id)).toEqual(
      expect.arrayContaining(['1', '4', '5']),
    );
  });
});

describe('a refusal of the whole document', () => {
  it('is brought home to the row and the column that it speaks of', () => {
    const { house } = SHEET.telling;
    const [first] = SHEET.sets;
    if (first === undefined) throw new Error('the demo has sets');
    const edits = [{ each: first, texts: { item: ' ', out: '-90000 ft', depth: '-1 in' } }];
    const show = withRows(SHOW, edits, RAIL);
    const read = readShowValue(show, house);
    const places = read.ok ? [] : read.error.map(({ path }) => placeOfRefusal(path, show, edits));
    expect(places).toContainEqual({ set: '1', column: 'item' });
    expect(places).not.toContain(null);
    expect(placeOfRefusal('hangs[0].trims[1].height', show, edits)?.column).toBe('out');
    expect(placeOfRefusal('hangs[0].trims[0].height', show, edits)?.column).toBe('in');
    expect(placeOfRefusal('hangs[0].halfDepth', show, edits)?.column).toBe('depth');
    expect(placeOfRefusal('hangs[0].family', show, edits)?.column).toBe('kind');
    expect(placeOfRefusal('cues[0]', show, edits)).toBeNull();
  });
});
