/** What is asked when a place for a piece is looked for, and what is answered of one line set. */
import type { Finding, Reckoned } from '#findings';
import type { House, Suspension } from '#house';
import type { Metres, Newtons } from '#quantities';
import type { Hang, Show } from '#show';
import type { HouseState, ServiceState } from '#state';

/** A piece to hang, without its set; bricks are chosen anew, since they belong to an arbor. */
export type Piece = {
  /** The set that it leaves; null for a piece that hangs nowhere yet. */
  readonly from: string | null;
  readonly hang: Omit<Hang, 'set' | 'bricks'>;
};

export type PlacingAsked = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState | null;
  readonly piece: Piece;
  /** Where it should hang, upstage of the plaster line; `within` is how far off it may be. */
  readonly wanted: { readonly y: Metres; readonly within: Metres | null } | null;
  /** Whether sets that the show keeps empty for a reason are reckoned too. */
  readonly keptEmptyToo: boolean;
  readonly nowMs?: number;
};

/** Why a set is not reckoned at all. */
export type Withheld =
  | { readonly set: string; readonly is: 'used'; readonly by: string }
  | { readonly set: string; readonly is: 'keptEmpty'; readonly reason: string }
  | { readonly set: string; readonly is: 'lockedOut'; readonly tag: string | null }
  | { readonly set: string; readonly is: 'notInService'; readonly service: ServiceState };

/** Room to the used sets on one side; below zero the two overlap in depth. */
export type Gap =
  | { readonly is: 'open' }
  | { readonly is: 'gap'; readonly set: string; readonly gapM: number }
  | { readonly is: 'unknown'; readonly needs: readonly string[] };

export type Space = { readonly downstage: Gap; readonly upstage: Gap };

export type BrickFacts = {
  readonly counts: readonly { readonly kind: string; readonly count: number }[];
  readonly showMassKg: number;
  readonly arborMassKg: number;
  readonly stackHeightM: number;
  /** Largest imbalance at a trim, as a size, and what the lock of this set holds. */
  readonly worstN: number;
  readonly lockN: Reckoned<number>;
  /** A gallery that reaches the top of the stack at some height; null where none does. */
  readonly reachedFrom: Reckoned<string | null>;
};

export type BayFacts = {
  readonly bay: string;
  readonly vertical: Reckoned<Newtons>;
  readonly verticalLimit: Reckoned<Newtons>;
  readonly horizontal: Reckoned<Newtons>;
  readonly horizontalLimit: Reckoned<Newtons>;
};

export type TrimFact = {
  readonly name: string;
  readonly heightM: number;
  readonly isOnTravel: boolean;
};

/** Why the piece cannot hang here as it is asked for. */
export type Against =
  | { readonly is: 'place'; readonly offM: number; readonly withinM: number }
  | {
      readonly is: 'overlap';
      readonly side: 'downstage' | 'upstage';
      readonly set: string;
      readonly byM: number;
    }
  | { readonly is: 'pastBatten'; readonly item: string; readonly byM: number }
  | { readonly is: 'trim'; readonly name: string; readonly heightM: number }
  | { readonly is: 'noMix'; readonly limit: string }
  | { readonly is: 'pastLock'; readonly worstN: number; readonly lockN: number }
  | { readonly is: 'stop'; readonly finding: Finding };

/** What a person has to look at before the piece goes here. */
export type LookAt =
  | { readonly is: 'caution'; readonly finding: Finding }
  | { readonly is: 'keptEmpty'; readonly reason: string }
  /** The record still has something on the set. */
  | { readonly is: 'stillOn'; readonly items: readonly string[] };

export type Subject = 'place' | 'trims' | 'space' | 'bricks' | 'lock' | 'bay' | 'service' | 'rules';
export type NotKnown = { readonly of: Subject; readonly needs: readonly string[] };

export type Candidate = {
  readonly set: string;
  readonly suspension: Suspension;
  /** Upstage of what was wanted, below zero downstage; null where no place was asked for. */
  readonly offM: Reckoned<number> | null;
  readonly trims: Reckoned<readonly TrimFact[]>;
  readonly space: Space;
  /** Null on a set without an arbor. */
  readonly bricks: Reckoned<BrickFacts> | null;
  /** After the piece hangs here; null where the set stands in no bay of the house. */
  readonly bay: BayFacts | null;
  readonly against: readonly Against[];
  readonly lookAt: readonly LookAt[];
  readonly notKnown: readonly NotKnown[];
};
