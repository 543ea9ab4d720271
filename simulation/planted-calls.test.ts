/**
 * Each rule of a call has a bug that breaks it, kept as a patch. A copy of the program with the
 * bug must be caught by the simulation of calls, and by the rule that the patch is named after.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CALL_RULES } from './calls/call-rules.ts';

const ROOT = join(import.meta.dirname, '..');
const PLANTED = join(import.meta.dirname, 'planted');
const NOT_COPIED = [
  'node_modules',
  'build',
  '.git',
  '.data',
  '.runtime',
  'docs',
  'journeys',
  'web',
];
const ID = 'CALL-00'.length;

const patches = readdirSync(PLANTED).filter((name) => name.startsWith('CALL-'));

let copy: string;

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'planted-calls-'));
  for (const name of readdirSync(ROOT)) {
    if (!NOT_COPIED.includes(name)) {
      cpSync(join(ROOT, name), join(copy, name), { recursive: true });
    }
  }
  symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'));
}, 60_000);
afterAll(() => rmSync(copy, { recursive: true, force: true }));

const git = (...words: readonly string[]) =>
  spawnSync('git', ['apply', ...words], { cwd: copy, encoding: 'utf8' });

const simulate = (rule: string) =>
  spawnSync(process.execPath, ['simulation/main.ts', 'planted', rule], {
    cwd: copy,
    encoding: 'utf8',
  });

describe('a planted bug of a call', () => {
  it('is there for every rule, and for each of the fifteen invariants', () => {
    const ruled = new Set(patches.map((name) => name.slice(0, ID)));
    expect(ruled).toEqual(new Set(Object.values(CALL_RULES).map(({ id }) => id)));
    const invariants = Object.values(CALL_RULES).flatMap(({ says }) =>
      /^V\d+(?=:)/.exec(says) === null ? [] : [says.split(':')[0]],
    );
    expect(invariants).toEqual(Array.from({ length: 15 }, (_, at) => `V${at + 1}`));
  });

  it.each(patches)('%s is caught by its rule', { timeout: 60_000 }, (name) => {
    const patch = join(PLANTED, name);
    const planted = git(patch);
    expect(planted.stderr, 'the patch fits the program as it is now').toBe('');
    try {
      const { status, stderr } = simulate(name.slice(0, ID));
      expect(stderr).toContain(name.slice(0, ID));
      expect(status).toBe(1);
    } finally {
      git('--reverse', patch);
    }
  });
});
