/** A file of at most 400 lines and a function of at most 60: the hard stops, not the aim. */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { isCode } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

const FILE_LIMIT = 400;
const FUNCTION_LIMIT = 60;

const GROUPS = /^(describe|suite)\b/;
const TESTS = /^(describe|suite|it|test)\b/;

const calls = (node: ts.Node, name: RegExp): boolean =>
  ts.isCallExpression(node) && name.test(node.expression.getText());

/**
 * What is given to `describe(...)` only groups tests, and so does the body of a contract, which
 * every implementation calls. The tests inside are held to the limit.
 */
const groupsTests = (node: ts.SignatureDeclaration): boolean => {
  if (calls(node.parent, GROUPS)) return true;
  const { body } = node as { readonly body?: ts.Node };
  if (body === undefined || !ts.isBlock(body)) return false;
  return body.statements.some(
    (line) => ts.isExpressionStatement(line) && calls(line.expression, TESTS),
  );
};

const nameOf = (node: ts.Node): string => {
  const owner = ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node) ? node : node.parent;
  const name = (owner as { readonly name?: ts.Node }).name;
  return name === undefined ? 'a function' : name.getText();
};

const longFunctions = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  return nodesOf(tree)
    .filter(ts.isFunctionLike)
    .filter((node) => !groupsTests(node))
    .flatMap((node) => {
      const first = lineOf(tree, node);
      const lines = tree.getLineAndCharacterOfPosition(node.getEnd()).line + 2 - first;
      if (lines <= FUNCTION_LIMIT) return [];
      const what = `${nameOf(node)} has ${lines} lines`;
      return [{ file: source.path, line: first, what, wanted: `at most ${FUNCTION_LIMIT}` }];
    });
};

const longFile = ({ path, text }: Source): readonly Fault[] => {
  const lines = text.replace(/\n$/, '').split('\n').length;
  if (lines <= FILE_LIMIT) return [];
  return [
    { file: path, line: lines, what: `${lines} lines`, wanted: `at most ${FILE_LIMIT} a file` },
  ];
};

export const sizes: Check = (sources) => [
  ...sources.filter(({ path }) => isCode(path) || path.endsWith('.css')).flatMap(longFile),
  ...sources.filter(({ path }) => isCode(path)).flatMap(longFunctions),
];
