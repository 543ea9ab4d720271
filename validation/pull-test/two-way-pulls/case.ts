import { handLinePulls, pullTest } from '#balance';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_401;

type Moved = {
  readonly imbalanceN: number;
  readonly frictionN: number;
  readonly perBatten: number;
};

const moved: Make<Moved> = ({ toEnds, oneOf }) => ({
  imbalanceN: toEnds(-2000, 2000),
  frictionN: toEnds(5, 500),
  perBatten: oneOf([0.5, 1, 2]),
});

/** Energy that motion gains over a metre of batten travel, J: what is put in less what it takes. */
const gainJ = ({ imbalanceN, frictionN, perBatten }: Moved, pullN: number, way: 1 | -1): number => {
  const pulledJ = pullN * perBatten;
  // Going out lifts the heavy side of a batten heavy set, and going in lets it down.
  const liftedJ = way * imbalanceN;
  return pulledJ - liftedJ - frictionN;
};

const steadyPull = (the: Moved, way: 1 | -1): number => {
  let [low, high] = [-2e4, 2e4];
  for (let step = 0; step < 100; step += 1) {
    const pullN = (low + high) / 2;
    if (gainJ(the, pullN, way) < 0) low = pullN;
    else high = pullN;
  }
  return (low + high) / 2;
};

export const theCase: ValidationCase = {
  id: 'VAL-PUL-01',
  title: 'Two steady pulls, out and in, weigh a set',
  calculation: 'pull-test',
  unit: 'N',
  tolerance: 1e-6,
  run: () =>
    drawn(moved, { seed: SEED, count: 300 }).flatMap((the) => {
      const [outN, inN] = [steadyPull(the, 1), steadyPull(the, -1)];
      const handLinePerBatten = the.perBatten;
      const { imbalanceN, frictionN } = the;
      const pulls = handLinePulls({ imbalanceN, frictionN, handLinePerBatten });
      const found = pullTest({ outN, inN, handLinePerBatten });
      return [
        pulls.out - outN,
        pulls.in - inN,
        found.imbalance - imbalanceN,
        found.friction - frictionN,
      ].map(Math.abs);
    }),
};
