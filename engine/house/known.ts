/**
 * A value that somebody can stand behind, or plainly none. Unknown is a value of its own: it
 * travels through every calculation and blocks what depends on it, and never becomes a default.
 */
export const BASES = [
  'weighed',
  'measured',
  'published',
  'calculated',
  'estimated',
  'houseRule',
  'commonPractice',
  'assumption',
  'invented',
] as const;

export type Basis = (typeof BASES)[number];

export type Provenance = {
  readonly basis: Basis;
  /** The document, sheet or sample in words. */
  readonly source?: string;
  readonly by?: string;
  /** ISO date. */
  readonly on?: string;
};

export type Known<T> =
  | {
      readonly known: true;
      readonly value: T;
      /** Half width of what the value may be off by, in its own unit; absent = not said. */
      readonly tolerance?: number;
      readonly provenance: Provenance;
    }
  | { readonly known: false; readonly why?: string };

export const known = <T>(
  value: T,
  provenance: Provenance,
  tolerance?: number,
): Known<T> & { readonly known: true } => ({
  known: true,
  value,
  provenance,
  ...(tolerance === undefined ? {} : { tolerance }),
});

export const unknownValue = (why?: string): { readonly known: false; readonly why?: string } =>
  why === undefined ? { known: false } : { known: false, why };
