import type { Result } from '#outcome';

/** Who is at the device, where people have been made known to the server. */
export type Hand = { readonly person?: string | null; readonly device?: string | null };

/** The three documents that the program keeps. */
export type DocumentKind = 'house' | 'show' | 'state';

export type DocumentSummary = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly why: string;
  /** What a person wrote to find this revision by; empty where nobody did. */
  readonly remark: string;
};

/** A document that a person has set aside: out of the lists, with its history whole. */
export type DocumentAside = DocumentSummary & {
  readonly asideAt: string;
  readonly asideBy: string;
  readonly asideWhy: string;
};

export type StoredDocument = DocumentSummary & { readonly text: string };

export type Save = Hand & {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly text: string;
  /** Revision that the writer saw; 0 for a document that does not exist yet. */
  readonly expectedRevision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly why: string;
  readonly remark: string;
};

/** Setting a document aside, or taking it back. It is noted beside the document, for good. */
export type Shelving = Hand & {
  readonly id: string;
  readonly isAside: boolean;
  readonly at: string;
  readonly by: string;
  readonly why: string;
};

/** The writer saw an older revision. Nothing was written; the current one is given back. */
export type StaleSave = { readonly reason: 'stale'; readonly current: DocumentSummary | null };

/**
 * Keeps documents with every revision they ever had. A revision, once saved, is never changed or
 * taken away: going back saves the old text as a new revision.
 */
export type DocumentStore = {
  /** Documents in use; those set aside are in a list of their own. */
  readonly list: () => readonly DocumentSummary[];
  readonly listAside: () => readonly DocumentAside[];
  readonly current: (id: string) => StoredDocument | null;
  readonly revision: (id: string, revision: number) => StoredDocument | null;
  readonly revisions: (id: string) => readonly DocumentSummary[];
  readonly save: (save: Save) => Result<DocumentSummary, StaleSave>;
  /** False where there is no such document, or it is so already; then nothing is noted. */
  readonly shelve: (shelving: Shelving) => boolean;
  readonly close: () => void;
};
