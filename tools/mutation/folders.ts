/**
 * What is mutated: the folders that find an order of work and the folders that judge, each by
 * itself, so that one can be measured again alone. The tests beside the code try it; laws with
 * random input, which take long, and the rest of the suite do not count. So a score is a lower
 * bound.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../running/program.ts';

const MEASURED = ['engine/sequence', 'engine/rules'];

/** Declarations and doors do nothing, and examples are the tests' own. */
const NOT_MUTATED = /(\.(test|contract)\.ts|^example-.*|^(rule|refusal)-codes\.ts|^index\.ts)$/;

export type Folder = {
  readonly folder: string;
  /** The files to mutate, from the root of the project. */
  readonly sources: readonly string[];
  /** Patterns of the test files that try them. */
  readonly tests: readonly string[];
};

export const isMutated = (name: string): boolean => name.endsWith('.ts') && !NOT_MUTATED.test(name);

const entriesOf = (folder: string) => readdirSync(join(ROOT, folder), { withFileTypes: true });

const folderOf = (folder: string): Folder => ({
  folder,
  sources: entriesOf(folder)
    .filter((entry) => entry.isFile() && isMutated(entry.name))
    .map(({ name }) => `${folder}/${name}`)
    .toSorted(),
  tests: [`${folder}/!(*.laws).test.ts`],
});

const withFoldersIn = (folder: string): readonly string[] => [
  folder,
  ...entriesOf(folder)
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => withFoldersIn(`${folder}/${name}`)),
];

export const allFolders = (): readonly Folder[] =>
  MEASURED.flatMap(withFoldersIn)
    .toSorted()
    .map(folderOf)
    .filter(({ sources }) => sources.length > 0);

/**
 * Those asked for, or below what is asked for; all where nothing is. Of a folder of which only
 * files are asked for, only those files.
 */
export const foldersIn = (asked: readonly string[]): readonly Folder[] =>
  allFolders().flatMap((folder) => {
    const whole =
      asked.length === 0 || asked.some((name) => `${folder.folder}/`.startsWith(`${bare(name)}/`));
    const sources = whole ? folder.sources : folder.sources.filter((name) => asked.includes(name));
    return sources.length === 0 ? [] : [{ ...folder, sources }];
  });

const bare = (name: string): string => name.replace(/\/+$/, '');
