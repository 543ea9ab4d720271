/** A post of a call, as people call it. */
import type { House } from '#house';
import type { PostId } from '#state';
import { message, phrase } from '#texts';
import { inHouseWords } from './trade-translation.ts';

const POSTS: Readonly<Record<string, string>> = {
  headFly: message('head flyperson'),
  caller: message('caller'),
  rail: message('rail'),
  deck: message('deck'),
  watcher: message('watcher'),
  bullLine: message('lead of the bull line'),
  motor: message('motor operator'),
  pinRail: message('pin rail'),
  'marshal:run': message('marshal of the run'),
};

/** A post of a gallery is called by the gallery. */
export const postWords = (post: PostId, house: House): string => {
  const named = POSTS[post];
  if (named !== undefined) return inHouseWords(phrase(house, named), house);
  const [first = '', ...rest] = post.split(':');
  const gallery = house.galleries.find(({ id }) => id === rest.at(-1))?.name ?? rest.at(-1) ?? post;
  return first === 'marshal'
    ? phrase(house, 'marshal of the drop zone, {gallery}', { gallery })
    : gallery;
};
