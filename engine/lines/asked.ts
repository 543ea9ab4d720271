/** What `compute lines` asks, as plain SI numbers; angles in degrees. */
import type { Bearing, Termination } from '#house';
import type { Construction } from './construction.ts';
import type { Place } from './types.ts';

export type AskedCable = {
  readonly diameter: number;
  /** Of the catalogue. */
  readonly breakingStrength: number;
  readonly termination: Termination;
  /** Diameter of the smallest sheave that it runs over. */
  readonly smallestSheave: number;
  /** EA; or by the construction, from the published stretch factors. */
  readonly axialStiffness?: number;
  readonly construction?: Construction;
};

export type AskedLine = {
  readonly x: number;
  /** At the batten. */
  readonly tension: number;
  readonly muleBlocks?: readonly Place[];
  /** Out of the plane of its sheave, up- or downstage, at the next block. */
  readonly fleetOffset?: number;
};

export type LinesAsked = {
  readonly purchase: 1 | 2;
  readonly lines: readonly AskedLine[];
  readonly headX: number;
  readonly loftHeight: number;
  readonly headHeight: number;
  /** Lower end of the wires, and where they meet the arbor or its block. */
  readonly wireEndHeight: number;
  readonly attachHeight: number;
  readonly lineMassPerLength: number;
  readonly cable?: AskedCable;
  readonly handLineMass?: number;
  readonly handLineTension?: number;
  readonly friction?: { readonly bearing: Bearing; readonly batten: 'out' | 'in' };
  /** What hangs on either side, for the force with one of them held. */
  readonly held?: { readonly battenSide: number; readonly arbor: number };
  readonly moves?: readonly AskedMove[];
  readonly bridles?: readonly {
    readonly load: number;
    readonly left: number;
    readonly right: number;
    readonly height: number;
  }[];
  readonly turningBlocks?: readonly { readonly tension: number; readonly turn: number }[];
};

/** A start or stop at a steady rate, a stop at once, or a fall through slack. */
export type AskedMove =
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
