import type { Kilograms, Metres, Newtons } from '#quantities';
import type { Restraint, Standing, Step } from '#state';

/** How the set is to stand when the work is done. */
export type OrderGoal = {
  /** To hang, and to be away; an item that is not named stays as it is. */
  readonly items: Readonly<Record<string, 'on' | 'away'>>;
  /** Show bricks by kind; none of a kind that is not named. */
  readonly bricks: Readonly<Record<string, number>>;
  readonly height: Metres | null;
  readonly service: 'in' | 'deadHung';
};

export type HeightRange = { readonly fromM: number; readonly toM: number };

export type OrderOptions = {
  /**
   * Share of every tolerance that nature may have used: 1 wherever people are near; 0 takes each
   * mass as it is written, for textbook numbers.
   */
  readonly doubtShare: number;
  /** `nominal`: nobody is ever in the way of a fault, so the lock is worth all of its limit. */
  readonly lock: 'planning' | 'nominal';
  /** What one more rated restraint may resist where staging alone finds no order. */
  readonly restraint: 'either' | 'out' | 'in' | 'none';
  readonly restraintStepN: number;
  readonly statesMost: number;
  /** Whether to go on, where staging alone has no order, to a restraint and the smallest change. */
  readonly explain: boolean;
  /** Rigid pieces that can lie on horses with their picks taut, and the batten's height then. */
  readonly rests: readonly string[];
  readonly restAtM: number | null;
  /** Where riggers reach the batten; null is from the low stop to the working height. */
  readonly work: readonly HeightRange[] | null;
  /** Where the batten may go at all; null is from stop to stop. */
  readonly travel: HeightRange | null;
  /** Bricks by kind that may lie on the arbor on the way, above the more of start and goal. */
  readonly spare: Readonly<Record<string, number>>;
  /** Stop for bricks at multiples of this only; null: anywhere. */
  readonly heightStepM: number | null;
  /** Heights to be called are rounded to multiples of this where the order leaves the choice. */
  readonly neatM: number;
  /** Rating of the steel that a set is to be hung on; null where nobody has said. */
  readonly steelN: number | null;
  /** Whether there is room on the batten for what comes beside what goes; else that goes first. */
  readonly sharesBatten: boolean;
};

/** What gives a hold, in one direction. */
export type Holder = 'lock' | 'lowStop' | 'highStop' | 'steel' | Restraint['kind'];

/** The most that one thing engaged there holds; nothing adds up. */
export type Hold = { readonly ratedN: Newtons; readonly by: Holder };

export type OrderState = {
  readonly standing: Standing;
  /** Contact the set may choose in, and the half width that nature has chosen in. */
  readonly imbalance: {
    readonly lowN: Newtons;
    readonly highN: Newtons;
    readonly doubtN: Newtons;
  };
  readonly holds: { readonly in: Hold; readonly out: Hold };
  /** Which of its two limits the lock is trusted with here; null where it is not needed. */
  readonly lockUsed: 'planning' | 'nominal' | null;
};

export type RestraintNeeded = {
  readonly resists: 'in' | 'out';
  /** Least rating, a whole number of steps. */
  readonly rated: Newtons;
  /** Where more pulls than the lock may be trusted with. */
  readonly from: Metres;
  readonly to: Metres;
  /** States searched to know that one step less finds no order. */
  readonly refutedStates: number;
};

/** Something to change in the house, after which an order exists. */
export type SmallestChange =
  | ({ readonly change: 'restraint' } & Omit<RestraintNeeded, 'refutedStates'>)
  /** Masses known to this share of their tolerances, by weighing or by a pull test. */
  | { readonly change: 'tolerances'; readonly share: number }
  | { readonly change: 'higher'; readonly to: Metres }
  | { readonly change: 'lower'; readonly to: Metres }
  | { readonly change: 'stock' }
  | { readonly change: 'gallery'; readonly from: Metres; readonly to: Metres }
  | { readonly change: 'rod'; readonly by: Metres }
  /** The arbor may weigh so much more. */
  | { readonly change: 'arbor'; readonly by: Kilograms };

/** Which rule of the order of work no order can keep. */
export type BrokenRule =
  | 'HOLD'
  | 'REACH'
  | 'STOCK'
  | 'ROD'
  | 'MASS'
  | 'TRAVEL'
  | 'SERVICE'
  | 'GOAL';

export type OrderPlan =
  | {
      readonly found: {
        readonly steps: readonly Step[];
        /** The start, then one after each step. */
        readonly states: readonly OrderState[];
        readonly restraint: RestraintNeeded | null;
        /**
         * What could be set free at most while riggers are at the batten, if nothing held the set,
         * to one part in 64 of the most that it ever could; null at the nominal limit, where
         * nobody is in the way of anything.
         */
        readonly exposedJ: number | null;
        readonly searched: number;
        /** False where the bound on states came before the best order did. */
        readonly optimal: boolean;
      };
    }
  | {
      /** None exists: every state that can be come to was searched. */
      readonly none: {
        readonly searched: number;
        readonly exhaustive: true;
        readonly rule: BrokenRule;
        readonly atHeight: Metres | null;
        readonly byN: Newtons | null;
        readonly smallestChange: SmallestChange | null;
      };
    }
  | {
      /** None found in so many states, and not all were searched: stop and ask. */
      readonly stopped: { readonly searched: number };
    };
