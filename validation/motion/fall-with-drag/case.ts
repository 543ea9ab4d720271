import { dropped } from '#motion';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const MASS_KG = 0.4;
const DENSITY = 1.2;
const FINAL_MS = [5, 12, 30, 80] as const;
const TIMES = [0.05, 0.2, 0.7, 1.5, 3] as const;

const errorsOf = (finalMs: number, part: number): readonly number[] => {
  const timeS = (part * finalMs) / GRAVITY;
  const [v, z] = [finalMs * Math.tanh(part), (finalMs ** 2 / GRAVITY) * Math.log(Math.cosh(part))];
  const area = (2 * MASS_KG * GRAVITY) / (DENSITY * finalMs ** 2);
  const [deck] = dropped({
    mass: MASS_KG,
    from: z,
    speed: 0,
    air: { dragCoefficient: 1, area, density: DENSITY },
    bounce: { least: 0, shareOfFall: 0 },
    levels: [{ name: 'deck', height: 0 }],
  });
  const fall = deck?.inAir;
  return [
    Math.abs((fall?.speed ?? Number.NaN) / v - 1),
    Math.abs((fall?.time ?? Number.NaN) / timeS - 1),
    Math.abs((fall?.energy ?? Number.NaN) / ((MASS_KG * v ** 2) / 2) - 1),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-MOT-09',
  title: 'A fall against drag that grows with the square of the speed',
  calculation: 'motion',
  unit: 'relative',
  tolerance: 1e-11,
  run: () => FINAL_MS.flatMap((finalMs) => TIMES.flatMap((part) => errorsOf(finalMs, part))),
};
