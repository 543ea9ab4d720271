/** Pieces put on sets, none before one that hung downstage of it, at least cost: exactly. */

export type Places = {
  readonly pieces: number;
  readonly sets: number;
  /** Of a piece on a set; null where it cannot hang there. Both count from downstage. */
  readonly cost: (piece: number, set: number) => number | null;
  /** Whether two that hang next to each other would touch: piece and set of the one downstage. */
  readonly clash: (piece: number, set: number, next: number, nextSet: number) => boolean;
  /** Of a piece that hangs nowhere. */
  readonly leftOut: number;
};

type Best = { readonly total: number; readonly before: readonly [number, number] | null };

/**
 * The set of each piece, null where it hangs nowhere, so that the sum of all costs is least.
 *
 *     f(i, j) = c(i, j) + min( i·L,  min f(k, l) + (i − k − 1)·L )   over k < i, l < j, no clash
 *     least   = min( n·L,  min f(i, j) + (n − 1 − i)·L )
 *
 *     c(i, j)  cost of piece i on set j
 *     L        leftOut, of a piece that hangs nowhere
 *     f(i, j)  least cost of pieces 0 to i, of which i is the last that hangs, on set j
 *
 * Source  Bellman's principle of optimality, on the shortest path through the pairs
 * Holds   pieces and sets in upstage order; a clash of neighbours only: where neighbours of a row
 *         do not overlap, no two of it do
 * Omits   pieces that change their order in depth (dearer than it need be, never foul)
 * Check   least-cost.laws.test.ts: HiGHS on the same question, as an integer program
 */
export const leastCost = (asked: Places): readonly (number | null)[] => {
  const { pieces, sets, cost, leftOut } = asked;
  const best: (Best | null)[][] = [];
  let end: Best = { total: pieces * leftOut, before: null };
  for (let piece = 0; piece < pieces; piece += 1) {
    const row: (Best | null)[] = [];
    for (let set = 0; set < sets; set += 1) {
      const own = cost(piece, set);
      const found = own === null ? null : bestWith(asked, best, { piece, set, own });
      row.push(found);
      if (found === null) continue;
      const total = found.total + (pieces - 1 - piece) * leftOut;
      if (total < end.total) end = { total, before: [piece, set] };
    }
    best.push(row);
  }
  return traced(best, end.before, pieces);
};

const bestWith = (
  { clash, leftOut }: Places,
  best: readonly (readonly (Best | null)[])[],
  { piece, set, own }: { readonly piece: number; readonly set: number; readonly own: number },
): Best => {
  let found: Best = { total: own + piece * leftOut, before: null };
  for (let last = 0; last < piece; last += 1) {
    for (let lastSet = 0; lastSet < set; lastSet += 1) {
      const before = best[last]?.[lastSet];
      if (before === null || before === undefined) continue;
      const total = before.total + (piece - last - 1) * leftOut + own;
      if (total < found.total && !clash(last, lastSet, piece, set)) {
        found = { total, before: [last, lastSet] };
      }
    }
  }
  return found;
};

const traced = (
  best: readonly (readonly (Best | null)[])[],
  end: Best['before'],
  pieces: number,
): readonly (number | null)[] => {
  const sets: (number | null)[] = Array.from({ length: pieces }, () => null);
  for (let at = end; at !== null; ) {
    const [piece, set] = at;
    sets[piece] = set;
    at = best[piece]?.[set]?.before ?? null;
  }
  return sets;
};
