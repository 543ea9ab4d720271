/**
 * The worked orders of the demo: right ones and wrong ones, with the imbalance after each step
 * that the plan names, in pounds at the batten, to the pound that it prints.
 *
 * All are worked at the nominal limit of the lock and with every mass as listed.
 */
import { CLOTH_ORDERS } from './cloth-orders.ts';
import { ELECTRIC_ORDERS } from './electric-orders.ts';
import { HARD_PIECE_ORDERS } from './hard-piece-orders.ts';
import { OTHER_ORDERS } from './other-orders.ts';
import type { WorkedOrder } from './write-order.ts';

export const WORKED_ORDERS: readonly WorkedOrder[] = [
  ...ELECTRIC_ORDERS,
  ...CLOTH_ORDERS,
  ...HARD_PIECE_ORDERS,
  ...OTHER_ORDERS,
];
