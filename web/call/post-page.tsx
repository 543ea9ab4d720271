/** A post by its address: its view, or why there is none, with STOP under both. */

import { type ReactNode, useMemo } from 'react';
import type { PostId } from '#state';
import { Link } from '../address/link.tsx';
import { postWords } from '../call-desk/desk-words.ts';
import { SpokenContext, useSpoken, useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { JOIN_PLACE, LIVE_PLACE, OPEN_PLACE } from './places.ts';
import { PostBody } from './post-body.tsx';
import { PostHead } from './post-head.tsx';
import { PostView } from './post-view.tsx';
import { StopBar } from './stop-bar.tsx';
import { type CallHere, useCall } from './use-call.ts';

export const PostPage = ({ post }: { readonly post: PostId }) => {
  const here = useCall();
  const { documents, desk, now, posts, isLive } = here;
  const spoken = useSpoken();
  const words = documents?.house.words ?? spoken.voice.words;
  // The call may be of another house than the page shows, with other words of the trade.
  const ofCall = useMemo(() => ({ ...spoken, voice: { ...spoken.voice, words } }), [spoken, words]);
  const { tongue } = spoken.voice;
  const own = useMemo(
    () =>
      documents === null || tongue === undefined
        ? documents
        : { ...documents, house: { ...documents.house, tongue } },
    [documents, tongue],
  );
  if (now?.call !== null && now !== null && own !== null && desk !== null && posts.includes(post)) {
    return (
      <SpokenContext value={ofCall}>
        <PostView {...{ post, now, documents: own, desk, posts, isLive }} />
      </SpokenContext>
    );
  }
  return <NoView here={here} post={post} />;
};

const NoView = ({ here, post }: { readonly here: CallHere; readonly post: PostId }) => {
  const { house } = useWork();
  const { now, posts, isLive } = here;
  return (
    <div className="post-view">
      <PostHead {...{ post, posts, house, isLive }} waiting={NOBODY} />
      <PostBody>
        <WhyNone here={here} post={post} />
      </PostBody>
      <div className="post-acts" />
      <StopBar now={now} post={posts.includes(post) ? post : null} isLive={isLive} />
    </div>
  );
};

const NOBODY: ReadonlySet<PostId> = new Set();

const Said = ({ title, children }: { readonly title: string; readonly children?: ReactNode }) => (
  <section className="nothing-now" aria-label={title}>
    <p className="task-action">{title}</p>
    {children}
  </section>
);

const WhyNone = ({ here, post }: { readonly here: CallHere; readonly post: PostId }) => {
  const tell = useTell();
  const { house } = useWork();
  const { now, noDocuments, isLive, posts } = here;
  if (now === null) {
    return (
      <Said title={tell('Nothing is known here yet')}>
        <p>
          {isLive
            ? tell('The record is being read.')
            : tell('This device does not hear the house. Work by voice and paper.')}
        </p>
      </Said>
    );
  }
  if (now.call === null) {
    return (
      <Said title={tell('No call is open')}>
        <p>
          <Link to={OPEN_PLACE}>{tell('Open a call')}</Link>
        </p>
      </Said>
    );
  }
  if (!posts.includes(post)) {
    const names = { post: postWords(post, house), name: now.posts[post]?.name ?? '' };
    return (
      <Said title={tell('Not the post of this device')}>
        <p>
          {now.posts[post] === undefined
            ? tell('Nobody is at {post}.', names)
            : tell('{name} is at {post}, on another device.', names)}
        </p>
        <p>
          <Link to={JOIN_PLACE}>{tell('Join with a code')}</Link>{' '}
          <Link to={LIVE_PLACE}>{tell('Posts of this device')}</Link>
        </p>
      </Said>
    );
  }
  return (
    <Said title={tell('No figures on this device')}>
      <p>
        {noDocuments === 'asking'
          ? tell('The documents of the call are being fetched.')
          : tell(
              'The call was opened on other revisions of the documents than are on this device, ' +
                'and they are not given now. Nothing is worked out from others. Work by what is ' +
                'called, and by paper.',
            )}
      </p>
    </Said>
  );
};
