import { fleetAngle, keepsFleetRule } from '#lines';
import { FOOT, INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

const DISTANCE_M = 25 * FOOT;

const degreesAt = (offsetM: number, distanceM: number): number =>
  (fleetAngle({ offsetM, distanceM }) * 180) / Math.PI;

/** Offset, distance, degrees, and half of the last digit that the angle is known to. */
const degreeErrors = (): readonly number[] =>
  [
    [0.65 * FOOT, DISTANCE_M, 1.4894],
    [7.856 * INCH, DISTANCE_M, 1.5],
    [0.026186, 1, 1.5],
    [0.034921, 1, 2],
    [0.069927, 1, 4],
    [1, 40, 1.4321],
  ].map(([offsetM = Number.NaN, distanceM = Number.NaN, degrees = Number.NaN]) =>
    Math.abs(degreesAt(offsetM, distanceM) - degrees),
  );

const keepsAt = (offsetM: number): boolean => keepsFleetRule({ offsetM, distanceM: DISTANCE_M });

export const theCase: ValidationCase = {
  id: 'VAL-LIN-07',
  title: 'Fleet angle: 1.5 degrees and one in forty',
  calculation: 'lines',
  unit: 'degrees',
  // Offsets are printed to 5e-4 in on 25 ft, tangents to 5e-7, and angles to 5e-5 degrees.
  tolerance: 1e-4,
  run: degreeErrors,
  also: [
    {
      what: 'the rule of one in forty',
      unit: 'offsets misjudged',
      tolerance: 0,
      run: () => [
        unlike(keepsAt(7.5 * INCH), true),
        unlike(keepsAt(7.51 * INCH), false),
        unlike(keepsAt(7.8 * INCH), false),
      ],
    },
  ],
};
