/**
 * Which codes the tests name. A title that begins `[BAL-003]` names one; a title that begins
 * `[${code}]` stands for a table, and then each code is named that is written in that file or in a
 * table of cases that it opens.
 */
import ts from 'typescript';
import { CODE } from './declared-codes.ts';
import type { Source } from './fault.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';
import { tablesByTest } from './test-tables.ts';

export type CitedCode = {
  readonly code: string;
  readonly title: string;
  readonly file: string;
  readonly line: number;
};

const IN_TITLE = /\[([A-Z]{2,4}-\d{3})\]/g;

/** `it(...)`, `it.each(table)(...)` and `describe(...)` alike. */
const titleOf = (node: ts.Node): ts.Expression | undefined => {
  if (!ts.isCallExpression(node)) return undefined;
  return /^(it|test|describe)\b/.test(node.expression.getText()) ? node.arguments[0] : undefined;
};

const titlesOf = (source: Source): readonly ts.Expression[] =>
  nodesOf(treeOf(source)).flatMap((node) => {
    const title = titleOf(node);
    return title === undefined ? [] : [title];
  });

const standsForTable = (title: ts.Expression): boolean =>
  /^[`'"]\[(\$\{|\$\w|%s)/.test(title.getText());

const literalCodes = (source: Source, title: string): readonly CitedCode[] => {
  const tree = treeOf(source);
  return nodesOf(tree)
    .filter(ts.isStringLiteralLike)
    .filter(({ text }) => CODE.test(text))
    .map((node) => ({ code: node.text, title, file: source.path, line: lineOf(tree, node) }));
};

const citedIn = (source: Source, tables: readonly Source[]): readonly CitedCode[] => {
  const tree = treeOf(source);
  const titles = titlesOf(source);
  const named = titles.flatMap((title) =>
    [...title.getText().matchAll(IN_TITLE)].map(([, code = '']) => ({
      code,
      title: title.getText().slice(1, -1),
      file: source.path,
      line: lineOf(tree, title),
    })),
  );
  const table = titles.find(standsForTable);
  if (table === undefined) return named;
  const title = table.getText().slice(1, -1);
  return [...named, ...[source, ...tables].flatMap((one) => literalCodes(one, title))];
};

/** The tests of tidy name codes of fixtures; those are nobody's rules. */
export const citedCodes = (sources: readonly Source[]): readonly CitedCode[] =>
  [...tablesByTest(sources.filter(({ path }) => !path.startsWith('tools/')))].flatMap(
    ([test, tables]) => citedIn(test, tables),
  );
