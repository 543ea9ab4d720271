/** No name that says nothing. A drawer for everything is where subjects go to be lost. */
import type { Check } from './fault.ts';

const EMPTY_WORDS = ['util', 'helper', 'common', 'shared', 'misc', 'core', 'manager'];

const wordsOf = (path: string): readonly string[] =>
  path
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z]+/);

const emptyWordIn = (path: string): string | undefined =>
  wordsOf(path).find((word) => EMPTY_WORDS.some((empty) => word === empty || word === `${empty}s`));

export const fileNames: Check = (sources) =>
  sources.flatMap(({ path }) => {
    const word = emptyWordIn(path);
    if (word === undefined) return [];
    return [{ file: path, line: 1, what: `the name says "${word}"`, wanted: 'name its subject' }];
  });
