/**
 * What `compute` is asked, as plain SI numbers (m, kg, N, kg/m; shares as parts of one). Names of
 * `balance` and `bricks` are fixed for the world outside; what is optional here is an addition.
 */
import type { Basis } from '#house';
import type { ItemKind } from '#show';
import type { BattenInput } from './batten-inputs.ts';
import type { LinesInput, TotalsInput } from './lines-inputs.ts';
import type { DroppedInput, ReleasableInput, RunawayInput } from './motion-inputs.ts';
import type { PlanInput, VerifyInput } from './order-inputs.ts';
import type { BareSetInput, SpreaderInput } from './set-inputs.ts';

export type BalanceInput = BareSetInput & {
  readonly bricks: number;
  readonly heights: readonly number[];
};

export type BrickInput = {
  readonly id: string;
  readonly mass: number;
  readonly thickness: number;
  readonly stock: number;
};

export type BricksInput = {
  /** The whole arbor wanted, and the arbor without bricks and plates. */
  readonly target: number;
  readonly carriage: number;
  readonly bricks: readonly BrickInput[];
  readonly stackHeight: number;
  readonly spreader?: SpreaderInput;
  readonly tolerance?: number;
};

export type MixInput = {
  readonly balance: BareSetInput;
  /** Batten heights between which the worst imbalance counts. */
  readonly from: number;
  readonly to: number;
  readonly bricks: readonly BrickInput[];
  readonly stackHeight: number;
  readonly spreader?: SpreaderInput;
  /** What holds the set against coming in and against going out, N. */
  readonly holds?: { readonly in: number; readonly out: number };
};

export type PullTestInput = {
  /** Steady pulls on the hand line, N; negative where the set goes by itself. */
  readonly out: number;
  readonly in: number;
  readonly handLinePerBatten?: number;
  /** What the take-off says, N at the batten, batten heavy positive. */
  readonly expectedImbalance?: number;
  readonly itemMass?: number;
  /** Part of the item that hangs at the height of the test; absent: all of it. */
  readonly carriedShare?: number;
};

export type ReachInput = {
  readonly lowStop: number;
  /** Cuts the window to the travel where it is given. */
  readonly highStop?: number;
  readonly panAtLow: number;
  readonly panThickness: number;
  readonly purchase: 1 | 2;
  /** Thickness of the plates on the arbor. */
  readonly stack: number;
  readonly galleryFloor: number;
  readonly reachLow: number;
  readonly reachHigh: number;
};

/** A number, or one with what it may be off by and what it rests on. */
export type AmountInput =
  | number
  | {
      readonly value: number;
      readonly tolerance?: number;
      readonly relative?: number;
      readonly basis?: Basis;
      readonly source?: string;
    };

type PartInput = { readonly name: string; readonly count: number };
type FramePartInput = PartInput & { readonly z?: AmountInput };

export type TakeoffNumbersInput =
  | { readonly kind: 'mass'; readonly mass: AmountInput; readonly hem?: AmountInput }
  | {
      readonly kind: 'cloth';
      readonly width: AmountInput;
      readonly areaMass: AmountInput;
      readonly fullness: AmountInput;
      readonly hemAllowance: AmountInput;
      readonly paint: AmountInput;
      readonly moisture: AmountInput;
      readonly bottomMassPerLength?: AmountInput;
      readonly ties?: { readonly count: AmountInput; readonly each: AmountInput };
    }
  | {
      readonly kind: 'frame';
      readonly members?: readonly (FramePartInput & {
        readonly length: AmountInput;
        readonly massPerLength: AmountInput;
      })[];
      readonly sheets?: readonly (FramePartInput & {
        readonly area: AmountInput;
        readonly massPerArea: AmountInput;
      })[];
      readonly hardware?: readonly (FramePartInput & { readonly each: AmountInput })[];
      readonly allowance: AmountInput;
    }
  | {
      readonly kind: 'units';
      readonly units: readonly (PartInput & {
        readonly each: AmountInput;
        readonly clampEach?: AmountInput;
        readonly xs?: readonly number[];
      })[];
    }
  | {
      readonly kind: 'loom';
      readonly massPerLength: AmountInput;
      readonly length: AmountInput;
      readonly fixedAt?: AmountInput;
    }
  | {
      readonly kind: 'pipe';
      readonly massPerLength: AmountInput;
      readonly length: AmountInput;
      readonly fittings?: AmountInput;
    }
  | {
      readonly kind: 'hardware';
      readonly lines: readonly (PartInput & { readonly each: AmountInput })[];
    };

export type TakeoffInput = TakeoffNumbersInput & {
  readonly name?: string;
  /** What the numbers rest on, where one does not say so itself. */
  readonly basis: Basis;
  readonly toleranceByBasis?: Readonly<Partial<Record<Basis, number>>>;
  readonly drop?: AmountInput;
  readonly pick?: AmountInput;
  readonly centre?: AmountInput;
  readonly placement?:
    | { readonly points: readonly number[] }
    | { readonly from: number; readonly to: number };
  /** How it loads the batten as it travels; without it no carried item is worked out. */
  readonly carriedAs?: ItemKind;
};

export type ComputeInputs = {
  readonly balance: BalanceInput;
  readonly bricks: BricksInput;
  readonly takeoff: TakeoffInput;
  readonly pullTest: PullTestInput;
  readonly mix: MixInput;
  readonly reach: ReachInput;
  readonly batten: BattenInput;
  readonly lines: LinesInput;
  readonly totals: TotalsInput;
  readonly releasable: ReleasableInput;
  readonly runaway: RunawayInput;
  readonly dropped: DroppedInput;
  readonly plan: PlanInput;
  readonly verify: VerifyInput;
};

export const COMPUTE_NAMES = [
  'balance',
  'bricks',
  'takeoff',
  'pullTest',
  'mix',
  'reach',
  'batten',
  'lines',
  'totals',
  'releasable',
  'runaway',
  'dropped',
  'plan',
  'verify',
] as const satisfies readonly (keyof ComputeInputs)[];

export type ComputeName = (typeof COMPUTE_NAMES)[number];
