import { measure } from '#findings';
import type { LineSet } from '#house';
import { byKnown } from '../known-values.ts';
import { isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseCase, HouseRule, Opinion } from '../rule.ts';
import { setList, setsBy } from '../set-list.ts';
import { BLOCK_WORDS, BLOCKS_OF_SET, type BlockName } from './set-blocks.ts';
import { timesWords } from './times-words.ts';

/**
 * LFT-008: sheaves are as many line diameters across as the house asks for. A line bent over a
 * small sheave keeps less of its strength and wears sooner. Said once for all sets alike.
 */
export const sheaveSize: HouseRule = (the) =>
  byKnown(
    the.house.rules.sheaveRatio,
    'least size of a sheave for its line',
    WHAT,
    (asked, source) => BLOCKS_OF_SET.flatMap((name) => judgeBlocks(the, name, asked, source)),
    'house',
  );

const WHAT = 'size of the sheaves';

const judgeBlocks = (
  { house }: HouseCase,
  name: BlockName,
  asked: number,
  source: string,
): readonly Opinion[] => {
  const small = setsBy(house, (set) => {
    const sizes = sizesOf(set, name);
    return sizes !== null && isBelow(sizes.sheaveM, asked * sizes.lineM)
      ? `${sizes.sheaveM} ${sizes.lineM}`
      : null;
  });
  return [...small.values()].flatMap(([first, ...others]) => {
    const sizes = first === undefined ? null : sizesOf(first, name);
    if (first === undefined || sizes === null) return [];
    return [
      raise('LFT-008', {
        at: {},
        measured: measure(sizes.sheaveM, 'length'),
        limit: measure(asked * sizes.lineM, 'length'),
        limitSource: source,
        facts: {
          sets: setList(house, [first, ...others]),
          what: BLOCK_WORDS[name],
          sheave: measure(sizes.sheaveM, 'length'),
          times: timesWords(sizes.sheaveM / sizes.lineM),
          asked: timesWords(asked),
        },
      }),
    ];
  });
};

const sizesOf = ({ lift }: LineSet, name: BlockName) => {
  const { diameter } = lift.cable;
  const { sheaveDiameter } = lift[name];
  return diameter.known && sheaveDiameter.known
    ? { lineM: diameter.value, sheaveM: sheaveDiameter.value }
    : null;
};
