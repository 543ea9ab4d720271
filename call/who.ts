/** Who speaks: which posts are theirs, what they are signed off for, and who is another person. */
import type { Task } from '#events';
import type { Actor, HouseNow, PostId, PostNow } from '#state';
import type { CallSender } from './desk-types.ts';

/** From the lowest level to the highest; a higher holds the lower. Common practice, no source. */
const LEVELS: readonly Task[] = [
  'induct',
  'deck',
  'loader',
  'rail',
  'outOfBalance',
  'lead',
  'headFly',
];

/** What the person at a post is signed off for. Source: the-job.md 7.4. */
export const taskOf = (post: PostId): Task => {
  if (post.startsWith('gallery:')) return 'loader';
  if (post.startsWith('marshal:')) return 'deck';
  switch (post) {
    case 'headFly':
      return 'lead';
    case 'rail':
    case 'pinRail':
      return 'rail';
    case 'deck':
      return 'deck';
    case 'bullLine':
      return 'outOfBalance';
    case 'motor':
      return 'motor';
    case 'watcher':
    case 'caller':
      return 'induct';
    default:
      // A post of no known work is for whoever owns the house.
      return 'headFly';
  }
};

/** Whether somebody is signed off for a post, or for more. */
export const isSignedOff = (tasks: readonly Task[], post: PostId): boolean => {
  const needed = taskOf(post);
  const level = LEVELS.indexOf(needed);
  if (level < 0) return tasks.includes(needed);
  return tasks.some((task) => LEVELS.indexOf(task) >= level);
};

/** A machine that needs no sign-in has nobody's sign-offs to look up. */
export const isCompetent = (
  { role, tasks }: CallSender,
  post: PostId,
  held: Pick<PostNow, 'answeredBy'>,
): boolean => role === 'this machine' || held.answeredBy !== null || isSignedOff(tasks, post);

/** A post is of the person who took it, on the device that they took it with. */
export const holds = ({ posts }: HouseNow, post: PostId, { by, device }: Actor): PostNow | null => {
  const held = posts[post];
  return held !== undefined && held.by === by && held.device === device ? held : null;
};

/** The same person, whichever device: of a machine without sign-in, the same device. */
export const isTheirs = ({ posts }: HouseNow, post: PostId, { by, device }: Actor): boolean => {
  const held = posts[post];
  if (held === undefined) return false;
  return by === null ? held.by === null && held.device === device : held.by === by;
};

/**
 * Another person on another device. Without a sign-in nobody shows that they are another, so that
 * there only paper makes a second.
 */
export const isAnother = (one: Actor, other: Actor): boolean =>
  one.by !== null && other.by !== null && one.by !== other.by && one.device !== other.device;

const plain = (name: string): string => name.trim().toLowerCase();

export const isSameName = (one: string, other: string): boolean => plain(one) === plain(other);

/** By what name somebody goes in this call: that of a post they have taken; null where none. */
export const nameIn = ({ posts }: HouseNow, { by, device }: Actor): string | null =>
  Object.values(posts).find((held) =>
    by === null ? held.by === null && held.device === device : held.by === by,
  )?.name ?? null;
