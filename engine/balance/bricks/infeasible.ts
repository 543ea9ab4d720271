/** The form of "no mix does it", and of what would have to change. */

export const INFEASIBLE_CODES = [
  'belowCarriage',
  'baseTooHigh',
  'baseTooHeavy',
  'holdsTooWeak',
  'stockTooSmall',
  'rodTooShort',
  'massLimitTooLow',
  'severalLimits',
  'bricksTooCoarse',
  'notFound',
  'causeNotFound',
] as const;

export type InfeasibleCode = (typeof INFEASIBLE_CODES)[number];

/** Needed at this height: in this direction, so many N more than is there. */
export type MoreHold = {
  readonly heightM: number;
  readonly direction: 'in' | 'out';
  readonly byN: number;
};

/** What would have to change. Where several fields are given, all of them together. */
export type Change = {
  /** Bricks of each kind, above the stock. */
  readonly moreBricks?: Readonly<Record<string, number>>;
  /** m of rod, above the stack height. */
  readonly moreRod?: number;
  /** kg, above the mass limit of the arbor. */
  readonly moreMassLimit?: number;
  /** kg. The least tolerance that the bricks at hand meet. */
  readonly tolerance?: number;
  /** kg. The wanted mass higher, or the empty carriage lighter, by this. */
  readonly moreTarget?: number;
  /** kg. One more piece of a mass between these, if the rod has room for it. */
  readonly onePiece?: { readonly massFrom: number; readonly massTo: number };
  readonly moreHold?: readonly MoreHold[];
  /** False when the search gave up before it showed that nothing smaller would do. */
  readonly proven: boolean;
};

export type Infeasible = {
  readonly code: InfeasibleCode;
  readonly reason: string;
  /** Null only with `notFound`: where the search gave up there is nothing to promise. */
  readonly smallestChange: Change | null;
  readonly otherChanges: readonly Change[];
};

/** The search gave up: not the same as none, and never said in the same words. */
export const notFound = (states: number): Infeasible => ({
  code: 'notFound',
  reason: `None found in ${states} states: stop and ask.`,
  smallestChange: null,
  otherChanges: [],
});

/** That none exists is proven; the search for what stands in the way gave up. */
export const causeNotFound = (states: number, smallestChange: Change): Infeasible => ({
  code: 'causeNotFound',
  reason: `None exists (all ${states} states searched); which limit is in the way was not found.`,
  smallestChange,
  otherChanges: [],
});
