/** Events chained by hash, so that one changed, taken out or put in is found. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { fail, ok, type Result } from '#outcome';
import { canonicalJson } from './canonical.ts';
import { type Head, type HouseEvent, headOf, NOTHING_YET, type UnsealedEvent } from './event.ts';

/** SHA-256 (FIPS 180-4) of a text in UTF-8, as 64 signs of 0-9 a-f. */
export const sha256OfText = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** Hash of a value by its canonical text; of what was shown, of a command. */
export const sha256OfValue = (value: unknown): string => sha256OfText(canonicalJson(value));

export const sealed = (event: UnsealedEvent): HouseEvent => ({
  ...event,
  hash: sha256OfValue(event),
});

/** Where a record is not as it was written, and in what. */
export type ChainFault = {
  readonly seq: number;
  readonly what: 'number' | 'previous' | 'hash' | 'time';
};

/**
 * Whether events follow on a head, each on the one before. What it cannot tell: that the last
 * events were cut off, or that the whole was written anew; for that a head printed on paper or
 * seen by a device is compared.
 */
export const verifyChain = (
  events: Iterable<HouseEvent>,
  from: Head = NOTHING_YET,
): Result<Head, ChainFault> => {
  let head = from;
  for (const event of events) {
    const what = faultOf(event, head);
    if (what !== null) return fail({ seq: event.seq, what });
    head = headOf(event);
  }
  return ok(head);
};

const faultOf = (event: HouseEvent, head: Head): ChainFault['what'] | null => {
  if (event.seq !== head.seq + 1) return 'number';
  if (event.previous !== head.hash) return 'previous';
  const { hash, ...rest } = event;
  if (sha256OfValue(rest) !== hash) return 'hash';
  return event.atMs < head.atMs ? 'time' : null;
};
