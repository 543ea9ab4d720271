/** One event of a house: what happened, to what, by whom, when, and its place in the chain. */
import * as field from './fields.ts';
import type { EventKind, Payload } from './kinds.ts';

/** What is said of an event before it has its place. */
export type EventDraft<K extends EventKind = EventKind> = {
  [Kind in K]: {
    readonly kind: Kind;
    /** `set:11`, `document:<id>`, `person:<id>`, `device:<id>`, `house` or `clock`. */
    readonly target: string;
    readonly payload: Payload<Kind>;
  };
}[K];

type Place = {
  /** From 1, without a gap. The order of the record is this number and nothing else. */
  readonly seq: number;
  /** Unique over all records; a restored record may give a number twice, an id never. */
  readonly id: string;
  /** Time of the server, never earlier than that of the event before. */
  readonly atMs: number;
  /** A person, or null where the server itself says it. */
  readonly by: string | null;
  readonly device: string | null;
  /** The command that asked for it, where one did. */
  readonly commandId: string | null;
  /** Hash of the event before; of the first, 64 zeros. */
  readonly previous: string;
  /** SHA-256 over the canonical text of all else. */
  readonly hash: string;
};

export type HouseEvent = EventDraft & Place;
export type EventOf<K extends EventKind> = EventDraft<K> & Place;
export type UnsealedEvent = EventDraft & Omit<Place, 'hash'>;

/** The fields around the payload, which each kind has of its own. */
export const PLACE = {
  seq: field.whole(1),
  id: field.id(),
  atMs: field.ms(),
  target: field.target(),
  by: field.id().nullable(),
  device: field.id().nullable(),
  commandId: field.commandId().nullable(),
  previous: field.hash(),
  hash: field.hash(),
};

/** Where a record stands: its last event. `seq` is 0 where nothing has happened. */
export type Head = { readonly seq: number; readonly hash: string; readonly atMs: number };

export const NOTHING_YET: Head = { seq: 0, hash: '0'.repeat(64), atMs: 0 };

/** What came before the first event in hand, for who reads a page of the record. */
export const headOf = (event: HouseEvent): Head => ({
  seq: event.seq,
  hash: event.hash,
  atMs: event.atMs,
});
