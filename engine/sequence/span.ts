/** A stretch of batten heights, both ends in it, m. */
export type Span = { readonly lo: number; readonly hi: number };

/** Two heights nearer than this are one: a tenth of a micrometre, far below any mark. */
export const SAME_M = 1e-7;

/** What two stretches have in common; ends that only just miss each other touch. */
export const overlap = (one: Span, other: Span): Span | null => {
  const lo = Math.max(one.lo, other.lo);
  const hi = Math.min(one.hi, other.hi);
  if (lo <= hi) return { lo, hi };
  return lo - hi <= SAME_M ? { lo: hi, hi } : null;
};

export const isWithin = (inner: Span, outer: Span): boolean =>
  inner.lo >= outer.lo - SAME_M && inner.hi <= outer.hi + SAME_M;

export const pointSpan = (heightM: number): Span => ({ lo: heightM, hi: heightM });

/** From the first multiple of a step in a stretch to the last; null where there is none. */
export const onMultiples = (span: Span, stepM: number): Span | null => {
  const lo = Math.ceil((span.lo - SAME_M) / stepM) * stepM;
  const hi = Math.floor((span.hi + SAME_M) / stepM) * stepM;
  return lo <= hi + SAME_M ? { lo, hi: Math.max(lo, hi) } : null;
};
