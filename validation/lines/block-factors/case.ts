import { headBlockForce, type LineRun, loftBlockForce, turningBlockForce } from '#lines';
import type { ValidationCase } from '../../form.ts';

/** Angle between the two parts in degrees, and the factor as printed. 160 is a misprint. */
const ROUNDED = [
  [0, 2],
  [10, 1.99],
  [20, 1.97],
  [30, 1.93],
  [50, 1.81],
  [60, 1.73],
  [70, 1.64],
  [80, 1.53],
  [90, 1.41],
  [100, 1.29],
  [110, 1.15],
  [120, 1],
  [140, 0.68],
  [150, 0.52],
  [170, 0.17],
  [180, 0],
] as const;
const CUT_OFF = [
  [40, 1.87],
  [45, 1.84],
  [130, 0.84],
] as const;

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

const anchorFactor = (angle: number): number =>
  turningBlockForce({ tensionN: 1, turnRad: rad(180 - angle) });

/** A run of 10 m that climbs by 90 degrees less than the angle between its parts. */
const runAt = (angle: number): LineRun => ({
  purchase: 1,
  lineX: 0,
  headX: -10 * Math.cos(rad(angle - 90)),
  loftZ: 20,
  headZ: 20 + 10 * Math.sin(rad(angle - 90)),
  wireEndZ: 5,
  attachZ: 5,
});
const loftFactor = (angle: number): number => loftBlockForce(runAt(angle), 1).resultant;

const against = (table: readonly (readonly [number, number])[]): readonly number[] =>
  table.flatMap(([angle, printed]) => [
    Math.abs(anchorFactor(angle) - printed),
    Math.abs(loftFactor(angle) - printed),
  ]);

const BATTEN_N = [195.069, 385.095, 340.799, 382.837, 196.198];

const battenErrors = (): readonly number[] => {
  const run = runAt(90);
  const lines = BATTEN_N.map((tension, index) => ({
    run: { ...run, lineX: 3.5 * index },
    tension,
  }));
  const { block } = headBlockForce({ lines, handLineMass: 0 });
  return [
    Math.abs(loftBlockForce(run, BATTEN_N[1] ?? Number.NaN).resultant - 544.6),
    Math.abs(block.resultant - 2121.3),
    Math.abs(block.horizontal - 1500),
    Math.abs(block.vertical - 1500),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-08',
  title: 'Block factors for a change of direction',
  calculation: 'lines',
  unit: 'of the factor',
  tolerance: 0.01,
  run: () => against([...ROUNDED, ...CUT_OFF]),
  also: [
    {
      what: 'where the table is rounded',
      unit: 'of the factor',
      tolerance: 0.005,
      run: () => against(ROUNDED),
    },
    {
      what: 'exactly, 160 degrees among them',
      unit: 'of the factor',
      tolerance: 1e-12,
      run: () =>
        [0, 40, 45, 90, 130, 160, 180].flatMap((angle) => {
          const exact = 2 * Math.cos(rad(angle / 2));
          return [anchorFactor(angle), loftFactor(angle)].map((found) => Math.abs(found - exact));
        }),
    },
    {
      what: 'loft block and head block of a batten',
      unit: 'N',
      tolerance: 0.05,
      run: battenErrors,
    },
  ],
};
