import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const examples = join(import.meta.dirname, '..', 'examples', 'skelderwick');
const HOUSE = join(examples, 'house.json');
const SHOW = join(examples, 'regatta.show.json');
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-exchange-'));
afterAll(() => rmSync(folder, { recursive: true }));

const at = (name: string): string => join(folder, name);

const csv = (name: string, text: string): string => {
  writeFileSync(at(name), text);
  return at(name);
};

describe('export and import', () => {
  it.each(['csv', 'xlsx'])(
    'write tables as %s that change nothing when they come back',
    async (form) => {
      for (const table of ['schedule', 'takeoff']) {
        const file = at(`${table}.${form}`);
        const out = await heard('export', table, HOUSE, SHOW, '--as', form, '-o', file);
        expect(out.code).toBe(0);
        const back = await heard('import', HOUSE, SHOW, file);
        expect(back.err).toBe('');
        expect(back.out).toContain(`Read as ${table}, headings in row 1:`);
        expect(back.out).toMatch(/\n0 changes\.\n$/);
        expect(back.code).toBe(0);
      }
    },
  );

  it('take a foreign list once unit and basis are said, and write on demand', async () => {
    const file = csv('list.csv', 'Bar;Piece;Playing height;Colour\n1;Red tabs;7;red\n');
    const asked = await heard('import', HOUSE, SHOW, file, '--heading', 'C=In');
    expect(asked.code).toBe(2);
    expect(asked.err).toContain('[EXC-022]');
    const answers = ['--heading', 'c=In', '--unit', 'C=m', '--known-by', 'measured; by: A'];
    const out = at('next.show.json');
    const taken = await heard('import', HOUSE, SHOW, file, ...answers, '--out', out);
    expect(taken.err).toBe('');
    expect(taken.out).toContain('D "Colour": left out');
    expect(taken.out).toContain('list!B2: Set 1, Name: Tabs, now Red tabs');
    expect(taken.out).toContain('list!C2: Set 1, Trim: in (batten): 6.8 m, now 7 m');
    const hang = JSON.parse(readFileSync(out, 'utf8')).hangs.find(
      ({ set }: { set: string }) => set === '1',
    );
    expect(hang).toMatchObject({
      name: 'Red tabs',
      trims: [{ height: { value: '7 m', basis: 'measured', by: 'A' } }, {}],
    });
  });

  it('have the documents judge what comes of it, before it is written', async () => {
    const file = csv('high.csv', 'Set,In\n1,70 m [measured]\n');
    const out = at('high.show.json');
    const { code, err } = await heard('import', HOUSE, SHOW, file, '--out', out);
    expect(code).toBe(2);
    expect(err).toContain('[DOC-109]');
    expect(() => readFileSync(out)).toThrow('ENOENT');
  });

  it('[CLI-012] refuse a column that is not there', async () => {
    const file = csv('few.csv', 'Set,In\n1,7 m\n');
    const { code, err } = await heard('import', HOUSE, SHOW, file, '--unit', 'F=m');
    expect(code).toBe(2);
    expect(err).toContain('"F=m"; accepted: A to B, as in C=ft [CLI-012]');
  });

  it('[CLI-013] refuse a table and a sheet that are not there', async () => {
    const other = await heard('export', 'cues', HOUSE, SHOW, '--as', 'csv', '-o', at('x.csv'));
    expect(other.code).toBe(2);
    expect(other.err).toContain('[CLI-013]');
    const file = csv('one.csv', 'Set,In\n1,7 m\n');
    const { err } = await heard('import', HOUSE, SHOW, file, '--sheet', 'two');
    expect(err).toContain('--sheet with one of "one" [CLI-013]');
  });

  it('[CLI-001] [CLI-006] say which file is not there, or cannot be written', async () => {
    const missing = await heard('import', HOUSE, SHOW, at('none.csv'));
    expect(missing.err).toContain('[CLI-001]');
    const out = join(folder, 'none', 'x.csv');
    const { code, err } = await heard('export', 'schedule', HOUSE, SHOW, '--as', 'csv', '-o', out);
    expect(code).toBe(2);
    expect(err).toContain('[CLI-006]');
  });
});
