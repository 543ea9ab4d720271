import type { Known } from '#house';
import type { Metres, Seconds } from '#quantities';
import type { Item } from './item.ts';

export const HANG_FAMILIES = ['soft', 'hard', 'electric', 'other'] as const;

export type HangFamily = (typeof HANG_FAMILIES)[number];

/** A named height of the batten, with what was measured to find it. */
export type Trim = {
  readonly name: string;
  readonly height: Known<Metres>;
  readonly reference: 'batten' | 'lowestPoint' | 'lens';
};

/** Show bricks that a person has fixed; where absent, the program's choice holds. */
export type PlannedBricks = {
  readonly counts: Readonly<Record<string, number>>;
  readonly reason: string;
};

/** What hangs on one set. */
export type Hang = {
  readonly set: string;
  readonly name: string;
  readonly family: HangFamily;
  /** Depth up and down stage of the batten's centre line. */
  readonly halfDepth: Known<Metres>;
  readonly trims: readonly Trim[];
  readonly items: readonly Item[];
  readonly bricks: PlannedBricks | null;
  /** Held by steel, not by its arbor, at this batten height. */
  readonly deadHungAt: Known<Metres> | null;
  readonly coupledWith: readonly string[];
  readonly remark?: string;
};

export type Cue = {
  readonly number: string;
  readonly set: string;
  readonly from: Metres;
  readonly to: Metres;
  readonly duration: Seconds | null;
  readonly releases: boolean;
  readonly note?: string;
};

export type Show = {
  readonly id: string;
  readonly name: string;
  readonly houseId: string;
  readonly demo: boolean;
  /** In rail order of the house. */
  readonly hangs: readonly Hang[];
  readonly cues: readonly Cue[];
  /** Sets left empty for a reason: set id to reason. */
  readonly keptEmpty: Readonly<Record<string, string>>;
  readonly remarks: readonly string[];
};
