import type { House, LineSet } from '#house';
import type { Faults } from './faults.ts';

/** A line set under check: where its fields are written, and where its faults go. */
export type Subject = {
  readonly set: LineSet;
  readonly house: House;
  readonly faults: Faults;
  readonly at: (...keys: readonly string[]) => string;
};
