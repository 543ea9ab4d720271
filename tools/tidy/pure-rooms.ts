/**
 * Same arguments, same answer. The compiler already hides Node and the browser from the pure
 * rooms; clock, chance and the habits of the machine are part of the language, so we look.
 */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { ROOMS } from './floors.ts';
import { isCode, isTest } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

const NAMES = [
  'performance',
  'fetch',
  'process',
  'console',
  'globalThis',
  'setTimeout',
  'setInterval',
  'crypto',
  'localStorage',
  'navigator',
];

/** These answer by the language or the time zone that the machine is set to. */
const BY_MACHINE = [
  'toLocaleString',
  'toLocaleUpperCase',
  'toLocaleLowerCase',
  'localeCompare',
  'getTimezoneOffset',
  'getFullYear',
  'getMonth',
  'getDate',
  'getDay',
  'getHours',
];

/** Cases run wherever the program does; only the record of their errors is for a disk. */
const isCase = (path: string): boolean =>
  path.startsWith('validation/') && path !== 'validation/record.ts';

const isPure = (path: string): boolean =>
  isCase(path) ||
  ROOMS.some(({ zone, folder }) => zone === 'pure' && path.startsWith(`${folder}/`));

/** `item.process`, `{ process: 1 }` and `type X = { Date: ... }` name a field, not the global. */
const namesField = (node: ts.Identifier): boolean => {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isShorthandPropertyAssignment(parent)) return false;
  return (parent as { readonly name?: ts.Node }).name === node;
};

/** `new Date(written)` reads a moment that was given; without an argument it reads the clock. */
const readsClock = (node: ts.Node): boolean => {
  if (ts.isNewExpression(node)) {
    return node.expression.getText() === 'Date' && (node.arguments?.length ?? 0) === 0;
  }
  return ts.isCallExpression(node) && /^Date(\.now)?$/.test(node.expression.getText());
};

const impureName = (node: ts.Node): string | undefined => {
  if (readsClock(node)) return 'the clock';
  if (ts.isPropertyAccessExpression(node)) {
    if (node.getText() === 'Math.random') return 'Math.random';
    return BY_MACHINE.includes(node.name.text) ? node.name.text : undefined;
  }
  if (!ts.isIdentifier(node) || namesField(node)) return undefined;
  return NAMES.includes(node.text) ? node.text : undefined;
};

const faultsOf = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  return nodesOf(tree).flatMap((node) => {
    const name = impureName(node);
    if (name === undefined) return [];
    const what = `${name} in a pure room`;
    return [
      { file: source.path, line: lineOf(tree, node), what, wanted: 'take it as an argument' },
    ];
  });
};

export const pureRooms: Check = (sources) =>
  sources.filter(({ path }) => isCode(path) && isPure(path) && !isTest(path)).flatMap(faultsOf);
