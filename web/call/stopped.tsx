/**
 * What every post shows while STOP stands: by whom, since when, and who has answered. That it was
 * shown somewhere is not told to anybody as heard: a person's touch says so, at their post.
 */
import type { House } from '#house';
import type { HouseNow, PostId, StopNow } from '#state';
import { Link } from '../address/link.tsx';
import { actorWords, clockWords, postWords } from '../call-desk/desk-words.ts';
import { useNames } from '../call-desk/use-names.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { HoldButton } from './hold-button.tsx';
import { OVERVIEW_PLACE } from './places.ts';
import { postsHeard } from './stop-bar.tsx';
import { useSay } from './use-say.ts';

type StoppedProps = {
  readonly stop: StopNow;
  readonly now: HouseNow;
  readonly house: House;
  readonly post: PostId;
  /** Posts of this device, all of which one person answers for. */
  readonly posts: readonly PostId[];
  readonly isLive: boolean;
};

export const StoppedWords = ({
  stop,
  now,
  house,
}: Omit<StoppedProps, 'post' | 'posts' | 'isLive'>) => {
  const tell = useTell();
  const voice = useVoice();
  const names = useNames();
  const { heard, not } = postsHeard(now, stop);
  const list = (posts: readonly PostId[]): string =>
    posts.map((each) => postWords(each, house)).join(', ');
  const who = {
    who: actorWords(stop, now, { names, voice }),
    time: clockWords(stop.atMs),
    post: stop.post === null ? tell('no post') : postWords(stop.post, house),
  };
  return (
    <div className="stopped" role="alert">
      <p className="stopped-word">
        {stop.set === null ? tell('STOP') : tell('STOP {set}', { set: stop.set })}
      </p>
      <p>{tell('By {who}, {post}, at {time}.', who)}</p>
      {stop.words === '' ? null : <p>{stop.words}</p>}
      <p>
        <b>
          {tell(
            'Keep what you have. Let nothing move, touch no brick, close the lock and ring it.',
          )}
        </b>
      </p>
      <p>{tell('It stops no rope: look and shout as well.')}</p>
      <dl className="stopped-heard">
        <dt>{tell('Heard')}</dt>
        <dd>{heard.length === 0 ? tell('nobody yet') : list(heard)}</dd>
        <dt>{tell('Not answered')}</dt>
        <dd>{not.length === 0 ? tell('none') : list(not)}</dd>
      </dl>
      {stop.isAgreed ? (
        <p>{tell('Whoever called it says that work may go on. The head flyman lifts it.')}</p>
      ) : null}
    </div>
  );
};

/** Who called it, as far as this device can tell: their post, or this device. */
const isOwn = (stop: StopNow, posts: readonly PostId[]): boolean =>
  stop.post !== null && posts.includes(stop.post);

export const StoppedActs = ({ stop, post, posts, isLive }: StoppedProps) => {
  const tell = useTell();
  const saying = useSay();
  const unheard = posts.filter((each) => !(each in stop.heard));
  const hear = (): void => {
    for (const each of unheard) {
      saying.say({ kind: 'stop heard', set: null, payload: { post: each, stop: stop.seq } });
    }
  };
  if (!isLive) return null;
  return (
    <>
      {unheard.length === 0 ? null : (
        <button type="button" className="plain next" onClick={hear}>
          <b>{tell('I have heard it')}</b>
        </button>
      )}
      {isOwn(stop, posts) && !stop.isAgreed ? (
        <HoldButton
          isNext={unheard.length === 0}
          isOff={saying.isPending}
          onGiven={() =>
            saying.say({ kind: 'stop agreed', set: null, payload: { stop: stop.seq } })
          }
        >
          {tell('Work may go on, as far as I am concerned')}
        </HoldButton>
      ) : null}
      {post === 'headFly' ? (
        <Link to={OVERVIEW_PLACE} className="act-link">
          {tell('Lift it, on the overview')}
        </Link>
      ) : null}
      {saying.refused === null && !saying.isLost ? null : (
        <p className="act-words" role="status">
          {saying.words}
        </p>
      )}
    </>
  );
};
