import { describe, expect, it } from 'vitest';
import { guessMapping, type Sheet, startsLikeFormula } from '#exchange';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf } from '../order/example-work.ts';
import { choicesFor, firstValues, formulaLike, unitAsk } from './mapping-choices.ts';
import { shownText } from './shown-text.ts';

const { house, show } = documentsOf({ house: kestlemere, show: clockmaker, state: record });

const sheetOf = (...rows: readonly (readonly string[])[]): Sheet => ({
  name: 'S',
  rows: rows.map((row) => row.map((text) => ({ is: 'text', text }))),
});

const sheet: Sheet = {
  name: 'S',
  rows: [
    ...sheetOf(['Set', 'Name', 'Out', 'Half depth (in)'], ['2', '', '38', '4']).rows,
    [
      { is: 'number', text: '9' },
      { is: 'formula', text: 'A1+1' },
      { is: 'text', text: '60 ft' },
    ],
    ...sheetOf(['11', '=1+1', '-3', '+5']).rows,
  ],
};
const mapping = guessMapping(sheet, house);

describe('what a column can be', () => {
  it('is a field, a trim of the show or one of its own name, or a kind of brick', () => {
    const [fields, trims, bricks] = choicesFor(mapping, 2, { house, show });
    expect(fields?.choices.map(({ words }) => words)).toEqual(
      expect.arrayContaining(['Set', 'Name', 'Half depth', 'Known by']),
    );
    const names = trims?.choices.map(({ words }) => words) ?? [];
    expect(names).toEqual(expect.arrayContaining(['Trim: playing (batten)', 'Trim: Out (batten)']));
    expect(new Set(names).size).toBe(names.length);
    expect(bricks?.choices.length).toBe(
      house.brickKinds.filter(({ serves }) => serves.show).length,
    );
  });

  it('is a field of an item in a take-off, and nothing of a set', () => {
    const takeoff = { ...mapping, table: 'takeoff' as const };
    const groups = choicesFor(takeoff, 2, { house, show });
    expect(groups.map(({ of }) => of)).toEqual(['Item']);
  });
});

describe('what stands in a column', () => {
  it('is its first filled cells, with what a program would work out by its name', () => {
    expect(firstValues(mapping, sheet, 1)).toEqual(['formula: A1+1', '=1+1']);
    expect(firstValues(mapping, sheet, 2)).toEqual(['38', '60 ft', '-3']);
  });

  it('is asked for its unit where numbers are bare', () => {
    expect(unitAsk(mapping, sheet, 2)).toMatchObject({ bare: 2 });
    expect(unitAsk(mapping, sheet, 2).units).toContain('ft');
    expect(unitAsk(mapping, sheet, 1)).toEqual({ units: [], bare: 0 });
    expect(mapping.columns[3]?.unit).toBe('in');
  });

  it('is counted where it is written like a formula, bare numbers aside', () => {
    // "=1+1" alone: −3 and +5 are numbers, and the cell of the workbook is refused by its kind.
    expect(formulaLike(mapping, sheet, startsLikeFormula)).toBe(1);
  });
});

describe('text of others', () => {
  it('shows what does not print by its number, and is cut where it is long', () => {
    expect(shownText('a\u202Eb\u0000\n')).toBe('a⟨U+202E⟩b⟨U+0000⟩⟨U+000A⟩');
    expect(shownText('x'.repeat(99))).toBe(`${'x'.repeat(59)}…`);
    expect(shownText('<b>é</b>')).toBe('<b>é</b>');
  });
});
