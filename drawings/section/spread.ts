/**
 * Where labels go that may not touch: as near to what they name as they can be, all together, in
 * the same order, and within the paper.
 *
 *     min Σ (p_i − x_i)²   with   p_{i+1} − p_i ≥ apart
 *
 * With q_i = p_i − i · apart this is the regression of rising steps, which pools neighbours that
 * would cross into their mean.
 */
export const spread = (
  wanted: readonly number[],
  apart: number,
  { from, to }: { readonly from: number; readonly to: number },
): readonly number[] => {
  type Pool = { readonly sum: number; readonly count: number };
  const mean = ({ sum, count }: Pool): number => sum / count;
  const pools: Pool[] = [];
  wanted.forEach((at, index) => {
    let pool: Pool = { sum: at - index * apart, count: 1 };
    for (let last = pools.at(-1); last !== undefined && mean(last) > mean(pool); ) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      last = pools.at(-1);
    }
    pools.push(pool);
  });
  const most = Math.max(from, to - (wanted.length - 1) * apart);
  return pools
    .flatMap((pool) => Array.from({ length: pool.count }, () => mean(pool)))
    .map((at, index) => Math.min(most, Math.max(from, at)) + index * apart);
};
