/**
 * What the engine says in English by itself, for a tongue to find its own words by. The texts stand
 * in the engine, where they are made; a test holds each of them against it.
 */
import { NEEDS } from './needs.ts';
import { ORDER_REFUSALS } from './order-refusals.ts';
import { ORDERS } from './orders.ts';
import { PLAUSIBLE } from './plausible.ts';
import { PROOFS } from './proofs.ts';
import { REFUSALS } from './refusals.ts';
import { TABLE_REFUSALS } from './table-refusals.ts';
import { TAKEOFF } from './takeoff.ts';
import { WORKINGS } from './workings.ts';

export const TOLD: readonly string[] = [
  ...NEEDS,
  ...WORKINGS,
  ...TAKEOFF,
  ...ORDERS,
  ...ORDER_REFUSALS,
  ...REFUSALS,
  ...TABLE_REFUSALS,
  ...PLAUSIBLE,
  ...PROOFS,
];
