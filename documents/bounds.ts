/** Two bounds of which the first must be below the second. */
import type { Place } from './shape/shape.ts';

/** Equal bounds enclose nothing, and are refused as well. */
export const boundsInOrder = (low: number, high: number, place: Place): void => {
  if (low < high) return;
  place.faults.refuse('boundsReversed', place.path, {
    found: `from ${metresText(low)} to ${metresText(high)}`,
    accepted: 'the lower bound first, and the other above it',
  });
};

/** A length in a refusal, in both systems, since the reader may use either. */
export const metresText = (length: number): string =>
  `${length.toFixed(3)} m (${(length / 0.3048).toFixed(2)} ft)`;
