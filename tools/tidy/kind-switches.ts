/** A switch over kinds ends in `unreachable(kind)`, so that a new kind cannot be forgotten. */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { isProgram } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

const isOverKinds = ({ expression }: ts.SwitchStatement): boolean =>
  (ts.isIdentifier(expression) && expression.text === 'kind') ||
  (ts.isPropertyAccessExpression(expression) && expression.name.text === 'kind');

const callsUnreachable = (clause: ts.CaseOrDefaultClause): boolean =>
  nodesOf(clause).some(
    (node) => ts.isCallExpression(node) && node.expression.getText() === 'unreachable',
  );

const isClosed = ({ caseBlock }: ts.SwitchStatement): boolean =>
  caseBlock.clauses.some((clause) => ts.isDefaultClause(clause) && callsUnreachable(clause));

const faultsOf = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  return nodesOf(tree)
    .filter(ts.isSwitchStatement)
    .filter((node) => isOverKinds(node) && !isClosed(node))
    .map((node) => ({
      file: source.path,
      line: lineOf(tree, node),
      what: 'this switch over kinds is open',
      wanted: 'a default that calls unreachable(kind)',
    }));
};

export const kindSwitches: Check = (sources) =>
  sources.filter(({ path }) => isProgram(path)).flatMap(faultsOf);
