/**
 * How an item loads the batten as it travels. Masses in kg, lengths in m; `uncertainty` is the
 * half width of what the item's full mass may be off by. One list with `compute balance`.
 */
export type BalanceItem =
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
