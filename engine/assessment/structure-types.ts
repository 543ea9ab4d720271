/** What each line, block, bay, well and floor carries, as the assessment keeps it. */
import type { BattenAnswer, LiftLine, Load, Pipe, Splice } from '#beam';
import type { Reckoned } from '#findings';
import type { Wall } from '#house';
import type { BlockForce, Efficiency, Total } from '#lines';
import type { Kilograms, Metres, Newtons, NewtonsPerMetre, Pascals } from '#quantities';

/** A load on the batten and what it is of: an item by name, or the fittings of a line. */
export type PlacedLoad = {
  readonly of: string;
  readonly load: Load;
  /** Half width of its mass; null where nobody has said. */
  readonly uncertaintyKg: number | null;
};

/** What is left of a line's catalogue strength, and how many times it holds what it carries. */
export type LineStrength = {
  readonly breaking: Newtons;
  readonly termination: Efficiency;
  readonly bending: Efficiency;
  /** breaking · termination · bending / tension at the top; null on a line that carries nothing. */
  readonly factor: number | null;
};

export type LineState = {
  readonly x: Metres;
  /** At the batten. */
  readonly tension: Newtons;
  readonly slack: boolean;
  /** With every mass at its worst for this line; null where a doubt is unsaid. */
  readonly uncertainty: Newtons | null;
  /** At the loft block, with the line's own weight below it. */
  readonly top: Reckoned<Newtons>;
  readonly stretch: Metres | null;
  readonly strength: Reckoned<LineStrength>;
  readonly loftBlock: Reckoned<BlockForce>;
  /** Change of its tension for each metre by which it is made shorter. */
  readonly perTrim: NewtonsPerMetre;
};

/** One batten in one state: what hangs, at which height, and all that follows. */
export type StructureState = {
  /** `bare`, or the name of a trim, `working height`, `high stop`, `after …`. */
  readonly name: string;
  readonly kind: 'bare' | 'hung' | 'released';
  readonly height: Metres;
  readonly loads: readonly PlacedLoad[];
  /** Batten, fittings and all that hangs at this height. */
  readonly mass: Kilograms;
  readonly beam: BattenAnswer;
  /** One a lift line, from stage right; empty where the batten is unstable. */
  readonly lines: readonly LineState[];
};

/** Loads as they would lie, and trims of all lines as they would be; absent: as they are. */
export type StructureChange = {
  readonly loads?: readonly PlacedLoad[];
  readonly trims?: readonly number[];
};

export type SetStructure = {
  readonly pipe: Pipe;
  readonly wall: Wall | null;
  readonly left: Metres;
  readonly right: Metres;
  /** As the beam takes them: stiffness from free lengths and EA, trims as measured. */
  readonly lines: readonly LiftLine[];
  readonly splices: readonly Splice[];
  /** False: nobody has measured the trims, and they are reckoned true. */
  readonly trimsMeasured: boolean;
  /** False: nobody has looked for joints in the pipe, and none is reckoned with. */
  readonly splicesKnown: boolean;
  /** From the batten to the arbor, trim chain and all. */
  readonly freeLengths: readonly Metres[];
  /** What is missing for the states with what hangs; the bare batten is known without it. */
  readonly hungNeeds: readonly string[];
  /** The bare batten first. */
  readonly states: readonly StructureState[];
  /** In the heaviest of the states. */
  readonly headBlock: Reckoned<BlockForce>;
  /** In any one state, a reworked one too. */
  readonly headBlockIn: (state: StructureState) => Reckoned<BlockForce>;
  /**
   * Force on all lines together when the batten is held down: the arbor's side (C37), beside the
   * largest that the batten's own side gives.
   */
  readonly restrained: Reckoned<{ readonly arborSide: Newtons; readonly battenSide: Newtons }>;
  /** One state as it would be with a change. */
  readonly rework: (state: StructureState, change: StructureChange) => StructureState;
};

export const TOTAL_STATES = ['planned', 'bare', 'recorded'] as const;
export type TotalState = (typeof TOTAL_STATES)[number];

export type BayTotal = {
  readonly bay: string;
  readonly when: TotalState;
  readonly vertical: Reckoned<Total>;
  readonly horizontal: Reckoned<Total>;
  /** What the wire on the arbors' side adds at most: every batten of the bay out. */
  readonly wire: Reckoned<Newtons>;
  /** With the heaviest set of the bay moving and all others still. */
  readonly moving: Reckoned<{
    readonly set: string;
    readonly vertical: Newtons;
    readonly horizontal: Newtons;
  }>;
};

export type WellTotal = {
  readonly well: string;
  readonly when: TotalState;
  readonly force: Reckoned<Total>;
};

export type FloorTotal = {
  readonly gallery: string;
  /** As counted last, or with every show brick that the house owns on this gallery. */
  readonly when: 'recorded' | 'allBack';
  readonly bricks: Reckoned<Kilograms>;
  /** Bricks, people and tools over the whole floor. */
  readonly pressure: Reckoned<Pascals>;
  /** Bricks in one row along the gallery, as many courses as they need. */
  readonly courses: Reckoned<number>;
  readonly lineLoad: Reckoned<NewtonsPerMetre>;
};

export type HouseTotals = {
  readonly bays: readonly BayTotal[];
  readonly wells: readonly WellTotal[];
  readonly floors: readonly FloorTotal[];
  /** Lines that stand on no well that the house lists: set and x. */
  readonly linesOnNoWell: readonly { readonly set: string; readonly x: Metres }[];
};
