/** The files that the program is made of, and one hash of them all. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Rooms, and the cases of the self-check; tests, papers and tools are not the program. */
const FOLDERS = [
  'engine',
  'texts',
  'languages',
  'documents',
  'drawings',
  'sheets',
  'selfcheck',
  'validation',
  'print',
  'installation',
  'server',
  'web',
  'cli',
];
/** The last two say which packages and which language the rest is read with. */
const SETTINGS = ['package.json', 'package-lock.json', 'tsconfig.base.json'];

const NOT_PROGRAM = /\.(test|contract)\.tsx?$|\.md$/;

const filesIn = (root: string, folder: string): readonly string[] => {
  const path = join(root, folder);
  if (!existsSync(path)) return [];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !NOT_PROGRAM.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));
};

/** Paths below the root, in one order on every system. */
export const programFiles = (root: string): readonly string[] =>
  [...FOLDERS.flatMap((folder) => filesIn(root, folder)), ...SETTINGS]
    .filter((file) => existsSync(join(root, file)))
    .sort((one, other) => (one < other ? -1 : 1));

/** SHA-256 over names and contents: moved, renamed or changed by a letter, it is another. */
export const hashOfFiles = (root: string, files: readonly string[]): string => {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(root, file)));
  return hash.digest('hex');
};
