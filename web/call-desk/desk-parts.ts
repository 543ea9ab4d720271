/** Screens of the desk, by the word behind `/live` in the address. */
import type { Place } from '../address/address.ts';

export const CALL_PARTS = ['open', 'posts', 'head', 'set', 'close'] as const;
export type CallPart = (typeof CALL_PARTS)[number];

/** One set in the call. */
export const setPlace = (set: string): Place => ({ kind: 'live', path: ['set', set] });
