import { unreachable } from '#outcome';
import type { Kilograms, KilogramsPerMetre, Metres, Newtons } from '#quantities';
import type { BattenPipe, Splice } from './batten-pipe.ts';
import type { PlateRun } from './brick.ts';
import type { Known } from './known.ts';
import type { Lift } from './lift-line.ts';

export const SUSPENSIONS = [
  'singlePurchase',
  'doublePurchase',
  'motor',
  'hemp',
  'deadHung',
] as const;

/** How a batten is carried. Only the two purchases have an arbor and take bricks. */
export type Suspension = (typeof SUSPENSIONS)[number];

/** Where travel ends, and whether the end may carry a load that stands on it. */
export type Stop = {
  readonly height: Known<Metres>;
  /** Rated standing load; not rated is a known zero, not said is unknown. */
  readonly rated: Known<Newtons>;
};

export type Batten = {
  /** Ends across the stage, positive to stage left of the centre line. */
  readonly left: Known<Metres>;
  readonly right: Known<Metres>;
  /** With its fittings, trim chains and what always hangs on it. */
  readonly mass: Known<Kilograms>;
  readonly massPerLength: Known<KilogramsPerMetre>;
  readonly fittingsPerLine: Known<Kilograms>;
  readonly pipe: BattenPipe;
  /** Null where nobody has looked; none is an empty list. */
  readonly splices: readonly Splice[] | null;
  readonly description?: string;
};

export type Arbor = {
  /** Carriage with rods, collars and locking plate, no bricks. */
  readonly carriageMass: Known<Kilograms>;
  /** The bricks that balance the bare batten and stay, from the bottom up. */
  readonly pipeWeight: readonly PlateRun[] | null;
  readonly length: Known<Metres>;
  readonly usableRod: Known<Metres>;
  /** Height of the bottom of the pan when the batten is on its low stop. */
  readonly panAtLow: Known<Metres>;
  readonly panThickness: Known<Metres>;
  /** Where the lines meet the arbor, above the bottom of the pan (double purchase: its block). */
  readonly attachAbovePan: Known<Metres>;
  readonly massLimit: Known<Kilograms>;
  readonly topClearance: Known<Metres>;
  readonly bottomClearance: Known<Metres>;
};

/** The rope lock of one set, as it was last tested. A test of one lock says nothing of another. */
export type RopeLock = {
  /** What it held at the hand line in its last grip test. */
  readonly grip: Known<Newtons>;
  /** Whether it failed its last grip test or inspection; then it counts for nothing. */
  readonly failed: Known<boolean>;
  readonly remark?: string;
};

export type LineSet = {
  readonly id: string;
  readonly typeId: string;
  readonly suspension: Suspension;
  /** Upstage of the plaster line. */
  readonly y: Known<Metres>;
  /** Across the stage, one a lift line, in order from stage right. */
  readonly lineXs: readonly Metres[] | null;
  readonly lineMassPerLength: Known<KilogramsPerMetre>;
  readonly lineLimit: Known<Newtons>;
  /** Height of the lower end of the wire above the batten (trim chain). */
  readonly wireEndAbove: Known<Metres>;
  readonly batten: Batten;
  readonly lift: Lift;
  readonly liveLimit: Known<Kilograms>;
  /** What may hang at one place, and on each length. */
  readonly pointLimit: Known<Kilograms>;
  readonly perLengthLimit: Known<KilogramsPerMetre>;
  readonly lowStop: Stop;
  readonly highStop: Stop;
  readonly workingHeight: Known<Metres>;
  readonly arbor: Arbor | null;
  /** Travel of the hand line per travel of the batten. */
  readonly handLinePerBatten: Known<number>;
  readonly lock: RopeLock;
  readonly railId: string | null;
  readonly remark?: string;
};

/** Batten travel over arbor travel; null where there is no arbor to load. */
export const purchaseOf = (suspension: Suspension): 1 | 2 | null => {
  switch (suspension) {
    case 'singlePurchase':
      return 1;
    case 'doublePurchase':
      return 2;
    case 'motor':
    case 'hemp':
    case 'deadHung':
      return null;
    default:
      return unreachable(suspension);
  }
};
