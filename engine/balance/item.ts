/** What the balance takes of an item is what the take-off makes of it. */
export type { CarriedItem as BalanceItem } from '#show';
