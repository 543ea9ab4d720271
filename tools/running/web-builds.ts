/**
 * Which builds of the screens lie in one folder: the newest, and those before whose pages may be
 * open yet. A page that was opened yesterday loads the rest of its own build from here.
 */
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

type WebBuild = {
  readonly build: string;
  readonly terms: number;
  readonly files: readonly string[];
};

/** The newest, and two before it. */
const KEPT = 3;

const NEWEST = 'build.json';
const ALL = 'builds.json';
/** Written anew by each build, and in no list. */
const ALWAYS = [NEWEST, ALL, 'sw.js', 'sw-gone.js'];

const readAt = <T>(path: string, absent: T): T =>
  existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as T) : absent;

/** Takes the build that was just made to those that are kept, and removes what none of them has. */
export const keepBuilds = (folder: string): readonly WebBuild[] => {
  const newest = readAt<WebBuild | null>(join(folder, NEWEST), null);
  if (newest === null) throw new Error(`defect: a build without ${NEWEST}`);
  const before = readAt<readonly WebBuild[]>(join(folder, ALL), []);
  const kept = [newest, ...before.filter(({ build }) => build !== newest.build)].slice(0, KEPT);
  // First the list: what is in it and was removed would be worse than what is not and lies there.
  writeFileSync(join(folder, ALL), JSON.stringify(kept));
  const wanted = new Set([...ALWAYS, ...kept.flatMap(({ files }) => files)]);
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const file = relative(folder, path).split(sep).join('/');
    if (entry.isFile() && !wanted.has(file)) rmSync(path);
  }
  return kept;
};
