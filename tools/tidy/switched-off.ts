/** No test is switched off, nor is one left on alone. */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { isTest } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

const SWITCHES = ['skip', 'only', 'todo', 'skipIf', 'runIf', 'fails'];
const OWNERS = /^(it|test|describe|suite|bench|context|ctx|task)\b/;
const NICKNAMES = ['xit', 'xtest', 'xdescribe', 'fit', 'fdescribe'];

const switchIn = (node: ts.Node): string | undefined => {
  if (ts.isCallExpression(node) && NICKNAMES.includes(node.expression.getText())) {
    return node.expression.getText();
  }
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const isSwitch = SWITCHES.includes(node.name.text) && OWNERS.test(node.expression.getText());
  return isSwitch ? `.${node.name.text}` : undefined;
};

const faultsOf = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  return nodesOf(tree).flatMap((node) => {
    const name = switchIn(node);
    if (name === undefined) return [];
    const what = `${name} switches tests off`;
    return [{ file: source.path, line: lineOf(tree, node), what, wanted: 'mend it or remove it' }];
  });
};

export const switchedOff: Check = (sources) =>
  sources.filter(({ path }) => isTest(path)).flatMap(faultsOf);
