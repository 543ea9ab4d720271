/**
 * Each delivery rule has a bug that breaks it, kept as a patch. A copy of the program with the bug
 * must be caught by the simulation, and by the rule that the patch is named after.
 */

import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DELIVERY_RULES } from './delivery-rules.ts';

const ROOT = join(import.meta.dirname, '..');
const PLANTED = join(import.meta.dirname, 'planted');
const NOT_COPIED = ['node_modules', 'build', '.git', '.data', '.runtime', 'docs', 'journeys'];
/** The first world in which the bug shows is enough; it shows in one of these at the latest. */
const COMMANDS = '40000';

const patches = readdirSync(PLANTED).filter((name) => name.startsWith('SIM-'));

let copy: string;

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'planted-'));
  for (const name of readdirSync(ROOT)) {
    if (NOT_COPIED.includes(name)) continue;
    cpSync(join(ROOT, name), join(copy, name), { recursive: true });
  }
  symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

const git = (...words: readonly string[]) =>
  spawnSync('git', ['apply', ...words], { cwd: copy, encoding: 'utf8' });

const simulate = () =>
  spawnSync(process.execPath, ['simulation/main.ts', COMMANDS, '1', 'memory'], {
    cwd: copy,
    encoding: 'utf8',
  });

describe('a planted bug', () => {
  it('is there for every delivery rule', () => {
    const ruled = patches.map((name) => name.slice(0, 'SIM-00'.length));
    expect(new Set(ruled)).toEqual(new Set(Object.values(DELIVERY_RULES).map(({ id }) => id)));
  });

  it.each(patches)('%s is caught by its rule', (name) => {
    const patch = join(PLANTED, name);
    const planted = git(patch);
    expect(planted.stderr, 'the patch fits the program as it is now').toBe('');
    try {
      const { status, stderr } = simulate();
      expect(stderr).toContain(name.slice(0, 'SIM-00'.length));
      expect(status).toBe(1);
    } finally {
      git('--reverse', patch);
    }
  });
});
