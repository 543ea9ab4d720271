/** Code that was commented out, and notes of work to do, do not land. */
import type { Check, Fault, Source } from './fault.ts';
import { isCode } from './sources.ts';
import { commentsOf } from './syntax.ts';

const NOTE = new RegExp(
  `\\b(${['TO' + 'DO', 'FIX' + 'ME', 'HA' + 'CK', 'X' + 'XX'].join('|')})\\b`,
);

const CODE = [
  /^(const|let|var|import|export|return|throw|await|function|type|if|for|while|switch)\b.*[;{]$/,
  /^[\w.$[\]]+(\(.*\))?;$/,
  /^[\w.$[\]]+ [-+*/]?= .*;$/,
  /^\}[);,]*$/,
  /^<\/?[A-Z]\w*[^>]*>$/,
];

/** Lines of a comment without its marks. A doc block may show code: that is what it is for. */
const linesOf = (comment: string): readonly string[] => {
  if (comment.startsWith('/**')) return [];
  return comment
    .replace(/^\/\*|\*\/$/g, '')
    .split('\n')
    .map((line) => line.replace(/^\s*(\/\/|\*)?\s*/, '').trim());
};

const isCommentedOut = (comment: string): boolean =>
  linesOf(comment).some((line) => CODE.some((pattern) => pattern.test(line)));

const faultsInCode = (source: Source): readonly Fault[] =>
  commentsOf(source).flatMap(({ text, line }) => {
    const at = { file: source.path, line };
    if (NOTE.test(text)) {
      return [{ ...at, what: 'a note of work to do', wanted: 'do it, or file an issue' }];
    }
    if (!isCommentedOut(text)) return [];
    return [{ ...at, what: 'code in a comment', wanted: 'delete it; the history has it' }];
  });

const faultsInText = ({ path, text }: Source): readonly Fault[] =>
  text.split('\n').flatMap((line, index) => {
    if (!NOTE.test(line)) return [];
    const what = 'a note of work to do';
    return [{ file: path, line: index + 1, what, wanted: 'do it, or file an issue' }];
  });

export const deadComments: Check = (sources) => [
  ...sources.filter(({ path }) => isCode(path)).flatMap(faultsInCode),
  ...sources.filter(({ path }) => /\.(md|css|html)$/.test(path)).flatMap(faultsInText),
];
