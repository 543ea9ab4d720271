import type { RunawayCase } from '#motion';
import { runaway } from '#motion';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { levelSet, running } from '../level-set.ts';

const BATTEN_KG = 250;
const SHEAVES = [1.04, 1.09] as const;
const OVER = [1.02, 1.05, 1.1, 1.2] as const;

const overSheaves = (factor: number, arborKg: number): RunawayCase => {
  const the = levelSet({ battenKg: BATTEN_KG, arborKg, wayM: 10 });
  const share = (factor ** 2 - 1) / (factor ** 2 + 1);
  return { ...the, moves: { ...the.moves, friction: { share, of: 'both', constant: 0 } } };
};

/** Pull that raises 250 kg with an arbor of 255 kg, in kgf to a hundredth. */
const PULLS_KG = { 1.04: 15.4, 1.09: 42.03 } as const;

/** 1 for each arbor that goes and should not, or stays and should not. */
const miscounted = (factor: (typeof SHEAVES)[number]): readonly number[] => {
  const tabledKg = 255 + PULLS_KG[factor];
  const pairs = [
    [BATTEN_KG * factor ** 2 - 1e-6, BATTEN_KG * factor ** 2 + 1e-6],
    // A hundredth either way, for the table is rounded to it.
    [tabledKg - 0.01, tabledKg + 0.01],
  ] as const;
  return pairs.flatMap(([heldKg, goneKg]) => [
    runaway(overSheaves(factor, heldKg)).moves ? 1 : 0,
    runaway(overSheaves(factor, goneKg)).moves ? 0 : 1,
  ]);
};

const rateErrors = (factor: number): readonly number[] =>
  OVER.map((part) => {
    const heldKg = BATTEN_KG * factor ** 2;
    const arborKg = part * heldKg;
    const wanted = (GRAVITY * (arborKg - heldKg)) / (arborKg + heldKg);
    const { acceleration } = running(overSheaves(factor, arborKg));
    return Math.abs(acceleration.start / wanted - 1);
  });

export const theCase: ValidationCase = {
  id: 'VAL-MOT-10',
  title: 'Friction of two sheaves as a share of both sides',
  calculation: 'motion',
  unit: 'sets miscounted',
  tolerance: 0,
  run: () => SHEAVES.flatMap(miscounted),
  also: [
    {
      what: 'rate over the sheaves',
      unit: 'relative',
      tolerance: 0.02,
      run: () => SHEAVES.flatMap(rateErrors),
    },
  ],
};
