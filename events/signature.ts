/** Whether a sign-off stands. It is void by rule, not by somebody's word. */
import type { EventOf, HouseEvent } from './event.ts';
import type { EventLog } from './event-log.ts';
import { CHANGES_NOTHING } from './kinds.ts';

export type Standing =
  | { readonly stands: true }
  | {
      readonly stands: false;
      readonly because: 'withdrawn' | 'changed';
      readonly event: HouseEvent;
    };

/** What `standingOf` looks up: of a log, or of the events that a device has. */
export type Looked = Pick<EventLog, 'on' | 'withdrawalOf'>;

/**
 * A sign-off is void when it is withdrawn, and when after the events it was based on another one
 * changed its target or what its figures rest on. Notes and other sign-offs change nothing.
 */
export const standingOf = (log: Looked, signed: EventOf<'signed'>): Standing => {
  const withdrawal = log.withdrawalOf(signed.seq);
  if (withdrawal !== null) return { stands: false, because: 'withdrawn', event: withdrawal };
  const { basis, restsOn } = signed.payload;
  for (const target of [signed.target, ...restsOn]) {
    const change = firstChange(log, target, basis);
    if (change !== null) return { stands: false, because: 'changed', event: change };
  }
  return { stands: true };
};

const PAGE = 100;

const firstChange = (log: Looked, target: string, basis: number): HouseEvent | null => {
  let after = basis;
  for (;;) {
    const page = log.on(target, after, PAGE);
    const change = page.find((event) => !CHANGES_NOTHING.includes(event.kind));
    if (change !== undefined) return change;
    const last = page.at(-1);
    if (last === undefined || page.length < PAGE) return null;
    after = last.seq;
  }
};
