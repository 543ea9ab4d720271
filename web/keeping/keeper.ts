/**
 * Keeps the documents of the page: takes edits, sends them when the hand rests, holds them while
 * the server is not reached, and never merges two people's work. How things stand is never sent
 * later by itself: without an answer it asks for a person.
 */
import { changesBetween } from './changes.ts';
import { HeardCopy } from './copies.ts';
import { isSame, type JsonObject } from './json.ts';
import { type KeeperParts, RETRY_MS, WAIT_MS } from './keeper-parts.ts';
import {
  asSaved,
  draftOf,
  isOwnSave,
  joined,
  type KeeperState,
  type Kept,
  mayEdit,
  type Open,
  opened,
  type SaveState,
  unansweredOf,
  withNewer,
} from './kept.ts';
import type { DatabaseName, DocumentKind, NewHouse, SaveAnswer, Stored } from './server.ts';
import { ServerFault } from './server.ts';
import {
  afterEdit,
  doneAgain,
  type History,
  redoable,
  takenBack,
  undoable,
  wholeStep,
  withoutDocument,
} from './undo.ts';

const DRAFT = 'draft of all';
const AGAIN = 'again';
const UNHEARD_MAX = 8;
const REMARK_MAX = 200;
const NAMED_ONLY = 'remark on what was there';

export class Keeper {
  readonly #parts: KeeperParts;
  #state: KeeperState = { phase: 'loading' };
  readonly #listeners = new Set<() => void>();
  readonly #timers = new Map<string, () => void>();
  readonly #failures = new Map<string, number>();
  readonly #copy: HeardCopy;
  #isOpening = false;

  constructor(parts: KeeperParts) {
    this.#parts = parts;
    this.#copy = new HeardCopy(parts);
  }

  state = (): KeeperState => this.#state;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  open = async (): Promise<void> => {
    const stop = this.#parts.later(() => void this.#showCopy(), WAIT_MS.slow);
    try {
      await this.#load();
    } catch (fault) {
      if (!(fault instanceof ServerFault)) throw fault;
      if (fault.status === null && (await this.#showCopy())) this.#openLater();
      else this.#failed(fault);
    } finally {
      stop();
    }
  };

  /** `next` must have been read by `#documents` without a refusal. */
  edit = (id: string, next: JsonObject, what: string): void => {
    const kept = this.#held(id);
    if (kept === undefined || this.#state.phase !== 'open') return;
    if (!mayEdit(this.#state, kept)) return;
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
    if (kept === undefined || remark.trim() === '' || this.#state.phase !== 'open') return;
    if (!mayEdit(this.#state, kept)) return;
    const stays = kept.save.is === 'conflict' || kept.save.is === 'sending';
    const save: SaveState = stays ? kept.save : { is: 'waiting' };
    this.#put(id, { remark: remark.trim().slice(0, REMARK_MAX), save });
    if (!stays) this.#sendLater(id, WAIT_MS.rest);
  };

  /** Sends what is held, at the word of a person who has looked whether it is still so. */
  sendHeld = (id: string): void => {
    if (this.#held(id)?.save.is !== 'held') return;
    this.#put(id, { save: { is: 'waiting' } });
    void this.#send(id);
  };

  /** Drops what is held; what the server has is asked for, as it may have come there. */
  dropHeld = async (id: string): Promise<void> => {
    const kept = this.#held(id);
    if (this.#state.phase !== 'open' || kept?.save.is !== 'held') return;
    this.#put(id, asSaved(kept.server), withoutDocument(this.#state.history, id));
    await this.refresh();
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
      this.#copy.saved(kept.server);
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
    if (this.#state.phase === 'open' && this.#state.asOf !== null) return this.#openAgain();
    const { server } = this.#parts;
    this.#copy.asked();
    const databases = await server.databases().catch(() => null);
    const stored = databases && (await server.documents().catch(() => null));
    if (stored === null || databases === null || this.#state.phase !== 'open') return;
    if (databases.inHand === this.#state.databases.inHand) {
      this.#change(withNewer(this.#state, stored));
      this.#copy.whole(databases, stored);
    } else {
      await this.#load();
    }
  };

  /** The server was heard just now, and has nothing newer than what is here. */
  confirm = (): void => {
    if (this.#state.phase === 'open' && this.#state.asOf === null) this.#copy.confirm();
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
    this.#copy.whole(databases, stored);
    // What was edited in the last moment belongs to the database that is left, or is read again.
    this.#keepOnDevice();
    const draft = drafts.read(databases.inHand);
    this.#change(opened(databases, stored, { draft, savedBy: savedBy() }));
    for (const { id, save } of stored.flatMap(({ id: each }) => this.#held(each) ?? [])) {
      if (save.is === 'waiting') this.#sendLater(id, WAIT_MS.rest);
    }
  };

  /** What this device has kept, until the server answers; false where it has kept nothing. */
  #showCopy = async (): Promise<boolean> => {
    const { copies, drafts, savedBy } = this.#parts;
    const copy = this.#state.phase === 'open' ? null : await copies.last();
    const state = this.state();
    if (state.phase === 'open') return state.asOf !== null;
    if (copy === null) return false;
    const { databases, documents, read } = copy;
    const draft = drafts.read(databases.inHand);
    this.#change(opened(databases, documents, { draft, savedBy: savedBy() }, read));
    return true;
  };

  #openLater = (): void => this.#later(AGAIN, () => void this.#openAgain(), WAIT_MS.again);

  /** Asks the server anew for what is a copy until then. Edits go on from what they began with. */
  #openAgain = async (): Promise<void> => {
    const state = this.#state;
    if (state.phase !== 'open' || state.asOf === null || this.#isOpening) return;
    this.#isOpening = true;
    try {
      await this.#load();
    } catch (fault) {
      if (!(fault instanceof ServerFault)) throw fault;
      if (fault.status === 401) this.#failed(fault);
      else this.#openLater();
    } finally {
      this.#isOpening = false;
    }
  };

  #failed = ({ status, message }: ServerFault): void => {
    this.#keepOnDevice();
    const [unreached, needsSignIn] = [status === null, status === 401];
    this.#show({ phase: 'failed', title: message, unreached, needsSignIn });
  };

  #show = (next: KeeperState): void => {
    this.#state = next;
    for (const listener of this.#listeners) listener();
  };

  #change = (next: Open): void => {
    this.#show(next);
    this.#later(DRAFT, this.#keepOnDevice, WAIT_MS.draft);
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

  #sendLater = (id: string, milliseconds: number): void =>
    this.#later(id, () => void this.#send(id), milliseconds);

  /** Of calls of one name only the last comes. */
  #later = (name: string, call: () => void, milliseconds: number): void => {
    this.#timers.get(name)?.();
    this.#timers.set(name, this.#parts.later(call, milliseconds));
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
      this.#copy.saved(server);
      if (!isAll) this.#sendLater(id, WAIT_MS.rest);
      return;
    }
    this.#put(id, {
      why: joined(why, kept.why),
      remark: kept.remark === '' ? remark : kept.remark,
    });
    // All was read anew meanwhile: what stands here is judged by the newest, and waits or asks.
    if (kept.save.is !== 'sending') return;
    if (answer.outcome === 'stale') await this.#lookAgain(id);
    else if (answer.outcome === 'unreached') this.#unreached(id);
    else {
      const { title, refusals } = answer;
      this.#put(id, { save: { is: 'refused', title, refusals } });
    }
  };

  #unreached = (id: string): void => {
    const kept = this.#held(id);
    if (kept === undefined) return;
    const save = unansweredOf(kept.kind);
    this.#put(id, { save });
    if (save.is === 'held') return;
    const count = this.#failures.get(id) ?? 0;
    this.#failures.set(id, count + 1);
    this.#sendLater(id, RETRY_MS[Math.min(count, RETRY_MS.length - 1)] ?? WAIT_MS.rest);
  };

  #lookAgain = async (id: string): Promise<void> => {
    const theirs = await this.#parts.server.document(id).catch(() => null);
    const kept = this.#held(id);
    if (kept?.save.is !== 'sending') return;
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
    this.#sendLater(id, WAIT_MS.rest);
  };

  #step = (documents: readonly string[], which: 'undo' | 'redo'): void => {
    if (this.#state.phase !== 'open') return;
    const { history } = this.#state;
    const find = which === 'undo' ? undoable : redoable;
    const done = find(history, documents);
    const kept = done && this.#held(done.document);
    if (done === undefined || kept === undefined || !mayEdit(this.#state, kept)) return;
    const step = (which === 'undo' ? takenBack : doneAgain)(history, done, kept.document);
    this.#edited(kept, step.document as JsonObject, `${which}: ${done.what}`, step.history);
  };

  #edited = (kept: Kept, document: JsonObject, what: string, history: History): void => {
    const { id, save } = kept;
    // A conflict waits for a person; a send on its way looks again when it is answered.
    const stays = save.is === 'conflict' || save.is === 'sending';
    const why = joined(kept.why, what);
    this.#put(id, { document, why, ...(stays ? {} : { save: { is: 'waiting' } }) }, history);
    if (!stays) this.#sendLater(id, WAIT_MS.rest);
  };
}
