import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const examples = join(import.meta.dirname, '..', 'examples', 'kestlemere');
const HOUSE = join(examples, 'house.json');
const SHOW = join(examples, 'clockmaker.show.json');
const STATE = join(examples, 'state.json');
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

const fileWith = (name: string, value: unknown): string => {
  const file = join(folder, name);
  writeFileSync(file, typeof value === 'string' ? value : JSON.stringify(value));
  return file;
};

const SET_11 = {
  purchase: 1,
  lines: 6,
  lineMassPerLength: 0.1637,
  batten: 76.66,
  carriage: 43.09,
  bricks: 319.1,
  lowStop: 0.9144,
  highStop: 18.5928,
  arborTopAtLow: 20.2692,
  wireEndAbove: 0.6096,
  items: [{ kind: 'tipping', mass: 290.3, drop: 6.7056, pick: 0.3048, centre: 0.46 }],
  heights: [1.2192, 7.0104, 18.288],
};

const BRICKS = {
  target: 100,
  carriage: 40,
  bricks: [{ id: 'full', mass: 10, thickness: 0.03, stock: 20 }],
  stackHeight: 1,
};

describe('check', () => {
  it('says what hangs and what to look at, and ends with 0 where nothing stops', async () => {
    const { code, out } = await command('check', HOUSE, SHOW);
    expect(code).toBe(0);
    expect(out).toMatch(/^DEMO/);
    expect(out).toContain('NOT AN ORDER OF WORK');
    expect(out).toMatch(/ 11 {2}Clock tower flat +640.lb {2}25 F \+ 1 H/);
    expect(out).not.toMatch(/[-−]\d+.lb/);
  });

  it('ends with 1 at a finding at stop level, a set that is locked out', async () => {
    const { code, out } = await command('check', HOUSE, SHOW, '--state', STATE, '--json');
    expect(code).toBe(1);
    const { findings } = JSON.parse(out);
    expect(findings.map((finding: { code: string }) => finding.code)).toContain('STA-003');
  });

  it('[CLI-001] says which file is not there, and ends with 2', async () => {
    const { code, out, err } = await command('check', join(folder, 'none.json'), SHOW);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('CLI-001');
  });

  it('[CLI-003] knows only sets of the house', async () => {
    const { code, err } = await command('check', HOUSE, SHOW, '--set', '99');
    expect(code).toBe(2);
    expect(err).toContain('CLI-003');
    const one = await command('check', HOUSE, SHOW, '--set', '11');
    expect(one.out).not.toContain('House curtain');
  });

  it('says every fault of every document, each with its path', async () => {
    const house = JSON.parse(readFileSync(HOUSE, 'utf8'));
    const broken = fileWith('broken.json', { ...house, name: 4, units: 'stones' });
    const { code, err } = await command('check', broken, SHOW);
    expect(code).toBe(2);
    expect(err).toMatch(/: name: found .*accepted:/);
    expect(err).toMatch(/: units: found .*accepted:/);
  });
});

describe('sheets', () => {
  it('writes one sheet as PDF, and its table as CSV', async () => {
    const out = join(folder, 'sheets');
    const asked = ['sheets', HOUSE, SHOW, '--out', out, '--paper', 'a4', '--only', 'schedule'];
    const { code, err } = await command(...asked);
    expect(code).toBe(0);
    expect(err).toContain('Sheets: 1 of 1');
    expect(readdirSync(out).sort()).toEqual(['demo-schedule.csv', 'demo-schedule.pdf']);
    expect(readFileSync(join(out, 'demo-schedule.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('[CLI-005] lists the sheets that there are', async () => {
    const out = join(folder, 'none');
    const asked = ['sheets', HOUSE, SHOW, '--out', out, '--only', 'loading-sheet'];
    const { code, err } = await command(...asked);
    expect(code).toBe(2);
    expect(err).toMatch(/CLI-005/);
    expect(err).toContain('balance-card/11');
  });
});

describe('compute', () => {
  it('answers one object with one, and a list with a list in its order', async () => {
    const one = await command('compute', 'balance', '--input', fileWith('one.json', SET_11));
    expect(one.code).toBe(0);
    const { imbalance, jumps } = JSON.parse(one.out);
    // The tower flat of the demo: 296 lb arbor heavy at 4 ft, 25 lb batten heavy off the deck.
    expect(imbalance[0] / 4.4482216).toBeCloseTo(-295.8, 0);
    expect(imbalance[1] / 4.4482216).toBeCloseTo(24.7, 0);
    expect(jumps).toHaveLength(1);
    const two = fileWith('two.json', [BRICKS, { ...BRICKS, target: 70 }]);
    const both = JSON.parse((await command('compute', 'bricks', '--input', two)).out);
    expect(both.map((each: { total: number }) => each.total)).toEqual([100, 70]);
  });

  it('refuses bad input by path, with nothing on standard output', async () => {
    const bad = fileWith('bad.json', [SET_11, { ...SET_11, batten: -1, heights: ['4 ft'] }]);
    const { code, out, err } = await command('compute', 'balance', '--input', bad);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('[1].batten');
    expect(err).toContain('[1].heights[0]');
    expect((await command('compute', 'balance', '--input', fileWith('no.json', '{'))).code).toBe(2);
  });

  it('[CLI-004] names the calculations that there are', async () => {
    const { code, err } = await command('compute', 'horoscope');
    expect(code).toBe(2);
    expect(err).toContain('CLI-004');
    const { out } = await command('compute', '--list');
    expect(out.trim().split('\n')).toContain('balance');
  });

  it('publishes schemas that its own inputs and answers fit', async () => {
    const ajv = new Ajv2020({ strict: false });
    for (const [name, input] of [
      ['balance', SET_11],
      ['bricks', BRICKS],
    ] as const) {
      const schemas = JSON.parse((await command('compute', name, '--schema')).out);
      expect(ajv.validate(schemas.input, input), name).toBe(true);
      const file = fileWith(`${name}.json`, input);
      const answer = JSON.parse((await command('compute', name, '--input', file)).out);
      expect(ajv.validate(schemas.output, answer), JSON.stringify(ajv.errors)).toBe(true);
    }
  });
});

describe('schema and usage', () => {
  it('prints the schema of a document', async () => {
    const { code, out } = await command('schema', 'house');
    expect(code).toBe(0);
    expect(JSON.parse(out).$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it('[CLI-002] knows only the documents that there are', async () => {
    const { code, err } = await command('schema', 'ship');
    expect(code).toBe(2);
    expect(err).toContain('CLI-002');
  });

  it('ends with 2 on usage that is not understood, and with 0 on help', async () => {
    expect((await command('lift')).code).toBe(2);
    expect((await command('check', HOUSE)).code).toBe(2);
    expect((await command('sheets', HOUSE, SHOW)).code).toBe(2);
    expect((await command('sheets', HOUSE, SHOW, '--out', folder, '--paper', 'a3')).code).toBe(2);
    const help = await command('--help');
    expect(help.code).toBe(0);
    expect(help.out).toContain('Flying people is out of scope');
  });
});
