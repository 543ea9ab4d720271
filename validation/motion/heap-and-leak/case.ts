import type { BrokenLine, RunawayCase } from '#motion';
import type { ValidationCase } from '../../form.ts';
import { running } from '../level-set.ts';

const PULL_N = 300;
const PER_M = 4;
const WAY_M = 10;

/** Out over the way by an even pull, with a mass that changes. */
const pulled = (hanging: BrokenLine): RunawayCase => ({
  curve: [{ height: 0, below: -PULL_N, above: -PULL_N }],
  lowStop: 0,
  highStop: WAY_M,
  height: 0,
  hold: 0,
  moves: {
    purchase: 1,
    arbor: 0,
    hanging,
    lineMass: 0,
    blockMass: 0,
    friction: { share: 0, of: 'batten', constant: 0 },
  },
});

const from = (firstKg: number, lastKg: number): BrokenLine => [
  { height: 0, below: firstKg, above: firstKg },
  { height: WAY_M, below: lastKg, above: lastKg },
];

const off = (found: number | null, wanted: number): number =>
  Math.abs((found ?? Number.NaN) / wanted - 1);

const joining = (startKg: number): readonly number[] => {
  const endKg = startKg + PER_M * WAY_M;
  const run = running(pulled(from(startKg, endKg)));
  const momentum = Math.sqrt((PULL_N * (endKg ** 2 - startKg ** 2)) / PER_M);
  return [off(run.speed, momentum / endKg), off(run.time, momentum / PULL_N)];
};

const leaking = (): number => {
  const run = running(pulled(from(200, 200 - PER_M * WAY_M)));
  return off(run.speed, Math.sqrt(((2 * PULL_N) / PER_M) * Math.log(200 / 160)));
};

/** At once in the middle of the way; what was run before is an even rate. */
const atOnce = (beforeKg: number, afterKg: number): readonly number[] => {
  const run = running(
    pulled([
      { height: 0, below: beforeKg, above: beforeKg },
      { height: WAY_M / 2, below: beforeKg, above: afterKg },
      { height: WAY_M, below: afterKg, above: afterKg },
    ]),
  );
  const [contact] = run.contacts;
  const metMs = Math.sqrt((PULL_N * WAY_M) / beforeKg);
  const leftMs = afterKg > beforeKg ? (beforeKg * metMs) / afterKg : metMs;
  const endMs = Math.sqrt(leftMs ** 2 + (PULL_N * WAY_M) / afterKg);
  return [
    off(contact?.speedBefore ?? Number.NaN, metMs),
    off(contact?.speedAfter ?? Number.NaN, leftMs),
    off(run.speed, endMs),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-MOT-05',
  title: 'A chain drawn from a heap, a cart that leaks, and a coupling',
  calculation: 'motion',
  unit: 'relative',
  tolerance: 1e-12,
  run: () => [
    ...[1e-6, 0.1, 10, 200].flatMap(joining),
    leaking(),
    ...atOnce(120, 150),
    ...atOnce(150, 120),
  ],
  also: [
    {
      what: 'a chain alone at √(F/λ)',
      unit: 'relative',
      tolerance: 1e-12,
      run: () => {
        const run = running(pulled(from(1e-6, 1e-6 + PER_M * WAY_M)));
        return [off(run.speed, Math.sqrt(PULL_N / PER_M))];
      },
    },
  ],
};
