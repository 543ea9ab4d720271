/** The people of the database in hand, and what is said of them to its record. */
import { randomUUID } from 'node:crypto';
import { type EventDraft, type EventLog, recordEvents } from '#events';
import { type Auth, COST, type Cost, type Note, openAuth } from './auth/index.ts';
import { type HouseRecord, RecordFault } from './log/index.ts';

export type PeopleParts = {
  /** What a passphrase costs to check; a test takes a small one. */
  readonly cost?: Cost;
  /** A code for an owner where there is one already: for a house whose owners forgot, or left. */
  readonly wantsOwnerCode?: boolean;
  /** Told each code by which an owner can be made. */
  readonly sayCode?: (code: string) => void;
};

export const openPeople = (
  { database, log, identity }: Pick<HouseRecord, 'database' | 'log' | 'identity'>,
  now: () => Date,
  { cost = COST, wantsOwnerCode = false, sayCode }: PeopleParts,
): Auth => {
  const note = noteIn(log, now);
  const auth = openAuth({ database, now, cost, note, wantsOwnerCode });
  const { isRecord, recordKey } = identity();
  auth.settleOn(isRecord ? recordKey : `copy of ${recordKey}`);
  const code = auth.ownerCode();
  if (code !== null) sayCode?.(code);
  return auth;
};

/** In the transaction of the change itself: there is no change that the record does not have. */
const noteIn =
  (log: EventLog, now: () => Date) =>
  ({ by, device, ...said }: Note): void => {
    const draft: EventDraft = said;
    const nowMs = now().getTime();
    const speaker = { by, nowMs, newId: randomUUID, ...(device === null ? {} : { device }) };
    const written = recordEvents(log, [draft], speaker);
    if (!written.ok) throw new RecordFault(written.error);
  };
