/** What the page says of tubes, lines, blocks and wells of both example houses, known and not. */
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { readHouseValue } from '#documents';
import type { House } from '#house';
import { metres } from '#quantities';
import demo from '../../examples/kestlemere/house.json' with { type: 'json' };
import other from '../../examples/skelderwick/house.json' with { type: 'json' };
import { type Work, WorkContext } from '../reckoning/use-work.ts';
import { Battens } from './battens.tsx';
import { LiftLines, LoftWells } from './lift-lines.tsx';
import { RuleTable } from './limits.tsx';

const houseOf = (document: unknown): House => {
  const answer = readHouseValue(document);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.house;
};

const plain = (cell: string): string =>
  cell.replaceAll('\u00A0', ' ').replaceAll('&quot;', '"').replaceAll('&#x27;', "'");

/** Each row of a table, by its head. */
const rowsOf = (table: ReactNode, house: House): ReadonlyMap<string, readonly string[]> => {
  const work = { house } as unknown as Work;
  const markup = renderToStaticMarkup(<WorkContext value={work}>{table}</WorkContext>);
  const rows = [...markup.matchAll(/<tr[^>]*>(.*?)<\/tr>/gs)].map(([, row = '']) =>
    [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gs)].map(([, cell = '']) => plain(cell)),
  );
  return new Map(rows.map(([head = '', ...cells]) => [head, cells]));
};

const kestlemere = houseOf(demo);
const skelderwick = houseOf(other);

describe('the tables of tubes and lines', () => {
  it('say a tube as its document has it, in the units of the house', () => {
    expect(
      rowsOf(<Battens />, kestlemere)
        .get('SP7')
        ?.slice(1, 7),
    ).toEqual([
      ...['0.310 in⁴', '0.326 in³', '0.448 in³'],
      ...['29000 ksi', '35000 psi', 'nominal wall'],
    ]);
    expect(
      rowsOf(<Battens />, skelderwick)
        .get('SP')
        ?.slice(1, 7),
    ).toEqual([
      ...['13.80 cm⁴', '5.70 cm³', '7.87 cm³'],
      ...['210.0 GPa', '235.0 MPa', 'nominal wall'],
    ]);
  });

  it('say a joint by its share, and tell no joint from one that nobody looked for', () => {
    expect(rowsOf(<Battens />, skelderwick).get('DP')?.[7]).toBe('60 %, unknown');
    expect(rowsOf(<Battens />, kestlemere).get('SP6')?.[7]).toBe('unknown');
    const lineSets = kestlemere.lineSets.map((set) => ({
      ...set,
      batten: { ...set.batten, splices: [] },
    }));
    expect(rowsOf(<Battens />, { ...kestlemere, lineSets }).get('SP6')?.[7]).toBe('none');
  });

  it('say line, ends and blocks, with what is unknown as unknown', () => {
    expect(rowsOf(<LiftLines />, kestlemere).get('DP7')).toEqual([
      ...['1/4 in 7x19 galvanized', '7000 lbf', '247.3 kip', 'compression sleeves', 'unknown'],
      'sheave 8 in, rated 1200 lbf, bearing rolling, fleet angle 1.0 deg',
      'none',
      'sheave 12 in, rated 8000 lbf, bearing rolling, fleet angle unknown',
      '20 lb',
    ]);
    expect(
      rowsOf(<LiftLines />, skelderwick)
        .get('FIXED')
        ?.slice(4, 7),
    ).toEqual([...['unknown', 'unknown', 'none']]);
  });

  it('say a trim in words and not by its sign', () => {
    const inch = 0.0254;
    const lineTrims = [0, inch, -inch / 4, 0, 0, 0].map(metres);
    const lineSets = kestlemere.lineSets.map((set) => ({
      ...set,
      lift: { ...set.lift, lineTrims },
    }));
    const rows = rowsOf(<LiftLines />, { ...kestlemere, lineSets });
    expect(rows.get('SP6')?.[4]).toBe('line 2 1 in short, line 3 1/4 in long');
  });

  it('say a loft well by its side of the stage', () => {
    const wells = rowsOf(<LoftWells />, kestlemere);
    expect(wells.get('W2')?.slice(0, 3)).toEqual([`22'-6" stage right`, `1'-6"`, '4500 lbf']);
    expect(wells.get('W7')?.[0]).toBe('centre line');
    expect(
      rowsOf(<LoftWells />, skelderwick)
        .get('F')
        ?.slice(2),
    ).toEqual([...['unknown', 'not surveyed']]);
  });

  it('say the rules for lines, of which a house may have none', () => {
    const rules = rowsOf(<RuleTable />, kestlemere);
    expect(rules.get('lift line, breaking strength over its load')?.[0]).toBe('8');
    expect(rules.get('added to the loads of a moving set')?.slice(0, 2)).toEqual([
      ...['25 %', 'published'],
    ]);
    expect(rules.get('sag between two lines, most')?.[0]).toBe('unknown');
    expect(rowsOf(<RuleTable />, skelderwick).get('sag between two lines, most')?.[0]).toBe(
      '0.5 %',
    );
  });
});
