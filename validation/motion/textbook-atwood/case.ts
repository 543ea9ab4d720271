import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { levelSet, running } from '../level-set.ts';

/** The book reckons with 9.80 m/s²; every figure here goes as g. */
const TO_BOOK = 9.8 / GRAVITY;

const SIDES = [
  [2, 4],
  [4, 2],
] as const;

const runs = () =>
  SIDES.map(([battenKg, arborKg]) => running(levelSet({ battenKg, arborKg, wayM: 3 })));

export const theCase: ValidationCase = {
  id: 'VAL-MOT-01',
  title: 'Two masses over a pulley, as in a textbook',
  calculation: 'motion',
  unit: 'm/s²',
  tolerance: 0.005,
  run: () =>
    runs().flatMap(({ acceleration }) => [
      Math.abs(acceleration.start * TO_BOOK - 3.27),
      Math.abs(acceleration.end * TO_BOOK - 3.27),
    ]),
  also: [
    {
      what: 'pull of the line on either side',
      unit: 'N',
      tolerance: 0.05,
      run: () =>
        runs().flatMap(({ pull }) => [
          Math.abs(pull.batten * TO_BOOK - 26.1),
          Math.abs(pull.arbor * TO_BOOK - 26.1),
        ]),
    },
  ],
};
