/**
 * How an item loads its batten as the batten travels. Masses in kg, lengths in m; `uncertainty` is
 * the half width of what the item's full mass may be off by, and absent where nobody has said. One
 * list with `compute balance`: `takeoff` makes these, `balance` takes them.
 */
export type CarriedItem =
  | {
      /** Free of the deck from `pick + drop` up; where neither is given, over the whole travel. */
      readonly kind: 'clear';
      readonly mass: number;
      readonly drop?: number;
      readonly pick?: number;
      readonly uncertainty?: number;
    }
  | {
      readonly kind: 'cloth';
      readonly mass: number;
      readonly drop: number;
      readonly tie: number;
      readonly hem: number;
      readonly uncertainty?: number;
      readonly hemUncertainty?: number;
    }
  | {
      readonly kind: 'tipping';
      readonly mass: number;
      readonly drop: number;
      readonly pick: number;
      /** Centre of gravity above the foot, as a share of the drop. */
      readonly centre: number;
      readonly uncertainty?: number;
    }
  | {
      readonly kind: 'standing';
      readonly mass: number;
      readonly drop: number;
      readonly pick: number;
      readonly uncertainty?: number;
    }
  | {
      /** Electric cable in a loop from the batten to a point fixed at a height. */
      readonly kind: 'loom';
      readonly massPerLength: number;
      readonly length: number;
      readonly fixedAt: number;
      readonly uncertainty?: number;
    }
  | {
      /** Electric cable that drops to the deck. */
      readonly kind: 'deckLoom';
      readonly massPerLength: number;
      readonly length: number;
      readonly uncertainty?: number;
    };
