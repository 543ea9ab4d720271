/** Syntax trees, parsed once a file, for the checks that must see more than text. */
import ts from 'typescript';
import type { Source } from './fault.ts';

const trees = new WeakMap<Source, ts.SourceFile>();

const scriptKind = (path: string): ts.ScriptKind => {
  if (path.endsWith('.tsx')) return ts.ScriptKind.TSX;
  return /\.[mc]?js$/.test(path) ? ts.ScriptKind.JS : ts.ScriptKind.TS;
};

export const treeOf = (source: Source): ts.SourceFile => {
  const known = trees.get(source);
  if (known !== undefined) return known;
  const { path, text } = source;
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true, scriptKind(path));
  trees.set(source, tree);
  return tree;
};

export const lineOf = (tree: ts.SourceFile, node: ts.Node): number =>
  tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;

/** Every node below, the node itself first. */
export const nodesOf = (root: ts.Node): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(root);
  return found;
};

export type Comment = { readonly text: string; readonly line: number };

/** Every comment, found before and after the tokens it stands between. */
export const commentsOf = (source: Source): readonly Comment[] => {
  const tree = treeOf(source);
  const ranges = new Map<number, ts.CommentRange>();
  const keep = (found: readonly ts.CommentRange[] | undefined): void => {
    for (const range of found ?? []) ranges.set(range.pos, range);
  };
  const visit = (node: ts.Node): void => {
    // Text between JSX tags may hold slashes that are no comment.
    if (node.kind !== ts.SyntaxKind.JsxText) {
      keep(ts.getLeadingCommentRanges(source.text, node.getFullStart()));
      keep(ts.getTrailingCommentRanges(source.text, node.getEnd()));
    }
    for (const child of node.getChildren(tree)) visit(child);
  };
  visit(tree);
  return [...ranges.values()].map(({ pos, end }) => ({
    text: source.text.slice(pos, end),
    line: tree.getLineAndCharacterOfPosition(pos).line + 1,
  }));
};
