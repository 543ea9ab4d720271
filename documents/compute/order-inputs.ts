/**
 * What `compute plan` and `compute verify` are asked, as plain SI numbers: one set with all that
 * may come onto it, how it stands, and either how it is to stand or what is done.
 */
import type { CarriedItem } from '#show';
import type { ItemPhase, PlateTag, Restraint, ServiceState } from '#state';
import type { BareSetInput, SpreaderInput } from './set-inputs.ts';

export type OrderSetInput = Omit<
  BareSetInput,
  'items' | 'brickUncertainty' | 'friction' | 'handLinePerBatten'
> & {
  readonly id: string;
  /** All that hangs or may come to hang, by id, each as `balance` takes it. */
  readonly items: Readonly<Record<string, CarriedItem>>;
  /** N that each stop is rated for as a standing load. */
  readonly lowStopRated: number;
  readonly highStopRated: number;
  readonly workingHeight: number;
  readonly lockLimit: number;
  /** N on the hand line, of as many people as may take it. */
  readonly hands: { readonly brief: number; readonly steady: number };
  /** Of what hangs on the batten, and N in any case. */
  readonly friction: { readonly share: number; readonly constant: number };
  /** Height of the bottom of the pan, batten on its low stop. */
  readonly panAtLow: number;
  readonly panThickness: number;
  readonly usableRod: number;
  readonly arborMassLimit?: number;
  readonly bricks: readonly {
    readonly id: string;
    readonly mass: number;
    readonly thickness: number;
    readonly uncertainty?: number;
    /** Kinds that a loader can take it for; none unless told. */
    readonly looksLike?: readonly string[];
  }[];
  /** Of mass 0 where the carriage has the plates in its mass. */
  readonly spreader?: SpreaderInput;
  readonly galleries: readonly {
    readonly id: string;
    readonly floor: number;
    readonly reachLow: number;
    readonly reachHigh: number;
    /** Loose bricks by kind; none of a kind that is not named. */
    readonly stock: Readonly<Record<string, number>>;
  }[];
};

export type RestraintInput = {
  readonly kind: Restraint['kind'];
  readonly resists: Restraint['resists'];
  /** Null where nobody has said: then it holds nothing. */
  readonly rating: number | null;
  readonly from: number | null;
  readonly to: number | null;
  readonly owner: string | null;
  readonly tag: string | null;
};

export type ZoneInput =
  | { readonly zone: 'run' }
  | { readonly zone: 'drop'; readonly gallery: string };

export type StandingInput = {
  readonly height: number;
  /** From the bottom up; pipe weight among them. */
  readonly stack: readonly {
    readonly kind: string;
    readonly count: number;
    readonly tag: PlateTag;
  }[];
  /** By id; an item that is absent is away. */
  readonly items: Readonly<Record<string, ItemPhase>>;
  readonly restraints: readonly RestraintInput[];
  readonly service: ServiceState;
  readonly closed: readonly ZoneInput[];
};

/** The steps that `plan` answers with, as they are. */
export type StepInput =
  | {
      readonly act: 'attach';
      readonly item: string;
      readonly as: 'attachedSlack' | 'attachedResting' | 'flying';
    }
  | { readonly act: 'takeUp' | 'rest' | 'release'; readonly item: string }
  | {
      readonly act: 'add' | 'remove';
      readonly kind: string;
      readonly count: number;
      readonly gallery: string;
    }
  | { readonly act: 'fly'; readonly to: number }
  | { readonly act: 'rig' | 'unrig'; readonly restraint: RestraintInput }
  | { readonly act: 'hangOnSteel' | 'takeOffSteel' }
  | { readonly act: 'close' | 'reopen'; readonly zone: ZoneInput }
  | { readonly act: 'ease'; readonly pull: number; readonly lifted: boolean };

type OrderInput = {
  readonly set: OrderSetInput;
  readonly start: StandingInput;
  /** Every mass at its worst, or as it is written. */
  readonly doubt: 'worst' | 'none';
  /** With `nominal` nobody is ever in the way of a fault, so none is tried. */
  readonly lock: 'planning' | 'nominal';
};

export type PlanInput = OrderInput & {
  readonly goal: {
    readonly items: Readonly<Record<string, 'on' | 'away'>>;
    /** Show bricks by kind; none of a kind that is not named. */
    readonly bricks: Readonly<Record<string, number>>;
    /** Null: wherever it ends. */
    readonly height: number | null;
    readonly service: 'in' | 'deadHung';
  };
  /** What one more restraint from outside may resist where staging alone finds no order. */
  readonly restraint: 'either' | 'in' | 'out' | 'none';
  /** N that the steel is rated for that the set is to hang on. */
  readonly steel?: number;
  /** Rigid pieces that can lie on horses with their picks taut; those of kind `tipping`. */
  readonly rests?: readonly string[];
  /** Bricks that may lie on the arbor on the way only. */
  readonly spare?: Readonly<Record<string, number>>;
  /** Heights that are called are rounded to multiples of this, m. */
  readonly callHeights?: number;
};

export type VerifyInput = OrderInput & { readonly steps: readonly StepInput[] };
