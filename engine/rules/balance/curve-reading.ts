import type { SetPlan } from '#assessment';
import { isPastEitherWay, isSameHeight } from '../limits.ts';

/** The imbalance of a set over its travel, as the assessment worked it out. */
export type Curve = SetPlan['curve'];

/** One reading: U on one side of a height, N, and what it may be off by, N. */
export type Reading = {
  readonly heightM: number;
  readonly imbalanceN: number;
  readonly toleranceN: number;
};

export type Side = 'below' | 'above';

/**
 * U at a height. Between two nodes the curve is a straight line from what is above the lower one
 * to what is below the upper one; at a node it has two sides. Null off the curve.
 */
export const readCurve = ({ nodes }: Curve, heightM: number, side: Side): Reading | null => {
  const node = nodes.find(({ height }) => isSameHeight(height, heightM));
  if (node !== undefined) {
    const imbalanceN = side === 'above' ? node.above : node.below;
    return { heightM, imbalanceN, toleranceN: node.uncertainty };
  }
  const index = nodes.findIndex(({ height }) => height > heightM);
  const [lower, upper] = [nodes[index - 1], nodes[index]];
  if (lower === undefined || upper === undefined) return null;
  const share = (heightM - lower.height) / (upper.height - lower.height);
  return {
    heightM,
    imbalanceN: lower.above + share * (upper.below - lower.above),
    toleranceN: lower.uncertainty + share * (upper.uncertainty - lower.uncertainty),
  };
};

/**
 * Every reading between two heights that can be the worst: both ends and both sides of each node
 * between them. The ends count only from inside, so that a range that begins at lift-off begins
 * with the piece in the air; a range of one height is that of a piece in the air.
 */
export const readingsBetween = (curve: Curve, fromM: number, toM: number): readonly Reading[] => {
  const isInside = (heightM: number): boolean =>
    heightM > fromM &&
    heightM < toM &&
    !isSameHeight(heightM, fromM) &&
    !isSameHeight(heightM, toM);
  const inside = curve.nodes
    .filter(({ height }) => isInside(height))
    .flatMap(({ height }) => [
      readCurve(curve, height, 'below'),
      readCurve(curve, height, 'above'),
    ]);
  const readings = [
    readCurve(curve, fromM, 'above'),
    ...inside,
    ...(isSameHeight(fromM, toM) ? [] : [readCurve(curve, toM, 'below')]),
  ];
  return readings.filter((reading) => reading !== null);
};

/** The reading that is furthest from balance; the first where several are. */
export const furthest = (readings: readonly Reading[]): Reading | null =>
  readings.reduce<Reading | null>(
    (worst, reading) =>
      worst === null || Math.abs(reading.imbalanceN) > Math.abs(worst.imbalanceN) ? reading : worst,
    null,
  );

/**
 * The highest height at or under `fromM` from which U is past a limit; null where it never is.
 * On the way in that is where it first gets out of what holds it.
 */
export const passesBelow = (curve: Curve, fromM: number, limitN: number): number | null => {
  const readings = curve.nodes.filter(
    ({ height }) => height < fromM || isSameHeight(height, fromM),
  );
  for (const [back, node] of readings.toReversed().entries()) {
    if (isPastEitherWay(node.below, limitN)) return node.height;
    const lower = readings[readings.length - 2 - back];
    if (lower === undefined || !isPastEitherWay(lower.above, limitN)) continue;
    const target = Math.sign(lower.above) * limitN;
    const share = (target - lower.above) / (node.below - lower.above);
    return lower.height + share * (node.height - lower.height);
  }
  return null;
};
