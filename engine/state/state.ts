import type { Metres, Newtons } from '#quantities';

export const ITEM_PHASES = [
  'away',
  'beside',
  'attachedSlack',
  'attachedResting',
  'flying',
  'heldElsewhere',
] as const;
export type ItemPhase = (typeof ITEM_PHASES)[number];

export const PLATE_TAGS = ['pipe', 'show', 'spreader'] as const;
export type PlateTag = (typeof PLATE_TAGS)[number];

export const SERVICES = ['in', 'paused', 'lockedOut', 'deadHung'] as const;
export type ServiceState = (typeof SERVICES)[number];

export const KNOWLEDGE_BASES = [
  'counted',
  'weighed',
  'pullTested',
  'carriedOver',
  'unknown',
] as const;

export const RESTRAINT_KINDS = [
  'bullLine',
  'arborSling',
  'stands',
  'winch',
  'choke',
  'deadHangSteel',
  'pinnedPiece',
] as const;

/** So many plates of one kind with one tag, one on the other. */
export type StackRun = { readonly kind: string; readonly count: number; readonly tag: PlateTag };

export type Restraint = {
  readonly kind: (typeof RESTRAINT_KINDS)[number];
  /** The direction of batten travel that it resists. */
  readonly resists: 'in' | 'out' | 'both';
  readonly rating: Newtons | null;
  readonly from: Metres | null;
  readonly to: Metres | null;
  readonly owner: string | null;
  readonly tag: string | null;
};

/** Two steady pulls on the hand line, out and in, and where the batten stood. */
export type PullTest = {
  readonly out: Newtons;
  readonly in: Newtons;
  readonly height: Metres;
  readonly at: string;
  readonly by: string;
};

/** How we come to believe the rest: basis, when, who, and the second person. */
export type Knowledge = {
  readonly basis: (typeof KNOWLEDGE_BASES)[number];
  /** ISO date and time. */
  readonly at: string | null;
  readonly by: string | null;
  readonly second: string | null;
};

/** How one set stands. Null is unknown: absent never means bare, closed or empty. */
export type SetState = {
  /** Batten height; two ends where it was not measured. */
  readonly height: { readonly low: Metres; readonly high: Metres } | null;
  readonly lock: 'closed' | 'open' | null;
  readonly ring: 'on' | 'off' | null;
  readonly collar: 'secured' | 'loose' | null;
  /** From the bottom up. */
  readonly stack: readonly StackRun[] | null;
  readonly items: readonly { readonly item: string; readonly phase: ItemPhase }[] | null;
  readonly restraints: readonly Restraint[] | null;
  readonly service: ServiceState | null;
  /** Number and reason of a lock-out tag. */
  readonly tag: { readonly number: string; readonly reason: string } | null;
  readonly knowledge: Knowledge;
  readonly pullTest: PullTest | null;
};

export type GalleryState = {
  /** Loose bricks by kind; a kind that is absent was not counted. */
  readonly stock: Readonly<Record<string, number>>;
  readonly reserved: readonly {
    readonly kind: string;
    readonly count: number;
    readonly for: string;
  }[];
  readonly countedAt: string | null;
  readonly countedBy: string | null;
};

export type HouseState = {
  readonly houseId: string;
  readonly demo: boolean;
  readonly at: string;
  readonly by: string;
  /** A set that is absent is unknown. */
  readonly sets: Readonly<Record<string, SetState>>;
  readonly galleries: Readonly<Record<string, GalleryState>>;
  readonly remarks: readonly string[];
};
