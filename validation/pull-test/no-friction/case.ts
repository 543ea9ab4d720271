import { type BalanceSet, handLinePulls, imbalanceAt, pullTest } from '#balance';
import type { ValidationCase } from '../../form.ts';

const SET: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0,
  batten: 250,
  carriage: 55,
  bricks: 200,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [],
};

export const theCase: ValidationCase = {
  id: 'VAL-PUL-02',
  title: 'A set without friction',
  calculation: 'pull-test',
  unit: 'N',
  tolerance: 0.05,
  run: () => {
    const imbalanceN = imbalanceAt(SET, 8);
    const pulls = handLinePulls({ imbalanceN, frictionN: 0, handLinePerBatten: 1 });
    const found = pullTest({ outN: pulls.out, inN: pulls.in, handLinePerBatten: 1 });
    return [pulls.in - 49, pulls.out + 49, found.imbalance + 49, found.friction].map(Math.abs);
  },
};
