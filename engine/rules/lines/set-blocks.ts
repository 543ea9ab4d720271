/** The blocks of a set that are judged by what the house says of them. */
export const BLOCKS_OF_SET = ['loftBlock', 'headBlock'] as const;
export type BlockName = (typeof BLOCKS_OF_SET)[number];

export const BLOCK_WORDS: Readonly<Record<BlockName, string>> = {
  loftBlock: 'loft blocks',
  headBlock: 'head block',
};
