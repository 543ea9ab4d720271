import type { ChainFault } from '#events';
import type { HouseRecord } from './house-record.ts';

/** Verifies a whole record between requests, until it is done or the database is closed. */
export const checkInBackground = (
  record: Pick<HouseRecord, 'database' | 'verify'>,
  told: (fault: ChainFault) => void,
): void => {
  const steps = record.verify();
  const next = (): void => {
    if (!record.database.isOpen) return;
    const step = steps.next();
    if (step.done !== true) setImmediate(next);
    else if (step.value !== null) told(step.value);
  };
  setImmediate(next);
};
