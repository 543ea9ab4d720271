import { GRAVITY, type Newtons, newtons } from '#quantities';

/** The largest tension of a moment, and over the weight at rest. */
export type Peak = { readonly force: Newtons; readonly factor: number };

const peakOf = (factor: number, massKg: number): Peak => ({
  force: newtons(factor * massKg * GRAVITY),
  factor,
});

/**
 * A steady start or stop.
 *
 *     T = m·g·(1 + a/g)
 *
 *     a  m/s²  accelerationMs2  upward: a start going out, or a stop coming in
 *
 * Source  Newton's second law; the-job.md C38
 * Omits   the swing of the line when the acceleration sets in at once: then up to (1 + 2·a/g)
 * Check   check-values 8.2: 1.5 m/s stopped in 0.3 s, factor 1.510
 */
export const steadyPeak = ({
  massKg,
  accelerationMs2,
}: {
  readonly massKg: number;
  readonly accelerationMs2: number;
}): Peak => peakOf(1 + accelerationMs2 / GRAVITY, massKg);

/**
 * A load that moves at v when its line stops or goes tight at once: an emergency stop coming in, or
 * slack taken up at speed under a load that rests.
 *
 *     T = m·g·(1 + v·√(k/m) / g)
 *
 *     v  m/s  speedMs
 *     k  N/m  stiffnessNPerM  of all lines that take it together
 *     m  kg   massKg
 *
 * About the level at which it will hang the load swings as on a spring, without loss: energy
 * m·v²/2 becomes k·x²/2, so x = v·√(m/k) and the line carries k·x more than the weight. A load that
 * is picked up leaves the deck when the line carries just its weight, with the same v against it.
 *
 * Source  energy balance above; the-job.md C38 gives the second term
 * Omits   the batten's bending, friction and damping (each makes it less), the mass of the line
 *         (little more)
 * Check   dynamics.laws.test.ts: energy, and against the motion stepped through time
 */
export const suddenStopPeak = ({
  massKg,
  stiffnessNPerM,
  speedMs,
}: {
  readonly massKg: number;
  readonly stiffnessNPerM: number;
  readonly speedMs: number;
}): Peak => peakOf(1 + (speedMs * Math.sqrt(stiffnessNPerM / massKg)) / GRAVITY, massKg);

/**
 * A load that falls through the slack of its line.
 *
 *     T = m·g·(1 + √(1 + 2·k·h / (m·g)))
 *
 *     h  m  dropM  free fall before the line goes tight; with none it is 2, a load let go at once
 *
 * Source  energy balance: m·g·(h + x) = k·x²/2, T = k·x
 * Omits   as suddenStopPeak
 * Check   dynamics.laws.test.ts: energy, and against the motion stepped through time
 */
export const dropPeak = ({
  massKg,
  stiffnessNPerM,
  dropM,
}: {
  readonly massKg: number;
  readonly stiffnessNPerM: number;
  readonly dropM: number;
}): Peak => peakOf(1 + Math.sqrt(1 + (2 * stiffnessNPerM * dropM) / (massKg * GRAVITY)), massKg);
