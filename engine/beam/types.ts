/**
 * What a beam check is asked and what it answers. Plain numbers in SI: m, kg, N, Pa, m⁴, m³; x
 * across the stage, positive to stage left; deflection positive down, moment positive sagging.
 */

/** The tube. Mass may be 0 where its weight is among the loads; E·I must be above 0. */
export type Pipe = {
  readonly massPerLength: number;
  readonly secondMoment: number;
  readonly elasticModulus: number;
  readonly sectionModulus?: number;
  readonly plasticModulus?: number;
  readonly yieldStrength?: number;
};

/** A lift line. Stiffness null is rigid; trim is how much shorter than true it is, so it lifts. */
export type LiftLine = {
  readonly x: number;
  readonly stiffness: number | null;
  readonly trim?: number;
};

/** A stand or a stop: pushes up, never holds down. `height` is its top above a true line's end. */
export type Support = {
  readonly x: number;
  readonly stiffness: number | null;
  readonly height: number;
};

export type PointLoad = { readonly x: number; readonly mass: number };
/** The mass of the whole patch, spread evenly. */
export type SpreadLoad = { readonly from: number; readonly to: number; readonly mass: number };
export type Load = PointLoad | SpreadLoad;

/** Where a piece is picked up, by a line of its own between batten and piece. */
export type Pick = {
  readonly x: number;
  readonly stiffness: number | null;
  /** How much shorter than its neighbours the pick is. */
  readonly trim?: number;
};

/**
 * A stiff piece, or a second pipe, that hangs below the batten by two picks or more and shares its
 * own mass among them. Bending stiffness E·I null: it does not bend.
 */
export type HungPiece = {
  readonly bendingStiffness: number | null;
  readonly loads: readonly Load[];
  readonly picks: readonly Pick[];
};

/** A joint that takes this share of the moment that the pipe takes. */
export type Splice = { readonly x: number; readonly strength: number };

export type BattenCase = {
  readonly pipe: Pipe;
  readonly left: number;
  readonly right: number;
  readonly lines: readonly LiftLine[];
  readonly loads: readonly Load[];
  /** Lines pull and never push: true unless told. */
  readonly tensionOnly?: boolean;
  readonly supports?: readonly Support[];
  readonly pieces?: readonly HungPiece[];
  readonly splices?: readonly Splice[];
};

export type At = { readonly x: number; readonly value: number };
export type Extremes = { readonly max: At; readonly min: At };

export const UNSTABLE_CODES = [
  'tipsOver',
  'tooFewLines',
  'noLoad',
  'pieceTips',
  'notDetermined',
] as const;

/** Why there are no numbers: the batten would move until something else holds it. */
export type Unstable = {
  readonly code: (typeof UNSTABLE_CODES)[number];
  readonly reason: string;
};

/** One place along the batten, for drawing. */
export type Station = {
  readonly x: number;
  /** Just right of x where they jump. */
  readonly shear: number;
  readonly moment: number;
  readonly slope: number;
  readonly deflection: number;
};

export const MOMENT_METHODS = ['plastic', 'firstYield'] as const;

/** How much moment the pipe is allowed, and by what reckoning. */
export type Allowable = {
  readonly method: (typeof MOMENT_METHODS)[number];
  readonly moment: number;
  /** Safety factor on it. */
  readonly factor: number;
};

/** Where bending uses most of what is allowed; at a splice less is allowed. */
export type Utilisation = {
  readonly value: number;
  readonly x: number;
  readonly allowed: number;
  readonly atSplice: boolean;
};

/** x of a point, or a stretch over which it is spread evenly. */
export type Place = number | { readonly from: number; readonly to: number };

export type Shared = { readonly tensions: readonly number[]; readonly slack: readonly boolean[] };

/** Read, never spread: what is not read is not worked out. */
export type BattenSolution = Shared & {
  /** Of each support, upward. */
  readonly supports: readonly number[];
  /** Of each pick of each hung piece; 0 where it is slack. */
  readonly picks: readonly (readonly number[])[];
  readonly moment: Extremes;
  readonly shear: Extremes;
  readonly deflection: Extremes & { readonly atLines: readonly number[] };
  /** Largest below the straight line between two tight neighbours; null where there is one. */
  readonly sag: { readonly x: number; readonly value: number; readonly span: number } | null;
  /** Largest bending stress, where the section modulus is given. */
  readonly stress: number | null;
  readonly allowable: Allowable | null;
  readonly utilisation: Utilisation | null;
  /** The same with lines that do not stretch; null where that is no one answer. */
  readonly rigid: () => Shared | null;
  /** dT_i / d trim_j, N/m; rows and columns of slack lines are 0. */
  readonly sensitivity: () => readonly (readonly number[])[];
  /** Everything along the batten, exact at any x within it. */
  readonly at: (x: number) => Station;
  /** dT_i for a newton added at a place, while no line changes between tight and slack. */
  readonly influence: (place: Place) => readonly number[];
};

export type BattenAnswer = BattenSolution | { readonly unstable: Unstable };
