import { carriedMass } from '#balance';
import type { ValidationCase } from '../../form.ts';

export const theCase: ValidationCase = {
  id: 'VAL-BAL-08',
  title: 'About half of the hanging length of a loom',
  calculation: 'balance',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    [8, 15, 30].flatMap((length) =>
      [0.23, 0.69, 4.6].flatMap((massPerLength) =>
        [9, 12, 16].flatMap((fixedAt) =>
          [-3, -2, -1, 0, 1, 2, 3]
            .filter((riseM) => fixedAt + riseM + fixedAt > length)
            .map((riseM) => {
              const loom = { kind: 'loom', massPerLength, length, fixedAt } as const;
              const wantedKg = (massPerLength * (length + riseM)) / 2;
              return Math.abs(carriedMass(loom, fixedAt + riseM).massKg / wantedKg - 1);
            }),
        ),
      ),
    ),
};
