import type { OrderNode } from '#state';
import { SAME_M, type Span } from './span.ts';

/** One engaged thing with a rating, and the heights between which it is engaged. */
export type Rated = {
  readonly resists: 'in' | 'out' | 'both';
  readonly ratedN: number;
  readonly span: Span;
};

/** Rounding of sums of a few thousand newtons, a hundred times over; no scale shows it. */
const ROUNDING_N = 1e-6;

/** The largest single rating at a height, each way: restraints do not share, so none adds. */
export const holdsAt = (
  rated: readonly Rated[],
  span: Span,
  lockN: number,
): { readonly inN: number; readonly outN: number } => {
  let [inN, outN] = [lockN, lockN];
  for (const each of rated) {
    if (each.span.lo > span.lo + SAME_M || each.span.hi < span.hi - SAME_M) continue;
    if (each.resists !== 'out') inN = Math.max(inN, each.ratedN);
    if (each.resists !== 'in') outN = Math.max(outN, each.ratedN);
  }
  return { inN, outN };
};

type Piece = {
  readonly from: OrderNode;
  readonly to: OrderNode;
};

/**
 * Heights at which a set is held, whatever its masses are within their doubt:
 *
 *     for all δ, |δ| ≤ d, there is a u in [lo + δ, hi + δ] with −K_out ≤ u ≤ K_in
 *     which is   lo + d ≤ K_in   and   hi − d ≥ −K_out
 *
 * U is a straight line between two nodes and the holds are constant there, so the answer is a
 * union of stretches with exact ends. Two heights of one stretch can be flown between: every
 * height on the way holds too.
 *
 * Source  the-job.md 4.3 (contact: there is one; doubt: for all)
 * Omits   contact between two nodes, where a piece drags on the deck: stricter
 */
export const heldSpans = (
  nodes: readonly OrderNode[],
  rated: readonly Rated[],
  lockN: number,
  doubtShare: number,
): readonly Span[] => {
  const cut = cutAt(nodes, rated);
  const spans: Span[] = [];
  const add = (span: Span): void => {
    const last = spans.at(-1);
    if (last !== undefined && span.lo <= last.hi + SAME_M) {
      spans[spans.length - 1] = { lo: last.lo, hi: Math.max(last.hi, span.hi) };
    } else spans.push(span);
  };
  cut.forEach((node, index) => {
    const point = { lo: node.heightM, hi: node.heightM };
    const { inN, outN } = holdsAt(rated, point, lockN);
    const doubtN = doubtShare * node.doubtN;
    const { lowN, highN } = node.contact;
    if (lowN + doubtN <= inN + ROUNDING_N && highN - doubtN >= -outN - ROUNDING_N) add(point);
    const next = cut[index + 1];
    if (next === undefined) return;
    const piece = { from: node, to: next };
    const between = holdsAt(rated, { lo: node.heightM, hi: next.heightM }, lockN);
    const span = heldBetween(piece, between, doubtShare);
    if (span !== null) add(span);
  });
  return spans;
};

/** Nodes of the curve, and the ends of restraints as nodes of their own. */
const cutAt = (nodes: readonly OrderNode[], rated: readonly Rated[]): readonly OrderNode[] => {
  const ends = rated.flatMap(({ span }) => [span.lo, span.hi]);
  const wanted = [...new Set(ends)].filter(
    (endM) => !nodes.some(({ heightM }) => Math.abs(heightM - endM) <= SAME_M),
  );
  if (wanted.length === 0) return nodes;
  const made = wanted.flatMap((endM) => {
    const at = nodes.findLastIndex(({ heightM }) => heightM < endM);
    const [from, to] = [nodes[at], nodes[at + 1]];
    return from === undefined || to === undefined ? [] : [nodeBetween({ from, to }, endM)];
  });
  return [...nodes, ...made].toSorted((one, other) => one.heightM - other.heightM);
};

export const nodeBetween = ({ from, to }: Piece, heightM: number): OrderNode => {
  const share = (heightM - from.heightM) / (to.heightM - from.heightM);
  const valueN = from.aboveN + share * (to.belowN - from.aboveN);
  return {
    heightM,
    belowN: valueN,
    aboveN: valueN,
    contact: { lowN: valueN, highN: valueN },
    doubtN: from.doubtN + share * (to.doubtN - from.doubtN),
  };
};

/** The curve at one height; on a node itself, with the contact there. */
export const nodeAt = (nodes: readonly OrderNode[], heightM: number): OrderNode | null => {
  const on = nodes.find((node) => Math.abs(node.heightM - heightM) <= SAME_M);
  if (on !== undefined) return on;
  const at = nodes.findLastIndex((node) => node.heightM < heightM);
  const [from, to] = [nodes[at], nodes[at + 1]];
  return from === undefined || to === undefined ? null : nodeBetween({ from, to }, heightM);
};

const heldBetween = (
  { from, to }: Piece,
  { inN, outN }: { readonly inN: number; readonly outN: number },
  doubtShare: number,
): Span | null => {
  const [fromD, toD] = [doubtShare * from.doubtN, doubtShare * to.doubtN];
  // Each excess is a straight line that must not be above zero.
  const heavy = within(from.aboveN + fromD - inN, to.belowN + toD - inN);
  const light = within(-outN - from.aboveN + fromD, -outN - to.belowN + toD);
  if (heavy === null || light === null) return null;
  const [lo, hi] = [Math.max(heavy.lo, light.lo), Math.min(heavy.hi, light.hi)];
  const lengthM = to.heightM - from.heightM;
  return lo <= hi ? { lo: from.heightM + lo * lengthM, hi: from.heightM + hi * lengthM } : null;
};

/** Shares of a stretch along which a straight line from one excess to the other is not above 0. */
const within = (fromN: number, toN: number): Span | null => {
  const [a, b] = [fromN - ROUNDING_N, toN - ROUNDING_N];
  if (a <= 0 && b <= 0) return { lo: 0, hi: 1 };
  if (a > 0 && b > 0) return null;
  const root = a / (a - b);
  return a <= 0 ? { lo: 0, hi: root } : { lo: root, hi: 1 };
};
