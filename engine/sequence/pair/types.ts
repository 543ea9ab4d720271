/** What is asked of two coupled sets, and the order that is found for both. */
import type { Metres } from '#quantities';
import type { OrderPhysics, PairStep, Standing } from '#state';
import type { OrderGoal, OrderPlan, RestraintNeeded } from '../types.ts';

/** One set of the pair: how it stands, and how it is to stand. */
export type PairJob = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly goal: OrderGoal;
};

/** One piece on two sets, by the name that its share has on each. */
export type SharedPiece = { readonly first: string; readonly second: string };

/** Height of the second batten over the first, between which the shares are what the lists say. */
export type PairBand = { readonly leastM: number; readonly mostM: number };

export type Pair = {
  readonly first: PairJob;
  readonly second: PairJob;
  readonly shared: readonly SharedPiece[];
  readonly band: PairBand;
};

export type PairState = { readonly first: Standing; readonly second: Standing };

type Apart = {
  readonly first: Metres;
  readonly second: Metres;
  /** Second over first. */
  readonly apartM: number;
};

/** Why no order for the pair was found. */
export type PairNone =
  /** The two jobs do not fit each other, before anything was searched. */
  | { readonly why: 'asked'; readonly what: 'band' | 'oneSided' }
  /** One set has none by itself, after what the other takes from the galleries. */
  | {
      readonly why: 'alone';
      readonly set: string;
      readonly none: Extract<OrderPlan, { readonly none: unknown }>['none'];
    }
  /** With the piece on both, the battens would be out of the band here. */
  | ({ readonly why: 'band'; readonly at: 'start' | 'hands' | 'goal' } & Apart)
  /** From here on the two orders could not be matched: flights, hands or bricks do not fit. */
  | ({ readonly why: 'unmatched' } & Apart);

export type PairPlan =
  | {
      readonly found: {
        readonly steps: readonly PairStep[];
        /** The start, then one after each step. */
        readonly states: readonly PairState[];
        readonly restraints: {
          readonly first: RestraintNeeded | null;
          readonly second: RestraintNeeded | null;
        };
        readonly searched: number;
        /** Two orders that are best alone are matched: their match is not claimed to be best. */
        readonly optimal: false;
      };
    }
  /** None was found; but for `asked`, nobody says that none exists. */
  | { readonly none: PairNone & { readonly searched: number } }
  | { readonly stopped: { readonly searched: number } };
