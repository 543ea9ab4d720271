import { carriedMass } from '#balance';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_267;

/** s/2a for which a chain this long reaches across; sinh(x)/x grows, so halving finds it. */
const halfSpan = (chordOverSpan: number): number => {
  let [low, high] = [1e-9, 60];
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (Math.sinh(middle) / middle < chordOverSpan) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

type Hanging = {
  readonly lengthM: number;
  readonly apartM: number;
  readonly spanM: number;
};

/** Cable between the batten and the lowest point of the chain, with the batten `apartM` higher. */
const carriedLength = ({ lengthM, apartM, spanM }: Hanging): number => {
  const x = halfSpan(Math.sqrt(lengthM ** 2 - apartM ** 2) / spanM);
  return (lengthM + apartM / Math.tanh(x)) / 2;
};

type Loom = {
  readonly lengthM: number;
  readonly spanM: number;
  readonly share: number;
  readonly perM: number;
};

const loom: Make<Loom> = ({ toEnds }) => ({
  lengthM: toEnds(10, 20),
  spanM: toEnds(0.1, 1),
  share: toEnds(-0.9, 0.9),
  perM: toEnds(0.3, 6),
});

const loadOf = (perM: number, lengthM: number, apartM: number): number => {
  const fixedAt = 25;
  const loom = { kind: 'loom', massPerLength: perM, length: lengthM, fixedAt } as const;
  return carriedMass(loom, fixedAt + apartM).massKg;
};

const compared = () =>
  drawn(loom, { seed: SEED, count: 300 }).map(({ lengthM, spanM, share, perM }) => {
    const apartM = share * lengthM;
    return {
      apartM,
      loomKg: perM * lengthM,
      wantedKg: perM * carriedLength({ lengthM, apartM, spanM }),
      foundKg: loadOf(perM, lengthM, apartM),
    };
  });

export const theCase: ValidationCase = {
  id: 'VAL-BAL-07',
  title: 'Electric cable in a loop, as a hanging chain with a gap between its ends',
  calculation: 'balance',
  unit: 'of the mass of the loom',
  tolerance: 1e-3,
  run: () =>
    compared().map(({ foundKg, wantedKg, loomKg }) => Math.abs(foundKg - wantedKg) / loomKg),
  also: [
    {
      what: 'it errs toward sharing alike, too little on the higher end',
      unit: 'relative, to the other side',
      tolerance: 1e-12,
      run: () =>
        compared().map(({ apartM, foundKg, wantedKg }) =>
          Math.max(0, Math.sign(apartM || -1) * (foundKg / wantedKg - 1)),
        ),
    },
    {
      what: 'with level ends each carries half, gap or none',
      unit: 'relative',
      tolerance: 1e-12,
      run: () =>
        [0.1, 0.5, 1].map((spanM) => {
          const wantedM = carriedLength({ lengthM: 15, apartM: 0, spanM });
          return Math.abs(loadOf(2, 15, 0) / (2 * wantedM) - 1);
        }),
    },
  ],
};
