/** Plain numbers in SI: m, kg, N; angles in radians. Heights above the deck, x across the stage. */
import type { Newtons, Radians } from '#quantities';

export type Place = { readonly x: number; readonly z: number };

/** Where one lift line runs, from the batten over its blocks to the arbor. */
export type LineRun = {
  readonly purchase: 1 | 2;
  readonly lineX: number;
  readonly headX: number;
  readonly loftZ: number;
  readonly headZ: number;
  /** Lower end of the wire, and where it meets the arbor (double purchase: the arbor's block). */
  readonly wireEndZ: number;
  readonly attachZ: number;
  /** Blocks between loft block and head block, in the order in which the line meets them. */
  readonly mules?: readonly Place[];
};

/** The force of a line or of many on a block, and its parts. */
export type BlockForce = {
  readonly resultant: Newtons;
  /** Towards the head block positive; of a head block, towards the loft blocks. */
  readonly horizontal: Newtons;
  /** Down positive. */
  readonly vertical: Newtons;
  /** Angle through which the line turns; of many lines, the mean by their tensions. */
  readonly turn: Radians;
};

/** What is left of a strength, as a part of one, and where the figure is from. */
export type Efficiency = { readonly value: number; readonly source: string };

/** What one set puts on the building at one moment. */
export type SetOnSteel = {
  readonly set: string;
  readonly bay: string | null;
  readonly purchase: 1 | 2;
  readonly arborMass: number;
  readonly handLineMass: number;
  /**
   * Wire that hangs from the head steel on the arbor's side: all lines, and with double purchase
   * both legs. Nothing where it is left out of account.
   */
  readonly arborWireMass: number;
  /** Tension at the loft block of each line, with its x; empty where the batten is not known. */
  readonly lines: readonly { readonly x: number; readonly tension: number }[];
  /** Moving: its loads are raised by the moving share. */
  readonly moving: boolean;
};

export type Total = {
  readonly id: string;
  readonly sets: readonly { readonly set: string; readonly value: Newtons }[];
  readonly value: Newtons;
  /** Of the sets that are said to move, in `value` too. */
  readonly dynamic: Newtons;
};
