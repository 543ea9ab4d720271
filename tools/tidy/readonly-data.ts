/**
 * Data is `readonly`: each field of a type that has a name, and each list in one. What a
 * calculation was given, it cannot change under the feet of the next.
 */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { isProgram } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

type Field = ts.PropertySignature | ts.IndexSignatureDeclaration;

const isField = (node: ts.Node): node is Field =>
  ts.isPropertySignature(node) || ts.isIndexSignatureDeclaration(node);

const ancestorsOf = (node: ts.Node): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  for (let at: ts.Node | undefined = node; at !== undefined; at = at.parent) found.push(at);
  return found;
};

/**
 * Whether the field belongs to a type with a name. A shape written where it is used, such as a
 * running best inside one function, is local; types of other people's modules are as they are.
 */
const isDeclared = (field: Field): boolean => {
  const around = ancestorsOf(field);
  const named = around.some(
    (node) => ts.isTypeAliasDeclaration(node) || ts.isInterfaceDeclaration(node),
  );
  return named && !around.some(ts.isModuleDeclaration);
};

const isReadonly = ({ modifiers }: Field): boolean =>
  modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ReadonlyKeyword) ?? false;

/** `readonly X[]` is a type operator around the list; a bare list may be changed. */
const isBareList = (type: ts.TypeNode | undefined): boolean =>
  type !== undefined && (ts.isArrayTypeNode(type) || ts.isTupleTypeNode(type));

const faultOf = (field: Field): string | undefined => {
  if (!isReadonly(field)) return 'can be changed';
  return isBareList(field.type) ? 'is a list that can be changed' : undefined;
};

const nameOf = (field: Field): string =>
  ts.isPropertySignature(field) ? field.name.getText() : 'an index';

const faultsOf = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  return nodesOf(tree)
    .filter(isField)
    .flatMap((field) => {
      const fault = faultOf(field);
      if (fault === undefined || !isDeclared(field)) return [];
      const what = `${nameOf(field)} ${fault}`;
      return [{ file: source.path, line: lineOf(tree, field), what, wanted: 'readonly' }];
    });
};

export const readonlyData: Check = (sources) =>
  sources.filter(({ path }) => isProgram(path)).flatMap(faultsOf);
