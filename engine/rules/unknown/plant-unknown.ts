import { type House, type LineSet, purchaseOf } from '#house';
import { lack } from '../known-values.ts';
import type { HouseCase, HouseRule, Lack } from '../rule.ts';
import { setList } from '../set-list.ts';

type Missed = {
  readonly name: string;
  readonly blocks: readonly string[];
  readonly isUnknown: (lineSet: LineSet) => boolean;
};

const STRENGTH = 'design factor of the lines';
const SHEAVES = 'size of the sheaves';
const BLOCKS = 'what the blocks carry';
const BENDING = 'bending of the battens';

const OF_FLOWN: readonly Missed[] = [
  {
    name: 'breaking strength of the lift lines',
    blocks: [STRENGTH],
    isUnknown: ({ lift }) => !lift.cable.breakingStrength.known,
  },
  {
    name: 'how the ends of the lift lines are made',
    blocks: [STRENGTH],
    isUnknown: ({ lift }) => lift.cable.termination === null,
  },
  {
    name: 'diameter of the lift lines',
    blocks: [STRENGTH, SHEAVES],
    isUnknown: ({ lift }) => !lift.cable.diameter.known,
  },
  {
    name: 'sheave of the loft blocks',
    blocks: [STRENGTH, SHEAVES],
    isUnknown: ({ lift }) => !lift.loftBlock.sheaveDiameter.known,
  },
  {
    name: 'sheave of the head block',
    blocks: [STRENGTH, SHEAVES],
    isUnknown: ({ lift }) => !lift.headBlock.sheaveDiameter.known,
  },
  {
    name: 'fleet angle at the loft blocks',
    blocks: ['fleet angles'],
    isUnknown: ({ lift }) => !lift.loftBlock.fleetAngle.known,
  },
  {
    name: 'fleet angle at the head block',
    blocks: ['fleet angles'],
    isUnknown: ({ lift }) => !lift.headBlock.fleetAngle.known,
  },
  {
    name: 'rating of the loft blocks',
    blocks: [BLOCKS],
    isUnknown: ({ lift }) => !lift.loftBlock.rated.known,
  },
  {
    name: 'rating of the head block',
    blocks: [BLOCKS],
    isUnknown: ({ lift }) => !lift.headBlock.rated.known,
  },
  {
    name: 'yield strength of the battens',
    blocks: [BENDING],
    isUnknown: ({ batten }) => !batten.pipe.yieldStrength.known,
  },
  {
    name: 'section modulus of the battens',
    blocks: [BENDING],
    isUnknown: ({ batten: { pipe } }) => !pipe.plasticModulus.known && !pipe.sectionModulus.known,
  },
  {
    name: 'strength of a joint of the battens',
    blocks: ['bending at the joints'],
    isUnknown: ({ batten }) => (batten.splices ?? []).some(({ strength }) => !strength.known),
  },
];

const OF_HUNG: readonly Missed[] = [
  {
    name: 'point limit of the battens',
    blocks: ['loads at one place'],
    isUnknown: ({ pointLimit }) => !pointLimit.known,
  },
  {
    name: 'limit of the battens for their length',
    blocks: ['loads spread along a batten'],
    isUnknown: ({ perLengthLimit }) => !perLengthLimit.known,
  },
];

/**
 * UNK-001: what the lines, blocks and pipes of a house are made of is as a rule unknown of all its
 * sets or of none. It is missed once for the house, with the sets, and not on every set again.
 */
export const plantUnknown: HouseRule = (the) => {
  const { lineSets } = the.house;
  const flown = lineSets.filter(({ suspension }) => purchaseOf(suspension) !== null);
  const hangs = new Set((the.show?.hangs ?? []).map(({ set }) => set));
  const hung = flown.filter(({ id }) => hangs.has(id));
  return [
    ...structureLacks(the),
    ...OF_FLOWN.flatMap((missed) => missedOf(the, missed, flown, 'every set')),
    ...OF_HUNG.flatMap((missed) => missedOf(the, missed, hung, 'every set that hangs')),
  ];
};

const structureLacks = ({ house, assessment }: HouseCase): readonly Lack[] => {
  const flown = assessment.sets.filter(
    ({ lineSet, hang }) =>
      purchaseOf(lineSet.suspension) !== null && (hang === null || hang.deadHungAt === null),
  );
  const needs = new Map<string, LineSet[]>();
  for (const { lineSet, structure } of flown) {
    for (const need of structure.known ? [] : structure.needs) {
      needs.set(need, [...(needs.get(need) ?? []), lineSet]);
    }
  }
  return [...needs].map(([need, sets]) =>
    lack(
      `${need} (${whichOf(house, sets, flown.length, 'every set')})`,
      'what lines, blocks and pipe carry',
      'house',
    ),
  );
};

const whichOf = (
  house: House,
  sets: readonly LineSet[],
  ofCount: number,
  everyOne: string,
): string => (sets.length === ofCount ? everyOne : `set ${setList(house, sets)}`);

const missedOf = (
  { house }: HouseCase,
  { name, blocks, isUnknown }: Missed,
  sets: readonly LineSet[],
  everyOne: string,
): readonly Lack[] => {
  const unknown = sets.filter(isUnknown);
  if (unknown.length === 0) return [];
  const which = whichOf(house, unknown, sets.length, everyOne);
  return blocks.map((blocked) => lack(`${name} (${which})`, blocked, 'house'));
};
