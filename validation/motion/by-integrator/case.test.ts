import { expect, it } from 'vitest';
import type { BalanceSet } from '#balance';
import { imbalanceAt } from '#balance';
import type { RunawayCase } from '#motion';
import { dropped, runaway } from '#motion';
import { GRAVITY } from '#quantities';
import { type Draw, drawn, type Make } from '../../draw.ts';
import { record } from '../../record.ts';
import { after } from '../integrator.ts';
import { hangingAt, hungSet, runOf } from '../random-sets.ts';

const SEED = 50_417;
const TOLERANCE = 1e-6;

/** Heights nearer than this to a node may count as the node itself. */
const NEAR_M = 2e-6;

type Stretch = { readonly fromM: number; readonly toM: number };

/** Forces and masses along one stretch, each at a height kept off its ends. */
const along = (set: BalanceSet, the: RunawayCase, { fromM, toM }: Stretch) => {
  const { purchase, arbor, lineMass, blockMass, friction } = the.moves;
  const sign = Math.sign(toM - fromM);
  const lengthM = Math.abs(toM - fromM);
  const heightM = (x: number): number =>
    fromM + sign * Math.min(lengthM - NEAR_M, Math.max(NEAR_M, x));
  const hangs = (x: number): number => hangingAt(set, heightM(x));
  const weighedKg = (x: number): number =>
    hangs(x) + (friction.of === 'both' ? arbor / purchase : 0);
  return {
    lengthM,
    massKg: (x: number): number => hangs(x) + arbor / purchase ** 2 + lineMass + blockMass,
    perM: (hangs(lengthM) - hangs(0)) / (lengthM - 2 * NEAR_M),
    netN: (x: number): number =>
      -sign * imbalanceAt(set, heightM(x)) -
      friction.share * GRAVITY * weighedKg(x) -
      friction.constant -
      the.hold,
  };
};

type Let = { readonly set: BalanceSet; readonly the: RunawayCase };

const letGo: Make<Let> = (draw) => {
  const set = hungSet(draw);
  return { set, the: runOf(set, draw, true) };
};

const seen = { runs: 0, rests: 0, landings: 0, pickUps: 0, uneven: 0 };

/** Place and speed at every node by the integrator, after the times that the program says. */
const errorsOf = ({ set, the }: Let): readonly number[] => {
  const run = runaway(the);
  // Where it hardly starts, the micrometre that counts as one height decides when.
  if (!run.moves || run.acceleration.start < 0.01) return [];
  seen.runs += 1;
  if (run.end === 'rest') seen.rests += 1;
  const fastestMs = Math.max(...run.passings.map(({ speed }) => speed));
  const nodes = the.curve.map(({ height }) => height);
  let [speedMs, massKg] = [0, 0];
  return run.passings.slice(1).flatMap((to, index) => {
    const from = run.passings[index] ?? to;
    const goal = nodes
      .filter((heightM) => (run.way === 'in' ? heightM < from.height : heightM > from.height))
      .reduce((one, other) =>
        Math.abs(other - from.height) < Math.abs(one - from.height) ? other : one,
      );
    const stretch = along(set, the, { fromM: from.height, toM: goal });
    const startKg = stretch.massKg(0);
    // Slopes of rounding size are a mass that stays.
    const joins = stretch.perM > 1e-6;
    if (Math.abs(stretch.perM) > 1e-6) seen.uneven += 1;
    if (index > 0 && startKg > massKg + 1e-3) {
      speedMs *= massKg / startKg;
      seen.pickUps += 1;
    }
    if (index > 0 && startKg < massKg - 1e-3) seen.landings += 1;
    const timeS = (to.time ?? Number.NaN) - (from.time ?? Number.NaN);
    const [x, v] = after(
      (at, ms) => {
        const lost = joins ? stretch.perM * ms ** 2 : 0;
        return [ms, (stretch.netN(at) - lost) / stretch.massKg(at)];
      },
      [0, speedMs],
      timeS,
    );
    const wentM = Math.abs(to.height - from.height);
    [speedMs, massKg] = [v, stretch.massKg(wentM)];
    return [Math.abs(x - wentM) / stretch.lengthM, Math.abs(v - to.speed) / fastestMs];
  });
};

const falling = ({ between }: Draw) => ({
  mass: between(0.05, 15),
  from: between(2, 40),
  air: { dragCoefficient: between(0.4, 2), area: between(0.001, 0.1), density: 1.2 },
});

const fallErrors = (the: ReturnType<typeof falling>): readonly number[] => {
  const bounce = { least: 0, shareOfFall: 0 };
  const [deck] = dropped({ ...the, speed: 0, bounce, levels: [{ name: 'deck', height: 0 }] });
  const fall = deck?.inAir;
  if (fall === undefined) throw new Error('it falls through no air');
  const drag = (the.air.density * the.air.dragCoefficient * the.air.area) / 2;
  const [z, v] = after((_z, ms) => [ms, GRAVITY - (drag * ms ** 2) / the.mass], [0, 0], fall.time);
  return [Math.abs(z / the.from - 1), Math.abs(v / fall.speed - 1)];
};

it(`VAL-MOT-08 runaways and falls are where the integrator has them (seed ${SEED})`, () => {
  const errors = [
    ...drawn(letGo, { seed: SEED, count: 400 }).flatMap(errorsOf),
    ...drawn(falling, { seed: SEED + 1, count: 200 }).flatMap(fallErrors),
  ];
  const worst = errors.reduce((most, error) => Math.max(most, error), 0);
  expect(errors.every(Number.isFinite)).toBe(true);
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  // Worth something only while sets run, rest on the way, land and pick up, and masses change.
  expect(Math.min(seen.runs, seen.uneven)).toBeGreaterThan(200);
  expect(Math.min(seen.rests, seen.landings, seen.pickUps)).toBeGreaterThan(25);
  record({ id: 'VAL-MOT-08', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
});
