import type { Known } from '#house';
import type {
  Kilograms,
  KilogramsPerMetre,
  KilogramsPerSquareMetre,
  Metres,
  SquareMetres,
} from '#quantities';

export const TAKEOFF_KINDS = [
  'mass',
  'cloth',
  'frame',
  'units',
  'loom',
  'pipe',
  'hardware',
] as const;

/** The mass is simply known: weighed, from the maker, or somebody's estimate. */
export type MassTakeoff = {
  readonly by: 'mass';
  readonly mass: Known<Kilograms>;
  /** Pipe or chain in the hem, arriving all at once; only for a cloth. */
  readonly hem: Known<Kilograms> | null;
};

export type ClothTakeoff = {
  readonly by: 'cloth';
  readonly width: Known<Metres>;
  readonly areaMass: Known<KilogramsPerSquareMetre>;
  /** Cloth added: 0.5 is one and a half widths. */
  readonly fullness: Known<number>;
  /** Hems, facings and webbing as a share of the flat cloth. */
  readonly hemAllowance: Known<number>;
  /** Paint and moisture, as shares added. */
  readonly paint: Known<number>;
  readonly moisture: Known<number>;
  readonly bottomMassPerLength: Known<KilogramsPerMetre> | null;
  readonly ties: { readonly count: Known<number>; readonly each: Known<Kilograms> } | null;
};

type Part = {
  readonly name: string;
  readonly count: number;
  /** Height of the part's centre above the foot of the piece; for the centre of gravity. */
  readonly z: Known<Metres>;
};

export type FrameTakeoff = {
  readonly by: 'frame';
  readonly members: readonly (Part & {
    readonly length: Known<Metres>;
    readonly massPerLength: Known<KilogramsPerMetre>;
  })[];
  readonly sheets: readonly (Part & {
    readonly area: Known<SquareMetres>;
    readonly massPerArea: Known<KilogramsPerSquareMetre>;
  })[];
  readonly hardware: readonly (Part & { readonly each: Known<Kilograms> })[];
  /** Paint, glue and fixings, as a share of all the parts. */
  readonly allowance: Known<number>;
};

export type UnitsTakeoff = {
  readonly by: 'units';
  readonly units: readonly {
    readonly name: string;
    readonly count: number;
    readonly each: Known<Kilograms>;
    readonly clampEach: Known<Kilograms> | null;
    readonly xs: readonly Metres[] | null;
  }[];
};

export type LoomTakeoff = {
  readonly by: 'loom';
  readonly massPerLength: Known<KilogramsPerMetre>;
  readonly length: Known<Metres>;
  /** Height of the far end above the deck; for a loom to the deck, 0. */
  readonly fixedAt: Known<Metres>;
};

/** A second pipe hung below the batten. */
export type PipeTakeoff = {
  readonly by: 'pipe';
  readonly length: Known<Metres>;
  readonly massPerLength: Known<KilogramsPerMetre>;
  readonly fittings: Known<Kilograms> | null;
};

export type HardwareTakeoff = {
  readonly by: 'hardware';
  readonly lines: readonly {
    readonly name: string;
    readonly count: number;
    readonly each: Known<Kilograms>;
  }[];
};

/** How the mass of an item is worked out. */
export type Takeoff =
  | MassTakeoff
  | ClothTakeoff
  | FrameTakeoff
  | UnitsTakeoff
  | LoomTakeoff
  | PipeTakeoff
  | HardwareTakeoff;
