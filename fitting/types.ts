/** A show, the house it leaves, the house it goes to, and what is answered of the two. */
import type { JsonObject } from '#documents';
import type { Finding, Measure } from '#findings';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import type { Withheld } from '#placing';
import type { Show } from '#show';
import type { HouseState } from '#state';

export type FitAsked = {
  readonly from: {
    readonly house: House;
    readonly show: Show;
    /** The show as it was written, with its typed measures. */
    readonly document: JsonObject;
  };
  readonly to: {
    readonly house: House;
    /** What is recorded there; null where nobody has recorded anything. */
    readonly state: HouseState | null;
  };
  readonly nowMs?: number;
};

/** By the set that a piece leaves, the set it goes to; null hangs nowhere. */
export type Mapping = Readonly<Record<string, string | null>>;

/** What had to be written otherwise, since the other house does not reach or hold it. */
export type FitChange =
  | {
      readonly is: 'trim';
      readonly name: string;
      readonly wasM: number;
      /** The stop, which is the nearest that the batten reaches. */
      readonly nowM: number;
    }
  | { readonly is: 'place'; readonly item: string; readonly byM: number }
  | { readonly is: 'deadHung'; readonly wasM: number }
  | { readonly is: 'bricks' }
  | { readonly is: 'coupling'; readonly withSet: string }
  | { readonly is: 'cue'; readonly number: string; readonly how: 'nearer' | 'gone' };

/** Why a piece cannot hang on a set at all. */
export type Bar =
  | { readonly is: 'placeNotKnown' }
  | { readonly is: 'noTravel' }
  | { readonly is: 'tooHeavy'; readonly massKg: number; readonly limitKg: number }
  | { readonly is: 'noMix'; readonly limit: string }
  | { readonly is: 'pastLock'; readonly worstN: number; readonly lockN: number };

/** A value of the plant in both houses; null where nobody knows it there. */
export type Differs = {
  readonly what: string;
  readonly there: Measure | string | null;
  readonly here: Measure | string | null;
};

export type PieceFit = {
  /** The set that it leaves, in the old house. */
  readonly from: string;
  readonly name: string;
  readonly to: string | null;
  /** Upstage of where it hung, below zero downstage; null where a place is not known. */
  readonly shiftM: number | null;
  readonly changes: readonly FitChange[];
  readonly differs: readonly Differs[];
  /** What the rules say of it there and did not say here. */
  readonly fails: readonly Finding[];
  /** Why it hangs nowhere, by how many free sets; empty where it hangs. */
  readonly bars: readonly { readonly bar: Bar; readonly sets: readonly string[] }[];
};

/** What nobody knows of the other house, and what waits for it. */
export type Question = {
  /** What it is asked of: "line sets 1, 2", "head-block bay South". */
  readonly of: string;
  readonly what: string;
  readonly why: string;
  readonly decides: string;
};

export type Fit = {
  readonly mapping: Mapping;
  readonly pieces: readonly PieceFit[];
  /** Of the house as a whole. */
  readonly differs: readonly Differs[];
  /** Of the house as a whole: stop and caution. */
  readonly fails: readonly Finding[];
  readonly questions: readonly Question[];
  readonly withheld: readonly Withheld[];
  /** The new show as it would be saved; `refusals` where the other house does not read it. */
  readonly document: JsonObject;
  readonly refusals: readonly Refusal[];
};
