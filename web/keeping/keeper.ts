/**
 * Keeps the documents of the page: takes edits, sends them when the hand rests, holds them while
 * the server is not reached, and never merges two people's work.
 */
import { changesBetween } from './changes.ts';
import type { DraftBox } from './draft.ts';
import { isSame, type JsonObject } from './json.ts';
import {
  asSaved,
  draftOf,
  isOwnSave,
  type KeeperState,
  type Kept,
  type Open,
  opened,
  type SaveState,
  withNewer,
} from './kept.ts';
import type { DatabaseName, DocumentKind, NewHouse, SaveAnswer, Server, Stored } from './server.ts';
import { ServerFault } from './server.ts';
import {
  afterEdit,
  doneAgain,
  type History,
  redoable,
  takenBack,
  undoable,
  wholeStep,
} from './undo.ts';

export type KeeperParts = {
  readonly server: Server;
  readonly drafts: DraftBox;
  readonly savedBy: () => string;
  /** Calls back later; the answer stops it. */
  readonly later: (call: () => void, milliseconds: number) => () => void;
};

/** Long enough that typing a number is one save, short enough that nobody waits for it. */
const REST_MS = 400;
const RETRY_MS = [1500, 3000, 6000, 12_000] as const;
/** Long enough that the edit is on the screen before it is written down beside it. */
const DRAFT_MS = 60;
const DRAFT = 'draft of all';
const UNHEARD_MAX = 8;
const WHY_MAX = 200;
const REMARK_MAX = 200;
const NAMED_ONLY = 'remark on what was there';

export class Keeper {
  readonly #parts: KeeperParts;
  #state: KeeperState = { phase: 'loading' };
  readonly #listeners = new Set<() => void>();
  readonly #timers = new Map<string, () => void>();
  readonly #failures = new Map<string, number>();

  constructor(parts: KeeperParts) {
    this.#parts = parts;
  }

  state = (): KeeperState => this.#state;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  open = async (): Promise<void> => {
    try {
      await this.#load();
    } catch (fault) {
      if (!(fault instanceof ServerFault)) throw fault;
      this.#show({ phase: 'failed', title: fault.message, unreached: fault.status === null });
    }
  };

  /** `next` must have been read by `#documents` without a refusal. */
  edit = (id: string, next: JsonObject, what: string): void => {
    const kept = this.#held(id);
    if (kept === undefined || this.#state.phase !== 'open') return;
    const changes = changesBetween(kept.document, next);
    if (changes.length === 0) return;
    const history = afterEdit(this.#state.history, { document: id, changes, what });
    this.#edited(kept, next, what, history);
  };

  undo = (documents: readonly string[]): void => this.#step(documents, 'undo');

  redo = (documents: readonly string[]): void => this.#step(documents, 'redo');

  /** Writes on the next revision what a person will find it by; on the present state, alone. */
  remark = (id: string, remark: string): void => {
    const kept = this.#held(id);
    if (kept === undefined || remark.trim() === '') return;
    const stays = kept.save.is === 'conflict' || kept.save.is === 'sending';
    const save: SaveState = stays ? kept.save : { is: 'waiting' };
    this.#put(id, { remark: remark.trim().slice(0, REMARK_MAX), save });
    if (!stays) this.#sendLater(id, REST_MS);
  };

  /** Of two versions, ours becomes the next revision; theirs stays in the history of the server. */
  keepMine = (id: string): void => {
    const kept = this.#held(id);
    if (kept?.save.is !== 'conflict') return;
    this.#put(id, { server: kept.save.theirs, save: { is: 'waiting' } });
    void this.#send(id);
  };

  /** Of two versions, theirs; undo brings ours back. */
  takeTheirs = (id: string): void => {
    const kept = this.#held(id);
    if (kept?.save.is === 'conflict') this.#takeWhole(kept, kept.save.theirs);
  };

  /**
   * Saves what a person put together from both. It is put together from the revision named; where
   * another has come since, nothing happens and the answer is false.
   */
  settle = (id: string, document: JsonObject, theirs: number): boolean => {
    const kept = this.#held(id);
    if (this.#state.phase !== 'open' || kept?.save.is !== 'conflict') return false;
    const { theirs: stored } = kept.save;
    if (stored.revision !== theirs) return false;
    if (isSame(document, stored.document)) {
      this.#takeWhole(kept, stored);
      return true;
    }
    const what = `put together with revision ${theirs} by ${stored.savedBy}`;
    const done = wholeStep(id, kept.document, document, what);
    const why = joined(kept.why, what);
    const history = afterEdit(this.#state.history, done);
    this.#put(id, { document, why, server: stored, save: { is: 'waiting' } }, history);
    void this.#send(id);
    return true;
  };

  /** A document that was not there: a house, a show, or a copy of one. */
  add = async (id: string, kind: DocumentKind, document: JsonObject, why: string) => {
    const { server, savedBy } = this.#parts;
    const sent = { id, kind, document, expectedRevision: 0, savedBy: savedBy(), why, remark: '' };
    const answer = await server.save(sent);
    if (answer.outcome === 'saved' && this.#state.phase === 'open') {
      const kept = asSaved({ ...answer.summary, document });
      this.#change({ ...this.#state, documents: { ...this.#state.documents, [id]: kept } });
    }
    return answer;
  };

  takeDatabase = async (database: DatabaseName, house?: NewHouse): Promise<void> => {
    this.flush(false);
    await this.#parts.server.take(database, house);
    await this.#load();
  };

  /** Looks whether somebody else has saved, for documents without edits of our own. */
  refresh = async (): Promise<void> => {
    const { server } = this.#parts;
    const databases = await server.databases().catch(() => null);
    const stored = databases && (await server.documents().catch(() => null));
    if (stored === null || databases === null || this.#state.phase !== 'open') return;
    if (databases.inHand === this.#state.databases.inHand) {
      this.#change(withNewer(this.#state, stored));
    } else {
      await this.#load();
    }
  };

  /** Sends what waits, at once; `leaving` when the page goes away. */
  flush = (leaving: boolean): void => {
    if (this.#state.phase !== 'open') return;
    for (const id of Object.keys(this.#state.documents)) void this.#send(id, leaving);
    this.#keepOnDevice();
  };

  #load = async (): Promise<void> => {
    const { server, drafts, savedBy } = this.#parts;
    const databases = await server.databases();
    const stored = await server.documents();
    // What was edited in the last moment belongs to the database that is left, or is read again.
    this.#keepOnDevice();
    const draft = drafts.read(databases.inHand);
    this.#change(opened(databases, stored, { draft, savedBy: savedBy() }));
    for (const { id, save } of stored.flatMap(({ id: each }) => this.#held(each) ?? [])) {
      if (save.is === 'waiting') this.#sendLater(id, REST_MS);
    }
  };

  #show = (next: KeeperState): void => {
    this.#state = next;
    for (const listener of this.#listeners) listener();
  };

  #change = (next: Open): void => {
    this.#show(next);
    this.#timers.get(DRAFT)?.();
    this.#timers.set(DRAFT, this.#parts.later(this.#keepOnDevice, DRAFT_MS));
  };

  /** After what was edited is on the screen: to write a whole document down takes its time. */
  #keepOnDevice = (): void => {
    const state = this.#state;
    this.#timers.get(DRAFT)?.();
    if (state.phase !== 'open') return;
    const keptOnDevice = this.#parts.drafts.write(state.databases.inHand, draftOf(state));
    if (keptOnDevice !== state.keptOnDevice) this.#show({ ...state, keptOnDevice });
  };

  #held = (id: string): Kept | undefined =>
    this.#state.phase === 'open' ? this.#state.documents[id] : undefined;

  #put = (id: string, fresh: Partial<Kept>, history?: History): void => {
    const state = this.#state;
    const kept = this.#held(id);
    if (state.phase !== 'open' || kept === undefined) return;
    const documents = { ...state.documents, [id]: { ...kept, ...fresh } };
    this.#change({ ...state, documents, history: history ?? state.history });
  };

  #takeWhole = (kept: Kept, theirs: Stored): void => {
    if (this.#state.phase !== 'open') return;
    const what = 'the version saved by somebody else was taken';
    const done = wholeStep(kept.id, kept.document, theirs.document, what);
    this.#put(kept.id, asSaved(theirs), afterEdit(this.#state.history, done));
  };

  #sendLater = (id: string, milliseconds: number): void => {
    this.#timers.get(id)?.();
    this.#timers.set(
      id,
      this.#parts.later(() => void this.#send(id), milliseconds),
    );
  };

  #send = async (id: string, leaving = false): Promise<void> => {
    this.#timers.get(id)?.();
    const kept = this.#held(id);
    if (kept === undefined || !['waiting', 'unreached'].includes(kept.save.is)) return;
    const { document, kind, why, remark } = kept;
    // What is edited while this is on its way belongs to the next save.
    const unheard = [...kept.sent, document].slice(-UNHEARD_MAX);
    this.#put(id, { save: { is: 'sending' }, why: '', remark: '', sent: unheard });
    const { server, savedBy } = this.#parts;
    const told = { why: why === '' && remark !== '' ? NAMED_ONLY : why, remark };
    const sent = { id, kind, document, expectedRevision: kept.server.revision };
    const answer = await server.save({ ...sent, ...told, savedBy: savedBy() }, { leaving });
    await this.#heard(id, document, answer, { why, remark });
  };

  #heard = async (
    id: string,
    sent: JsonObject,
    answer: SaveAnswer,
    { why, remark }: Pick<Kept, 'why' | 'remark'>,
  ): Promise<void> => {
    const kept = this.#held(id);
    if (kept === undefined) return;
    if (answer.outcome === 'saved') {
      this.#failures.delete(id);
      const isAll = kept.document === sent && kept.remark === '';
      const server = { ...answer.summary, document: sent };
      this.#put(id, { server, save: { is: isAll ? 'saved' : 'waiting' }, sent: [] });
      if (!isAll) this.#sendLater(id, REST_MS);
      return;
    }
    this.#put(id, {
      why: joined(why, kept.why),
      remark: kept.remark === '' ? remark : kept.remark,
    });
    if (answer.outcome === 'stale') await this.#lookAgain(id);
    else if (answer.outcome === 'unreached') this.#unreached(id);
    else {
      const { title, refusals } = answer;
      this.#put(id, { save: { is: 'refused', title, refusals } });
    }
  };

  #unreached = (id: string): void => {
    const count = this.#failures.get(id) ?? 0;
    this.#failures.set(id, count + 1);
    this.#put(id, { save: { is: 'unreached' } });
    this.#sendLater(id, RETRY_MS[Math.min(count, RETRY_MS.length - 1)] ?? REST_MS);
  };

  #lookAgain = async (id: string): Promise<void> => {
    const theirs = await this.#parts.server.document(id).catch(() => null);
    const kept = this.#held(id);
    if (kept === undefined) return;
    if (theirs === null) this.#unreached(id);
    else if (isSame(theirs.document, kept.document)) this.#sameAsTheirs(id, kept, theirs);
    else if (this.#isOurs(kept, theirs)) this.#goOnFrom(id, kept, theirs);
    else this.#put(id, { save: { is: 'conflict', theirs, began: kept.server.revision } });
  };

  #isOurs = ({ server, sent }: Kept, theirs: Stored): boolean =>
    isOwnSave(theirs, { began: server.revision, savedBy: this.#parts.savedBy(), sent });

  #sameAsTheirs = (id: string, kept: Kept, theirs: Stored): void => {
    if (kept.remark === '' || kept.remark === theirs.remark) this.#put(id, asSaved(theirs));
    // Somebody saved the same; what this page wrote on it goes on the next revision.
    else this.#goOnFrom(id, kept, theirs);
  };

  #goOnFrom = (id: string, { remark }: Kept, theirs: Stored): void => {
    const isWritten = remark === theirs.remark;
    this.#put(id, { server: theirs, save: { is: 'waiting' }, remark: isWritten ? '' : remark });
    this.#sendLater(id, REST_MS);
  };

  #step = (documents: readonly string[], which: 'undo' | 'redo'): void => {
    if (this.#state.phase !== 'open') return;
    const { history } = this.#state;
    const find = which === 'undo' ? undoable : redoable;
    const done = find(history, documents);
    const kept = done && this.#held(done.document);
    if (done === undefined || kept === undefined) return;
    const step = (which === 'undo' ? takenBack : doneAgain)(history, done, kept.document);
    this.#edited(kept, step.document as JsonObject, `${which}: ${done.what}`, step.history);
  };

  #edited = (kept: Kept, document: JsonObject, what: string, history: History): void => {
    const { id, save } = kept;
    // A conflict waits for a person; a send on its way looks again when it is answered.
    const stays = save.is === 'conflict' || save.is === 'sending';
    const why = joined(kept.why, what);
    this.#put(id, { document, why, ...(stays ? {} : { save: { is: 'waiting' } }) }, history);
    if (!stays) this.#sendLater(id, REST_MS);
  };
}

const joined = (...parts: readonly string[]): string =>
  parts
    .filter((part) => part !== '')
    .join('; ')
    .slice(0, WHY_MAX);
