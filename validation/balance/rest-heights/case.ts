import type { BalanceSet } from '#balance';
import { balanceCurve } from '#balance';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';
import { type Blocks, potentialEnergy } from '../energy.ts';
import { anySet, blocksOf } from '../random-sets.ts';

const SEED = 20_274;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function with one low place is least. */
const leastAt = (energy: (heightM: number) => number, fromM: number, toM: number): number => {
  let [low, high] = [fromM, toM];
  for (let step = 0; step < 120; step += 1) {
    const reachM = GOLDEN * (high - low);
    if (energy(high - reachM) < energy(low + reachM)) high = low + reachM;
    else low = high - reachM;
  }
  return (low + high) / 2;
};

/** The set with bricks that balance it at a height, reckoned from its energy alone. */
const balancedAt = (set: BalanceSet, heightM: number, blocks: Blocks) => {
  const stepM = 0.01;
  const bare = { ...set, bricks: 0 };
  const heavyJ =
    potentialEnergy(bare, blocks, heightM + stepM) - potentialEnergy(bare, blocks, heightM - stepM);
  return { ...set, bricks: (set.purchase * heavyJ) / (2 * stepM * 9.80665) };
};

type Resting = {
  readonly set: BalanceSet;
  readonly blocks: Blocks;
  /** Where it is to balance, as a part of the way. */
  readonly part: number;
  readonly isCloth: boolean;
  readonly mass: number;
  readonly drop: number;
};

const resting: Make<Resting> = (draw) => {
  const set = { ...anySet(draw), carriage: 0 };
  return {
    set,
    blocks: blocksOf(set, draw),
    part: draw.toEnds(0.3, 0.7),
    isCloth: draw.chance(0.5),
    mass: draw.toEnds(60, 300),
    drop: draw.toEnds(4, 9),
  };
};

const errorOf = ({ set, blocks, part, isCloth, mass, drop }: Resting): number => {
  const cloth = { kind: 'cloth', mass, drop, tie: 0, hem: 0 } as const;
  const hung = isCloth ? { ...set, items: [cloth] } : set;
  const [fromM, toM] = [set.lowStop, isCloth ? Math.min(drop, set.highStop) : set.highStop];
  const balanced = balancedAt(hung, fromM + part * (toM - fromM), blocks);
  const sign = isCloth ? 1 : -1;
  const energy = (heightM: number): number => sign * potentialEnergy(balanced, blocks, heightM);
  const [found, ...more] = balanceCurve(balanced, fromM, toM).equilibria;
  // One rest and of the right kind: anything else is no small error.
  if (more.length > 0 || found?.settles !== isCloth) return Number.POSITIVE_INFINITY;
  return Math.abs(found.height - leastAt(energy, fromM, toM));
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-14',
  title: 'Where a set comes to rest, and where it runs away',
  calculation: 'balance',
  unit: 'm',
  tolerance: 5e-4,
  run: () => {
    const all = drawn(resting, { seed: SEED, count: 150 });
    enough(
      all.filter(({ isCloth }) => isCloth),
      41,
    );
    enough(
      all.filter(({ isCloth }) => !isCloth),
      41,
    );
    return all.map(errorOf);
  },
};
