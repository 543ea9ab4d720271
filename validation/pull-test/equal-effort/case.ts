import { type BalanceSet, handLinePulls, imbalanceAt, pullTest } from '#balance';
import type { ValidationCase } from '../../form.ts';

const G = 9.80665;
const LEVEL_M = 8;

/** Both ends of the wire are level with the batten half way up. */
const inWeight = (massKg: number, lines: number, lineMassPerLength: number): BalanceSet => ({
  purchase: 1,
  lines,
  lineMassPerLength,
  batten: massKg,
  carriage: massKg / 4,
  bricks: (3 * massKg) / 4,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 2 * LEVEL_M - 1,
  wireEndAbove: 0,
  items: [],
});

export const theCase: ValidationCase = {
  id: 'VAL-PUL-06',
  title: 'Equal effort both ways',
  calculation: 'pull-test',
  unit: 'N',
  tolerance: 1e-6,
  run: () => {
    const pullsAt = (set: BalanceSet, heightM: number) =>
      handLinePulls({
        imbalanceN: imbalanceAt(set, heightM),
        frictionN: 60,
        handLinePerBatten: 1,
      });
    return [60, 145, 400].flatMap((massKg) =>
      [0.05, 0.164, 0.4].flatMap((perM) =>
        [3, 6, 9].flatMap((lines) => {
          const set = inWeight(massKg, lines, perM);
          const [level, above] = [pullsAt(set, LEVEL_M), pullsAt(set, LEVEL_M + 1)];
          const found = pullTest({ outN: level.out, inN: level.in, handLinePerBatten: 1 });
          return [
            level.out - level.in,
            found.imbalance,
            above.in - above.out - 4 * lines * perM * G,
          ].map(Math.abs);
        }),
      ),
    );
  },
};
