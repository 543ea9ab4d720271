import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { ValidationCase } from '#selfcheck';
import { run } from './program.ts';
import { checkedNow, selfCheck } from './self-check.ts';
import type { Voice } from './voice.ts';
import { writeSheets } from './write-sheets.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-self-check-'));
afterAll(() => rmSync(folder, { recursive: true }));

const listening = () => {
  const heard = { out: '', err: '' };
  const voice: Voice = {
    out: (text) => {
      heard.out += text;
    },
    err: (text) => {
      heard.err += text;
    },
    live: false,
  };
  return { heard, voice };
};

const command = async (...args: readonly string[]) => {
  const { heard, voice } = listening();
  const code = await run(['self-check', ...args], voice);
  return { code, ...heard };
};

const wrong: ValidationCase = {
  id: 'VAL-BAL-99',
  title: 'A case that is deliberately wrong',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.005,
  run: () => [0.001, 0.02],
};

describe('self-check', () => {
  it('reruns every case, says the worst of each calculation, ends with 0', async () => {
    const { code, out, err } = await command();
    expect(code).toBe(0);
    expect(out).toMatch(/^Counterpoise \d+\.\d+\.\d+, build [0-9a-f]{12}, Node \d+/);
    expect(out).toMatch(/\nbalance +\d+ +\d+ +\S.+\S +[\d.e-]+ +VAL-BAL-\d\d\n/);
    expect(out).toMatch(/All \d+ cases are within tolerance/);
    expect(out).toMatch(/\d+ further cases need a development tool/);
    expect(out).toContain('It certifies nothing');
    expect(out).not.toContain('FAILED');
    expect(err).toMatch(/Self-check: (\d+) of \1\n$/);
  });

  it('answers as JSON with the copy of the program that it holds for', async () => {
    const { installation, state } = JSON.parse((await command('--json')).out);
    expect(installation.platform).toContain(process.versions.node);
    expect(state.is).toBe('done');
    expect(state.report.failed).toEqual([]);
  });

  it('ends with 3 where a case fails, says by how much, goes on to others', async () => {
    const { heard, voice } = listening();
    const right = { ...wrong, id: 'VAL-BAL-98', run: () => [0.001] };
    const options = { paper: 'a4', by: 'TD' } as const;
    expect(await selfCheck(voice, options, [wrong, right])).toBe(3);
    expect(heard.out).toContain(
      'FAILED   VAL-BAL-99 A case that is deliberately wrong: 0.02 kg is over 0.005 kg',
    );
    expect(heard.out).toContain('1 of 2 cases FAILED');
  });

  it('writes the report as PDF, in a folder that was not there', async () => {
    const file = join(folder, 'new', 'report.pdf');
    expect((await command('--pdf', file, '--paper', 'a4', '--by', 'TD')).code).toBe(0);
    expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('[CLI-006] says where a report cannot be written, and ends with 2', async () => {
    const blocked = join(folder, 'file');
    writeFileSync(blocked, '');
    const { code, err } = await command('--pdf', join(blocked, 'report.pdf'));
    expect(code).toBe(2);
    expect(err).toContain('CLI-006');
  });

  it('that fails makes the sheets end with 3, and says why', async () => {
    const { heard, voice } = listening();
    const examples = join(import.meta.dirname, '..', 'examples', 'kestlemere');
    const job = {
      house: join(examples, 'house.json'),
      show: join(examples, 'clockmaker.show.json'),
      out: join(folder, 'sheets'),
      only: 'schedule',
      paper: 'a4',
      by: 'TD',
    } as const;
    expect(await writeSheets(voice, job, [wrong])).toBe(3);
    expect(heard.err).toContain('SELF-CHECK FAILED');
    expect(heard.err).toContain('VAL-BAL-99');
    expect(await writeSheets(voice, job, [])).toBe(0);
  });

  it('is left off, and not half believed, where nobody can wait for it', () => {
    expect(checkedNow({ cases: [wrong], mostMs: -1 })).toEqual({ is: 'notRun' });
  });
});
