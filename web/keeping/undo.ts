/** What has been done to which document, so that it can be taken back and done again. */
import { type Change, withChanges, withoutChanges } from './changes.ts';
import type { Json } from './json.ts';

export type Done = {
  readonly document: string;
  readonly changes: readonly Change[];
  /** What it was, in words: "mass of Bar cable on set 5". */
  readonly what: string;
  /** A whole version that was never saved was left here: it can be taken back at any time. */
  readonly isWhole?: boolean;
};

export type History = { readonly past: readonly Done[]; readonly future: readonly Done[] };

export const NO_HISTORY: History = { past: [], future: [] };

/** More than an afternoon of edits; the oldest go first. */
const LIMIT = 300;

export const afterEdit = ({ past, future }: History, done: Done): History => ({
  past: [...past, done].slice(-LIMIT),
  // What was taken back in another document can still be done again there.
  future: future.filter(({ document }) => document !== done.document),
});

const lastAmong = (list: readonly Done[], documents: readonly string[]): Done | undefined =>
  list.findLast(({ document }) => documents.includes(document));

export const undoable = ({ past }: History, documents: readonly string[]): Done | undefined =>
  lastAmong(past, documents);

export const redoable = ({ future }: History, documents: readonly string[]): Done | undefined =>
  lastAmong(future, documents);

type Step = { readonly history: History; readonly document: Json };

export const takenBack = (history: History, done: Done, document: Json): Step => ({
  history: {
    past: history.past.filter((each) => each !== done),
    future: [...history.future, done],
  },
  document: withoutChanges(document, done.changes),
});

export const doneAgain = (history: History, done: Done, document: Json): Step => ({
  history: {
    past: [...history.past, done],
    future: history.future.filter((each) => each !== done),
  },
  document: withChanges(document, done.changes),
});

/** One step from the whole of a document to the whole of another. */
export const wholeStep = (document: string, before: Json, after: Json, what: string): Done => ({
  document,
  changes: [{ kind: 'put', path: [], before, after }],
  what,
  isWhole: true,
});

/**
 * Without what belongs to a document that somebody else has changed since. A whole version that was
 * left stays, with the steps that led to it: taken back, it is the document that they belong to.
 */
export const withoutDocument = ({ past, future }: History, document: string): History => {
  const last = past.findLastIndex((done) => done.document === document && done.isWhole === true);
  return {
    past: past.filter((done, index) => done.document !== document || index <= last),
    future: future.filter((done) => done.document !== document),
  };
};
