import { type BalanceSet, handLinePulls, imbalanceAt, pullTest } from '#balance';
import { handLineTravel } from '#house';
import type { ValidationCase } from '../../form.ts';

const G = 9.80665;
const FRICTION_N = 120;

const SET: BalanceSet = {
  purchase: 2,
  lines: 5,
  lineMassPerLength: 0,
  batten: 100,
  carriage: 60,
  bricks: 130,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [],
};

/** Pull that pays for a travel of the batten, over the line's own travel. */
const pullByWork = (travelM: number, way: 1 | -1): number => {
  const raisedJ = way * G * (100 * travelM - 190 * (travelM / 2));
  return (raisedJ + FRICTION_N * travelM) / handLineTravel(travelM, 0.5);
};

const HALF = { handLinePerBatten: 0.5 };
const pulled = () =>
  handLinePulls({ imbalanceN: imbalanceAt(SET, 6), frictionN: FRICTION_N, ...HALF });

export const theCase: ValidationCase = {
  id: 'VAL-PUL-05',
  title: 'A hand line at half speed',
  calculation: 'pull-test',
  unit: 'N',
  tolerance: 1e-6,
  run: () => {
    const pulls = pulled();
    return [0.5, 3, 12].flatMap((travelM) => {
      const [outN, inN] = [pullByWork(travelM, 1), pullByWork(travelM, -1)];
      const found = pullTest({ outN, inN, ...HALF });
      return [
        pulls.out - outN,
        pulls.in - inN,
        found.imbalance - 5 * G,
        found.friction - FRICTION_N,
      ].map(Math.abs);
    });
  },
  also: [
    {
      what: 'the two pulls as case.md prints them',
      unit: 'N',
      // Half of the last digit printed.
      tolerance: 0.05,
      run: () => [pulled().out - 338.1, pulled().in - 141.9].map(Math.abs),
    },
  ],
};
