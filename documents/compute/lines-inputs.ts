/** What `compute lines` and `compute totals` are asked, as plain SI numbers; angles in degrees. */
import type { Bearing, Termination } from '#house';

/** Constructions for which a stretch factor is published. */
export const CONSTRUCTIONS = [
  '7x19 galvanized',
  '7x19 stainless 302',
  '7x7 galvanized',
  '7x7 stainless 302',
  '6x19 IWRC galvanized',
  '6x19 IWRC stainless 302',
  '6x37 IWRC galvanized',
  '1x19 galvanized',
  '19x7 galvanized',
] as const;

export type LinesInput = {
  readonly purchase: 1 | 2;
  readonly lines: readonly {
    readonly x: number;
    readonly tension: number;
    readonly muleBlocks?: readonly { readonly x: number; readonly z: number }[];
    readonly fleetOffset?: number;
  }[];
  readonly headX: number;
  readonly loftHeight: number;
  readonly headHeight: number;
  readonly wireEndHeight: number;
  readonly attachHeight: number;
  readonly lineMassPerLength: number;
  readonly cable?: {
    readonly diameter: number;
    readonly breakingStrength: number;
    readonly termination: Termination;
    readonly smallestSheave: number;
    readonly axialStiffness?: number;
    readonly construction?: (typeof CONSTRUCTIONS)[number];
  };
  readonly handLineMass?: number;
  readonly handLineTension?: number;
  readonly friction?: { readonly bearing: Bearing; readonly batten: 'out' | 'in' };
  readonly held?: { readonly battenSide: number; readonly arbor: number };
  readonly moves?: readonly MoveInput[];
  readonly bridles?: readonly {
    readonly load: number;
    readonly left: number;
    readonly right: number;
    readonly height: number;
  }[];
  readonly turningBlocks?: readonly { readonly tension: number; readonly turn: number }[];
};

type MoveInput =
  | { readonly kind: 'steady'; readonly mass: number; readonly acceleration: number }
  | {
      readonly kind: 'suddenStop';
      readonly mass: number;
      readonly stiffness: number;
      readonly speed: number;
    }
  | {
      readonly kind: 'drop';
      readonly mass: number;
      readonly stiffness: number;
      readonly drop: number;
    };

export type TotalsInput = {
  readonly bays: readonly string[];
  readonly wells: readonly { readonly id: string; readonly x: number; readonly width: number }[];
  readonly movingShare?: number;
  readonly states: readonly {
    readonly name: string;
    readonly sets: readonly {
      readonly set: string;
      readonly bay?: string;
      readonly purchase: 1 | 2;
      readonly arborMass: number;
      readonly handLineMass: number;
      readonly arborWireMass?: number;
      readonly lines: readonly { readonly x: number; readonly tension: number }[];
      readonly moving?: boolean;
    }[];
  }[];
  readonly floors?: readonly {
    readonly id: string;
    readonly length: number;
    readonly width: number;
    readonly peopleAndTools: number;
    readonly bricks: readonly {
      readonly count: number;
      readonly mass: number;
      readonly floorLength: number;
    }[];
  }[];
};
