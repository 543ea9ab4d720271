/**
 * Builds the screens when anything they are made of changed since the last build. The hash of
 * the sources is kept beside the build, so that a second start does not wait for one.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { hashOfFiles, programFiles } from '#installation';
import { BUILD, ROOT, runNode, TOOLS } from './program.ts';
import { keepBuilds } from './web-builds.ts';

const STAMP = join(BUILD, 'web.hash');
const SCREENS = join(BUILD, 'web');
/** Written last: where it is, the build was whole and what pages may yet load was kept. */
const LIST = join(SCREENS, 'builds.json');

/** Of the whole program: the screens carry its build, so that a self-check says which it ran. */
const hashOfSources = (): string => hashOfFiles(ROOT, programFiles(ROOT));

const isCurrent = (hash: string): boolean =>
  existsSync(LIST) && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hash;

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
  keepBuilds(SCREENS);
  mkdirSync(BUILD, { recursive: true });
  writeFileSync(STAMP, hash);
  return 0;
};
