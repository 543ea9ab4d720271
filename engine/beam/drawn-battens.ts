/** Random battens for the laws, made of numbers that the tests draw. */
import type { BattenCase, LiftLine, Load } from './types.ts';

/** Places as shares of the batten; a spread load reaches from one share to another. */
export type DrawnLoad = { readonly at: number; readonly to: number | null; readonly mass: number };

export type DrawnBatten = {
  readonly left: number;
  readonly length: number;
  /** On either side, as a share of the length. */
  readonly overhang: number;
  readonly lines: readonly {
    /** From the line before, in shares of all gaps. */
    readonly gap: number;
    readonly stiffness: number;
    readonly trim: number;
  }[];
  readonly loads: readonly DrawnLoad[];
  readonly massPerLength: number;
  readonly secondMoment: number;
};

const loadIn =
  (left: number, length: number) =>
  ({ at, to, mass }: DrawnLoad): Load => {
    if (to === null) return { x: left + at * length, mass };
    return {
      from: left + Math.min(at, to) * length,
      to: left + Math.max(at, to) * length,
      mass,
    };
  };

/** Three to seven wires, some short, some long, and overhangs on which something may hang. */
export const battenFrom = (drawn: DrawnBatten): BattenCase => {
  const { left, length, overhang, lines, loads, massPerLength, secondMoment } = drawn;
  const gaps = lines.slice(1).reduce((sum, { gap }) => sum + gap, 0);
  const between = length * (1 - 2 * overhang);
  let x = left + length * overhang;
  const placed = lines.map(({ gap, stiffness, trim }, index): LiftLine => {
    if (index > 0) x += (between * gap) / gaps;
    return { x, stiffness, trim };
  });
  return {
    pipe: { massPerLength, secondMoment, elasticModulus: 2e11 },
    left,
    right: left + length,
    lines: placed,
    loads: loads.map(loadIn(left, length)),
  };
};
