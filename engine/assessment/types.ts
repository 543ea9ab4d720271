import type { BalanceCurve, BalanceSet, Extremes, Friction, MixResult } from '#balance';
import type { Reckoned } from '#findings';
import type { HeightSpan, LineSet } from '#house';
import type { Kilograms, Metres, Newtons } from '#quantities';
import type { Hang, Trim } from '#show';
import type { SetState, StackRun } from '#state';
import type { ItemTakeoff } from '#takeoff';
import type { HouseTotals, SetStructure } from './structure-types.ts';

/** All that hangs on one batten. Loom is counted apart, since most of it never hangs. */
export type HungMass = {
  readonly withoutLoom: Kilograms;
  readonly loom: Kilograms;
  /** Linear sum of the uncertainties of all items; null where one of them is not known. */
  readonly uncertainty: Kilograms | null;
  readonly uncertaintyRss: Kilograms | null;
};

/** Height of the top of travel that a gallery reaches, with the stack that the plan puts on. */
export type GalleryWindow = {
  readonly gallery: string;
  /** Null where no batten height brings the next plate within reach. */
  readonly window: Reckoned<HeightSpan | null>;
};

export type TrimBalance = {
  readonly trim: Trim;
  readonly height: Metres;
  /** With all that hangs free of the deck at that height. */
  readonly imbalance: Newtons;
  /** A hair lower, where something meets the deck at the trim; else the same. */
  readonly below: Newtons;
  readonly uncertainty: Newtons;
};

export type BrickCount = { readonly kind: string; readonly count: number };

/** The show bricks of a plan and who chose them. */
export type PlannedStack = {
  readonly show: readonly BrickCount[];
  readonly chosenBy: 'program' | 'person';
  readonly reason: string;
  /** From the bottom up, pipe weight and show bricks; spreader plates are counted apart. */
  readonly runs: readonly StackRun[];
  readonly spreaders: number;
  readonly plates: number;
  /** Bricks and spreaders. */
  readonly height: Metres;
  readonly brickThickness: Metres;
  readonly showMass: Kilograms;
  readonly pipeMass: Kilograms;
  /** Carriage, pipe weight, show bricks and spreaders. */
  readonly arborMass: Kilograms;
};

/** The balance of a set after something has left in view. */
export type AfterRelease = {
  readonly how: string;
  readonly set: BalanceSet;
  readonly curve: BalanceCurve;
};

/** A set as the show plans it. */
export type SetPlan = {
  readonly stack: PlannedStack;
  readonly set: BalanceSet;
  readonly curve: BalanceCurve;
  readonly after: readonly AfterRelease[];
  /** Masses whose doubt nobody has stated, in words; the band of the curve leaves them out. */
  readonly doubtsUnsaid: readonly string[];
  /** Batten height at which the last piece leaves the deck; null where nothing lands. */
  readonly liftOff: Metres | null;
  /** From lift-off (or working height where nothing lands) to the highest trim. */
  readonly freeRange: HeightSpan;
  readonly freeExtremes: Extremes;
  readonly travelExtremes: Extremes;
  readonly trims: readonly TrimBalance[];
  /** Set where the house gives a working height. */
  readonly working: { readonly height: Metres; readonly imbalance: Newtons } | null;
  readonly friction: Reckoned<Friction>;
  readonly pulls: Reckoned<{ readonly out: Newtons; readonly in: Newtons }>;
};

/** A set as it was last recorded. Never a plan. */
export type RecordedSet = {
  readonly state: SetState;
  readonly arborMass: Reckoned<Kilograms>;
  /** At the recorded height, lowest and highest where the height or a contact leaves a choice. */
  readonly imbalance: Reckoned<{ readonly low: Newtons; readonly high: Newtons }>;
  readonly pull: Reckoned<{ readonly imbalance: Newtons; readonly friction: Newtons }> | null;
};

export type SetAssessment = {
  readonly lineSet: LineSet;
  readonly hang: Hang | null;
  readonly takeoffs: readonly ItemTakeoff[];
  readonly hung: Reckoned<HungMass>;
  /** Without items, pipe weight only. Blocked with its reason on a set that takes no bricks. */
  readonly bare: Reckoned<{ readonly set: BalanceSet; readonly curve: BalanceCurve }>;
  readonly room: Reckoned<{ readonly above: Metres; readonly below: Metres }>;
  readonly choice: Reckoned<MixResult>;
  readonly plan: Reckoned<SetPlan>;
  readonly windows: readonly GalleryWindow[];
  readonly recorded: RecordedSet;
  /** Batten, lines and blocks; blocked with its reason where a value is not known. */
  readonly structure: Reckoned<SetStructure>;
};

/** One house and one show worked through every calculator once. */
export type Assessment = {
  readonly sets: readonly SetAssessment[];
  /** Show bricks planned per kind, and what the house owns beside its pipe weight. */
  readonly bricks: readonly {
    readonly kind: string;
    readonly planned: number;
    readonly pipeWeight: number;
    readonly owned: number | null;
  }[];
  readonly totals: HouseTotals;
};
