/** What `compute releasable`, `runaway` and `dropped` are asked, as plain SI numbers. */

type Node = { readonly height: number; readonly below: number; readonly above: number };

type TravelInput = {
  /** N at the batten, positive batten heavy. */
  readonly curve: readonly (Node & {
    readonly contact?: { readonly low: number; readonly high: number };
  })[];
  readonly lowStop: number;
  readonly highStop: number;
  readonly height: number;
  readonly hold?: number;
};

export type ReleasableInput = TravelInput;

export type RunawayInput = TravelInput & {
  readonly moves: {
    readonly purchase: 1 | 2;
    readonly arbor: number;
    readonly hanging: number | readonly Node[];
    readonly lineMass: number;
    readonly blockMass: number;
    readonly friction: {
      readonly share: number;
      readonly of: 'batten' | 'both';
      readonly constant: number;
    };
  };
  readonly already?: { readonly way: 'in' | 'out'; readonly speed: number };
  readonly liftLines?: {
    readonly stiffness?: number;
    readonly largestShare?: number;
    readonly breakingStrength?: number;
  };
  readonly stop?: { readonly stiffness: number } | { readonly distance: number };
};

export type DroppedInput = {
  readonly mass: number;
  readonly from: number;
  readonly speed: number;
  readonly air?: {
    readonly dragCoefficient: number;
    readonly area: number;
    readonly density: number;
  };
  readonly bounce: { readonly least: number; readonly shareOfFall: number };
  readonly levels: readonly { readonly name: string; readonly height: number }[];
};
