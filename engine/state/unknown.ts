import type { SetState } from './state.ts';

/** What is known of a set that nobody has recorded: nothing. */
export const unknownSetState: SetState = {
  height: null,
  lock: null,
  ring: null,
  collar: null,
  stack: null,
  items: null,
  restraints: null,
  service: null,
  tag: null,
  knowledge: { basis: 'unknown', at: null, by: null, second: null },
  pullTest: null,
};

/**
 * Whether a record is too old to act on (C84). Both moments are given in milliseconds since 1970,
 * so that the same question has the same answer tomorrow. A record without a time is stale, and so
 * is one whose time could not be read.
 *
 * Source  the-job.md C84; the period is the house's own rule.
 */
export const isStale = ({
  recordedAtMs,
  nowMs,
  staleAfterSeconds,
}: {
  readonly recordedAtMs: number | null;
  readonly nowMs: number;
  readonly staleAfterSeconds: number;
}): boolean =>
  recordedAtMs === null ||
  Number.isNaN(recordedAtMs) ||
  nowMs - recordedAtMs > staleAfterSeconds * 1000;
