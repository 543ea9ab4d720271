import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

const ask = async (value: unknown) => {
  const file = join(folder, 'batten.json');
  writeFileSync(file, typeof value === 'string' ? value : JSON.stringify(value));
  return command('compute', 'batten', '--input', file);
};

/** Two spans of 3 m, rigid, 100 N/m: R = 3/8, 5/4, 3/8 of 300 N (check-values 4.1). */
const TWO_SPANS = {
  pipe: { massPerLength: 0, secondMoment: 1.289867e-7, elasticModulus: 2e11 },
  left: 0,
  right: 6,
  lines: [0, 3, 6].map((x) => ({ x, stiffness: null as number | null })),
  loads: [{ from: 0, to: 6, mass: 600 / 9.80665 }],
};

/** Lines of standard error, as path and code. */
const faultsIn = (err: string): readonly string[] =>
  err
    .trim()
    .split('\n')
    .map((line) => {
      const [, path = '', code = ''] = /^input(?:: (\S+?))?: .*\[(\S+)\]$/.exec(line) ?? [line];
      return `${code} ${path}`;
    });

describe('compute batten', () => {
  it('answers by the fixed names, in its published form', async () => {
    const { code, out } = await ask(TWO_SPANS);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer.tensions.map((each: number) => Math.round(each * 1e6) / 1e6)).toEqual([
      112.5, 375, 112.5,
    ]);
    expect(answer.slack).toEqual([false, false, false]);
    expect(answer.moment.min.value).toBeCloseTo(-112.5, 9);
    expect(answer.moment.max.value).toBeCloseTo((9 / 128) * 900, 9);
    expect(answer.rigid.tensions).toEqual(answer.tensions);
    expect(answer.sensitivity).toHaveLength(3);
    const schemas = JSON.parse((await command('compute', 'batten', '--schema')).out);
    const ajv = new Ajv2020({ strict: false });
    expect(ajv.validate(schemas.input, TWO_SPANS)).toBe(true);
    expect(ajv.validate(schemas.output, answer), JSON.stringify(ajv.errors)).toBe(true);
    expect(ajv.validate(schemas.output, { tensions: [1] })).toBe(false);
    expect((await command('compute', '--list')).out.split('\n')).toContain('batten');
  });

  it('answers a batten that tips with its reason and not one number', async () => {
    const lines = [1, 2].map((x) => ({ x, stiffness: 5e4 }));
    const { code, out } = await ask({ ...TWO_SPANS, lines });
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(Object.keys(answer)).toEqual(['unstable']);
    expect(answer.unstable.code).toBe('tipsOver');
    const schemas = JSON.parse((await command('compute', 'batten', '--schema')).out);
    expect(new Ajv2020({ strict: false }).validate(schemas.output, answer)).toBe(true);
  });

  it.each([
    ['lines off the batten', { lines: [{ x: -1, stiffness: 1 }] }, ['BEM-002 lines[0].x']],
    [
      'two lines at one place',
      { lines: [2, 5, 2].map((x) => ({ x, stiffness: 1 })) },
      ['BEM-003 lines[2].x'],
    ],
    [
      'zero stiffness',
      { lines: [2, 5].map((x) => ({ x, stiffness: 0 })) },
      ['DOC-052 lines[0].stiffness', 'DOC-052 lines[1].stiffness'],
    ],
    [
      'loads beyond the ends',
      {
        loads: [
          { x: 7, mass: 1 },
          { from: 5, to: 6.5, mass: 1 },
        ],
      },
      ['BEM-005 loads[0].x', 'BEM-005 loads[1].to'],
    ],
    ['no lines', { lines: [] }, ['DOC-035 lines']],
    ['a load that pulls up', { loads: [{ x: 1, mass: -1 }] }, ['DOC-051 loads[0].mass']],
    ['a number beyond counting', { left: 1e4 }, ['BEM-007 left']],
  ])(
    'refuses %s, a line for each fault, nothing on standard output',
    async (_, spoiled, wanted) => {
      const { code, out, err } = await ask({ ...TWO_SPANS, ...spoiled });
      expect([code, out]).toEqual([2, '']);
      expect(faultsIn(err)).toEqual(wanted);
      expect(err).toMatch(/found .+; accepted: .+/);
    },
  );

  it('refuses what is not a number or not there', async () => {
    const text = JSON.stringify(TWO_SPANS).replace('"right":6', '"right":NaN');
    for (const bad of [text, '', '{}', '[{}]', 'null']) {
      const { code, out, err } = await ask(bad);
      expect([code, out], bad).toEqual([2, '']);
      expect(err, bad).not.toBe('');
    }
  });

  it('takes a list, answers in its order, and tells faults by their place in it', async () => {
    const { out } = await ask([TWO_SPANS, { ...TWO_SPANS, loads: [] }]);
    const [first, second] = JSON.parse(out);
    expect(first.tensions).toHaveLength(3);
    expect(second.unstable.code).toBe('noLoad');
    const { code, err } = await ask([TWO_SPANS, { ...TWO_SPANS, lines: [{ x: 9, stiffness: 1 }] }]);
    expect(code).toBe(2);
    expect(faultsIn(err)).toEqual(['BEM-002 [1].lines[0].x']);
  });
});
