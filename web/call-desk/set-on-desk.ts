/** One set of the open call with all that its forms need. */
import type { House } from '#house';
import type { HouseNow, PostId, SetNow } from '#state';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { Names } from './desk-words.ts';

export type SetOnDesk = {
  readonly id: string;
  readonly each: SetReckoning;
  readonly set: SetNow;
  readonly now: HouseNow;
  readonly house: House;
  readonly isLive: boolean;
  /** The post of this device that speaks; null where it has none. */
  readonly post: PostId | null;
  readonly names: Names;
  /** Pieces that may hang there: of the show, and what was known to hang there last. */
  readonly pieces: readonly { readonly id: string; readonly name: string }[];
};

export const nameOfPiece =
  ({ set }: SetReckoning) =>
  (id: string): string =>
    set.takeoffs.find(({ item }) => item.id === id)?.item.name ?? id;

export const piecesOf = (each: SetReckoning, { last }: SetNow): SetOnDesk['pieces'] => {
  const planned = (each.set.hang?.items ?? []).map(({ id }) => id);
  const known = Object.keys(last?.items ?? {});
  const name = nameOfPiece(each);
  return [...new Set([...planned, ...known])].map((id) => ({ id, name: name(id) }));
};

/** The head flyman speaks for the house; else whatever post the device took first. */
export const speakingPost = (posts: readonly PostId[]): PostId | null =>
  posts.find((post) => post === 'headFly') ?? posts[0] ?? null;
