import type { BalanceItem } from './item.ts';

/**
 * One set, its items and the bricks on its arbor, as plain SI numbers (kg, m, kg/m).
 * The fields are those of `compute balance`.
 */
export type BalanceSet = {
  readonly purchase: 1 | 2;
  /** Number of lift lines, and the mass of one per length. */
  readonly lines: number;
  readonly lineMassPerLength: number;
  /** Batten with fittings. */
  readonly batten: number;
  /** Carriage without bricks. */
  readonly carriage: number;
  /** All bricks and spreader plates on the arbor, pipe weight among them. */
  readonly bricks: number;
  readonly lowStop: number;
  readonly highStop: number;
  /** Height at which the lines meet the arbor when the batten is on its low stop (z_t). */
  readonly arborTopAtLow: number;
  /** Height of the wire's lower end above the batten (z_e − h). */
  readonly wireEndAbove: number;
  readonly items: readonly BalanceItem[];
  /** Half widths of what each may be off by, kg. */
  readonly battenUncertainty?: number;
  readonly carriageUncertainty?: number;
  readonly brickUncertainty?: number;
};
