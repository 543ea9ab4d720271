import { type Finding, measure } from '#findings';
import type { BrickKind } from '#house';
import { lack } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseCase, HouseRule, Opinion } from '../rule.ts';
import { pipeWeightCount, showCount } from './brick-use.ts';

/**
 * BRK-002: two kinds that look alike and weigh differently are not both about. Where both lie
 * loose on one gallery, that gallery is named; else the house, where both are in use at all.
 */
export const lookAlike: HouseRule = (the) => pairsOf(the).flatMap((pair) => judgePair(the, pair));

type Pair = readonly [BrickKind, BrickKind];

/** A pair counts once, whichever of the two says so, in the order of the house's list. */
const pairsOf = ({ house: { brickKinds } }: HouseCase): readonly Pair[] =>
  brickKinds.flatMap((one, index) =>
    brickKinds
      .slice(index + 1)
      .filter((other) => one.looksLike.includes(other.id) || other.looksLike.includes(one.id))
      .map((other): Pair => [one, other]),
  );

const judgePair = (the: HouseCase, [one, other]: Pair): readonly Opinion[] => {
  const galleries = galleriesWithBoth(the, one.id, other.id);
  if (galleries.length === 0 && !(isInUse(the, one.id) && isInUse(the, other.id))) return [];
  const unweighed = [one, other].filter(({ mass }) => !mass.known);
  if (!one.mass.known || !other.mass.known) {
    return unweighed.map(({ id }) =>
      lack(`mass of brick ${id}`, 'bricks that look alike', 'house'),
    );
  }
  const differenceKg = Math.abs(one.mass.value - other.mass.value);
  if (!isAbove(differenceKg, 0)) return [];
  const found = (where: string, gallery?: string): Finding =>
    raise('BRK-002', {
      at: { brickKind: one.id, ...(gallery === undefined ? {} : { gallery }) },
      measured: measure(differenceKg, 'mass'),
      facts: { kind: one.id, other: other.id, where },
    });
  return galleries.length > 0
    ? galleries.map(({ id, name }) => found(`both loose on the ${name}`, id))
    : [found('both in use in this house')];
};

const galleriesWithBoth = ({ house, state }: HouseCase, one: string, other: string) =>
  house.galleries.filter(({ id }) => {
    const stock = state?.galleries[id]?.stock ?? {};
    return (stock[one] ?? 0) > 0 && (stock[other] ?? 0) > 0;
  });

const isInUse = (the: HouseCase, kind: string): boolean =>
  pipeWeightCount(the.house, kind) + showCount(the, kind) > 0 ||
  Object.values(the.state?.galleries ?? {}).some(({ stock }) => (stock[kind] ?? 0) > 0);
