/**
 * What this page keeps on its own device until the server has it: unsaved documents and what undo
 * needs. It outlives a reload, and it is gone with the page, so that two pages never mix.
 */

import type { Change } from './changes.ts';
import type { JsonObject } from './json.ts';
import { type History, NO_HISTORY } from './undo.ts';

export type Draft = {
  /** Documents with edits that the server has not acknowledged, and the revision they began at. */
  readonly unsaved: Readonly<
    Record<
      string,
      {
        readonly base: number;
        readonly document: JsonObject;
        readonly why: string;
        /** Not in drafts of before there were remarks. */
        readonly remark?: string;
        /** From each version that was sent and not answered to this one; none in older drafts. */
        readonly ahead?: readonly (readonly Change[])[];
      }
    >
  >;
  readonly history: History;
  /** Revision of each document that `history` belongs to. */
  readonly revisions: Readonly<Record<string, number>>;
};

export const NO_DRAFT: Draft = { unsaved: {}, history: NO_HISTORY, revisions: {} };

export type DraftBox = {
  readonly read: (database: string) => Draft;
  /** False where the device would not take it; the page then says so. */
  readonly write: (database: string, draft: Draft) => boolean;
};

type TextStorage = Pick<Storage, 'getItem' | 'setItem'>;

const keyOf = (database: string): string => `counterpoise.draft.${database}`;

const isDraft = (value: unknown): value is Draft =>
  typeof value === 'object' && value !== null && 'unsaved' in value && 'history' in value;

/** Half of the oldest steps go when the device is full; the unsaved documents never do. */
const lighter = (draft: Draft): Draft => ({
  ...draft,
  history: {
    past: draft.history.past.slice(Math.ceil(draft.history.past.length / 2)),
    future: [],
  },
});

export const draftBox = (storage: TextStorage): DraftBox => ({
  read: (database) => {
    try {
      const value: unknown = JSON.parse(storage.getItem(keyOf(database)) ?? 'null');
      return isDraft(value) ? value : NO_DRAFT;
    } catch {
      return NO_DRAFT;
    }
  },
  write: (database, draft) => {
    for (const attempt of [draft, lighter(draft), { ...draft, history: NO_HISTORY }]) {
      try {
        storage.setItem(keyOf(database), JSON.stringify(attempt));
        return true;
      } catch {
        // Full: the next attempt keeps less of what can be undone.
      }
    }
    return false;
  },
});
