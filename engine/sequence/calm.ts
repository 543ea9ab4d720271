/**
 * Where little would be set free: heights that are low in the potential of a set.
 *
 *     F(h) = ∫ U dh from the low stop,   E(h) = F(h) − min F
 *
 * U straight between two nodes makes F a parabola there, so the heights with E below a limit are a
 * union of stretches with exact ends. E is what could be set free if nothing held the set and it
 * came to the lowest place of its travel, whichever way that lies.
 *
 * Source  the-job.md calculation 6; F is U integrated, batten heavy positive
 * Omits   friction; that a rise on the way would stop it first (E then errs high)
 */
import type { OrderNode } from '#state';
import { SAME_M, type Span } from './span.ts';

/** U = a + b·x from the foot of the piece, N and N/m; F there, J. */
type Piece = {
  readonly fromM: number;
  readonly lengthM: number;
  readonly startJ: number;
  readonly a: number;
  readonly b: number;
};

const piecesOf = (nodes: readonly OrderNode[]): readonly Piece[] => {
  const pieces: Piece[] = [];
  let startJ = 0;
  nodes.forEach((node, index) => {
    const next = nodes[index + 1];
    if (next === undefined) return;
    const lengthM = next.heightM - node.heightM;
    const piece = {
      fromM: node.heightM,
      lengthM,
      startJ,
      a: node.aboveN,
      b: (next.belowN - node.aboveN) / lengthM,
    };
    pieces.push(piece);
    startJ = energyIn(piece, lengthM);
  });
  return pieces;
};

const energyIn = ({ startJ, a, b }: Piece, x: number): number => startJ + a * x + (b * x * x) / 2;

const least = (piece: Piece): number => {
  const { a, b, lengthM } = piece;
  const bottom = b > 0 ? Math.min(lengthM, Math.max(0, -a / b)) : 0;
  return Math.min(energyIn(piece, 0), energyIn(piece, lengthM), energyIn(piece, bottom));
};

/** The most that could be set free anywhere on the travel, J. */
export const mostFree = (nodes: readonly OrderNode[]): number => {
  const pieces = piecesOf(nodes);
  if (pieces.length === 0) return 0;
  const tops = pieces.map((piece) => {
    const { a, b, lengthM } = piece;
    const top = b < 0 ? Math.min(lengthM, Math.max(0, -a / b)) : 0;
    return Math.max(energyIn(piece, 0), energyIn(piece, lengthM), energyIn(piece, top));
  });
  return Math.max(...tops) - Math.min(...pieces.map(least));
};

/** Heights from which at most so much could be set free, J; a single height is all there is. */
export const calmSpans = (nodes: readonly OrderNode[], mostJ: number): readonly Span[] => {
  const pieces = piecesOf(nodes);
  const [only] = nodes;
  if (pieces.length === 0) {
    return only === undefined ? [] : [{ lo: only.heightM, hi: only.heightM }];
  }
  const limitJ = Math.min(...pieces.map(least)) + mostJ;
  const spans: Span[] = [];
  for (const piece of pieces) {
    for (const { lo, hi } of below(piece, limitJ)) {
      const last = spans.at(-1);
      if (last !== undefined && lo <= last.hi + SAME_M) {
        spans[spans.length - 1] = { lo: last.lo, hi: Math.max(last.hi, hi) };
      } else spans.push({ lo, hi });
    }
  }
  return spans;
};

/** Rounding of sums of some kilojoules. */
const ROUNDING_J = 1e-6;

/** Where the parabola of a piece is not above a limit. */
const below = (piece: Piece, limitJ: number): readonly Span[] => {
  const { fromM, lengthM, startJ, a, b } = piece;
  const over = startJ - limitJ - ROUNDING_J;
  const roots = rootsOf(b / 2, a, over).filter((x) => x > 0 && x < lengthM);
  const cuts = [0, ...roots, lengthM];
  return cuts.slice(1).flatMap((hi, index): readonly Span[] => {
    const lo = cuts[index] ?? 0;
    const middle = (lo + hi) / 2;
    const isBelow = energyIn(piece, middle) <= limitJ + ROUNDING_J;
    if (isBelow) return [{ lo: fromM + lo, hi: fromM + hi }];
    // Above it inside: an end may still touch it.
    return [lo, hi].flatMap((x) =>
      energyIn(piece, x) <= limitJ + ROUNDING_J ? [{ lo: fromM + x, hi: fromM + x }] : [],
    );
  });
};

/** Real roots of p·x² + q·x + r, the lesser first. */
const rootsOf = (p: number, q: number, r: number): readonly number[] => {
  if (Math.abs(p) < 1e-12) return Math.abs(q) < 1e-12 ? [] : [-r / q];
  const under = q * q - 4 * p * r;
  if (under < 0) return [];
  // The larger in size first, so that nothing cancels.
  const large = -(q + (q < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  return [large / p, large === 0 ? 0 : r / large].toSorted((one, other) => one - other);
};
