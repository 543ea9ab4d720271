import type { RunawayCase, Way } from '#motion';
import { releasable } from '#motion';
import type { ValidationCase } from '../../form.ts';
import { running } from '../level-set.ts';

const MASS_KG = 500;
const WAY_M = 12;
const STIFF = [20, 80, 320] as const;
const OFFSETS_M = [0.5, 1.5, 4] as const;
const WAYS: readonly Way[] = ['in', 'out'];

/** Drive in N from where it starts to the stop. */
const driven = (way: Way, firstN: number, lastN: number): RunawayCase => {
  const [start, end] = way === 'in' ? [WAY_M, 0] : [0, WAY_M];
  const sign = way === 'in' ? 1 : -1;
  const nodes = [
    { height: start, below: sign * firstN, above: sign * firstN },
    { height: end, below: sign * lastN, above: sign * lastN },
  ];
  return {
    curve: nodes.toSorted((one, other) => one.height - other.height),
    lowStop: 0,
    highStop: WAY_M,
    height: start,
    hold: 0,
    moves: {
      purchase: 1,
      arbor: MASS_KG / 2,
      hanging: MASS_KG / 2,
      lineMass: 0,
      blockMass: 0,
      friction: { share: 0, of: 'batten', constant: 0 },
    },
  };
};

const off = (found: number | null, wanted: number): number =>
  Math.abs((found ?? Number.NaN) / wanted - 1);

const growing = (way: Way, k: number, c: number): readonly number[] => {
  const the = driven(way, k * c, k * (c + WAY_M));
  const run = running(the);
  const perS = Math.sqrt(k / MASS_KG);
  const time = Math.acosh(1 + WAY_M / c) / perS;
  const energyJ = k * (c * WAY_M + WAY_M ** 2 / 2);
  return [
    off(run.time, time),
    off(run.speed, c * perS * Math.sinh(perS * time)),
    off(run.energy.kinetic, energyJ),
    off(releasable(the).energy, energyJ),
  ];
};

const SWING_M = 5;

const swinging = (way: Way, k: number): readonly number[] => {
  const the = driven(way, k * SWING_M, k * (SWING_M - WAY_M));
  const run = running(the);
  const { most, end } = releasable(the).starts[0]?.free ?? {};
  const goneM = (heightM: number | undefined): number =>
    Math.abs((heightM ?? Number.NaN) - the.height);
  return [
    off(goneM(run.height), 2 * SWING_M),
    off(run.time, Math.PI / Math.sqrt(k / MASS_KG)),
    off(most?.energy ?? Number.NaN, (k * SWING_M ** 2) / 2),
    off(goneM(most?.height), SWING_M),
    off(goneM(end?.height), 2 * SWING_M),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-MOT-03',
  title: 'An imbalance that grows or shrinks along the way',
  calculation: 'motion',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    WAYS.flatMap((way) =>
      STIFF.flatMap((k) => [...OFFSETS_M.flatMap((c) => growing(way, k, c)), ...swinging(way, k)]),
    ),
};
