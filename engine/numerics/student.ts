import { crossing } from './crossing.ts';

/**
 * Share A of Student's t distribution that lies between −t and t, with t = √ν·tan θ, and how fast
 * it grows with θ. Whole degrees of freedom make it a finite sum:
 *
 *     A₁ = 2θ/π      A₂ = sin θ      A(ν+2) = A(ν) + (c(ν)/ν)·cos^ν θ·sin θ
 *     dA/dθ = c(ν)·cos^(ν−1) θ      c₁ = 2/π      c₂ = 1      c(ν+2) = c(ν)·(ν+1)/ν
 *
 * Source  handbook of mathematical functions, 26.7.3 and 26.7.4 (from memory), as a recursion
 * Holds   ν a whole number of at least 1
 */
const shareWithin = (theta: number, freedom: number): { share: number; slope: number } => {
  const [cosine, sine] = [Math.cos(theta), Math.sin(theta)];
  const isOdd = freedom % 2 === 1;
  let share = isOdd ? (2 * theta) / Math.PI : sine;
  let factor = isOdd ? 2 / Math.PI : 1;
  for (let nu = isOdd ? 1 : 2; nu < freedom; nu += 2) {
    share += (factor / nu) * cosine ** nu * sine;
    factor *= (nu + 1) / nu;
  }
  return { share, slope: factor * cosine ** (freedom - 1) };
};

/**
 * How many deviations either side of the mean hold a share of Student's t distribution.
 *
 * Source  the finite sum above, solved for θ
 * Holds   0 < share < 1, freedom a whole number of at least 1
 * Check   student.test.ts, a table of the handbooks
 */
export const studentWithin = (share: number, freedom: number): number => {
  const theta = crossing(
    (x) => shareWithin(x, freedom).share - share,
    (x) => shareWithin(x, freedom).slope,
    { from: 0, to: Math.PI / 2 },
  );
  return Math.sqrt(freedom) * Math.tan(theta);
};
