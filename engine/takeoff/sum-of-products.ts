/** The arithmetic under every take-off: a sum of products of numbers that may each be off. */

export type Uncertain = {
  /** Which quantity it is. Two factors with one key are one quantity, and are off together. */
  readonly key: string;
  readonly value: number;
  /** Half width of what it may be off by; null where that is unknown. */
  readonly tolerance: number | null;
};

export type Sum = {
  readonly value: number;
  /** Half width with every quantity at its worst; null where one tolerance is unknown. */
  readonly worst: number | null;
  readonly rootSumSquare: number | null;
};

/**
 * A sum of products and what it may be off by.
 *
 *     m   = Σ_j Π_i x_ij
 *     Δm  = Σ_j [ Π_i (x_ij + Δx_ij) − Π_i x_ij ]
 *     s_m = √( Σ_k ( Σ_j ∂m_j/∂x_k · Δx_k )² )
 *
 *     x   any  value      a quantity, 0 or more
 *     Δx  any  tolerance  its half width
 *     Δm  any  worst      every quantity at its worst: adds up linearly from product to product
 *     s_m any  rootSumSquare  independent quantities, to the first order: for information only
 *
 * Source  Δm: the greatest value over the box of tolerances, which is its upper corner, since
 *         every product grows with every quantity; s_m: law of propagation for uncorrelated
 *         quantities, JCGM 100:2008 section 5.1.2 (from memory)
 * Holds   x >= 0, Δx >= 0
 * Omits   that the lower corner is nearer than the upper one (Δm is a little wide on that side)
 * Check   VAL-TKO-12
 */
export const sumOfProducts = (products: readonly (readonly Uncertain[])[]): Sum => {
  const value = addUp(products.map(productOf));
  const tolerances = products.flat().map(({ tolerance }) => tolerance);
  if (tolerances.includes(null)) return { value, worst: null, rootSumSquare: null };
  const worst = addUp(products.map(worstOf));
  const shares = [...sharesByKey(products).values()];
  return { value, worst, rootSumSquare: Math.sqrt(addUp(shares.map((share) => share * share))) };
};

const addUp = (numbers: readonly number[]): number => numbers.reduce((sum, n) => sum + n, 0);

const productOf = (factors: readonly Uncertain[]): number =>
  factors.reduce((product, { value }) => product * value, 1);

/** Upper corner less the value, built up factor by factor: subtracting the two loses digits. */
const worstOf = (factors: readonly Uncertain[]): number =>
  factors.reduce(
    ({ upper, extra }, { value, tolerance }) => ({
      upper: upper * (value + (tolerance ?? 0)),
      extra: extra * value + upper * (tolerance ?? 0),
    }),
    { upper: 1, extra: 0 },
  ).extra;

/** How far each quantity moves the sum on its own. */
const sharesByKey = (products: readonly (readonly Uncertain[])[]): ReadonlyMap<string, number> => {
  const shares = new Map<string, number>();
  for (const product of products) {
    for (const [index, { key, tolerance }] of product.entries()) {
      const slope = productOf(product.toSpliced(index, 1));
      shares.set(key, (shares.get(key) ?? 0) + slope * (tolerance ?? 0));
    }
  }
  return shares;
};
