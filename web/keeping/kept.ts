/** The documents as this page holds them, and how each stands with the server. */
import type { Refusal } from '#outcome';
import { changesBetween, withoutChanges } from './changes.ts';
import type { Moment } from './copies.ts';
import type { Draft } from './draft.ts';
import { isSame, type JsonObject } from './json.ts';
import type { Databases, DocumentKind, Stored } from './server.ts';
import { type History, withoutDocument } from './undo.ts';

export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'waiting' }
  | { readonly is: 'sending' }
  /** No answer: the edits stay on this device and are sent again. */
  | { readonly is: 'unreached' }
  /** No answer, of how things stand: it is sent again only by a person, and nothing is added. */
  | { readonly is: 'held' }
  /**
   * Somebody else has saved since. Nothing is merged; a person chooses. Both began from the
   * revision `began`.
   */
  | { readonly is: 'conflict'; readonly theirs: Stored; readonly began: number }
  | { readonly is: 'refused'; readonly title: string; readonly refusals: readonly Refusal[] };

export type Kept = {
  readonly id: string;
  readonly kind: DocumentKind;
  /** As it stands on this page. */
  readonly document: JsonObject;
  /** What the server has, as far as this page has heard. */
  readonly server: Stored;
  readonly save: SaveState;
  /** What the unsaved edits were, in words. */
  readonly why: string;
  /** What a person wrote to find the next revision by; empty where nobody did. */
  readonly remark: string;
  /** What was sent and not answered, so that our own save is known again, after a reload too. */
  readonly sent: readonly JsonObject[];
};

export type Open = {
  readonly phase: 'open';
  readonly databases: Databases;
  readonly documents: Readonly<Record<string, Kept>>;
  readonly history: History;
  /** False where this device takes no copy of unsaved edits. */
  readonly keptOnDevice: boolean;
  /** Null where the server gave them; else they are a copy of this device, read at that moment. */
  readonly asOf: Moment | null;
};

export type KeeperState =
  | { readonly phase: 'loading' }
  | {
      readonly phase: 'failed';
      readonly title: string;
      readonly unreached: boolean;
      /** The server is there, and gives documents only to who has signed in. */
      readonly needsSignIn: boolean;
    }
  | Open;

export const asSaved = (stored: Stored): Kept => ({
  id: stored.id,
  kind: stored.kind,
  document: stored.document,
  server: stored,
  save: { is: 'saved' },
  why: '',
  remark: '',
  sent: [],
});

/** Our own save went through, its answer was lost, and more was edited since. */
export const isOwnSave = (theirs: Stored, { began, savedBy, sent }: Began): boolean =>
  theirs.revision === began + 1 &&
  theirs.savedBy === savedBy &&
  sent.some((document) => isSame(theirs.document, document));

type Began = {
  readonly began: number;
  readonly savedBy: string;
  readonly sent: readonly JsonObject[];
};

/** A document as the server has it, with the edits that this device still holds. */
const withDraft = (stored: Stored, { unsaved }: Draft, savedBy: string): Kept => {
  const own = unsaved[stored.id];
  const saved = asSaved(stored);
  if (own === undefined) return saved;
  const { document, base, why, remark = '', ahead = [] } = own;
  if (isSame(document, stored.document)) {
    // The save went through and only its answer was lost; or a remark alone still waits.
    if (remark === '' || remark === stored.remark) return saved;
    return { ...saved, why, remark, save: leftOf(stored.kind) };
  }
  const sent = ahead.map((changes) => withoutChanges(document, changes) as JsonObject);
  const goesOn = base === stored.revision || isOwnSave(stored, { began: base, savedBy, sent });
  const save: SaveState = goesOn
    ? leftOf(stored.kind)
    : { is: 'conflict', theirs: stored, began: base };
  return { ...saved, document, why, remark, save, sent };
};

/** Steps that belong to a revision which is no longer the newest cannot be taken back. */
const historyThatHolds = (stored: readonly Stored[], draft: Draft): History =>
  stored
    .filter(
      ({ id, revision }) => draft.unsaved[id] === undefined && draft.revisions[id] !== revision,
    )
    .reduce((history, { id }) => withoutDocument(history, id), draft.history);

export const opened = (
  databases: Databases,
  stored: readonly Stored[],
  { draft, savedBy }: { readonly draft: Draft; readonly savedBy: string },
  asOf: Moment | null = null,
): Open => ({
  phase: 'open',
  asOf,
  databases,
  documents: Object.fromEntries(stored.map((each) => [each.id, withDraft(each, draft, savedBy)])),
  history: historyThatHolds(stored, draft),
  keptOnDevice: true,
});

/** Plans may wait on a device; how things stand may not, for it is another thing by then. */
export const mayEdit = ({ asOf }: Open, { kind, save }: Kept): boolean =>
  kind !== 'state' || (asOf === null && save.is !== 'held');

/** What has no answer of the server. */
export const unansweredOf = (kind: DocumentKind): SaveState =>
  kind === 'state' ? { is: 'held' } : { is: 'unreached' };

/** What this device held when its page was left. */
const leftOf = (kind: DocumentKind): SaveState =>
  kind === 'state' ? { is: 'held' } : { is: 'waiting' };

/**
 * With what somebody else has saved since, for documents that have no edits of our own. Of one that
 * waits for a choice, the newest version of theirs is shown. What was set aside goes.
 */
export const withNewer = (open: Open, stored: readonly Stored[]): Open => {
  const newer = stored.filter(({ id, revision }) => {
    const kept = open.documents[id];
    return kept === undefined || (!isUnsaved(kept) && kept.server.revision !== revision);
  });
  const present = new Set(stored.map(({ id }) => id));
  const held = Object.values(open.documents)
    .filter((kept) => isUnsaved(kept) || present.has(kept.id))
    .map((kept) => contestedAnew(kept, stored));
  return {
    ...open,
    documents: Object.fromEntries(
      [...held, ...newer.map(asSaved)].map((kept) => [kept.id, kept] as const),
    ),
    history: newer.reduce((history, { id }) => withoutDocument(history, id), open.history),
  };
};

const contestedAnew = (kept: Kept, stored: readonly Stored[]): Kept => {
  const { save } = kept;
  const theirs = stored.find(({ id }) => id === kept.id);
  if (save.is !== 'conflict' || theirs === undefined) return kept;
  if (theirs.revision === save.theirs.revision) return kept;
  return { ...kept, save: { ...save, theirs } };
};

const isUnsaved = ({ save }: Kept): boolean => save.is !== 'saved';

/** After a reload a conflict is still one: it began where it began. */
const unsavedOf = (kept: Kept): Draft['unsaved'][string] => {
  const { document, server, why, remark, save, sent } = kept;
  return {
    base: save.is === 'conflict' ? save.began : server.revision,
    document,
    why,
    remark,
    ahead: sent.map((each) => changesBetween(each, document)),
  };
};

export const draftOf = ({ documents, history }: Open): Draft => {
  const all = Object.values(documents);
  return {
    unsaved: Object.fromEntries(all.filter(isUnsaved).map((kept) => [kept.id, unsavedOf(kept)])),
    history,
    revisions: Object.fromEntries(all.map(({ id, server }) => [id, server.revision])),
  };
};

const WHY_MAX = 200;

/** What several edits were, in one line. */
export const joined = (...parts: readonly string[]): string =>
  parts
    .filter((part) => part !== '')
    .join('; ')
    .slice(0, WHY_MAX);
