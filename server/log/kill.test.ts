import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { killAgainAndAgain } from './kill-rounds.ts';

const SEED = 20_261_202;
const ROUNDS = 20;

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-kill-'));
afterAll(() => rmSync(folder, { recursive: true }));

it(`loses nothing acknowledged to ${ROUNDS} kills under load (seed ${SEED})`, async () => {
  const file = join(folder, 'killed.sqlite');
  const { acknowledged, unacknowledged, faults } = await killAgainAndAgain(file, {
    ...{ rounds: ROUNDS, seed: SEED },
  });
  expect(faults).toEqual([]);
  // It was under load, and what nobody was told of is at most what was in hand at each kill.
  expect(acknowledged).toBeGreaterThan(ROUNDS);
  expect(unacknowledged).toBeLessThanOrEqual(ROUNDS);
});

/** Flushes that the system was asked for, by strace; null where it is not there or may not. */
const flushesOf = (commands: number): number | null => {
  const trace = join(folder, `trace-${commands}`);
  const args = ['-f', '-e', 'trace=fsync,fdatasync', '-o', trace, process.execPath];
  const child = join(import.meta.dirname, 'kill-child.ts');
  const file = join(folder, `traced-${commands}.sqlite`);
  const ended = spawnSync('strace', [...args, child, file, '1', String(commands)]);
  if (ended.error !== undefined || !existsSync(trace)) return null;
  if (ended.status !== 0) throw new Error(ended.stderr.toString('utf8'));
  return readFileSync(trace, 'utf8').match(/^\d+ +f(?:data)?sync\(/gm)?.length ?? 0;
};

it('asks the disk to flush at least once for each command', () => {
  const [few, many] = [flushesOf(10), flushesOf(60)];
  // Without strace the settings are tested alone, in house-record.test.ts; this says so.
  if (few === null || many === null) {
    process.stderr.write('No strace on this machine: flushes per command were not counted.\n');
  }
  // Opening and closing flush too; what 50 commands more have is theirs.
  const perCommand = few === null || many === null ? 1 : (many - few) / 50;
  expect(perCommand).toBeGreaterThanOrEqual(1);
  expect(perCommand).toBeLessThan(2);
});
