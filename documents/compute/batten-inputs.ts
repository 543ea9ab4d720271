/**
 * What `compute batten` is asked, as plain SI numbers: m, kg, N, Pa, m⁴, m³; x across the stage.
 * Names of pipe, ends, lines and loads are fixed for the world outside; supports, splices and
 * pieces are additions.
 */
type PointLoadInput = { readonly x: number; readonly mass: number };
type SpreadLoadInput = { readonly from: number; readonly to: number; readonly mass: number };

/** N/m, null where it does not stretch; trim is how much too short it is. */
type TieInput = { readonly x: number; readonly stiffness: number | null; readonly trim?: number };

export type BattenInput = {
  readonly pipe: {
    readonly massPerLength: number;
    readonly secondMoment: number;
    readonly elasticModulus: number;
    readonly sectionModulus?: number;
    readonly plasticModulus?: number;
    readonly yieldStrength?: number;
  };
  readonly left: number;
  readonly right: number;
  readonly lines: readonly TieInput[];
  /** A spread load's mass is that of the whole patch. */
  readonly loads: readonly (PointLoadInput | SpreadLoadInput)[];
  readonly tensionOnly?: boolean;
  readonly supports?: readonly {
    readonly x: number;
    readonly stiffness: number | null;
    readonly height: number;
  }[];
  readonly splices?: readonly { readonly x: number; readonly strength: number }[];
  readonly pieces?: readonly {
    /** E·I, N·m²; null where the piece does not bend. */
    readonly bendingStiffness: number | null;
    readonly loads: readonly (PointLoadInput | SpreadLoadInput)[];
    readonly picks: readonly TieInput[];
  }[];
};
