/** Each step at least halves the span, and no span that numbers hold can be halved more often. */
const MOST_STEPS = 200;

/**
 * Where f crosses zero between `from` and `to`, at which its signs differ or one is zero, to the
 * last places that numbers can tell.
 *
 * Source  Newton's step where it stays between the bounds, else half the span
 * Holds   f is continuous on the span and `slope` its derivative; f(from), f(to) differ in sign
 */
export const crossing = (
  f: (x: number) => number,
  slope: (x: number) => number,
  { from, to }: { readonly from: number; readonly to: number },
): number => {
  let [low, high] = [from, to];
  const atLow = f(low);
  if (atLow === 0) return low;
  let x = (low + high) / 2;
  for (let step = 0; step < MOST_STEPS; step++) {
    const value = f(x);
    if (value === 0) return x;
    if (value > 0 === atLow > 0) low = x;
    else high = x;
    const next = x - value / slope(x);
    const isInside = next > low && next < high;
    const after = isInside ? next : (low + high) / 2;
    // A step that no longer moves is the answer; so is a span with no number inside.
    if (Math.abs(after - x) <= 2 * Number.EPSILON * Math.abs(x) || high - low <= 0) return after;
    if (after <= low || after >= high) return after;
    x = after;
  }
  return x;
};
