import { expect, it } from 'vitest';
import { carriedMass } from '#balance';
import { record } from '../../record.ts';

const TOLERANCE = 1e-12;

it('VAL-BAL-08 level ends share a loom in halves, and half of a rise comes on top', () => {
  const errors = [8, 15, 30].flatMap((length) =>
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
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-08', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(errors.length).toBeGreaterThan(100);
});
