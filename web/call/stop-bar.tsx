/**
 * STOP: at first touch, never off, the lowest on the screen. It tells people and stops no rope;
 * where the house is not heard it says that it must be shouted.
 */

import type { HouseNow, PostId, StopNow } from '#state';
import { useTell, useTellCount } from '../language/use-tell.ts';
import { useSay } from './use-say.ts';

type StopBarProps = {
  readonly now: HouseNow | null;
  /** The post that calls it; null on a screen that is of no post. */
  readonly post: PostId | null;
  readonly isLive: boolean;
};

export const postsHeard = (
  { posts }: Pick<HouseNow, 'posts'>,
  { heard }: StopNow,
): { readonly heard: readonly PostId[]; readonly not: readonly PostId[] } => {
  const all = Object.keys(posts);
  return {
    heard: all.filter((post) => post in heard),
    not: all.filter((post) => !(post in heard)),
  };
};

const useStopWords = ({ now, isLive }: StopBarProps): string => {
  const tell = useTell();
  const tellCount = useTellCount();
  if (!isLive) return tell('Nothing is sent: this device is not live. It stops no rope.');
  if (now?.call === null || now === null) return tell('No call is open: shout. It stops no rope.');
  const last = now.stops.at(-1);
  if (last === undefined) {
    const posts = Object.keys(now.posts).length;
    return tellCount(posts, [
      'tells {count} post, stops no rope',
      'tells {count} posts, stops no rope',
    ]);
  }
  const { heard, not } = postsHeard(now, last);
  const of = { heard: heard.length, all: heard.length + not.length };
  return not.length === 0
    ? tell('heard by all {all}, stops no rope', of)
    : tell('heard by {heard} of {all}, stops no rope', of);
};

export const StopBar = (props: StopBarProps) => {
  const tell = useTell();
  const { now, post, isLive } = props;
  const saying = useSay();
  const words = useStopWords(props);
  const isOpen = now !== null && now.call !== null;
  const shouts = !isLive || !isOpen;
  const stop = (): void =>
    saying.say({ kind: 'stop called', set: null, payload: { post, set: null, words: '' } });
  return (
    <button type="button" className="stop" data-shout={shouts ? '' : undefined} onClick={stop}>
      <b>{shouts ? tell('SHOUT STOP') : tell('STOP')}</b>
      <span>{words}</span>
      <span className="stop-said" role="status">
        {saying.isLost ? tell('NOT SENT: shout it') : ''}
        {saying.isPending ? tell('Sending') : ''}
      </span>
    </button>
  );
};
