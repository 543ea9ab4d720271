import { assert } from '#outcome';
import { type Metres, metres, type Newtons } from '#quantities';
import type { BalanceSet } from './balance-set.ts';
import { breakHeights, carriedMass, isSameHeight, SAME_HEIGHT_M } from './carried-mass.ts';
import { contactInterval, imbalanceAt, imbalanceBelow, imbalanceUncertainty } from './imbalance.ts';

/**
 * One height of the curve. Between two nodes U is a straight line from the lower node's `above`
 * to the upper node's `below`, so the nodes are the whole curve and nothing is sampled.
 */
export type CurveNode = {
  readonly height: Metres;
  readonly below: Newtons;
  readonly above: Newtons;
  /** What the system may choose between at the height itself, where a piece shares its load. */
  readonly contact: { readonly low: Newtons; readonly high: Newtons };
  /** On the side above, where more hangs: just below a jump it is never more than this. */
  readonly uncertainty: Newtons;
};

/**
 * A height at which U is zero or jumps through it. A stretch along which U is zero throughout
 * settles nowhere and is none.
 */
export type Equilibrium = {
  readonly height: Metres;
  /** True where the set comes back when it is moved: dU/dh > 0. */
  readonly settles: boolean;
};

export type Jump = {
  readonly height: Metres;
  readonly below: Newtons;
  readonly above: Newtons;
  /** Indexes of the items that meet the deck here. */
  readonly items: readonly number[];
};

export type BalanceCurve = {
  readonly nodes: readonly CurveNode[];
  readonly jumps: readonly Jump[];
  readonly equilibria: readonly Equilibrium[];
};

/**
 * The imbalance over a stretch of the travel as straight pieces between exact break heights.
 *
 * Source  every carried mass of `carried-mass.ts` is piecewise linear in h, and so is U
 * Check   between any two nodes imbalanceAt lies on the straight line (curve.laws.test.ts);
 *         VAL-BAL-14 for the equilibria, VAL-BAL-16 for the extremes
 */
export const balanceCurve = (
  set: BalanceSet,
  from: number = set.lowStop,
  to: number = set.highStop,
): BalanceCurve => {
  const heights = curveHeights(set, from, to);
  const nodes = heights.map((heightM) => nodeAt(set, heightM));
  return { nodes, jumps: jumpsOf(set, nodes), equilibria: equilibriaOf(nodes) };
};

const curveHeights = (set: BalanceSet, from: number, to: number): readonly number[] => {
  const inside = set.items
    .flatMap(breakHeights)
    .filter((heightM) => heightM > from + SAME_HEIGHT_M && heightM < to - SAME_HEIGHT_M)
    .toSorted((one, other) => one - other);
  const apart: number[] = [from];
  for (const heightM of inside) {
    if (!isSameHeight(heightM, apart.at(-1) ?? from)) apart.push(heightM);
  }
  return isSameHeight(from, to) ? apart : [...apart, to];
};

const nodeAt = (set: BalanceSet, heightM: number): CurveNode => ({
  height: metres(heightM),
  below: imbalanceBelow(set, heightM),
  above: imbalanceAt(set, heightM),
  contact: contactInterval(set, heightM),
  uncertainty: imbalanceUncertainty(set, heightM),
});

const jumpsOf = (set: BalanceSet, nodes: readonly CurveNode[]): readonly Jump[] =>
  nodes
    .filter(({ below, above }) => below !== above)
    .map(({ height, below, above }) => ({
      height,
      below,
      above,
      items: set.items.flatMap((item, index) => {
        const { massKg, lowKg } = carriedMass(item, height);
        return lowKg !== massKg ? [index] : [];
      }),
    }));

const equilibriaOf = (nodes: readonly CurveNode[]): readonly Equilibrium[] => {
  const found: Equilibrium[] = [];
  nodes.forEach((node, index) => {
    const previous = nodes[index - 1];
    const isLast = index === nodes.length - 1;
    const root = previous === undefined ? null : rootBetween(previous, node, isLast);
    if (root !== null) found.push(root);
    // A jump through zero upward is a resting place: the piece half stands on the deck.
    if (node.below < 0 && node.above > 0) found.push({ height: node.height, settles: true });
  });
  return found;
};

const rootBetween = (lower: CurveNode, upper: CurveNode, isLast: boolean): Equilibrium | null => {
  const fromN: number = lower.above;
  const toN: number = upper.below;
  if (fromN === toN || (fromN > 0 && toN > 0) || (fromN < 0 && toN < 0)) return null;
  // An upper end that is exactly zero belongs to the piece that starts there, where one does.
  if (toN === 0 && upper.above === 0 && !isLast) return null;
  const share = fromN / (fromN - toN);
  return {
    height: metres(lower.height + share * (upper.height - lower.height)),
    settles: toN > fromN,
  };
};

/** The lowest and highest U over a curve, and where; both sides of a jump count. */
export type Extremes = {
  readonly least: { readonly height: Metres; readonly imbalance: Newtons };
  readonly most: { readonly height: Metres; readonly imbalance: Newtons };
};

/**
 * The worst each way over the nodes of a curve. The first node counts from above and the last
 * from below only where the curve was cut there (`ends: 'inside'`): a free range that starts at
 * lift-off starts with the piece in the air.
 */
export const extremesOf = (
  nodes: readonly CurveNode[],
  ends: 'inside' | 'both' = 'both',
): Extremes => {
  const values = nodes.flatMap(({ height, below, above }, index) => {
    const sides = [];
    if (!(ends === 'inside' && index === 0)) sides.push({ height, imbalance: below });
    if (!(ends === 'inside' && index === nodes.length - 1 && nodes.length > 1)) {
      sides.push({ height, imbalance: above });
    }
    return sides;
  });
  const [first] = values;
  assert(first !== undefined, 'a curve has at least one node');
  return {
    least: values.reduce((one, other) => (other.imbalance < one.imbalance ? other : one), first),
    most: values.reduce((one, other) => (other.imbalance > one.imbalance ? other : one), first),
  };
};

/**
 * Slope of U at a height, N per m, on the piece that starts there, or that ends at the top of the
 * curve. Below zero the set runs away. Null off the curve, and where the curve is one height.
 */
export const slopeAt = ({ nodes }: BalanceCurve, battenM: number): number | null => {
  const last = nodes.at(-1);
  if (last === undefined || battenM > last.height + SAME_HEIGHT_M) return null;
  const start = nodes.slice(0, -1).findLastIndex(({ height }) => battenM >= height - SAME_HEIGHT_M);
  const [lower, upper] = [nodes[start], nodes[start + 1]];
  if (lower === undefined || upper === undefined) return null;
  return (upper.below - lower.above) / (upper.height - lower.height);
};
