/**
 * Codes are declared in the room that raises them, in `rule-codes.ts` and `refusal-codes.ts`: each
 * text there that is a code and nothing else declares it. Gathered here for tidy and the papers.
 */
import ts from 'typescript';
import type { Source } from './fault.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

export type DeclaredCode = {
  readonly code: string;
  readonly file: string;
  readonly line: number;
};

export const CODE_FILES = ['rule-codes.ts', 'refusal-codes.ts'] as const;
export type CodeFile = (typeof CODE_FILES)[number];

export const CODE = /^[A-Z]{2,4}-\d{3}$/;

/** Every text in a source that is a code and nothing else. */
export const codesIn = (source: Source): readonly DeclaredCode[] => {
  const tree = treeOf(source);
  return nodesOf(tree)
    .filter(ts.isStringLiteralLike)
    .filter(({ text }) => CODE.test(text))
    .map((node) => ({ code: node.text, file: source.path, line: lineOf(tree, node) }));
};

export const declaredCodes = (
  sources: readonly Source[],
  names: readonly CodeFile[] = CODE_FILES,
): readonly DeclaredCode[] =>
  sources.filter(({ path }) => names.some((name) => path.endsWith(`/${name}`))).flatMap(codesIn);
