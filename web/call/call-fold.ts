/**
 * What this device knows of the call: a fold of the record, begun where the call was opened or
 * where this device had come to, and as old as the last word that it heard.
 */
import { foldEvent, NOTHING_OPEN } from '#call';
import type { Heartbeat, HouseEvent, Pinned } from '#events';
import type { HouseNow } from '#state';
import type { Moment } from '../keeping/copies.ts';

export type CallFold = {
  readonly houseKey: string;
  readonly recordKey: string;
  readonly now: HouseNow;
  /** Hash of the event that was folded in last: another history is noticed where it parts. */
  readonly hash: string;
  /** Number of the last event on each target, as far as this fold has seen any. */
  readonly lastOn: Readonly<Record<string, number>>;
  /** When it was known to be so, by both clocks. */
  readonly read: Moment;
};

type Keys = Pick<Pinned, 'houseKey' | 'recordKey'>;

export const isOfRecord = ({ houseKey, recordKey }: Keys, record: Keys | null): boolean =>
  record?.houseKey === houseKey && record.recordKey === recordKey;

/** Where no call is open, or where what comes next opens one. */
export const foldFrom = (
  { houseKey, recordKey }: Heartbeat,
  at: { readonly seq: number; readonly hash: string },
  read: Moment,
): CallFold => ({
  houseKey,
  recordKey,
  now: { ...NOTHING_OPEN, seq: at.seq },
  hash: at.hash,
  lastOn: {},
  read,
});

/** With what happened next; null where something between is missing, or it is another history. */
export const foldOn = (
  fold: CallFold,
  events: readonly HouseEvent[],
  read: Moment,
): CallFold | null => {
  let { now, hash } = fold;
  const lastOn: { [target: string]: number } = { ...fold.lastOn };
  for (const event of events) {
    if (event.seq <= now.seq) continue;
    if (event.seq !== now.seq + 1 || event.previous !== hash) return null;
    now = foldEvent(now, event);
    hash = event.hash;
    lastOn[event.target] = event.seq;
  }
  return { ...fold, now, hash, lastOn, read };
};
