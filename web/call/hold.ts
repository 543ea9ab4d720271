/**
 * A word that is given by holding for a second, so that nobody gives it by brushing past. Who
 * cannot hold, with a screen reader, a switch or by voice, presses twice instead.
 */
import { unreachable } from '#outcome';

export const HOLD_MS = 1000;
/** How long a first press waits for the second. */
export const AGAIN_MS = 6000;

export type Hold =
  | { readonly is: 'idle'; readonly wasShort: boolean }
  | { readonly is: 'holding'; readonly by: 'pointer' | 'key' }
  /** Held for the second; the click that comes with the release is no second word. */
  | { readonly is: 'given' }
  /** Pressed once without a hold. */
  | { readonly is: 'armed' };

export type HoldInput =
  | { readonly kind: 'down'; readonly by: 'pointer' | 'key' }
  | { readonly kind: 'up' }
  /** The hand, the finger or the focus went elsewhere. */
  | { readonly kind: 'left' }
  | { readonly kind: 'elapsed' }
  /** `isByHand`: a pointer or a key did it, which can hold. */
  | { readonly kind: 'click'; readonly isByHand: boolean }
  | { readonly kind: 'waited' };

export type HoldStep = readonly [hold: Hold, isGiven: boolean];

export const IDLE: Hold = { is: 'idle', wasShort: false };
const SHORT: Hold = { is: 'idle', wasShort: true };

export const holdStep = (hold: Hold, input: HoldInput): HoldStep => {
  switch (input.kind) {
    case 'down':
      // A key that repeats is one hold.
      return hold.is === 'holding' ? [hold, false] : [{ is: 'holding', by: input.by }, false];
    case 'elapsed':
      return hold.is === 'holding' ? [{ is: 'given' }, true] : [hold, false];
    case 'up':
      return hold.is === 'holding' ? [SHORT, false] : [hold, false];
    case 'left':
      return [IDLE, false];
    case 'click':
      return clicked(hold, input.isByHand);
    case 'waited':
      return hold.is === 'armed' ? [IDLE, false] : [hold, false];
    default:
      return unreachable(input);
  }
};

const clicked = (hold: Hold, isByHand: boolean): HoldStep => {
  if (hold.is === 'given') return [IDLE, false];
  if (isByHand) return [hold, false];
  return hold.is === 'armed' ? [IDLE, true] : [{ is: 'armed' }, false];
};
