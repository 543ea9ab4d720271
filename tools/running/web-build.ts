/**
 * Builds the screens when anything they are made of changed since the last build. The hash of
 * the sources is kept beside the build, so that a second start does not wait for one.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { BUILD, ROOT, runNode, TOOLS } from './program.ts';

const SOURCES = ['web', 'engine', 'documents', 'drawings', 'sheets', 'examples'];
const SETTINGS = ['package.json', 'package-lock.json', 'tsconfig.base.json'];

const STAMP = join(BUILD, 'web.hash');
const PAGE = join(BUILD, 'web', 'index.html');

const filesOf = (room: string): readonly string[] => {
  const folder = join(ROOT, room);
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.test\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
};

const hashOfSources = (): string => {
  const hash = createHash('sha256');
  const files = [...SOURCES.flatMap(filesOf), ...SETTINGS.map((name) => join(ROOT, name))];
  for (const file of files) hash.update(file).update('\0').update(readFileSync(file));
  return hash.digest('hex');
};

const isCurrent = (hash: string): boolean =>
  existsSync(PAGE) && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hash;

/** The exit code of the build; 0 at once when nothing changed. */
export const buildWeb = async (): Promise<number> => {
  const hash = hashOfSources();
  if (isCurrent(hash)) return 0;
  process.stderr.write('Building the screens (about 5 s) ...\n');
  const { code, output } = await runNode([TOOLS.vite, 'build', '--config', 'web/vite.config.ts'], {
    shown: false,
  });
  if (code !== 0) {
    process.stderr.write(`${output}\nThe screens could not be built; the reason is above.\n`);
    return code;
  }
  mkdirSync(BUILD, { recursive: true });
  writeFileSync(STAMP, hash);
  return 0;
};
