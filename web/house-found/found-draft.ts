/** What is being written down of one set, as text and choices, and into the record. */
import type { DecimalMark } from '#quantities';
import type { StackRun } from '#state';
import type { Found, Looked } from '../editing/state-edits.ts';
import { shownText } from '../grid/typed-marks.ts';
import { at, isList, isObject, type Json } from '../keeping/json.ts';

export type FoundDraft = {
  readonly height: string;
  /** Where the batten was not measured: it is between the two. */
  readonly upTo: string;
  readonly lock: string;
  readonly ring: string;
  readonly collar: string;
  readonly service: string;
  readonly tagNumber: string;
  readonly tagReason: string;
  /** Null where nobody has counted; bare is an empty list. */
  readonly stack: readonly StackRun[] | null;
  /** Phase of each item that the record names; null where nobody has looked. */
  readonly items: Readonly<Record<string, string>> | null;
  readonly basis: string;
  readonly second: string;
};

const wordAt = (value: Json | undefined, ...path: readonly string[]): string => {
  const word = at(value, path);
  return typeof word === 'string' ? word : '';
};

const heightsOf = (height: Json | undefined): readonly [string, string] => {
  if (!isList(height)) return [typeof height === 'string' ? height : '', ''];
  const [low, high] = height;
  return [String(low ?? ''), String(high ?? '')];
};

export const draftOf = (written: Json | undefined): FoundDraft => {
  const [height, upTo] = heightsOf(at(written, ['height']));
  const stack = at(written, ['stack']);
  const items = at(written, ['items']);
  return {
    height,
    upTo,
    lock: wordAt(written, 'lock'),
    ring: wordAt(written, 'ring'),
    collar: wordAt(written, 'collar'),
    service: wordAt(written, 'service'),
    tagNumber: wordAt(written, 'tag', 'number'),
    tagReason: wordAt(written, 'tag', 'reason'),
    stack: isList(stack) ? (stack as unknown as readonly StackRun[]) : null,
    items: isObject(items) ? (items as Readonly<Record<string, string>>) : null,
    basis: wordAt(written, 'knowledge', 'basis') || 'unknown',
    second: wordAt(written, 'knowledge', 'second'),
  };
};

/** Heights as the language of the reader writes them. */
export const shownDraft = (draft: FoundDraft, mark: DecimalMark): FoundDraft => ({
  ...draft,
  height: shownText(draft.height, mark),
  upTo: shownText(draft.upTo, mark),
});

const said = (word: string): Json | undefined => (word.trim() === '' ? undefined : word.trim());

const heightJson = ({ height, upTo }: FoundDraft): Json | undefined =>
  upTo.trim() === '' ? said(height) : [height.trim(), upTo.trim()];

const tagJson = ({ tagNumber, tagReason }: FoundDraft): Json | undefined =>
  tagNumber.trim() === '' && tagReason.trim() === ''
    ? undefined
    : { number: tagNumber.trim(), reason: tagReason.trim() };

/** The record of the set anew; what stands beside it, such as a pull test, stays. */
export const foundOf = (draft: FoundDraft, { at: moment, by }: Looked): Found => ({
  height: heightJson(draft),
  lock: said(draft.lock),
  ring: said(draft.ring),
  collar: said(draft.collar),
  stack:
    draft.stack === null
      ? undefined
      : draft.stack.map(({ kind, count, tag }) => ({ kind, count, tag })),
  items: draft.items === null ? undefined : { ...draft.items },
  service: said(draft.service),
  tag: tagJson(draft),
  knowledge: {
    basis: draft.basis,
    at: moment,
    by,
    ...(draft.second.trim() === '' ? {} : { second: draft.second.trim() }),
  },
});
