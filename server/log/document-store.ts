import type { Result } from '#outcome';

/** The three documents that the program keeps. */
export type DocumentKind = 'house' | 'show' | 'state';

export type DocumentSummary = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly why: string;
};

export type StoredDocument = DocumentSummary & { readonly text: string };

export type Save = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly text: string;
  /** Revision that the writer saw; 0 for a document that does not exist yet. */
  readonly expectedRevision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly why: string;
};

/** The writer saw an older revision. Nothing was written; the current one is given back. */
export type StaleSave = { readonly reason: 'stale'; readonly current: DocumentSummary | null };

/**
 * Keeps documents with every revision they ever had. A revision, once saved, is never changed or
 * taken away: going back saves the old text as a new revision.
 */
export type DocumentStore = {
  readonly list: () => readonly DocumentSummary[];
  readonly current: (id: string) => StoredDocument | null;
  readonly revision: (id: string, revision: number) => StoredDocument | null;
  readonly revisions: (id: string) => readonly DocumentSummary[];
  readonly save: (save: Save) => Result<DocumentSummary, StaleSave>;
  readonly close: () => void;
};
