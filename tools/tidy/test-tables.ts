/**
 * Tables of cases that lie in a file of their own beside a test. Such a file is opened by tests
 * and by nobody else; what the program opens too is no table of cases.
 */
import { posix } from 'node:path';
import ts from 'typescript';
import type { Source } from './fault.ts';
import { isCode, isTest } from './sources.ts';
import { treeOf } from './syntax.ts';

/** Paths of the files that a source opens beside it, as `./name.ts`. */
const opened = (source: Source): readonly string[] =>
  treeOf(source)
    .statements.filter(ts.isImportDeclaration)
    .map(({ moduleSpecifier }) => moduleSpecifier)
    .filter(ts.isStringLiteral)
    .filter(({ text }) => text.startsWith('.'))
    .map(({ text }) => posix.join(posix.dirname(source.path), text));

/** For each test, the tables that it opens. */
export const tablesByTest = (
  sources: readonly Source[],
): ReadonlyMap<Source, readonly Source[]> => {
  const code = sources.filter(({ path }) => isCode(path));
  const byPath = new Map(code.map((source) => [source.path, source]));
  const program = new Set(code.filter(({ path }) => !isTest(path)).flatMap(opened));
  const isTable = (path: string): boolean => !program.has(path) && !path.endsWith('-codes.ts');
  const tablesOf = (test: Source): readonly Source[] =>
    opened(test)
      .filter(isTable)
      .flatMap((path) => byPath.get(path) ?? []);
  return new Map(
    code.filter(({ path }) => isTest(path)).map((test) => [test, tablesOf(test)] as const),
  );
};
