import type { EventLog } from '#events';

/** The record that the server has in hand: its log, and whose it is. */
export type RecordInHand = {
  readonly log: EventLog;
  /** Made on the first start of a house, the same in its backups. */
  readonly houseKey: string;
  /** Made anew when a restored or copied database is made the record. */
  readonly recordKey: string;
};
