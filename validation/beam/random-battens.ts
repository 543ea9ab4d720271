/**
 * Battens drawn from a seed, among them what no house has: lines a few millimetres apart, lines
 * that do not stretch beside slack ones, loads at the very ends, trims of a hand's width, nothing
 * on the pipe, one line alone, loads that tip the batten over.
 */
import type { BattenCase, HungPiece, LiftLine, Load, Support } from '#beam';
import type { Draw } from '../draw.ts';

const LEAST_APART_M = 2e-3;

/** Places between two ends in order, none nearer than may be; closer than usual now and then. */
const places = (draw: Draw, count: number, left: number, right: number): readonly number[] => {
  const xs: number[] = [];
  for (let tries = 0; xs.length < count && tries < 100; tries++) {
    const near = xs.at(-1);
    const x =
      near !== undefined && draw.chance(0.1)
        ? near + draw.between(LEAST_APART_M, 0.1)
        : draw.between(left, right);
    if (x <= right && xs.every((other) => Math.abs(other - x) >= LEAST_APART_M)) xs.push(x);
  }
  return xs.toSorted((one, other) => one - other);
};

/** Softest and stiffest far beyond any wire, evenly by the power of ten. */
const powerOfTen = (draw: Draw, low: number, high: number): number => 10 ** draw.between(low, high);

/** Powers of ten: of wires and pipes as there are, or far beyond what anybody makes. */
type Range = {
  readonly line: readonly [number, number];
  readonly moment: readonly [number, number];
};
const USUAL: Range = { line: [3.5, 6.5], moment: [-8, -5] };
const WIDE: Range = { line: [1.5, 9], moment: [-10, -2] };

const lineAt = (draw: Draw, range: Range, x: number): LiftLine => ({
  x,
  stiffness: draw.chance(0.15) ? null : powerOfTen(draw, ...range.line),
  ...(draw.chance(0.5) ? { trim: draw.between(-0.05, 0.05) } : {}),
});

const loadOn = (draw: Draw, { left, right }: Span, xs: readonly number[]): Load => {
  const mass = draw.chance(0.05) ? 0 : draw.between(0.5, 300);
  if (draw.chance(0.3)) {
    const [one, other] = [draw.between(left, right), draw.between(left, right)];
    return { from: Math.min(one, other), to: Math.max(one, other), mass };
  }
  if (draw.chance(0.1)) return { x: draw.chance(0.5) ? left : right, mass };
  if (draw.chance(0.1)) return { x: xs[draw.whole(0, xs.length - 1)] ?? left, mass };
  return { x: draw.between(left, right), mass };
};

type Span = { readonly left: number; readonly right: number };

const listOf = <T>(count: number, make: (index: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, index) => make(index));

/** With wires and pipes as there are, or now and then far beyond. */
const randomBatten = (draw: Draw): BattenCase => battenIn(draw, draw.chance(0.2) ? WIDE : USUAL);

/** With wires and pipes as there are, lines that only pull. */
export const pullingBatten = (draw: Draw): BattenCase => ({
  ...battenIn(draw, USUAL),
  tensionOnly: true,
});

const battenIn = (draw: Draw, range: Range): BattenCase => {
  const left = -draw.between(1, 12);
  const right = draw.between(1, 12);
  const count = draw.chance(0.02) ? 1 : draw.whole(2, 9);
  const inner = draw.chance(0.3) ? draw.between(0.3, 0.8) : 1;
  const xs = places(draw, count, left * inner, right * inner);
  return {
    pipe: {
      massPerLength: draw.chance(0.1) ? 0 : draw.between(0.5, 12),
      secondMoment: powerOfTen(draw, ...range.moment),
      elasticModulus: 2e11,
      sectionModulus: 5.346e-6,
      plasticModulus: 7.335e-6,
      yieldStrength: 241.3e6,
    },
    left,
    right,
    lines: xs.map((x) => lineAt(draw, range, x)),
    loads: listOf(draw.whole(0, 12), () => loadOn(draw, { left, right }, xs)),
    ...(draw.chance(0.1) ? { tensionOnly: false } : {}),
  };
};

const supportOn = (draw: Draw, { left, right }: Span): Support => ({
  x: draw.between(left, right),
  stiffness: powerOfTen(draw, 4, 7),
  height: draw.between(-0.1, 0.02),
});

/** A piece whose weight lies between its outer picks, so that it hangs level by itself. */
const pieceOn = (draw: Draw, { left, right }: Span): HungPiece => {
  const xs = places(draw, draw.whole(2, 5), left, right);
  const [from = left, to = right] = [xs[0], xs.at(-1)];
  const load = (): Load => {
    const x = from + (to - from) * draw.between(0.1, 0.9);
    return { x, mass: draw.between(5, 200) };
  };
  return {
    bendingStiffness: draw.chance(0.4) ? null : powerOfTen(draw, 3, 7),
    loads: listOf(draw.whole(1, 3), load),
    picks: xs.map((x) => ({
      x,
      stiffness: powerOfTen(draw, 4, 7),
      ...(draw.chance(0.4) ? { trim: draw.between(-0.01, 0.01) } : {}),
    })),
  };
};

/** The same, now and then on a stand or two and with a piece or two hung below. */
export const randomStructure = (draw: Draw): BattenCase => {
  const bare = randomBatten(draw);
  return {
    ...bare,
    ...(draw.chance(0.15)
      ? { supports: listOf(draw.whole(1, 2), () => supportOn(draw, bare)) }
      : {}),
    ...(draw.chance(0.15) ? { pieces: listOf(draw.whole(1, 2), () => pieceOn(draw, bare)) } : {}),
  };
};

/** As a house has them: seven lines of wire, twelve loads, one of them at the very end. */
export const houseBatten = (draw: Draw): BattenCase => {
  const half = draw.between(6, 9);
  const xs = listOf(7, (index) => ((index - 3) / 3.5) * half);
  const spot = (): number => draw.between(-half, half);
  return {
    pipe: { massPerLength: 4.05, secondMoment: 1.29e-7, elasticModulus: 2e11 },
    left: -half,
    right: half,
    lines: xs.map((x) => ({
      x,
      stiffness: 1.1e6 / (draw.between(18, 30) + x),
      trim: draw.between(-0.01, 0.01),
    })),
    loads: listOf(12, (index): Load => {
      const mass = draw.between(2, 60);
      if (index % 4 > 0) return { x: index === 5 ? half : spot(), mass };
      const [one, other] = [spot(), spot()];
      return { from: Math.min(one, other), to: Math.max(one, other), mass };
    }),
  };
};
