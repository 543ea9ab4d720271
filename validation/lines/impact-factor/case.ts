import { dropPeak, steadyPeak, suddenStopPeak } from '#lines';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const LOADS = [
  { massKg: 200, stiffnessNPerM: 90_000 },
  { massKg: 35, stiffnessNPerM: 400_000 },
] as const;

/** Fall over the sag at rest, and the factor. */
const FALLS = [
  [0, 2],
  [1.5, 3],
  [4, 4],
  [7.5, 5],
  [12, 6],
] as const;

/** Speed over √(g·δ), and the factor. */
const STOPS = [
  [0.5, 1.5],
  [1, 2],
  [3, 4],
] as const;

const errorsOf = (load: (typeof LOADS)[number]): readonly number[] => {
  const sagM = (load.massKg * GRAVITY) / load.stiffnessNPerM;
  const falls = FALLS.map(([part, factor]) => {
    const { force } = dropPeak({ ...load, dropM: part * sagM });
    return force / (factor * load.massKg * GRAVITY);
  });
  const stops = STOPS.map(([part, factor]) => {
    const { force } = suddenStopPeak({ ...load, speedMs: part * Math.sqrt(GRAVITY * sagM) });
    return force / (factor * load.massKg * GRAVITY);
  });
  return [...falls, ...stops].map((ratio) => Math.abs(ratio - 1));
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-10',
  title: 'Loads that fall or stop on a line',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-12,
  run: () => LOADS.flatMap(errorsOf),
  also: [
    {
      what: 'a stop from 1.5 m/s in 0.3 s',
      unit: 'of the factor',
      tolerance: 5e-4,
      run: () => {
        const { factor } = steadyPeak({ massKg: 250, accelerationMs2: 1.5 / 0.3 });
        return [Math.abs(factor - 1.51)];
      },
    },
  ],
};
