import type { ValidationCase } from '../../form.ts';
import { totalKg } from '../asking.ts';

const C24 = 420;
const FRAMES = [
  {
    sectionM2: 0.038 * 0.089,
    kgPerM: 1.42,
    runs: [
      [2, 4],
      [3, 1.2],
    ],
    wantedKg: 16.48,
  },
  {
    sectionM2: 0.019 * 0.064,
    kgPerM: 0.511,
    runs: [
      [2, 2.4],
      [4, 1.2],
    ],
    wantedKg: 4.9,
  },
] as const;

const frameKg = ({ kgPerM, runs }: (typeof FRAMES)[number]): number =>
  totalKg({
    kind: 'frame',
    basis: 'published',
    members: runs.map(([count, length]) => ({
      name: 'member',
      count,
      length,
      massPerLength: kgPerM,
    })),
    allowance: 0,
  });

export const theCase: ValidationCase = {
  id: 'VAL-TKO-08',
  title: 'Timber frames from their volume',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 0.001,
  run: () =>
    FRAMES.map((frame) => {
      const { sectionM2, runs } = frame;
      const volumeM3 = runs.reduce((sum, [count, length]) => sum + count * length * sectionM2, 0);
      return Math.abs(frameKg(frame) / (volumeM3 * C24) - 1);
    }),
  also: [
    {
      what: 'masses as case.md prints them',
      unit: 'kg',
      // Half of the last digit that both are printed with.
      tolerance: 0.05,
      run: () => FRAMES.map((frame) => Math.abs(frameKg(frame) - frame.wantedKg)),
    },
  ],
};
