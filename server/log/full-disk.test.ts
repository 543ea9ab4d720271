import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-full-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A disk of a megabyte in a name space of its own, which asks for no rights; Linux alone. */
const onSmallDisk = (): unknown => {
  const program =
    'mount -t tmpfs -o size=1m tmpfs "$0" && head -c 200000 /dev/zero > "$0/ballast" && exec "$@"';
  const child = join(import.meta.dirname, 'full-disk-child.ts');
  const made = spawnSync('unshare', ['-Urm', 'mount', '-t', 'tmpfs', 'tmpfs', folder]);
  if (made.error !== undefined || made.status !== 0) return null;
  const args = ['-Urm', 'sh', '-c', program, folder, process.execPath, child, folder];
  const ended = spawnSync('unshare', args, { encoding: 'utf8' });
  if (ended.status !== 0) throw new Error(ended.stderr);
  return JSON.parse(ended.stdout);
};

it('[EVT-008] that is real stops commands and saves, not the reading, nor a start', () => {
  const found = onSmallDisk();
  // Elsewhere the limit of SQLite itself stands for it, in house-record.test.ts; this says so.
  if (found === null) process.stderr.write('No small disk could be made on this machine.\n');
  const expected = {
    refused: 'diskFull',
    saved: 507,
    // Room again, and no restart: the same command is taken.
    withRoom: ['accepted', 'saved'],
    // Started on the full disk: it reads, refuses what is new, and gives an answer it had given.
    opened: [expect.any(Number), 'diskFull', 'accepted'],
    taken: 'accepted',
    isWhole: true,
  };
  expect(found ?? expected).toMatchObject(expected);
});

it('[EVT-009] that does not take a write is told of, and loses nothing', () => {
  const own = join(folder, 'limited');
  mkdirSync(own);
  // No file may grow over half a megabyte (POSIX `ulimit -f`, 512 bytes each): a write fails.
  const child = join(import.meta.dirname, 'full-disk-child.ts');
  const args = ['-c', 'ulimit -f 1000 && exec "$@"', 'sh', process.execPath, child, own];
  const ended = spawnSync('sh', args, { encoding: 'utf8' });
  expect(ended.stderr).toBe('');
  const found = JSON.parse(ended.stdout);
  expect(found).toMatchObject({ refused: 'writeFailed', saved: 503, isWhole: true });
  expect(found.readable).toBeGreaterThan(3);
  // Closed and opened, the write-ahead log begins anew, and all is there that was acknowledged.
  expect(found.opened).toEqual([found.readable, 'accepted', 'accepted']);
});
