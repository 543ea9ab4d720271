import { measure } from '#findings';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { cueHeights, trimHeights } from '../rest-heights.ts';
import type { SetCase, SetRule } from '../rule.ts';
import { type Loom, loomsOf } from './looms.ts';

/**
 * LOM-001: a loom reaches from its fixed point to the batten at every trim, at the end of every
 * cue and at the working height. One finding a loom, where it is shortest.
 */
export const loomTooShort: SetRule = (the) => {
  const { hang, lineSet } = the.set;
  const { looms, lacks } = loomsOf(hang?.items ?? []);
  const found = looms.flatMap((loom) => {
    const [worst] = heightsOf(the)
      .map((place) => ({ ...place, neededM: neededLengthM(loom, place.heightM) }))
      .toSorted((one, other) => other.neededM - one.neededM);
    if (worst === undefined || !isAbove(worst.neededM, loom.lengthM)) return [];
    return [
      raise('LOM-001', {
        at: { set: lineSet.id, item: loom.item.id, heightM: worst.heightM },
        measured: measure(worst.neededM, 'length'),
        limit: measure(loom.lengthM, 'length'),
        limitSource: 'length of the loom, from the show',
        facts: {
          piece: loom.item.name,
          where: worst.name,
          height: measure(worst.heightM, 'length'),
        },
      }),
    ];
  });
  return [...lacks, ...found];
};

/** A straight line up and down is the least: slack and the way across come on top. */
const neededLengthM = ({ fixedAtM }: Loom, battenM: number): number =>
  Math.abs(battenM - (fixedAtM ?? 0));

const heightsOf = (the: SetCase) => {
  const { workingHeight } = the.set.lineSet;
  return [
    ...trimHeights(the).heights.map(({ name, heightM }) => ({ name: `trim ${name}`, heightM })),
    ...cueHeights(the),
    ...(workingHeight.known ? [{ name: 'working height', heightM: workingHeight.value }] : []),
  ];
};
