/** The open call for a screen of the desk; null where none is open, or nothing is known of one. */
import type { House } from '#house';
import type { CallNow, HouseNow, PostId } from '#state';
import { type CallHere, useCall } from '../call/use-call.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import type { Names } from './desk-words.ts';
import { piecesOf, type SetOnDesk, speakingPost } from './set-on-desk.ts';
import { useNames } from './use-names.ts';

export type OpenDesk = {
  readonly here: CallHere;
  readonly call: CallNow;
  readonly now: HouseNow;
  readonly house: House;
  readonly work: Work;
  readonly names: Names;
  readonly isLive: boolean;
  /** The post of this device that speaks; null where it has none. */
  readonly post: PostId | null;
};

export const useDesk = (): OpenDesk | null => {
  const here = useCall();
  const work = useWork();
  const names = useNames();
  const { now } = here;
  if (now === null || now.call === null) return null;
  const { isLive, posts } = here;
  const { call } = now;
  return { here, call, now, house: work.house, work, names, isLive, post: speakingPost(posts) };
};

/** Null where the house of the page has no such set. */
export const setOnDesk = (open: OpenDesk, id: string): SetOnDesk | null => {
  const { now, work, house, isLive, post, names } = open;
  const set = now.sets[id];
  const each = work.sets.find((one) => one.id === id);
  if (set === undefined || each === undefined) return null;
  return { id, each, set, now, house, isLive, post, names, pieces: piecesOf(each, set) };
};
