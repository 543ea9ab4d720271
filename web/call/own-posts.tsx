/** Live, from the strip: the posts of this device, or how to come by one. */
import { Link } from '../address/link.tsx';
import { postWords } from '../call-desk/desk-words.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { DRILL_PLACE, JOIN_PLACE, OPEN_PLACE, OVERVIEW_PLACE, postPlace } from './places.ts';
import { useLiveWords } from './post-head.tsx';
import { StopBar } from './stop-bar.tsx';
import { useCall } from './use-call.ts';

export const OwnPosts = () => {
  const tell = useTell();
  const { house } = useWork();
  const { now, posts, isLive, documents } = useCall();
  const words = useLiveWords(isLive);
  const ofCall = documents?.house ?? house;
  return (
    <div className="own-posts">
      <section aria-labelledby="own-posts-head">
        <h1 id="own-posts-head">{tell('Live')}</h1>
        <p className="post-live" data-live={isLive ? 'live' : 'not'}>
          {words}
        </p>
        {now === null ? <p>{tell('What is known of a call is being read.')}</p> : null}
        {now !== null && now.call === null ? <NoCall /> : null}
        {now === null || now.call === null ? null : (
          <>
            <p>
              {posts.length === 0
                ? tell('A call is open, and this device has no post in it.')
                : tell('Choose the post at which this device is used.')}
            </p>
            <ul className="own-list">
              {posts.map((post) => (
                <li key={post}>
                  <Link to={postPlace(post)} className="act-link">
                    {postWords(post, ofCall)}
                  </Link>
                </li>
              ))}
              <li>
                <Link to={JOIN_PLACE} className="act-link">
                  {tell('Join with a code')}
                </Link>
              </li>
              <li>
                <Link to={OVERVIEW_PLACE} className="act-link">
                  {tell('Overview of the call')}
                </Link>
              </li>
            </ul>
          </>
        )}
      </section>
      {now === null || now.call === null ? null : (
        <StopBar now={now} post={posts[0] ?? null} isLive={isLive} />
      )}
    </div>
  );
};

const NoCall = () => {
  const tell = useTell();
  return (
    <>
      <p>
        {tell(
          'No call is open. While one is, each post has its next step here, what is said and ' +
            'heard is recorded, and every set is shown as it stands.',
        )}
      </p>
      <p>
        {tell(
          'It advises and records; it holds no weight, gives no order to machinery, and replaces ' +
            'no look at the set.',
        )}
      </p>
      <ul className="own-list">
        <li>
          <Link to={OPEN_PLACE} className="act-link">
            {tell('Open a call')}
          </Link>
        </li>
        <li>
          <Link to={DRILL_PLACE} className="act-link">
            {tell('Drill: practise on this hang')}
          </Link>
        </li>
      </ul>
    </>
  );
};
