/**
 * The call of the record in hand, on the server: folded from its events to the last of them, and
 * the desk that judges what is asked in it. All of it is read from the record and the documents
 * anew after a restart; nothing is kept here that is not there.
 */
import { type CallDesk, type CallDocuments, foldAll, NOTHING_OPEN, openDesk } from '#call';
import type { EventLog } from '#events';
import type { CallNow, HouseNow } from '#state';
import type { RecordInHand } from './record.ts';

export type CallRoom = {
  /** Folded to the head of the record in hand. */
  readonly now: () => HouseNow;
  /** Of the call that is open; null where none is, or where its documents cannot be read. */
  readonly desk: () => CallDesk | null;
};

type CallRoomParts = {
  readonly record: () => RecordInHand;
  /** The documents at the revisions that the call was opened on; null where one cannot be read. */
  readonly documentsOf: (call: CallNow) => CallDocuments | null;
};

const PAGE = 500;

export const openCallRoom = ({ record, documentsOf }: CallRoomParts): CallRoom => {
  let folded: { readonly record: RecordInHand; readonly now: HouseNow } | null = null;
  let made: { readonly call: string; readonly desk: CallDesk | null } | null = null;

  const now = (): HouseNow => {
    const inHand = record();
    const isOther = folded === null || isAnother(inHand, folded.record);
    if (isOther) made = null;
    const from = folded === null || isOther ? beginningOf(inHand.log) : folded.now;
    const upTo = foldedUp(inHand.log, from);
    folded = { record: inHand, now: upTo };
    return upTo;
  };

  const desk = (): CallDesk | null => {
    const { call } = now();
    if (call === null) return null;
    if (made?.call !== call.id) {
      const documents = documentsOf(call);
      made = { call: call.id, desk: documents === null ? null : openDesk(documents) };
    }
    return made.desk;
  };

  return { now, desk };
};

const isAnother = (one: RecordInHand, other: RecordInHand): boolean =>
  one.log !== other.log || one.recordKey !== other.recordKey || one.houseKey !== other.houseKey;

/** Right before the call that was opened last; at the end where that one was closed. */
const beginningOf = (log: EventLog): HouseNow => {
  const opened = log.lastOf('call opened');
  const isOpen = opened > log.lastOf('call closed');
  return { ...NOTHING_OPEN, seq: isOpen ? opened - 1 : log.head().seq };
};

const foldedUp = (log: EventLog, from: HouseNow): HouseNow => {
  const { seq: head } = log.head();
  let now = from;
  while (now.seq < head) {
    const page = log.after(now.seq, PAGE);
    // What is not there cannot be folded; the check of the chain says so.
    if (page.length === 0) break;
    now = foldAll(page, now);
  }
  return now;
};
