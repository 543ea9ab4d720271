import type { TakeoffQuestion } from '#takeoff';
import type { ValidationCase } from '../../form.ts';
import { BARE, takenOff, totalKg } from '../asking.ts';

const BATTEN: TakeoffQuestion = {
  kind: 'pipe',
  basis: 'published',
  length: 15,
  massPerLength: 4.048,
};

const DRAPE: TakeoffQuestion = {
  kind: 'cloth',
  basis: 'published',
  width: 15,
  drop: 7,
  areaMass: 0.475,
  fullness: 0.5,
  ...BARE,
  bottomMassPerLength: 0.62,
  ties: { count: 20, each: 0.1 },
};

const TRIM_CHAINS: TakeoffQuestion = {
  kind: 'hardware',
  basis: 'estimated',
  lines: [{ name: 'trim chain', count: 5, each: 0.5 }],
};

const together = (): number => totalKg(BATTEN) + totalKg(DRAPE) + totalKg(TRIM_CHAINS);

export const theCase: ValidationCase = {
  id: 'VAL-TKO-03',
  title: 'A batten with a drape, its chain, its ties and its trim chains',
  calculation: 'takeoff',
  unit: 'kg',
  tolerance: 0.005,
  run: () => {
    const [cloth, ties, chain] = takenOff(DRAPE).lines.map((line) => line.totalKg ?? Number.NaN);
    const found = [totalKg(BATTEN), cloth, chain, ties, totalKg(TRIM_CHAINS), together()];
    const wanted = [60.72, 74.81, 9.3, 2, 2.5, 149.33];
    return wanted.map((massKg, index) => Math.abs((found[index] ?? Number.NaN) - massKg));
  },
  also: [
    {
      what: 'together, unrounded',
      unit: 'kg',
      tolerance: 5e-10,
      run: () => [Math.abs(together() - 149.3325)],
    },
  ],
};
