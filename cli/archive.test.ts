import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import dxfReader, { type IDxf } from 'dxf-parser';
import { afterAll, describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const examples = join(import.meta.dirname, '..', 'examples', 'skelderwick');
const HOUSE = join(examples, 'house.json');
const SHOW = join(examples, 'regatta.show.json');
const STATE = join(examples, 'state.json');
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-archive-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The package is a class, and its types say a namespace. */
const Reader = dxfReader as unknown as new () => { parseSync(text: string): IDxf | null };

const at = (name: string): string => join(folder, name);

describe('a drawing from the command line', () => {
  const drawing = (...more: string[]) => heard('export', 'section', HOUSE, SHOW, ...more);

  it('is SVG at a trim, to the scale that was asked for', async () => {
    const file = at('section.svg');
    const answer = await drawing('--as', 'svg', '--at', 'trim:in', '--scale', '25', '-o', file);
    expect(answer).toMatchObject({ code: 0, err: '' });
    expect(answer.out).toContain('section, trim in, paper at 1:25');
    expect(readFileSync(file, 'utf8')).toMatch(/Scale 1:25 when printed[\s\S]*<\/svg>/);
  });

  it('is DXF of the record, in the unit of the house or in another', async () => {
    const file = at('plan.dxf');
    const more = ['--as', 'dxf', '--state', STATE, '--unit', 'inch', '-o', file];
    const answer = await heard('export', 'plan', HOUSE, SHOW, ...more);
    expect(answer.out).toContain('plan, as recorded, in inches');
    const dxf = new Reader().parseSync(readFileSync(file, 'utf8'));
    expect(dxf?.entities.some(({ layer }) => layer === 'BATTENS')).toBe(true);
  });

  it('[CLI-014] is refused at a moment that is not there, with those that are', async () => {
    const answer = await drawing('--as', 'svg', '--at', 'trim:never', '-o', at('no.svg'));
    expect(answer.code).toBe(2);
    expect(answer.err).toMatch(/"trim:never"; accepted: .*trim:in.*cue:0.*\[CLI-014\]/);
  });

  it('[CLI-015] is refused in a form that it does not have', async () => {
    const answer = await drawing('--as', 'csv', '-o', at('no.csv'));
    expect(answer.err).toContain('found section as csv; accepted: svg or dxf [CLI-015]');
    const table = await heard('export', 'schedule', HOUSE, SHOW, '--as', 'dxf', '-o', at('no'));
    expect(table.err).toContain('accepted: csv or xlsx [CLI-015]');
    const scale = await drawing('--as', 'svg', '--scale', '0', '-o', at('no.svg'));
    expect(scale.err).toContain('50 is 1:50 [CLI-015]');
  });
});

describe('an archive from the command line', () => {
  it('gives the documents back as they were, and is refused when it is damaged', async () => {
    const file = at('house.zip');
    const made = await heard('archive', HOUSE, SHOW, '--state', STATE, '-o', file);
    expect(made).toMatchObject({ code: 0, err: '' });
    const out = at('documents');
    const checked = await heard('archive-check', file, '--out', out);
    expect(checked.code).toBe(0);
    expect(checked.out).toMatch(/whole, \d+ files, 3 revisions[\s\S]*Not in it: sheets/);
    const back = readFileSync(join(out, 'show-regatta.json'), 'utf8');
    expect(JSON.parse(back)).toEqual(JSON.parse(readFileSync(SHOW, 'utf8')));
    const again = await heard(
      'check',
      join(out, 'house-skelderwick.json'),
      join(out, 'show-regatta.json'),
    );
    expect(again.code).not.toBe(2);

    const bytes = readFileSync(file);
    const place = bytes.indexOf('take-off.xlsx') + 200;
    bytes.writeUInt8((bytes.readUInt8(place) + 1) % 256, place);
    writeFileSync(at('damaged.zip'), bytes);
    const damaged = await heard('archive-check', at('damaged.zip'));
    expect(damaged.code).toBe(2);
    expect(damaged.err).toMatch(/take-off\.xlsx: found .*\[ARC-008\]/);
  });

  it('[CLI-001] is refused where there is no file', async () => {
    const answer = await heard('archive-check', at('nothing.zip'));
    expect(answer.err).toContain('[CLI-001]');
  });
});
