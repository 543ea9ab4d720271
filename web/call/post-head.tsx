/** The strip of a post: which post this is, whether what it shows is so, and the time. */
import { useEffect, useState } from 'react';
import type { House } from '#house';
import type { PostId } from '#state';
import { Link } from '../address/link.tsx';
import { clockWords, postWords } from '../call-desk/desk-words.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayStanding } from '../live/say-standing.ts';
import { useLive } from '../live/use-live.ts';
import { momentNow } from '../offline/house-fetch.ts';
import { postPlace } from './places.ts';

const TICK_MS = 5000;

const useMinute = (): string => {
  const [words, setWords] = useState(() => clockWords(momentNow().serverMs));
  useEffect(() => {
    const timer = setInterval(() => setWords(clockWords(momentNow().serverMs)), TICK_MS);
    return () => clearInterval(timer);
  }, []);
  return words;
};

/** One word while it is live; since when it is not, by the clock of the server. */
export const useLiveWords = (isLive: boolean): string => {
  const tell = useTell();
  const voice = useVoice();
  const { standing } = useLive();
  if (isLive) return tell('Live');
  const since = standing.sinceServerMs;
  if (standing.is === 'live')
    return sayStanding({ ...standing, is: 'catchingUp' }, Date.now(), voice);
  return since === null
    ? tell('not live')
    : tell('not live since {time}', { time: clockWords(since) });
};

type HeadProps = {
  readonly post: PostId;
  readonly posts: readonly PostId[];
  /** Posts of this device for which something waits. */
  readonly waiting: ReadonlySet<PostId>;
  readonly house: House;
  readonly isLive: boolean;
};

export const PostHead = ({ post, posts, waiting, house, isLive }: HeadProps) => {
  const tell = useTell();
  const words = useLiveWords(isLive);
  const time = useMinute();
  const others = posts.filter((each) => each !== post);
  return (
    <header className="post-head">
      <h1>{postWords(post, house)}</h1>
      {others.length === 0 ? null : (
        <nav aria-label={tell('Posts of this device')}>
          {others.map((each) => (
            <Link key={each} to={postPlace(each)}>
              {postWords(each, house)}
              {waiting.has(each) ? <b> {tell('waits')}</b> : null}
            </Link>
          ))}
        </nav>
      )}
      <p className="post-live" data-live={isLive ? 'live' : 'not'} aria-live="polite">
        {words}
      </p>
      <p className="post-clock">{time}</p>
    </header>
  );
};
