import type { Kilograms, Newtons } from '#quantities';
import type { Step } from '#state';

/** What is asked of the drill for masses that nobody knows. */
export type DrillAsked = {
  /** All that is to hang, by id, in the order in which it goes on. */
  readonly items: readonly string[];
  /** Kinds of brick that may be used, the one that is tried first at the front. */
  readonly kinds: readonly string[];
  /** Travel of the hand line for that of the batten: a pull on it counts so often there. */
  readonly handLinePerBatten: number;
  /** Pulls are called in multiples of this, N on the hand line. */
  readonly callN: number;
  /** Also where the doubt is no more than the lock holds. */
  readonly anyway: boolean;
};

/** What is weighed, all together, in kg; the doubt of all the rest is in it. */
export type MassRange = { readonly leastKg: Kilograms; readonly mostKg: Kilograms };

/** One pull on the stop, and what either answer says. */
export type DrillEase = {
  /** Index in the steps. */
  readonly step: number;
  /** Bricks of the drill that are on. */
  readonly bricks: number;
  /** Imbalance with every mass as it is written, N. */
  readonly listedN: Newtons;
  /** What it can be before the pull, with all that the pulls before it have shown, N. */
  readonly knownN: { readonly least: Newtons; readonly most: Newtons };
  /** Null where no mass within the tolerances stays: then something is not as listed. */
  readonly ifItStays: MassRange | null;
  readonly ifItLifts: MassRange;
};

export type Drill = {
  /** For the heaviest that it may be; the drill ends at the first ease that lifts it. */
  readonly steps: readonly Step[];
  readonly gallery: string;
  readonly kind: string;
  readonly baseBricks: number;
  readonly mostBricks: number;
  /** The most to be pulled at each ease, on the hand line. */
  readonly pull: Newtons;
  /** Friction that is reckoned with at most, N at the batten. */
  readonly frictionN: Newtons;
  /** Half width of what the masses are in doubt by with the base load on, N. */
  readonly doubtN: Newtons;
  readonly eases: readonly DrillEase[];
  /** Items that hang in full on the stop: what the two pulls weigh is their sum. */
  readonly weighs: readonly string[];
};

/** Why a drill cannot be done, or need not be. */
export type NoDrill =
  | { readonly why: 'notNeeded'; readonly doubtN: Newtons; readonly lockN: Newtons }
  | { readonly why: 'notOnLowStop' | 'outOfUse' | 'restrained' | 'nothingToWeigh' | 'noBricks' }
  | { readonly why: 'notOfSet' | 'notHanging' | 'inContact'; readonly item: string }
  /** Only a part of them hangs on the stop, and they are in doubt by more than the lock holds. */
  | { readonly why: 'hangsInPart'; readonly items: readonly string[]; readonly doubtN: Newtons }
  /** Before a brick goes on it may be arbor heavy by so much more than may be. */
  | { readonly why: 'arborHeavy'; readonly byN: Newtons }
  | { readonly why: 'stopNotRated'; readonly mostN: Newtons; readonly ratedN: Newtons }
  | ({ readonly why: 'pulledTooHard'; readonly pull: Newtons; readonly hands: Newtons } & From)
  /** So many fit, of those that the heaviest needs. */
  | ({ readonly why: 'tooFewBricks'; readonly fit: number; readonly limit: PlateLimit } & From);

export type From = { readonly kind: string; readonly gallery: string };

/** What ends a stack: bricks at the gallery, its reach, the rods, or what the arbor may weigh. */
export type PlateLimit = 'stock' | 'reach' | 'rod' | 'mass';

export type DrillPlan = { readonly drill: Drill } | { readonly none: readonly NoDrill[] };
