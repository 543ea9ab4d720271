import type { Standing, Step } from '#state';
import type { JsonObject } from './json.ts';

/** Steps on one line set, as somebody proposes them; nothing says yet that they may be done. */
export type OrderOfWork = {
  readonly houseId: string;
  readonly showId: string;
  readonly set: string;
  /** How the set stands before the first step; null: as the record of the house has it. */
  readonly start: Standing | null;
  readonly steps: readonly Step[];
};

export type OrderDocument = { readonly raw: JsonObject; readonly order: OrderOfWork };
