/**
 * Posts of a call: which there are in a house, and which two of them are never one person. Common
 * practice, no source; the rules of the house come first.
 */
import type { House } from '#house';
import type { PostId } from '#state';

const POSTS = ['headFly', 'caller', 'rail', 'deck', 'watcher', 'bullLine', 'motor', 'pinRail'];

export const postsOf = ({ galleries }: Pick<House, 'galleries'>): readonly PostId[] => [
  ...POSTS,
  ...galleries.map(({ id }) => `gallery:${id}`),
  'marshal:run',
  ...galleries.map(({ id }) => `marshal:drop:${id}`),
];

type Kind = 'headFly' | 'rail' | 'watcher' | 'deck' | 'bullLine' | 'gallery';

/** Where a step needs the word of two: the count, the first brick, a rope. */
const TWO: readonly (readonly [Kind, Kind])[] = [
  ['gallery', 'deck'],
  ['gallery', 'headFly'],
  ['rail', 'headFly'],
  ['rail', 'watcher'],
  // Nobody stands at the rail while bricks are in hand above it.
  ['rail', 'gallery'],
  ['rail', 'bullLine'],
  ['bullLine', 'headFly'],
  ['deck', 'headFly'],
];

const kindOf = (post: PostId): string => post.split(':')[0] ?? '';

/** Whether one person may not be at both: who says it and who confirms it are two. */
export const areTwoPeople = (one: PostId, other: PostId): boolean =>
  TWO.some(
    ([a, b]) =>
      (kindOf(one) === a && kindOf(other) === b) || (kindOf(one) === b && kindOf(other) === a),
  );
