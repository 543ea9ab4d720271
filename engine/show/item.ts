import type { Known } from '#house';
import type { Kilograms, Metres } from '#quantities';
import type { Takeoff } from './takeoff.ts';

/** How an item loads its batten as the batten travels; one list, that of `compute balance`. */
export const ITEM_KINDS = ['clear', 'cloth', 'tipping', 'standing', 'loom', 'deckLoom'] as const;

export type ItemKind = (typeof ITEM_KINDS)[number];

/** Where along the batten it pulls: single points, or evenly between two. */
export type Placement =
  | { readonly at: 'points'; readonly xs: readonly Metres[] }
  | { readonly at: 'spread'; readonly from: Metres; readonly to: Metres };

/** A part that leaves in view: snow, a drop-away cloth, a piece taken off. */
export type Release = {
  readonly mass: Known<Kilograms>;
  /** What leaves, and how, in words: "snow falls". */
  readonly how: string;
  readonly cue?: string;
};

export type Item = {
  readonly id: string;
  readonly name: string;
  readonly kind: ItemKind;
  readonly takeoff: Takeoff;
  /** Height of the piece from its top to its lowest point. */
  readonly drop: Known<Metres>;
  /** Length of picks or ties from batten to the top of the piece. */
  readonly pick: Known<Metres>;
  /** Centre of gravity above the foot, as a share of the drop; only a tipping piece needs it. */
  readonly centre: Known<number>;
  readonly placement: Placement | null;
  readonly releases: readonly Release[];
  /** Tagged as carrying a person: out of scope, everything stops. */
  readonly carriesPerson: boolean;
  readonly remark?: string;
};
