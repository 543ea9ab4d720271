import type { ValidationCase } from '../../form.ts';
import { arborKgf, battenKgf, pullsOver, readKgf } from '../sheave-friction.ts';

const PER_BLOCK = 1.04;
const LEFT_OUT_KGF = 0.78;

const read = () => readKgf(pullsOver(PER_BLOCK));
const leftOutKgf = (): number => read().imbalanceKgf - (battenKgf - arborKgf);

export const theCase: ValidationCase = {
  id: 'VAL-PUL-03',
  title: 'A pull test over blocks with rolling bearings',
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
        return [outKgf - 15.4, inKgf - 23.86].map(Math.abs);
      },
    },
    {
      what: 'imbalance read',
      unit: 'kgf',
      tolerance: 5e-4,
      run: () => [Math.abs(read().imbalanceKgf + 4.23)],
    },
    {
      what: 'friction read',
      unit: 'kgf',
      tolerance: 5e-3,
      run: () => [Math.abs(read().frictionKgf - 19.63)],
    },
    {
      what: 'what is left out, by formula',
      unit: 'kgf',
      tolerance: 5e-10,
      run: () => [Math.abs(leftOutKgf() - (battenKgf * (PER_BLOCK - 1 / PER_BLOCK) ** 2) / 2)],
    },
  ],
};
