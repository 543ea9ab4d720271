import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type JsonObject, readHouse, readShowValue } from '#documents';
import { applyMapping, guessMapping, type Mapping, previewMapping, type Sheet } from '#exchange';
import { readCsv } from './csv.ts';

const read = readHouse(
  readFileSync(new URL('../examples/kestlemere/house.json', import.meta.url), 'utf8'),
);
if (!read.ok) throw new Error('the example house does not read');
const { house } = read.value;

const SHOW: JsonObject = {
  format: 'counterpoise-show',
  version: 1,
  id: 'trial',
  name: 'A trial',
  house: 'kestlemere',
  given: { basis: 'estimated' },
  keptEmpty: { '4': 'depth of 5' },
  hangs: [
    {
      set: '5',
      name: 'Tabs',
      family: 'soft',
      trims: [{ name: 'in', height: '30 ft', reference: 'batten' }],
      items: [
        {
          id: 'cloth',
          name: 'Cloth',
          kind: 'cloth',
          drop: '30 ft',
          takeoff: { by: 'mass', mass: { value: '100 lb', basis: 'weighed', source: 'store' } },
        },
      ],
      bricks: { counts: { F: 2 }, reason: 'as found' },
    },
  ],
};

const sheetOf = (text: string): Sheet => {
  const answer = readCsv('t', text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const applied = (sheet: Sheet, change: (mapping: Mapping) => Mapping = (one) => one) =>
  applyMapping({ mapping: change(guessMapping(sheet, house)), sheet, show: SHOW, house });

const words = (text: string, change?: (mapping: Mapping) => Mapping) => {
  const answer = applied(sheetOf(text), change);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.changes.map((one) => `${one.where} ${one.words}`);
};

const shown = (text: string, change?: (mapping: Mapping) => Mapping) => {
  const answer = applied(sheetOf(text), change);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  const show = readShowValue(answer.value.document, house);
  if (!show.ok) throw new Error(JSON.stringify(show.error));
  return show.value.show;
};

const codes = (text: string | Sheet, change?: (mapping: Mapping) => Mapping) => {
  const answer = applied(typeof text === 'string' ? sheetOf(text) : text, change);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const knownBy =
  (text: string) =>
  (mapping: Mapping): Mapping => ({
    ...mapping,
    same: [...mapping.same, { to: { is: 'field', field: 'knownBy' }, text }],
  });

const LIST = knownBy('estimated; source: hire list');

describe('a schedule applied', () => {
  it('tells each change with its cell, and what it was before', () => {
    expect(words('Set,Name,In (ft),F\n5,House tabs,31,3', LIST)).toEqual([
      't!B2 Set 5, Name: Tabs, now House tabs',
      't!C2 Set 5, Trim: in (batten): 30 ft, now 31 ft',
      't!D2 Set 5, Bricks: F: 2, now 3',
    ]);
  });

  it('changes nothing by a blank cell, the same figure in another unit, or other spaces', () => {
    expect(words('Set,Name,In,Out,F\n5, Tabs ,360 in,,2\n4,,,,')).toEqual([]);
  });

  it('hangs on an empty set in rail order, which is then no longer kept empty', () => {
    const show = shown('Set,Name,Family,Out\n4,Border,soft,40 ft', LIST);
    expect(show.hangs.map(({ set }) => set)).toEqual(['4', '5']);
    expect(show.keptEmpty).toEqual({});
    expect(show.hangs[0]?.trims[0]?.height).toMatchObject({
      known: true,
      value: 40 * 0.3048,
      provenance: { basis: 'estimated', source: 'hire list' },
    });
  });

  it('keeps markup in a name as text', () => {
    const name = '<img src=x onerror=alert(1)>';
    expect(shown(`Set,Name,Family\n4,${name},soft`).hangs[0]?.name).toBe(name);
  });

  it('fills what is the same for all rows only where nothing is said', () => {
    const family = (mapping: Mapping): Mapping => ({
      ...mapping,
      same: [{ to: { is: 'field', field: 'family' }, text: 'hard' }],
    });
    const show = shown('Set,Name\n5,Tabs\n7,Flat\n8,', family);
    expect(show.hangs.map(({ set, family: is }) => [set, is])).toEqual([
      ['5', 'soft'],
      ['7', 'hard'],
    ]);
  });

  it('says unknown where the cell says so, with the reason', () => {
    const show = shown('Set,In\n5,unknown: asked the store');
    expect(show.hangs[0]?.trims[0]?.height).toEqual({ known: false, why: 'asked the store' });
  });

  it('[EXC-033] refuses a set that the house does not have', () => {
    expect(codes('Set,Name\n999,Tabs')).toEqual(['EXC-033 t!A2']);
  });

  it('[EXC-034] refuses a set with two rows', () => {
    expect(codes('Set,Name\n5,Tabs\n5,Tabs')).toEqual(['EXC-034 t!A3']);
  });

  it('[EXC-035] refuses what has no set, a new hang without family, bricks without why', () => {
    expect(codes('Set,Name\n,Total')).toEqual(['EXC-035 t!A2']);
    expect(codes('Set,Name\n7,Flat')).toEqual(['EXC-035 t!A2']);
    expect(codes('Set,Name,Family,F\n7,Flat,hard,2')).toEqual(['EXC-035 t!A2']);
    expect(codes('Set,Name,Family,F\n7,Flat,hard,0')).toEqual([]);
  });

  it('[EXC-036] refuses a family that is none', () => {
    expect(codes('Set,Family\n5,cloth')).toEqual(['EXC-036 t!B2']);
  });

  it('[EXC-037] asks who stands behind a new figure', () => {
    expect(codes('Set,In\n5,31 ft')).toEqual(['EXC-037 t!B2']);
    expect(codes('Set,In\n5,31 ft [measured; by: A]')).toEqual([]);
  });

  it('[EXC-038] refuses a text in no form of its column', () => {
    expect(codes('Set,In\n5,31 ft [heard]', LIST)).toEqual(['EXC-038 t!B2']);
    expect(codes('Set,F\n5,two')).toEqual(['EXC-038 t!B2']);
    expect(codes('Set,Name\n5,Flat', knownBy('heard of'))).toEqual(['EXC-038 t!A2']);
  });

  it('[EXC-040] refuses a set hung and kept empty', () => {
    expect(codes('Set,Kept empty\n5,depth of 6')).toEqual(['EXC-040 t!B2']);
    expect(words('Set,Kept empty\n4,depth of 3\n6,depth of 5')).toEqual([
      't!B2 Set 4, Kept empty: depth of 5, now depth of 3',
      't!B3 Set 6, Kept empty: depth of 5',
    ]);
  });

  it('keeps the code of a measure that is refused, with its cell', () => {
    expect(codes('Set,In\n5,31 lb', LIST)).toEqual(['QTY-007 t!B2']);
  });

  it('tells every fault at once, and changes nothing', () => {
    const before = structuredClone(SHOW);
    expect(codes('Set,Name,Family,In\n5,Tabs,cloth,31 lb\n999,x,,', LIST)).toEqual([
      'EXC-036 t!C2',
      'QTY-007 t!D2',
      'EXC-033 t!A3',
    ]);
    expect(SHOW).toEqual(before);
  });
});

describe('cells that a spreadsheet program made', () => {
  const made = (is: 'formula' | 'date' | 'error'): Sheet => ({
    name: 't',
    rows: [
      ['Set', 'Name', 'Colour'].map((text) => ({ is: 'text' as const, text })),
      [
        { is: 'number', text: '5' },
        { is, text: 'A1+1' },
        { is, text: 'not mapped' },
      ],
    ],
  });

  it('[EXC-030] refuses a formula by the name of its cell, where it is mapped', () => {
    expect(codes(made('formula'))).toEqual(['EXC-030 t!B2']);
  });

  it('[EXC-031] refuses a date, such as a program makes of 12-6', () => {
    expect(codes(made('date'))).toEqual(['EXC-031 t!B2']);
  });

  it('[EXC-032] refuses an error', () => {
    expect(codes(made('error'))).toEqual(['EXC-032 t!B2']);
  });
});

describe('a take-off applied', () => {
  it('finds an item by its id, or by its name where the table has no ids', () => {
    expect(words('Set,Item,Drop\n5,cloth,31 ft', LIST)).toEqual([
      't!C2 Set 5, Cloth, Drop: 30 ft, now 31 ft',
    ]);
    expect(words('Set,Item name,Weight (lb)\n5,Cloth,120', LIST)).toEqual([
      't!C2 Set 5, Cloth, Mass: 100 lb [weighed; source: store], now 120 lb',
    ]);
  });

  it('adds an item, whose mass is unknown until somebody says it', () => {
    const [, item] = shown('Set,Item name,Kind,CG\n5,Décor Ä,clear,', LIST).hangs[0]?.items ?? [];
    expect(item).toMatchObject({
      id: 'de-cor-a',
      name: 'Décor Ä',
      takeoff: { by: 'mass', mass: { known: false, why: 'not in the table' } },
    });
  });

  it('reads parts, places and what leaves', () => {
    const text = `Set,Item,Name,Kind,Weighed by,Parts,Where along the batten,Releases
5,row,Row,clear,units,"2 × lamp \\| hood | each: 8 lb ± 5 % | clamp: 1 lb | at: -2 ft; 3 ft
1 x fan | each: unknown: no plate",at -2 ft; 3 ft,"snow | mass: 3 lb"`;
    const [, item] = shown(text, LIST).hangs[0]?.items ?? [];
    const provenance = { basis: 'estimated', source: 'hire list' };
    const pounds = (count: number) => ({ known: true, value: count * 0.45359237, provenance });
    expect(item?.takeoff).toMatchObject({
      by: 'units',
      units: [
        {
          name: 'lamp | hood',
          count: 2,
          each: { ...pounds(8), tolerance: 8 * 0.45359237 * 0.05 },
          clampEach: pounds(1),
          xs: [-2 * 0.3048, 3 * 0.3048],
        },
        { name: 'fan', count: 1, each: { known: false, why: 'no plate' }, xs: null },
      ],
    });
    expect(item?.placement).toEqual({ at: 'points', xs: [-2 * 0.3048, 3 * 0.3048] });
    expect(item?.releases).toMatchObject([{ how: 'snow', mass: pounds(3) }]);
  });

  it('[EXC-039] refuses a figure by which the item is not weighed', () => {
    expect(codes('Set,Item,Fullness\n5,cloth,50 %', LIST)).toEqual(['EXC-039 t!C2']);
  });

  it('begins anew where an item is weighed in another way', () => {
    const text = 'Set,Item,Weighed by,Fullness\n5,cloth,cloth,50 %';
    expect(words(text, LIST)).toEqual([
      't!C2 Set 5, Cloth, Weighed by: mass, now cloth',
      't!D2 Set 5, Cloth, Fullness: 50 %',
    ]);
  });

  it('[EXC-035] refuses an item where nothing hangs, and a new one without its kind', () => {
    expect(codes('Set,Item,Drop\n7,x,3 ft', LIST)).toEqual(['EXC-035 t!A2']);
    expect(codes('Set,Item,Item name\n5,x,X')).toEqual(['EXC-035 t!A2']);
  });

  it('[EXC-034] refuses an item with two rows', () => {
    expect(codes('Set,Item,Drop\n5,cloth,30 ft\n5,cloth,30 ft')).toEqual(['EXC-034 t!A3']);
  });

  it('[EXC-038] refuses parts in no form', () => {
    const parts = (text: string) => codes(`Set,Item,Weighed by,Parts\n5,cloth,units,${text}`, LIST);
    expect(parts('some lamps')).toEqual(['EXC-038 t!D2']);
    expect(parts('2 × lamp | each: 8')).toEqual(['EXC-038 t!D2']);
    expect(parts('2 × lamp | weight: 8 lb')).toEqual(['EXC-038 t!D2']);
    expect(parts('2 × lamp | each: 8 lb')).toEqual([]);
  });
});

describe('a preview', () => {
  const previewOf = (text: string) => {
    const sheet = sheetOf(text);
    return previewMapping({ mapping: guessMapping(sheet, house), sheet, show: SHOW, house });
  };

  it('says before and after of every cell that is understood', () => {
    const { changes, document } = previewOf('Set,Name\n5,House tabs\n');
    expect(changes).toEqual([
      {
        where: 't!B2',
        about: 'Set 5, Name',
        before: 'Tabs',
        after: 'House tabs',
        words: 'Set 5, Name: Tabs, now House tabs',
      },
    ]);
    expect(document).not.toBe(SHOW);
  });

  it('[EXC-033] has them beside what is refused, and the document as it was', () => {
    const { changes, refusals, document } = previewOf('Set,Name\n5,House tabs\n999,Drop\n');
    expect(changes.map(({ about }) => about)).toEqual(['Set 5, Name']);
    expect(refusals.map(({ code, path }) => [code, path])).toEqual([['EXC-033', 't!A3']]);
    expect(document).toBe(SHOW);
  });
});
