/** Beam and floor sheet and house sheet of the example houses. */
import { describe, expect, it } from 'vitest';
import type { SetAssessment } from '#assessment';
import { POUND_FORCE } from '#quantities';
import { openExample } from '../examples/open-example.ts';
import {
  allWords,
  exampleContext,
  mustMake,
  rowsOf,
  tableNamed,
  tablesOf,
  textOf,
} from './example-sheets.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const skelderwick = exampleContext(openExample('skelderwick'));

const pounds = (cell: string | undefined): number => Number(/^(\d+) lbf/.exec(cell ?? '')?.[1]);

describe('the beam and floor sheet of Kestlemere', () => {
  const sheet = mustMake(kestlemere, 'beam-and-floor');
  const [summary, sets, floors, wells] = ['Bay', 'Set', 'Gallery floor', 'Loft well'].map((head) =>
    tableNamed(sheet, head),
  );
  const bays = rowsOf(summary);

  /**
   * The plan of the demo (the-job.md 10.2, its own computed figures) prints whole pounds and tenths
   * of a kilonewton; the sheet rounds every load up.
   */
  it.each([
    ['A', 5158, 22.9, 21.8],
    ['B', 4653, 20.7, 19.4],
    ['C', 7879, 35.0, 27.2],
  ] as const)('totals bay %s as the plan does', (bay, downLb, downKn, sideKn) => {
    const cellOf = (way: string) => bays.find(([name]) => name === `${bay}, ${way}`)?.[1];
    const [down, side] = [pounds(cellOf('down')), pounds(cellOf('sideways'))];
    expect([downLb, downLb + 1]).toContain(down);
    expect(Math.abs((down * POUND_FORCE) / 1000 - downKn)).toBeLessThanOrEqual(0.0545);
    expect(Math.abs((side * POUND_FORCE) / 1000 - sideKn)).toBeLessThanOrEqual(0.0545);
    const total = sheet.data?.rows.find(
      ([part, set, when]) => part === `bay ${bay}` && set === 'all' && when === 'as planned',
    );
    expect(Math.round(Number(total?.[3]))).toBe(downLb);
  });

  it('rounds limits and margins down, and shares of a limit up', () => {
    // 36 kN are 8,093.1 lbf; 5,158.2 of them are 63.74 %.
    expect(bays[0]?.slice(2, 5)).toEqual(['8093 lbf', '63.8 %', '2934 lbf']);
  });

  it('says what one moving set and the wire add, and that the totals leave the wire out', () => {
    expect(bays[0]?.[5]).toMatch(/^5410 lbf \(5\)$/);
    expect(bays[4]?.slice(6, 8)).toEqual(['784 lbf', '8663 lbf OVER']);
    expect(summary?.rows[4]?.rule).toBe('thick');
    expect(summary?.rows[0]?.rule).toBe('hair');
    expect(allWords(sheet)).toMatch(/The wire is not in the totals:.*every batten .*high stop/);
  });

  it('says a limit that nobody knows, and judges nothing by it', () => {
    expect(bays[1]?.slice(2, 5)).toEqual(['not known', '–', '–']);
    expect(allWords(sheet)).toContain('sideways limit of bay A (not surveyed)');
  });

  it('has every set of every bay in rail order, hung or bare, and ends at the total', () => {
    const rows = rowsOf(sets);
    const ids = rows.map(([id]) => id ?? '').filter((id) => /^[D]?\d+$/.test(id));
    const inBays = kestlemere.house.bays.flatMap((bay) => bay.sets);
    const rail = kestlemere.house.lineSets.map(({ id }) => id);
    expect(ids).toEqual(rail.filter((id) => inBays.includes(id)));
    expect(ids).toHaveLength(44);
    const last = rows.findIndex(([, name]) => name === 'All 13 sets of bay A');
    expect(rows[last - 1]?.slice(3, 5)).toEqual(rows[last]?.slice(3, 5));
    expect(rows[last]?.[3]).toBe(bays[0]?.[1]);
  });

  it('holds floors against all three limits, as counted and with every show brick back', () => {
    expect(rowsOf(floors).map(([name]) => name)).toEqual([
      'Upper loading gallery  people and tools 1000 lb (invented) counted in, over the floor',
      'as counted',
      'every show brick of the house on it',
      'Mid loading gallery  people and tools 800 lb (invented) counted in, over the floor',
      'as counted',
      'every show brick of the house on it',
    ]);
    // 480 − 148 full of 25 lb and 40 half of 12.5 lb; 372 bricks at two a foot on 70 ft, 3 high.
    expect(rowsOf(floors)[2]?.slice(1)).toEqual([
      '8800 lb',
      '40 psf',
      '150 psf',
      '150 lbf/ft',
      '525 lbf/ft',
      '3',
      '8',
    ]);
  });

  it('adds up the loft wells with the limit of each', () => {
    const rows = rowsOf(wells);
    expect(rows).toHaveLength(kestlemere.house.loftWells.length);
    for (const [, place, , limit, share] of rows) {
      expect(place).toMatch(/^(S[RL] \d|centre line)/);
      expect(limit).toBe('4500 lbf');
      expect(share).toMatch(/^\d+\.\d %$/);
    }
  });

  it('says where a house describes no bay, no well and no gallery', () => {
    const { house, assessment } = kestlemere;
    const totals = { bays: [], wells: [], floors: [], linesOnNoWell: [] };
    const bare = mustMake(
      {
        ...kestlemere,
        house: { ...house, bays: [], loftWells: [], galleries: [] },
        assessment: { ...assessment, totals },
      },
      'beam-and-floor',
    );
    expect(allWords(bare)).toMatch(/No bay .*unknown[\s\S]*No loading gallery[\s\S]*No loft well/);
  });
});

describe('the beam and floor sheet of Skelderwick', () => {
  const sheet = mustMake(skelderwick, 'beam-and-floor');

  it('keeps to kilonewtons in every column of forces', () => {
    for (const { columns, rows } of tablesOf(sheet)) {
      columns.forEach(({ unit }, index) => {
        if (unit !== 'kN') return;
        for (const { cells, isGroup } of rows) {
          const text = textOf(cells[index] ?? []);
          if (isGroup !== true && /\d/.test(text)) expect(text).toMatch(/^\d+\.\d\d kN/);
        }
      });
    }
  });

  it('names the set whose arbor nobody knows, and gives no total as recorded', () => {
    const south = rowsOf(tablesOf(sheet)[0]).find(([name]) => name === 'South, down');
    expect(south?.at(-1)).toBe('not known');
    expect(allWords(sheet)).toContain('as recorded, cradle of set 16: ');
    expect(allWords(sheet)).toMatch(/On no well that the house lists: lines, 4 of set F1/);
  });
});

describe('the house sheet', () => {
  const sheet = mustMake(kestlemere, 'house-sheet');
  const types = tableNamed(sheet, 'Type');
  const sets = tableNamed(sheet, 'Set');
  const fact = (head: string, type: string): string => {
    const column = types?.columns.findIndex((each) => each.head === type) ?? -1;
    return rowsOf(types).find(([name]) => name === head)?.[column] ?? '';
  };

  it('has every set in rail order with its position and the way to the next', () => {
    const rows = rowsOf(sets);
    expect(rows.map(([id]) => id)).toEqual(kestlemere.house.lineSets.map(({ id }) => id));
    expect(rows[0]?.slice(1, 4)).toEqual(['1\'-6"', '9 in', 'SP6']);
    expect(rows.find(([id]) => id === '27')?.[2]).toBe('18 in');
    expect(rows.find(([id]) => id === '20')?.at(-1)).toBe('LOCKED OUT, tag 7');
  });

  it('says once for a type what its sets have alike', () => {
    expect(fact('Sets', 'SP7')).toBe('14 to 40');
    expect(fact('Lift lines', 'SP6')).toBe('6: 4\'-6", 13\'-6", 22\'-6" each side');
    expect(fact('Lift lines', 'SP7')).toBe('7: centre line, 9\'-0", 18\'-0", 27\'-0" each side');
    expect(fact('Pipe weight', 'DP7')).toBe('10 full, 250 lb');
  });

  it('holds the arbor by mass, by rod and by reach, in bricks', () => {
    expect(fact('Arbor by mass', 'SP7')).toBe('1005 lb more: 40 full');
    expect(fact('Arbor by rod', 'SP7')).toBe('61 1/8 in more: 50 full');
    expect(fact('Arbor by reach', 'SP7')).toBe('43 full');
    expect(fact('Arbor by mass', 'MOTOR')).toBe('–');
  });

  it('says at which batten heights each gallery reaches, inside the window', () => {
    // The plan of the demo for ten plates on double purchase: 3.0 ft only, and 32.5 to 43.0 ft.
    expect(fact('Upper loading gallery', 'DP7')).toMatch(/^first only at 3'-0";/);
    expect(fact('Mid loading gallery', 'DP7')).toMatch(/^first 32'-6" to 43'-0";/);
  });

  it('says what is not known, by the types that lack it', () => {
    const words = allWords(sheet);
    expect(words).toContain('House: grid (not surveyed)');
    expect(words).toMatch(/SP6, MOTOR, SP7, DP7: joints of the batten \(nobody has looked\)/);
    expect(fact('At one place', 'SP6')).toBe('not known');
  });

  it('gives a set that differs from its type a form of its own', () => {
    const { house, assessment } = kestlemere;
    const change = (set: SetAssessment['lineSet']) =>
      set.id === '5' ? { ...set, workingHeight: { known: false, why: 'changed' } as const } : set;
    const changed = mustMake(
      {
        ...kestlemere,
        house: { ...house, lineSets: house.lineSets.map(change) },
        assessment: {
          ...assessment,
          sets: assessment.sets.map((set) => ({ ...set, lineSet: change(set.lineSet) })),
        },
      },
      'house-sheet',
    );
    const heads = tableNamed(changed, 'Type')?.columns.map(({ head }) => head);
    expect(heads).toEqual(['Type', 'SP6 a', 'SP6 b', 'MOTOR', 'SP7', 'DP7']);
    expect(rowsOf(tableNamed(changed, 'Type'))[0]?.slice(1, 3)).toEqual(['1 to 4, 6 to 13', '5']);
  });

  it('puts no sign before a distance, and keeps to the units of the house', () => {
    for (const context of [kestlemere, skelderwick]) {
      const made = mustMake(context, 'house-sheet');
      const foreign =
        context === kestlemere ? /\d\s(kg|N|kN|m)\b(?!\/s)/ : /\d\s(lb|lbf|ft)\b|\d'-\d/;
      const own = tablesOf(made).flatMap(({ rows }) =>
        rows.filter(({ cells }) => textOf(cells[0] ?? []) !== 'Remarks'),
      );
      for (const { cells } of own) {
        for (const cell of cells) {
          expect(textOf(cell)).not.toMatch(/(^|\s)[-\u2212]\d/);
          expect(textOf(cell)).not.toMatch(foreign);
        }
      }
    }
  });
});
