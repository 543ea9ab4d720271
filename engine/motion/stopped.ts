/** What it does to lines and stops when a set that runs is stopped. */
import { blocked, type Reckoned, reckoned } from '#findings';
import { GRAVITY, type Metres, metres, type Newtons, newtons } from '#quantities';
import type { Run } from './runaway.ts';
import type { Moving } from './types.ts';

export type LinesThatTakeIt = {
  /** Of all lines together at the batten, N/m. */
  readonly stiffness?: number;
  /** Part of the whole that the most loaded line carries; 1/n where they share evenly. */
  readonly largestShare?: number;
  /** Of one line, after end and bend. */
  readonly breakingStrength?: number;
};

/** How a stop gives: as a spring, N/m, or over a distance at a steady force. */
export type StopGives = { readonly stiffness: number } | { readonly distance: number };

export type Snatch = {
  /** The side that runs on against the lines. */
  readonly runsOn: 'arbor' | 'batten';
  readonly allLines: Newtons;
  readonly oneLine: Reckoned<Newtons>;
  /** Of the most loaded line over its breaking strength; 1 or more breaks it. */
  readonly overBreaking: Reckoned<number>;
};

/**
 * Peak pull when the light side is stopped dead and the heavy side runs on against the lines: the
 * batten against the grid with the arbor coming down, or the arbor against its top stop with the
 * batten coming in.
 *
 *     T = W + √(k·m·v² + (W − T0)²)
 *
 *     k   N/m  stiffness  of all lines, at the batten
 *     m   kg              mass that runs on, at the batten: A/r² or M
 *     W   N               its weight there at rest: A·g/r or M·g
 *     T0  N               pull in the lines the moment before: less than W, for the side falls
 *     v   m/s             speed of the batten
 *
 * About its rest the side swings on the lines without loss: m·v²/2 and the energy of the stretch
 * that is missing, (W − T0)²/2k, become (T − W)²/2k. With T0 = W it is the sudden stop of the
 * lift lines.
 *
 * Source  energy balance above
 * Holds   all lines stop at once, at the batten's end of them
 * Omits   bend of batten and grid, damping, friction (each makes it less); the mass of lines and
 *         blocks that run on, and lines that do not share as said (each makes it more)
 * Check   VAL-MOT-07; stopped.test.ts steps the swing through time
 */
export const snatch = (moves: Moving, run: Run, lines: LinesThatTakeIt): Reckoned<Snatch> => {
  if (lines.stiffness === undefined) return blocked(['liftLines.stiffness']);
  const { runsOn, massKg, weightN, pullN } = heavySide(moves, run);
  const swingN = Math.hypot(run.speed * Math.sqrt(lines.stiffness * massKg), weightN - pullN);
  const allN = weightN + swingN;
  const oneLine =
    lines.largestShare === undefined
      ? blocked(['liftLines.largestShare'])
      : reckoned(newtons(allN * lines.largestShare));
  return reckoned({ runsOn, allLines: newtons(allN), oneLine, overBreaking: over(oneLine, lines) });
};

const over = (
  oneLine: Reckoned<Newtons>,
  { breakingStrength }: LinesThatTakeIt,
): Reckoned<number> => {
  const needs = [
    ...(oneLine.known ? [] : oneLine.needs),
    ...(breakingStrength === undefined ? ['liftLines.breakingStrength'] : []),
  ];
  return oneLine.known && breakingStrength !== undefined
    ? reckoned(oneLine.value / breakingStrength)
    : blocked(needs);
};

type HeavySide = {
  readonly runsOn: Snatch['runsOn'];
  readonly massKg: number;
  readonly weightN: number;
  readonly pullN: number;
};

const heavySide = ({ arbor, purchase }: Moving, { way, pull, mass }: Run): HeavySide =>
  way === 'out'
    ? {
        runsOn: 'arbor',
        massKg: arbor / purchase ** 2,
        weightN: (arbor * GRAVITY) / purchase,
        pullN: pull.arbor,
      }
    : {
        runsOn: 'batten',
        massKg: mass.hanging,
        weightN: mass.hanging * GRAVITY,
        pullN: pull.batten,
      };

export type Impact = {
  /** Which side meets its stop, and the force on it. */
  readonly meets: 'arbor' | 'batten';
  readonly force: Newtons;
  /** Of it, what stops the motion; the rest is the weight. */
  readonly stopping: Newtons;
  readonly distance: Metres;
  /** How far the light side would go on by itself, lines slack, with nothing in its way. */
  readonly lightSideRises: Metres;
};

/**
 * The heavy side on its stop: the arbor on its bottom stop, or the batten on the low stop.
 *
 *     spring      F = W + √(W² + K·m·v²)      from m·v²/2 + W·d = K·d²/2, F = K·d
 *     distance    F = W + m·v²/(2·d)          a steady force
 *
 *     m  kg   the side's own mass: A or M      v  m/s  its own speed: v_batten/r or v_batten
 *     W  N    m·g: the lines go slack as it stops
 *
 * Source  energy balance; check-values 8.2 (250 kg, 7.6 m/s, 50 mm: 144.4 kN stop the motion)
 * Omits   blocks and lines that run on (more); a stop that swallows energy as it gives (less);
 *         with a distance, a force that is not steady has a higher peak
 * Check   VAL-MOT-07
 */
export const impact = (moves: Moving, run: Run, gives: StopGives | undefined): Reckoned<Impact> => {
  if (gives === undefined) return blocked(['stop']);
  const arborMeets = run.way === 'out';
  const massKg = arborMeets ? moves.arbor : run.mass.hanging;
  const speedMs: number = arborMeets ? run.arborSpeed : run.speed;
  // The light side is driven by the other one, at the other side's gear.
  const lightMs: number = arborMeets ? run.speed : run.arborSpeed;
  const weightN = massKg * GRAVITY;
  const stoppingN =
    'stiffness' in gives
      ? Math.hypot(weightN, speedMs * Math.sqrt(gives.stiffness * massKg))
      : (massKg * speedMs ** 2) / (2 * gives.distance);
  const forceN = weightN + stoppingN;
  return reckoned({
    meets: arborMeets ? 'arbor' : 'batten',
    force: newtons(forceN),
    stopping: newtons(stoppingN),
    distance: metres('stiffness' in gives ? forceN / gives.stiffness : gives.distance),
    lightSideRises: metres(lightMs ** 2 / (2 * GRAVITY)),
  });
};
