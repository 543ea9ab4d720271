import { measure } from '#findings';
import { byKnown } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseCase, HouseRule, Opinion } from '../rule.ts';
import { setList, setsBy } from '../set-list.ts';
import { BLOCK_WORDS, BLOCKS_OF_SET, type BlockName } from './set-blocks.ts';

/**
 * LFT-009: no line leaves the plane of its sheave by more than the house allows. Beyond it the
 * line wears on the side of the groove and may climb out. Said once for all sets alike.
 */
export const fleetAngle: HouseRule = (the) =>
  byKnown(
    the.house.rules.fleetAngleLimit,
    'limit of the fleet angle',
    WHAT,
    (limitRad, source) => BLOCKS_OF_SET.flatMap((name) => judgeBlocks(the, name, limitRad, source)),
    'house',
  );

const WHAT = 'fleet angles';

const judgeBlocks = (
  { house }: HouseCase,
  name: BlockName,
  limitRad: number,
  source: string,
): readonly Opinion[] => {
  const wide = setsBy(house, ({ lift }) => {
    const { fleetAngle: angle } = lift[name];
    return angle.known && isAbove(angle.value, limitRad) ? angle.value : null;
  });
  return [...wide].map(([angleRad, sets]) =>
    raise('LFT-009', {
      at: {},
      measured: measure(angleRad, 'angle'),
      limit: measure(limitRad, 'angle'),
      limitSource: source,
      facts: { sets: setList(house, sets), what: BLOCK_WORDS[name] },
    }),
  );
};
