/** From text to a JSON value: what JSON does not have, and what it swallows, is refused. */
import type { ParseErrorCode } from 'jsonc-parser';
import { printParseErrorCode, visit } from 'jsonc-parser';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { checkJsonValue, DEPTH_MAX, tooDeepWords } from './json-value.ts';
import type { RefusalName } from './refusal-codes.ts';

/** The demo house has some 40 000 characters; two hundred such houses in one file are a mistake. */
export const TEXT_MAX = 8 * 1024 * 1024;

/** The value of a JSON text, or undefined with the reasons in `faults`. */
export const readJsonText = (text: unknown, faults: Faults): unknown => {
  if (typeof text !== 'string') {
    faults.refuse('notText', '', { found: describe(text), accepted: 'the text of a document' });
    return undefined;
  }
  if (text.length > TEXT_MAX) {
    faults.refuse('tooLarge', '', {
      found: `${text.length} characters`,
      accepted: `at most ${TEXT_MAX} characters`,
    });
    return undefined;
  }
  // Some editors put a byte order mark before the text. RFC 8259 section 8.1 lets it be ignored.
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.trim() === '') {
    faults.refuse('empty', '', { found: 'an empty text', accepted: 'a document in JSON' });
    return undefined;
  }
  if (isTooDeep(bare)) {
    faults.refuse('tooDeep', '', tooDeepWords);
    return undefined;
  }
  if (!checkGrammar(bare, faults)) return undefined;
  const value: unknown = JSON.parse(bare);
  return checkJsonValue(value, faults) ? value : undefined;
};

/** Counted without recursion, since the parser that comes next has only so much stack. */
const isTooDeep = (text: string): boolean => {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (inString) {
      if (character === '\\') at += 1;
      else if (character === '"') inString = false;
    } else if (character === '"') inString = true;
    else if (character === '{' || character === '[') {
      depth += 1;
      if (depth > DEPTH_MAX) return true;
    } else if (character === '}' || character === ']') depth -= 1;
  }
  return false;
};

type Slip = {
  readonly code: ParseErrorCode;
  readonly offset: number;
  readonly length: number;
  readonly line: number;
  readonly column: number;
};

/** One pass over the grammar: the first slip, and every key that stands twice in its object. */
const checkGrammar = (text: string, faults: Faults): boolean => {
  const slips: Slip[] = [];
  const open: Set<string>[] = [];
  let sound = true;
  /** Where the document ended, once it has; what follows is not part of it. */
  let end = Number.POSITIVE_INFINITY;
  const close = (offset: number, length: number): void => {
    open.pop();
    // A text that is cut off is closed by the parser, where no bracket stands.
    const isWritten = /[}\]]/.test(text[offset] ?? '');
    if (open.length === 0 && isWritten) end = Math.min(end, offset + length);
  };
  visit(
    text,
    {
      onObjectBegin: () => void open.push(new Set()),
      onArrayBegin: () => void open.push(new Set()),
      onObjectEnd: close,
      onArrayEnd: close,
      onObjectProperty: (key, _offset, _length, line, column, pathOfHolder) => {
        const keys = open.at(-1);
        if (keys?.has(key)) {
          sound = false;
          const path = [...pathOfHolder(), key].reduce<string>(pathTo, '');
          faults.refuse('duplicateKey', path, {
            found: `the key ${describe(key)} again at ${placeWords(line, column)}`,
            accepted: 'each key once',
          });
        }
        keys?.add(key);
      },
      onError: (code, offset, length, line, column) =>
        void slips.push({ code, offset, length, line, column }),
    },
    { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false },
  );
  const first = slips[0];
  if (first) refuseSlip(text, first, end, faults);
  return sound && !first;
};

const placeWords = (line: number, column: number): string =>
  `line ${line + 1}, column ${column + 1}`;

const refuseSlip = (text: string, slip: Slip, end: number, faults: Faults): void => {
  const name = nameOfSlip(text, slip, end);
  const what = SLIP_WORDS[name] ?? grammarWords(slip.code);
  faults.refuse(name, '', {
    found: `${what} at ${placeWords(slip.line, slip.column)}`,
    accepted: 'one document in strict JSON (RFC 8259), whole and with nothing after it',
  });
};

const nameOfSlip = (text: string, slip: Slip, end: number): RefusalName => {
  const word = printParseErrorCode(slip.code);
  if (word === 'InvalidCommentToken' || word === 'UnexpectedEndOfComment') return 'comment';
  if (slip.offset >= end) return 'trailing';
  const stop = text.trimEnd().length;
  const isLast = slip.offset > 0 && slip.offset + slip.length >= stop;
  const isHalfWritten = /^UnexpectedEnd|^InvalidSymbol/.test(word) && isLast;
  if (slip.offset >= stop || isHalfWritten) return 'truncated';
  const before = text.slice(0, slip.offset).trimEnd();
  return before.endsWith(',') && /[}\]]/.test(text[slip.offset] ?? '')
    ? 'trailingComma'
    : 'notJson';
};

const SLIP_WORDS: Partial<Record<RefusalName, string>> = {
  comment: 'a comment',
  trailing: 'more text after the end of the document',
  truncated: 'the end of the text in the middle of the document',
  trailingComma: 'a comma with no value after it',
};

/** "CommaExpected" as "comma expected". */
const grammarWords = (code: ParseErrorCode): string =>
  printParseErrorCode(code)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
