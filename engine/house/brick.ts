import type { Kilograms, Metres } from '#quantities';
import type { Known } from './known.ts';
import type { WeighedSample } from './weighed-sample.ts';

/** One kind of counterweight brick, with its mass from a weighed sample of this house. */
export type BrickKind = {
  readonly id: string;
  readonly name: string;
  /** By the sample where there is one. */
  readonly mass: Known<Kilograms>;
  readonly sample?: WeighedSample;
  readonly thickness: Known<Metres>;
  /** Length of gallery floor that one takes in a row along the wall. */
  readonly floorLength: Known<Metres>;
  /** Pipe weight stays on the arbor; show bricks come and go. A kind may serve either or both. */
  readonly serves: { readonly pipeWeight: boolean; readonly show: boolean };
  /** Ids of kinds that a loader can mistake this one for. */
  readonly looksLike: readonly string[];
  readonly owned: Known<number>;
  readonly remark?: string;
};

/** Plates that tie the rods of an arbor at intervals up the stack. */
export type Spreader = {
  readonly mass: Known<Kilograms>;
  readonly thickness: Known<Metres>;
  /** Thickness of bricks between two plates. */
  readonly every: Known<Metres>;
  /** Counted once only: true when the mass of the carriage already has them. */
  readonly inCarriage: boolean;
};

/** So many plates of one kind, one on the other. */
export type PlateRun = { readonly kind: string; readonly count: number };
