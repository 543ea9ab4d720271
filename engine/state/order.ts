/**
 * An order of work on one set: how it stands between two steps, and what a step does. Between
 * steps a set is at rest with its lock closed and its ring on; `fly` takes both off and puts them
 * on again. Unknown has no place here: an order starts only where everything is known.
 */
import type { Metres, Newtons } from '#quantities';
import type { ItemPhase, Restraint, ServiceState, StackRun } from './state.ts';

/** What may be closed to people: where the set runs, or where a brick from a gallery falls. */
export type WorkZone =
  | { readonly zone: 'run' }
  | { readonly zone: 'drop'; readonly gallery: string };

export type Standing = {
  readonly height: Metres;
  /** From the bottom up, runs of one kind and tag. */
  readonly stack: readonly StackRun[];
  /** By id; an item that is absent is away. */
  readonly items: Readonly<Record<string, ItemPhase>>;
  readonly restraints: readonly Restraint[];
  readonly service: ServiceState;
  readonly closed: readonly WorkZone[];
};

export type Step =
  /** Onto the batten: lying slack on the deck, taut on its rest, or hanging. */
  | {
      readonly act: 'attach';
      readonly item: string;
      readonly as: 'attachedSlack' | 'attachedResting' | 'flying';
    }
  /** Picks drawn tight while the piece still rests. */
  | { readonly act: 'takeUp'; readonly item: string }
  /** A hanging piece put on horses, or its foot held where it touches. */
  | { readonly act: 'rest'; readonly item: string }
  | { readonly act: 'release'; readonly item: string }
  | {
      readonly act: 'add' | 'remove';
      readonly kind: string;
      readonly count: number;
      readonly gallery: string;
    }
  /** Unlock, move, stop, lock. What rests is lifted when the batten goes out. */
  | { readonly act: 'fly'; readonly to: Metres }
  | { readonly act: 'rig' | 'unrig'; readonly restraint: Restraint }
  | { readonly act: 'hangOnSteel' }
  | { readonly act: 'takeOffSteel' }
  | { readonly act: 'close' | 'reopen'; readonly zone: WorkZone }
  /** On a stop: unlocked and pulled so hard towards leaving it, an inch at most. */
  | { readonly act: 'ease'; readonly pull: Newtons; readonly lifted: boolean };

type TogetherMove = { readonly set: string; readonly to: Metres };

/** A step on one of two coupled sets. A zone is one zone for both, whichever it is written to. */
export type PairStep =
  | { readonly set: string; readonly step: Step }
  /** Both unlock, move, stop and lock on one word, at the same share of their ways. */
  | { readonly together: readonly [TogetherMove, TogetherMove] };

/** One height of the imbalance over the travel; straight lines between two of them. */
export type OrderNode = {
  readonly heightM: number;
  readonly belowN: number;
  readonly aboveN: number;
  /** What the system may choose between at the height itself. */
  readonly contact: { readonly lowN: number; readonly highN: number };
  /** Half width that nature may have chosen, all masses at their worst. */
  readonly doubtN: number;
};

export type OrderStop = { readonly heightM: number; readonly ratedN: number };

export type OrderGallery = {
  readonly id: string;
  readonly name: string;
  readonly floorM: number;
  /** Heights of the deck between which the next plate can be handled. */
  readonly reachFromM: number;
  readonly reachToM: number;
  readonly stock: Readonly<Record<string, number>>;
};

export type OrderBrick = {
  readonly id: string;
  readonly massKg: number;
  readonly thicknessM: number;
  /** Kinds that a loader can take it for. */
  readonly looksLike: readonly string[];
  /** Change of U for one of it: g·b / r. */
  readonly atBattenN: number;
};

/**
 * The physics of one set, made by `assessment` and shared by who finds an order and who judges it.
 * Forces at the batten in N, batten heavy positive.
 */
export type OrderPhysics = {
  readonly set: string;
  readonly purchase: 1 | 2;
  readonly lowStop: OrderStop;
  readonly highStop: OrderStop;
  readonly workingM: number;
  readonly lockLimitN: number;
  /** Hands on the hand line, brief and steady, of as many as may take it. */
  readonly handsBriefN: number;
  readonly handsSteadyN: number;
  readonly galleries: readonly OrderGallery[];
  readonly bricks: readonly OrderBrick[];
  readonly rodM: number;
  /** What the arbor may weigh, itself included; null where nobody has said. */
  readonly arborMassLimitKg: number | null;
  /** The whole arbor with these plates on it, and the half width that nature has chosen in. */
  readonly arborKg: (stack: Standing['stack']) => {
    readonly massKg: number;
    readonly doubtKg: number;
  };
  /** Imbalance as it stands, contact and doubt kept apart. */
  readonly at: (standing: Standing) => {
    readonly lowN: number;
    readonly highN: number;
    readonly doubtN: number;
  };
  /** Over the whole travel with what is attached hanging as it does at each height. */
  readonly curve: (standing: Pick<Standing, 'stack' | 'items'>) => readonly OrderNode[];
  /** Height of the top of the stack above the deck: where a plate is put on or taken off. */
  readonly topOfStackM: (standing: Pick<Standing, 'height' | 'stack'>) => number;
  readonly frictionN: (items: Standing['items']) => number;
  /** What an item can weigh on the batten at most, its tolerance in it. */
  readonly itemMostN: (item: string) => number;
  readonly itemLeastN: (item: string) => number;
  /** Where its lowest point meets the deck; null where it never does. */
  readonly contactM: (item: string) => number | null;
};
