import { describe, expect, it } from 'vitest';
import { assess } from '#assessment';
import type { Drawing, Shape } from '#drawings';
import { judge } from '#rules';
import { openExample } from '../examples/open-example.ts';
import { exampleContext } from './example-sheets.ts';
import type { Block, Sheet, SheetContext, Table, Words } from './index.ts';
import { allSheets, sheetIds, sheetOf } from './index.ts';

const NOW_MS = Date.parse('2026-11-25T18:55:00Z');
const stamp = {
  revision: '4',
  printedAt: '2026-11-25T18:55:00+01:00',
  printedBy: 'head flyperson',
};

const contextOf = (name: 'kestlemere' | 'skelderwick'): SheetContext => {
  const example = openExample(name);
  const { house, show, state, assessment } = example;
  return { ...example, findings: judge(house, show, state, assessment, { nowMs: NOW_MS }), stamp };
};

const kestlemere = contextOf('kestlemere');
const skelderwick = contextOf('skelderwick');
const houses = [
  { name: 'Kestlemere', context: kestlemere, sheets: allSheets(kestlemere) },
  { name: 'Skelderwick', context: skelderwick, sheets: allSheets(skelderwick) },
] as const;

const wordsText = (words: Words): string =>
  words
    .map((inline) => {
      if (typeof inline === 'string') return inline;
      if ('strong' in inline) return inline.strong;
      return 'blank' in inline ? '____' : '[ ]';
    })
    .join('');

const shapeTexts = (shapes: readonly Shape[]): readonly string[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return shapeTexts(shape.shapes);
    return shape.kind === 'text' ? [shape.text] : [];
  });

const drawingTexts = ({ title, shapes }: Drawing): readonly string[] => [
  title,
  ...shapeTexts(shapes),
];

/** Every text of a block; `remarks` of the schedule are other people's words and left out. */
const blockTexts = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'heading':
      return [block.text];
    case 'text':
      return [wordsText(block.words)];
    case 'notice':
      return [block.heading, wordsText(block.words)];
    case 'drawing':
      return drawingTexts(block.drawing);
    case 'table':
      return block.rows.flatMap(({ cells }) => cells.map(wordsText));
    case 'list':
      return [];
    case 'proofs':
      return block.items.map(wordsText);
    case 'inkLines':
      return [];
    case 'columns':
      return block.columns.flat().flatMap(blockTexts);
    case 'tickets':
      return block.tickets.flat().flatMap(blockTexts);
  }
};

const textsOf = (sheet: Sheet): readonly string[] =>
  [
    sheet.title,
    ...sheet.facts.map(({ value }) => value),
    ...sheet.blocks.flatMap(blockTexts),
    sheet.footer.voidIf,
    ...sheet.footer.cautions,
  ].map((text) => text.replaceAll('\u00A0', ' '));

const tablesIn = (blocks: readonly Block[]): readonly Table[] =>
  blocks.flatMap((block) => {
    if (block.kind === 'table') return [block];
    return block.kind === 'columns' ? tablesIn(block.columns.flat()) : [];
  });

/** A safety curtain is called so by the house; that says of nothing that it is safe. */
const withoutNames = (text: string, { house }: SheetContext): string =>
  house.keepOuts.reduce((rest, { name }) => rest.replaceAll(name, ''), text);

/** A calculation report puts values into formulas that subtract; nowhere else stands a sign. */
const isFormula = ({ kind }: Sheet, text: string): boolean =>
  kind === 'calculation-report' && text.includes(' = ');

/**
 * Sources and remarks are other people's words, in their own units. What these sheets say of their
 * own is held to one system in structure-sheets.test.ts.
 */
const quotesSources = ({ kind }: Sheet): boolean =>
  kind === 'calculation-report' || kind === 'house-sheet';

describe.each(houses)('the sheets of $name', ({ context, sheets }) => {
  it('are one of each for the house, a balance card a set, two a hang', () => {
    const { assessment } = context;
    const hung = assessment.sets.filter(({ hang }) => hang !== null).length;
    const trims = assessment.sets.flatMap(({ hang }) => hang?.trims.map(({ name }) => name) ?? []);
    const drawings = 2 * (1 + new Set(trims).size);
    expect(sheets).toHaveLength(8 + drawings + assessment.sets.length + 2 * hung);
    expect(sheets.map(({ id }) => id)).toEqual(sheetIds(context));
    expect(sheets.some(({ id }) => /load|strike/.test(id))).toBe(false);
  });

  it('say first that they are no order of work', () => {
    for (const { blocks } of sheets) {
      expect(blocks[0]).toMatchObject({ heading: 'NOT AN ORDER OF WORK: DO NOT LOAD BY THIS' });
    }
  });

  it('carry house, show, revision, print, units, void-if, code, cautions and DEMO', () => {
    for (const { facts, footer, frame } of sheets) {
      expect(facts.map(({ term }) => term)).toEqual([
        'house',
        'show',
        'revision',
        'printed',
        'units',
      ]);
      expect(footer.voidIf).toMatch(/^Void if .+ is touched after \d+ \w{3} \d{4}, \d\d:\d\d/);
      expect(footer.code).toMatch(/^\w{4}-\w{4}$/);
      expect(footer.cautions.join(' ')).toMatch(
        /certifies nothing.*competent person.*Flying people/,
      );
      expect(frame).toContain('DEMO');
    }
  });

  it('never sign an imbalance, never say that a thing is safe, never tick', () => {
    for (const sheet of sheets) {
      for (const text of textsOf(sheet)) {
        expect(text).not.toMatch(
          /[-\u2212+]\s?[\d.]+\s?(lb|kg)?\s?(batten|arbor|bar|cradle) heavy/,
        );
        if (!isFormula(sheet, text)) expect(text).not.toMatch(/(^|[\s(])[-\u2212+]\s?\d/);
        expect(withoutNames(text, context)).not.toMatch(/\bsafe(ly|ty)?\b|\bOK\b|\u2713|\u2714/i);
        expect(text).not.toMatch(/undefined|NaN|\[object/);
      }
    }
  });

  it('give every imbalance its direction in words', () => {
    for (const sheet of sheets) {
      for (const { columns, rows } of tablesIn(sheet.blocks)) {
        const column = columns.findIndex(({ head }) => head === 'Imbalance');
        if (column === -1) continue;
        for (const { cells } of rows) {
          expect(wordsText(cells[column] ?? [])).toMatch(/ heavy$|^0[.0]*\s(lb|kg)$/);
        }
      }
    }
  });

  it('print a unit beside every number of a column that has one', () => {
    const unit = /(\d'-[\d\s/]+"|\d\s(ft|in|lb|lbf|m|kg|N|kN))/;
    for (const sheet of sheets) {
      for (const { columns, rows } of tablesIn(sheet.blocks)) {
        columns.forEach((column, index) => {
          if (column.unit === undefined) return;
          for (const { cells, isGroup } of rows) {
            const text = wordsText(cells[index] ?? []).replaceAll('\u00A0', ' ');
            if (isGroup !== true && /\d/.test(text)) expect(text).toMatch(unit);
          }
        });
      }
    }
  });

  it('keep to one system of units, and to whole pounds and their halves', () => {
    const isCustomary = context.house.units === 'customary';
    const foreign = isCustomary ? /\d\s(kg|N|kN|m)\b/ : /\d\s(lb|lbf|ft|in)\b|\d'-\d/;
    for (const sheet of sheets) {
      if (quotesSources(sheet)) continue;
      for (const text of textsOf(sheet)) {
        expect(text).not.toMatch(foreign);
        expect(text).not.toMatch(/\d\.\d+\s(lb|lbf)\b/);
      }
    }
  });

  it('speak the words of the house', () => {
    if (context.house.words === 'US') return;
    const own = sheets.flatMap(({ blocks }) => blocks.flatMap(blockTexts)).join('\n');
    expect(own).toContain('cradle heavy');
    expect(own).not.toMatch(/\b(batten|arbor|pipe weight|show bricks?)\b/i);
  });

  it('are the same when they are made again', () => {
    for (const sheet of sheets) expect(sheetOf(context, sheet.id)).toEqual(sheet);
  });
});

describe('the balance card', () => {
  const card = (id: string): Sheet => {
    const sheet = sheetOf(kestlemere, `balance-card/${id}`);
    if (sheet === undefined) throw new Error(`no card ${id}`);
    return sheet;
  };

  it('begins with the worst height, its direction, and how far past the lock', () => {
    const [, worst] = card('11').blocks;
    if (worst?.kind !== 'notice') throw new Error('the second block is the worst height');
    expect(worst.degree).toBe('danger');
    expect(worst.heading.replaceAll('\u00A0', ' ')).toBe('WORST: 321 lb ARBOR HEAVY');
    expect(wordsText(worst.words).replaceAll('\u00A0', ' ')).toBe(
      'Just below 23\'-0", all bricks on. NOT HELD: 271 lb past the lock (50 lbf).',
    );
  });

  it('has the worst of its table in its first line, whichever set it is', () => {
    for (const { lineSet, plan, hang } of kestlemere.assessment.sets) {
      if (!plan.known || hang === null || hang.deadHungAt !== null) continue;
      const sheet = card(lineSet.id);
      const sizes = tablesIn(sheet.blocks)[0]?.rows.map(({ cells }) =>
        Number.parseInt(wordsText(cells[1] ?? []), 10),
      );
      const [, worst] = sheet.blocks;
      const first = worst?.kind === 'notice' ? worst.heading.match(/\d+/)?.[0] : undefined;
      expect(Number(first)).toBe(Math.max(...(sizes ?? [])));
    }
  });

  it('does not reckon with what would happen below the low stop', () => {
    // The units of Electric 1 would touch the deck at 3 ft, where the batten stops.
    const texts = textsOf(card('5'));
    expect(texts.some((text) => text.startsWith('WORST: 17 lb'))).toBe(true);
  });

  it('shows each trim, both sides of contact, working height and the low stop', () => {
    const names = tablesIn(card('11').blocks)[0]?.rows.map(({ cells }) =>
      wordsText(cells[0] ?? []),
    );
    expect(names).toEqual([
      'out 60\'-0"',
      'in 23\'-0"',
      'below 23\'-0"',
      'working 4\'-0"',
      'low stop 3\'-0"',
    ]);
  });

  it('rules thick what the lock does not hold', () => {
    const rows = tablesIn(card('11').blocks)[0]?.rows.map(({ rule }) => rule);
    expect(rows).toEqual(['hair', 'hair', 'thick', 'thick', 'thick']);
  });

  it('leaves the restraint to the order of work, and owes the proofs', () => {
    const texts = textsOf(card('11')).join('\n');
    expect(texts).toContain('Restraint: for the order of work, not made yet.');
    expect(texts).toMatch(/\[ \] Inch test/);
    expect(texts).toMatch(/Two-way pull test to go out ____ lbf, to come in ____ lbf, at ____ ft/);
    expect(textsOf(card('8')).join('\n')).toMatch(/Pull test on record: 14 lbf to go out, 23 lbf/);
  });

  it('lists what it assumes and what nobody knows', () => {
    expect(textsOf(card('11')).join('\n')).toMatch(
      /Assumed: friction 45 lbf, assumed and not meas/,
    );
    expect(textsOf(card('M1')).join('\n')).toMatch(/Not known: .*mass of the batten/);
    // Nobody says what a value of any basis may be off by.
    const example = openExample('skelderwick');
    const house = { ...example.house, rules: { ...example.house.rules, toleranceByBasis: {} } };
    const assessment = assess(house, example.show, example.state);
    const silent = exampleContext({ ...example, house, assessment });
    const tabs = sheetOf(silent, 'balance-card/1');
    expect(textsOf(tabs as Sheet).join('\n')).toMatch(/Not known: .*; and \d+ more, in the check/);
  });

  it('says plainly that a motor, steel, hands or an empty arbor take no show bricks', () => {
    expect(textsOf(card('M1'))).toContain('A motor carries this set. It takes no bricks.');
    expect(textsOf(card('D3')).join('\n')).toContain('no bricks are taken');
    expect(textsOf(card('4')).join('\n')).toContain('Nothing is hung.');
    const hemp = sheetOf(skelderwick, 'balance-card/H1');
    expect(textsOf(hemp as Sheet).join('\n')).toContain('It takes no weights.');
  });

  it('says a lock-out before anything else', () => {
    expect(card('20').blocks[1]).toMatchObject({ degree: 'danger', heading: 'LOCKED OUT, tag 7' });
  });

  it('shows the neighbours, so that a slip of a row is seen', () => {
    expect(card('17').beside).toBe('beside it: 16 Legs 2 (pair), 18 empty');
  });
});

describe('the other sheets', () => {
  const sheet = (id: string): Sheet => {
    const found = sheetOf(kestlemere, id);
    if (found === undefined) throw new Error(`no sheet ${id}`);
    return found;
  };

  it('schedule: every set in rail order, blocked and spare ones too', () => {
    const rows = tablesIn(sheet('schedule').blocks)[0]?.rows ?? [];
    const ids = rows.map(({ cells }) => wordsText(cells[0] ?? []));
    expect(ids).toEqual(kestlemere.house.lineSets.map(({ id }) => id));
    expect(wordsText(rows[3]?.cells[2] ?? [])).toBe('empty: depth of 5');
    expect(wordsText(rows[20]?.cells.at(-1) ?? [])).toBe('LOCKED OUT, tag 7');
  });

  it('take-off: every line has a source, and the hardware line is there', () => {
    const rows = tablesIn(sheet('take-off').blocks)[0]?.rows ?? [];
    const texts = rows.map(({ cells }) => cells.map(wordsText).join(' | '));
    expect(texts.filter((text) => text.startsWith('Hardware:'))).toHaveLength(28);
    const lines = rows.filter(({ isGroup, rule }) => isGroup !== true && rule === 'hair');
    for (const { cells } of lines) expect(wordsText(cells.slice(5, 6).flat())).not.toBe('');
    expect(texts.join('\n').replaceAll('\u00A0', ' ')).toContain(
      'Hung, without loom |  |  | 640 lb',
    );
  });

  it('hanging card: distances from the centre line by side', () => {
    const rows = tablesIn(sheet('hanging-card/11').blocks)[0]?.rows ?? [];
    expect(wordsText(rows[0]?.cells[2] ?? [])).toBe('stage right 4\'-6"; stage left 4\'-6"');
  });

  it('hanging card: a place that nobody gave is asked for', () => {
    const { assessment } = kestlemere;
    const sets = assessment.sets.map((set) => ({
      ...set,
      takeoffs: set.takeoffs.map((each) => ({ ...each, item: { ...each.item, placement: null } })),
    }));
    const unplaced = sheetOf(
      { ...kestlemere, assessment: { ...assessment, sets } },
      'hanging-card/1',
    );
    const rows = tablesIn(unplaced?.blocks ?? [])[0]?.rows ?? [];
    expect(wordsText(rows[0]?.cells[2] ?? [])).toBe('place not given: ask before tying');
  });

  it('brick tickets: pipe weight apart from show bricks, each ticket with its own edges', () => {
    const block = sheet('brick-tickets').blocks.find(({ kind }) => kind === 'tickets');
    if (block?.kind !== 'tickets') throw new Error('no tickets');
    expect(block.tickets).toHaveLength(26);
    for (const ticket of block.tickets) {
      const text = ticket.flatMap(blockTexts).join('\n').replaceAll('\u00A0', ' ');
      expect(text).toMatch(/Pipe weight: .+ × \d+, \d+( 1\/2)? lb/);
      expect(text).toMatch(/NOT AN ORDER OF WORK: DO NOT LOAD BY THIS/);
      expect(text).toMatch(
        /Kestlemere Playhouse, The Clockmaker of Vell, rev 4, .*code \w{4}-\w{4}/,
      );
      expect(text).toMatch(/Counted ____ and ____/);
    }
  });

  it('gallery stock: what is reserved is not free', () => {
    const texts = textsOf(sheet('gallery-stock')).join('\n');
    expect(texts).toContain('Reserved, not free: 19 full for releasing D3.');
    const [, mid] = tablesIn(sheet('gallery-stock').blocks);
    const full = mid?.rows[0]?.cells.map(wordsText);
    expect([full?.[1], full?.[6], full?.[7]]).toEqual(['19', '19', '0']);
    expect(texts).toContain('comes from the order of work');
  });

  it('put numbers for other programs one in a cell, with the unit in the heading', () => {
    for (const { sheets } of houses) {
      for (const { data } of sheets) {
        if (data === null) continue;
        for (const row of data.rows) expect(row).toHaveLength(data.columns.length);
        const numbers = data.columns.map((_, index) =>
          data.rows.some((row) => typeof row[index] === 'number'),
        );
        data.columns.forEach((column, index) => {
          if (numbers[index] === true && column !== 'number') expect(column).toMatch(/\(.+\)$/);
        });
      }
    }
  });
});
