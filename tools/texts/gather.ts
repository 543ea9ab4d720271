/**
 * Every text that the code says to a person: what stands written in a call that says it, or is
 * marked by `message`; and the titles and sentences of the rules.
 */
import ts from 'typescript';
import { pluralKey, TRADE_WORDS } from '#texts';
import type { Source } from '../tidy/fault.ts';
import { isProgram } from '../tidy/sources.ts';
import { lineOf, nodesOf, treeOf } from '../tidy/syntax.ts';

export type Message = { readonly text: string; readonly file: string; readonly line: number };

/** The argument that is the text; `phraseCount` has a pair of them. */
const TEXT_AT: Readonly<Record<string, number>> = {
  phrase: 1,
  filled: 0,
  inHouseWords: 0,
  inVoice: 1,
  message: 0,
  tell: 0,
};
const PAIR_AT: Readonly<Record<string, number>> = { phraseCount: 2, tellCount: 1 };

/** Texts with holes that a function fills: all that is written in the first argument. */
const TEMPLATES = new Set(['deedOf']);

const RULE_FIELDS = new Set(['title', 'says']);

/** A text, a sum of texts, or one of several by a condition; nothing where it is worked out. */
const textsOf = (node: ts.Expression): readonly string[] => {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [node.text];
  if (ts.isParenthesizedExpression(node)) return textsOf(node.expression);
  if (ts.isConditionalExpression(node)) {
    return [...textsOf(node.whenTrue), ...textsOf(node.whenFalse)];
  }
  if (!ts.isBinaryExpression(node)) return [];
  const [left, right] = [textsOf(node.left)[0], textsOf(node.right)[0]];
  return left === undefined || right === undefined ? [] : [left + right];
};

const nameOf = (call: ts.CallExpression): string =>
  ts.isIdentifier(call.expression) ? call.expression.text : '';

/** The largest texts inside: a sum is one text, and its parts are none. */
const textsWithin = (node: ts.Node): readonly string[] => {
  if (ts.isPropertyAssignment(node)) return textsWithin(node.initializer);
  if (ts.isConditionalExpression(node)) {
    return [...textsWithin(node.whenTrue), ...textsWithin(node.whenFalse)];
  }
  const own = ts.isExpression(node) ? textsOf(node) : [];
  if (own.length > 0) return own;
  const found: string[] = [];
  ts.forEachChild(node, (child) => {
    found.push(...textsWithin(child));
  });
  return found;
};

const saidBy = (call: ts.CallExpression): readonly string[] => {
  const name = nameOf(call);
  if (TEMPLATES.has(name)) {
    const [template] = call.arguments;
    return template === undefined ? [] : textsWithin(template);
  }
  const pair = call.arguments[PAIR_AT[name] ?? -1];
  if (pair !== undefined && ts.isArrayLiteralExpression(pair)) {
    const [one, other] = pair.elements.map((each) => textsOf(each)[0]);
    return one === undefined || other === undefined ? [] : [pluralKey(one, other)];
  }
  const text = call.arguments[TEXT_AT[name] ?? -1];
  return text === undefined ? [] : textsOf(text);
};

const isOfRule = (source: Source, node: ts.Node): node is ts.PropertyAssignment =>
  source.path.endsWith('/rule-codes.ts') &&
  ts.isPropertyAssignment(node) &&
  RULE_FIELDS.has(node.name.getText());

/** Rooms have functions of their own that are called like one of ours. */
const speaks = ({ path, text }: Source): boolean =>
  path.endsWith('/rule-codes.ts') ||
  /from '(#texts|#sheets|\.[^']*(use-tell|fill-words|trade-translation|deed)\.ts)'/.test(text);

const inSource = (source: Source): readonly Message[] => {
  const tree = treeOf(source);
  return nodesOf(tree).flatMap((node) => {
    const texts = isOfRule(source, node)
      ? textsOf(node.initializer)
      : ts.isCallExpression(node)
        ? saidBy(node)
        : [];
    return texts.map((text) => ({ text, file: source.path, line: lineOf(tree, node) }));
  });
};

const says = ({ path }: Source): boolean =>
  isProgram(path) &&
  !/^(tools|build|texts)\//.test(path) &&
  (!path.startsWith('languages/') || path.startsWith('languages/told/')) &&
  !/\/example-[^/]+$/.test(path);

/** A language has quotes of its own, as it has words. */
const hasWords = ({ text }: Message): boolean =>
  /[\p{L}\u201C]/u.test(text.replace(/\{\w+\}/g, ''));

export const messagesIn = (sources: readonly Source[]): readonly Message[] => {
  const all = [
    ...TRADE_WORDS.map((text) => ({ text, file: 'texts/trade-words.ts', line: 1 })),
    ...sources.filter((each) => says(each) && speaks(each)).flatMap(inSource),
  ].filter(hasWords);
  const first = new Map<string, Message>();
  for (const each of all) if (!first.has(each.text)) first.set(each.text, each);
  return [...first.values()];
};
