/**
 * A bar under loads, and how it bends. Its bent line is written with the one function that knows
 * no end and no mesh, so that nothing is approximate for point and evenly spread loads:
 *
 *     y(x) = a + b·x + f · Σ P·|x − s|³ / 12        with f = 1 / (E·I)
 *
 * each |x − s|³ / 12 having a fourth derivative of P at s and nothing elsewhere. Once forces and
 * moments balance, the bar is straight beyond its outer forces, as a free end is.
 *
 * Source  Euler-Bernoulli beam E·I·y'''' = q; worked in docs/derivations/batten-on-lines.md
 */
import { GRAVITY } from '#quantities';
import type { Load } from './types.ts';

/** Forces down positive, N; patches in N for each metre. */
export type Bar = {
  readonly pointXs: readonly number[];
  readonly pointForces: readonly number[];
  readonly patches: readonly {
    readonly from: number;
    readonly to: number;
    readonly perM: number;
  }[];
  /** 1 / (E·I); 0 does not bend. */
  readonly flexibility: number;
};

export const barOf = (loads: readonly Load[], flexibility: number): Bar => {
  const pointXs: number[] = [];
  const pointForces: number[] = [];
  const patches: { readonly from: number; readonly to: number; readonly perM: number }[] = [];
  for (const load of loads) {
    const forceN = load.mass * GRAVITY;
    if (forceN === 0) continue;
    if ('x' in load) {
      pointXs.push(load.x);
      pointForces.push(forceN);
    } else if (load.from === load.to) {
      pointXs.push(load.from);
      pointForces.push(forceN);
    } else {
      patches.push({ from: load.from, to: load.to, perM: forceN / (load.to - load.from) });
    }
  }
  return { pointXs, pointForces, patches, flexibility };
};

/** Sum of the forces, and of their moments about `origin`. */
export const resultantOf = (
  { pointXs, pointForces, patches }: Bar,
  origin: number,
): { readonly forceN: number; readonly momentNm: number } => {
  let [forceN, momentNm] = [0, 0];
  for (let index = 0; index < pointXs.length; index++) {
    const each = pointForces[index] ?? 0;
    forceN += each;
    momentNm += each * ((pointXs[index] ?? 0) - origin);
  }
  for (const { from, to, perM } of patches) {
    const each = perM * (to - from);
    forceN += each;
    momentNm += each * ((from + to) / 2 - origin);
  }
  return { forceN, momentNm };
};

/** |u|³ / 12. */
export const cubed = (u: number): number => (Math.abs(u) * u * u) / 12;

/** Σ P·|x − s|³ / 12 over all loads: what they add to y(x), over f. */
export const bentAt = ({ pointXs, pointForces, patches }: Bar, x: number): number => {
  let sum = 0;
  for (let index = 0; index < pointXs.length; index++) {
    sum += (pointForces[index] ?? 0) * cubed(x - (pointXs[index] ?? 0));
  }
  for (const { from, to, perM } of patches) {
    const [a, b] = [x - from, x - to];
    // Beside the patch a⁴ − b⁴ in factors, since the difference of two near fourths is rounding.
    const fourths =
      a * b > 0
        ? Math.sign(a) * (to - from) * (a + b) * (a * a + b * b)
        : a * a * a * a + b * b * b * b;
    sum += (perM * fourths) / 48;
  }
  return sum;
};

/** The same for the slope: Σ P·(x − s)·|x − s| / 4. */
export const slopeAt = ({ pointXs, pointForces, patches }: Bar, x: number): number => {
  let sum = 0;
  for (let index = 0; index < pointXs.length; index++) {
    const u = x - (pointXs[index] ?? 0);
    sum += ((pointForces[index] ?? 0) * u * Math.abs(u)) / 4;
  }
  for (const { from, to, perM } of patches) {
    const [a, b] = [x - from, x - to];
    const cubes =
      a * b > 0
        ? Math.sign(a) * (to - from) * (a * a + a * b + b * b)
        : Math.abs(a) * a * a - Math.abs(b) * b * b;
    sum += (perM * cubes) / 12;
  }
  return sum;
};
