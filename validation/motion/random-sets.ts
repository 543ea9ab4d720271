/** Whole sets with pieces that land, are picked up and pile on deck, drawn with a seed. */
import type { BalanceItem, BalanceSet } from '#balance';
import { balanceCurve, imbalanceParts } from '#balance';
import type { BrokenLine, RunawayCase } from '#motion';
import { GRAVITY } from '#quantities';
import { anySet } from '../balance/random-sets.ts';
import type { Draw, Make } from '../draw.ts';

const sizesOf = ({ between }: Draw) => ({
  mass: between(10, 90),
  drop: between(2, 8),
  pick: between(0, 1),
});
const tipping: Make<BalanceItem> = (draw) => ({
  kind: 'tipping',
  ...sizesOf(draw),
  centre: draw.between(0.2, 0.8),
});
const standing: Make<BalanceItem> = (draw) => ({ kind: 'standing', ...sizesOf(draw) });
const cloth: Make<BalanceItem> = ({ between }) => ({
  kind: 'cloth',
  mass: between(10, 80),
  drop: between(2, 9),
  tie: between(0, 1),
  hem: between(0, 20),
});
const loom: Make<BalanceItem> = ({ between }) => ({
  kind: 'loom',
  massPerLength: between(0.5, 4),
  length: between(25, 40),
  fixedAt: between(8, 12),
});
const item: Make<BalanceItem> = (draw) =>
  draw.oneOf<Make<BalanceItem>>([tipping, standing, cloth, loom])(draw);

/** With bricks for about what hangs, so that it goes either way. */
export const hungSet: Make<BalanceSet> = (draw) => {
  const bare = anySet(draw);
  const items = draw.several(1, 3, item);
  const hangsKg =
    bare.batten + items.reduce((sum, one) => sum + ('mass' in one ? one.mass : 30), 0);
  const arborKg = hangsKg * bare.purchase * draw.between(0.4, 1.5);
  return { ...bare, items, bricks: Math.max(0, arborKg - bare.carriage) };
};

/** Mass on the batten along the travel, from what the balance says hangs. */
export const hangingOf = (set: BalanceSet): BrokenLine =>
  balanceCurve(set).nodes.map(({ height, below, above }) => {
    const aboveKg = hangingAt(set, height);
    return { height, below: aboveKg - (above - below) / GRAVITY, above: aboveKg };
  });

export const hangingAt = (set: BalanceSet, heightM: number): number => {
  const { battenKg, itemsKg } = imbalanceParts(set, heightM);
  return itemsKg.reduce((sum, massKg) => sum + massKg, battenKg);
};

export const runOf = (
  set: BalanceSet,
  { between, chance }: Draw,
  slowed: boolean,
): RunawayCase => ({
  curve: balanceCurve(set).nodes,
  lowStop: set.lowStop,
  highStop: set.highStop,
  height: between(set.lowStop, set.highStop),
  hold: slowed && chance(0.5) ? between(0, 150) : 0,
  moves: {
    purchase: set.purchase,
    arbor: set.carriage + set.bricks,
    hanging: hangingOf(set),
    lineMass: between(0, 40),
    blockMass: between(0, 15),
    friction: {
      share: slowed ? between(0, 0.04) : 0,
      of: chance(0.5) ? 'both' : 'batten',
      constant: slowed ? between(0, 30) : 0,
    },
  },
});
