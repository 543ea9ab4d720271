import { panHeight } from '#house';
import { FOOT } from '#quantities';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_301;

type Set = {
  readonly purchase: 1 | 2;
  readonly lowStopM: number;
  readonly panAtLowM: number;
  readonly attachM: number;
  readonly loftM: number;
  readonly headM: number;
  readonly deadEndM: number;
  readonly acrossM: number;
  readonly risesM: readonly number[];
};

const set: Make<Set> = ({ oneOf, toEnds, several }) => ({
  purchase: oneOf([1, 2]),
  lowStopM: toEnds(0.3, 1.5),
  panAtLowM: toEnds(14, 22),
  attachM: toEnds(1.5, 3),
  loftM: toEnds(26, 32),
  headM: toEnds(26, 32),
  deadEndM: toEnds(26, 32),
  acrossM: toEnds(2, 25),
  risesM: several(10, 10, () => toEnds(0, 13)),
});

const wireLength = (the: Set, battenM: number): number => {
  const attachM = panHeight({ ...the, battenM }) + the.attachM;
  const across = Math.hypot(the.acrossM, the.headM - the.loftM);
  const single = the.loftM - battenM + across + (the.headM - attachM);
  return the.purchase === 1 ? single : single + (the.deadEndM - attachM);
};

export const theCase: ValidationCase = {
  id: 'VAL-HSE-01',
  title: 'Where the arbor is, by the length of the wire',
  calculation: 'house',
  unit: 'relative',
  tolerance: 1e-13,
  run: () => {
    const travel = { panAtLowM: 57 * FOOT, lowStopM: 3 * FOOT, purchase: 2 } as const;
    const fallM = 57 * FOOT - panHeight({ ...travel, battenM: 5 * FOOT });
    return [
      ...drawn(set, { seed: SEED, count: 300 }).flatMap((the) => {
        const atLowM = wireLength(the, the.lowStopM);
        return the.risesM.map((riseM) =>
          Math.abs(wireLength(the, the.lowStopM + riseM) / atLowM - 1),
        );
      }),
      Math.abs(fallM / FOOT - 1),
    ];
  },
};
