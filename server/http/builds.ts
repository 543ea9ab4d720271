/** Which builds of the screens this server has, and from which of them it takes anything. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { TERMS } from '#installation';

type Build = { readonly build: string; readonly terms: number };

/** `newest`, or the name of a build that is kept; null where all that are kept are taken. */
export type OldestBuild = string | null;

/** Written by the build of the screens: the newest alone, and all that are kept, newest first. */
const NEWEST = 'build.json';
const ALL = 'builds.json';

const readAt = <T>(file: string, absent: T): T =>
  existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : absent;

const readBuilds = (webRoot: string): readonly Build[] => {
  const newest = readAt<Build | null>(join(webRoot, NEWEST), null);
  if (newest === null) return [];
  const kept = readAt<readonly Build[]>(join(webRoot, ALL), []);
  return [newest, ...kept.filter(({ build }) => build !== newest.build)];
};

/** A list that is just being written is read the next time; until then the last one holds. */
const readAgain = (webRoot: string, last: readonly Build[]): readonly Build[] => {
  try {
    return readBuilds(webRoot);
  } catch (fault) {
    if (fault instanceof SyntaxError) return last;
    throw fault;
  }
};

/** The builds in a folder, read anew where a build was made while the server runs. */
export const buildsIn = (webRoot: string): (() => readonly Build[]) => {
  let read: { readonly at: number; readonly builds: readonly Build[] } = { at: 0, builds: [] };
  return () => {
    const file = join(webRoot, NEWEST);
    const at = statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
    if (read.at === at) return read.builds;
    const builds = readAgain(webRoot, read.builds);
    // What was half written has another time when it is whole.
    read = { at, builds };
    return builds;
  };
};

/**
 * Whether anything is taken from a page of this build. One that is not known is older than all that
 * are, or of another server. Without builds there are no pages of ours to hold to anything.
 */
export const isTaken = (
  build: string,
  builds: readonly Build[],
  oldest: OldestBuild = null,
): boolean => {
  const [newest] = builds;
  if (newest === undefined) return true;
  const place = builds.findIndex((each) => each.build === build);
  const found = builds[place];
  if (found === undefined || found.terms !== TERMS) return false;
  const last = oldest === 'newest' ? newest.build : oldest;
  // What is no longer kept is older than all that are.
  const limit = builds.findIndex((each) => each.build === last);
  return limit < 0 || place <= limit;
};
