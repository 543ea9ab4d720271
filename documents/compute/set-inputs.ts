/** One set as plain SI numbers (m, kg, N, kg/m), as several calculations are asked of it. */
import type { CarriedItem } from '#show';

/** A set and its items, without the bricks that are asked for. */
export type BareSetInput = {
  readonly purchase: 1 | 2;
  readonly lines: number;
  readonly lineMassPerLength: number;
  readonly batten: number;
  readonly carriage: number;
  readonly lowStop: number;
  readonly highStop: number;
  /** Height at which the lines meet the arbor when the batten is on its low stop. */
  readonly arborTopAtLow: number;
  /** Height of the wire's lower end above the batten. */
  readonly wireEndAbove: number;
  readonly items: readonly CarriedItem[];
  readonly battenUncertainty?: number;
  readonly carriageUncertainty?: number;
  readonly brickUncertainty?: number;
  /** Friction at the batten, N. */
  readonly friction?: number;
  readonly handLinePerBatten?: number;
};

export type SpreaderInput = {
  readonly mass: number;
  readonly thickness: number;
  /** Thickness of bricks between two plates. */
  readonly every: number;
  readonly rule: 'floor' | 'ceil';
};
