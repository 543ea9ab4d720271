/**
 * Tells every device what was committed, and that the server is there. It looks into the log and
 * is told nothing: what is not committed cannot be broadcast, and nothing committed is left out.
 */
import type { EventKind, Heartbeat, HouseEvent } from '#events';
import type { RecordInHand } from './record.ts';
import { type Reader, Streams } from './streams.ts';

export type HubParts = {
  readonly record: () => RecordInHand;
  readonly build: () => string | null;
  readonly nowMs: () => number;
  /** Calls again and again; the answer stops it. */
  readonly every: (call: () => void, milliseconds: number) => () => void;
};

export type Page = { readonly events: readonly HouseEvent[]; readonly heartbeat: Heartbeat };

export type Hub = {
  /** Null after: from how the record is now. The answer ends the stream from this side. */
  readonly listen: (
    reader: Reader,
    asked: { readonly device: string | null; readonly after: number | null },
  ) => () => void;
  /** Tells what was committed since it last looked. */
  readonly look: () => void;
  readonly page: (after: number, limit: number) => Page;
  readonly streams: () => number;
  readonly close: () => void;
};

const BEAT_MS = 5000;
/** A device that missed more than this fetches it page by page, and not over the stream. */
const REPLAY_MAX = 200;
const BEATS_BETWEEN_CHECKS = 12;

export const openHub = ({ record, build, nowMs, every }: HubParts): Hub => {
  const streams = new Streams(said('leave', { why: 'crowded' }));
  const heartbeat = (): Heartbeat => {
    const { log, houseKey, recordKey } = record();
    const { seq, hash } = log.head();
    return { seq, hash, serverMs: nowMs(), build: build(), houseKey, recordKey };
  };
  let told = { record: record(), seq: record().log.head().seq };

  const beat = (): void => streams.tell(said('heartbeat', heartbeat()));

  const look = (): void => {
    const now = record();
    if (isOther(now, told.record)) {
      // Another record was taken in hand: who listens is told at once, by its keys.
      told = { record: now, seq: now.log.head().seq };
      streams.checkRights();
      beat();
      return;
    }
    while (told.seq < now.log.head().seq) {
      const events = now.log.after(told.seq, REPLAY_MAX);
      if (events.some(({ kind }) => CHANGES_RIGHTS.has(kind))) streams.checkRights();
      for (const event of events) streams.tell(saidOf(event));
      told = { ...told, seq: events.at(-1)?.seq ?? now.log.head().seq };
    }
  };

  let beats = 0;
  const stopBeating = every(() => {
    beats += 1;
    look();
    // Sessions end by themselves too, which no event says.
    if (beats % BEATS_BETWEEN_CHECKS === 0) streams.checkRights();
    beat();
  }, BEAT_MS);

  return {
    listen: (reader, { device, after }) => {
      // What others have not been told yet is told first, so that nobody hears it twice.
      look();
      streams.makeRoomFor(device);
      const { seq } = told;
      if (after !== null && seq - after <= REPLAY_MAX) {
        for (const event of told.record.log.after(after, REPLAY_MAX)) reader.write(saidOf(event));
      }
      reader.write(said('heartbeat', heartbeat()));
      return streams.add(reader, device);
    },
    look,
    page: (after, limit) => ({ events: record().log.after(after, limit), heartbeat: heartbeat() }),
    streams: streams.count,
    close: () => {
      stopBeating();
      streams.endAll();
    },
  };
};

const CHANGES_RIGHTS: ReadonlySet<string> = new Set<EventKind>([
  'person removed',
  'person role changed',
  'device revoked',
]);

const isOther = (one: RecordInHand, other: RecordInHand): boolean =>
  one.log !== other.log || one.houseKey !== other.houseKey || one.recordKey !== other.recordKey;

/** JSON has no line breaks of its own, so one line carries it. */
const said = (kind: 'heartbeat' | 'leave', data: unknown): string =>
  `event: ${kind}\ndata: ${JSON.stringify(data)}\n\n`;

const saidOf = (event: HouseEvent): string =>
  `id: ${event.seq}\ndata: ${JSON.stringify(event)}\n\n`;
