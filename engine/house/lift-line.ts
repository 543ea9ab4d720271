import type { Kilograms, Metres, Newtons, Radians } from '#quantities';
import type { Known } from './known.ts';

export const TERMINATIONS = [
  'spelterSocket',
  'swagedSocket',
  'mechanicalSplice',
  'handTuckedSplice',
  'wedgeSocket',
  'compressionSleeve',
  'clips',
] as const;

/** How the end of a lift line is made. */
export type Termination = (typeof TERMINATIONS)[number];

/** What the lift lines of a set are made of. */
export type Cable = {
  readonly diameter: Known<Metres>;
  /** Of the catalogue, before any end or bend. */
  readonly breakingStrength: Known<Newtons>;
  /** EA: force over stretch for each length. Stored as it is, since metal areas differ. */
  readonly axialStiffness: Known<Newtons>;
  readonly termination: Termination | null;
  readonly description?: string;
};

export const BEARINGS = ['plain', 'rolling'] as const;
export type Bearing = (typeof BEARINGS)[number];

/** Blocks of one kind: loft blocks one a line, or the head block of the set. */
export type Block = {
  /** At the bottom of the groove. */
  readonly sheaveDiameter: Known<Metres>;
  /** Resultant that one block may carry. */
  readonly rated: Known<Newtons>;
  readonly bearing: Bearing | null;
  /** Furthest that a line leaves the plane of its sheave. */
  readonly fleetAngle: Known<Radians>;
};

/** A block that turns one line between its loft block and the head block. */
export type MuleBlock = {
  /** Which line, counted from stage right from 1. */
  readonly line: number;
  readonly x: Metres;
  readonly z: Metres;
  readonly rated: Known<Newtons>;
};

/** What carries the batten, from its end of the lines to the head block. */
export type Lift = {
  readonly cable: Cable;
  readonly loftBlock: Block;
  readonly headBlock: Block;
  readonly muleBlocks: readonly MuleBlock[];
  /** How much shorter than true each line is, from stage right; longer is negative. */
  readonly lineTrims: readonly Metres[] | null;
  /** The whole hand line of the set, which hangs on the head block. */
  readonly handLineMass: Known<Kilograms>;
};
