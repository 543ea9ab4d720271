/** What an order of work takes for granted, as data: sheets and screens have the words. */
import type { HouseState } from '#state';

export type CountOfKind = { readonly kind: string; readonly count: number };

export type Assumption =
  | {
      readonly is: 'recorded';
      readonly set: string;
      readonly at: HouseState['at'];
      readonly by: string;
    }
  /** Recorded a hand past its stop, and taken to stand on it. */
  | { readonly is: 'onStop' }
  /** Bare on its low stop, because the person who asks says so. */
  | { readonly is: 'saidBare'; readonly set: string }
  /** Hung as the show plans it, at its trim, whatever the record says. */
  | { readonly is: 'asPlanned'; readonly set: string }
  | { readonly is: 'asTheOrderWrites'; readonly set: string }
  /** Recorded on the arbor and not there: each gallery may have them, they are brought first. */
  | {
      readonly is: 'bricksBack';
      readonly set: string;
      readonly bricks: readonly CountOfKind[];
    }
  | { readonly is: 'stockNotCounted'; readonly gallery: string }
  /** Kept for other work, so left out of what may be taken. */
  | {
      readonly is: 'stockKept';
      readonly gallery: string;
      readonly kept: readonly (CountOfKind & { readonly for: string })[];
    }
  | { readonly is: 'steelWithPipeWeight'; readonly set: string }
  /** The order needs a restraint only because masses may be at their worst. */
  | { readonly is: 'noRestraintIfWeighed' }
  /** No order exists with every mass at its worst: weigh or pull-test before it is worked. */
  | { readonly is: 'massesAsWritten'; readonly byN: number | null };
