import type { ValidationCase } from '../../form.ts';
import { arborKgf, battenKgf, pullsOver, readKgf } from '../sheave-friction.ts';

const PER_BLOCK = 1.09;
const LEFT_OUT_KGF = 3.73;

const read = () => readKgf(pullsOver(PER_BLOCK));
const leftOutKgf = (): number => read().imbalanceKgf - (battenKgf - arborKgf);

export const theCase: ValidationCase = {
  id: 'VAL-PUL-04',
  title: 'A pull test over blocks with plain bearings',
  calculation: 'pull-test',
  unit: 'kgf left out',
  tolerance: LEFT_OUT_KGF,
  // What is left out errs to one side only: less than nothing is no error that this allows.
  run: () => [leftOutKgf() < 0 ? Number.POSITIVE_INFINITY : leftOutKgf()],
  also: [
    {
      what: 'the two pulls as case.md prints them',
      unit: 'kgf',
      // Half of the last digit printed.
      tolerance: 0.005,
      run: () => {
        const { outKgf, inKgf } = pullsOver(PER_BLOCK);
        return [outKgf - 42.03, inKgf - 44.58].map(Math.abs);
      },
    },
    {
      what: 'imbalance read',
      unit: 'kgf',
      tolerance: 5e-5,
      run: () => [Math.abs(read().imbalanceKgf + 1.2775)],
    },
    {
      what: 'friction read',
      unit: 'kgf',
      tolerance: 5e-4,
      run: () => [Math.abs(read().frictionKgf - 43.3025)],
    },
    {
      what: 'what is left out, by formula',
      unit: 'kgf',
      tolerance: 5e-10,
      run: () => [Math.abs(leftOutKgf() - (battenKgf * (PER_BLOCK - 1 / PER_BLOCK) ** 2) / 2)],
    },
  ],
};
