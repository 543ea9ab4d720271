/** Who stands where on which device; codes by which others join; leaving a post. */
import { useState } from 'react';
import type { PostId, PostNow } from '#state';
import { useSay } from '../call/use-say.ts';
import { ChoiceField } from '../house-found/choice-field.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { deviceId } from '../live/device-key.ts';
import { useAct } from '../people/use-act.tsx';
import { QrCode } from '../this-server/qr-code.tsx';
import { type JoiningCode, makeCode } from './ask-call.ts';
import { clockWords, momentWords, postsOf, postWords } from './desk-words.ts';
import type { OpenDesk } from './use-desk.ts';
import { useNow } from './use-now.ts';
import '../this-server/this-server.css';

export const PostsPage = ({ open }: { readonly open: OpenDesk }) => {
  const tell = useTell();
  const { now, house } = open;
  const all = [...new Set([...postsOf(house), ...Object.keys(now.posts)])];
  return (
    <>
      <h1>{tell('Posts')}</h1>
      <CodeMaker open={open} posts={all} />
      <section className="call-part" aria-labelledby="posts-list">
        <h2 id="posts-list">{tell('Who stands where')}</h2>
        <ul className="call-posts">
          {all.map((post) => (
            <OnePost key={post} open={open} post={post} held={now.posts[post]} />
          ))}
        </ul>
      </section>
    </>
  );
};

type PostProps = {
  readonly open: OpenDesk;
  readonly post: PostId;
  readonly held: PostNow | undefined;
};

const OnePost = ({ open: { house, isLive }, post, held }: PostProps) => {
  const tell = useTell();
  const name = postWords(post, house);
  return (
    <li data-held={held === undefined ? undefined : ''}>
      <h3>{name}</h3>
      {held === undefined ? (
        <p className="quiet">{tell('nobody')}</p>
      ) : (
        <HeldPost post={post} held={held} name={name} isLive={isLive} />
      )}
    </li>
  );
};

type HeldProps = {
  readonly post: PostId;
  readonly held: PostNow;
  readonly name: string;
  readonly isLive: boolean;
};

/** Enough of an id for two people to see that they hold the same device. */
const DEVICE_SHOWN = 6;

const HeldPost = ({ post, held, name, isLive }: HeldProps) => {
  const tell = useTell();
  const voice = useVoice();
  const saying = useSay();
  const nowMs = useNow();
  const isOwn = held.device === deviceId();
  return (
    <>
      <p>
        <b>{held.name}</b>
        {held.by === null ? `, ${tell('not signed in')}` : ''}
        {held.isClear ? `, ${tell('clear of the zones')}` : ''}
      </p>
      <p>
        {isOwn
          ? tell('on this device, since {moment}', {
              moment: momentWords(held.sinceMs, nowMs, voice),
            })
          : tell('on device {device}, since {moment}', {
              device: (held.device ?? '').slice(0, DEVICE_SHOWN),
              moment: momentWords(held.sinceMs, nowMs, voice),
            })}
      </p>
      {held.answeredBy === null ? null : (
        <p>
          {tell('Without the sign-off for it: {name} answers for them', { name: held.answeredBy })}
        </p>
      )}
      {isOwn ? (
        <p className="buttons">
          <button
            type="button"
            disabled={!isLive || saying.isPending}
            onClick={() => saying.say({ kind: 'post left', set: null, payload: { post } })}
          >
            {tell('Leave the post: {name}', { name })}
          </button>
          <span role="status">{saying.words}</span>
        </p>
      ) : null}
    </>
  );
};

type MakerProps = { readonly open: OpenDesk; readonly posts: readonly PostId[] };

const CodeMaker = ({ open: { house, isLive, here }, posts }: MakerProps) => {
  const tell = useTell();
  const { isBusy, act, said } = useAct();
  const [post, setPost] = useState('');
  const [answers, setAnswers] = useState(false);
  const [code, setCode] = useState<(JoiningCode & { readonly post: PostId }) | null>(null);
  const isHeadFly = here.posts.includes('headFly');
  const make = (): void =>
    void act(async () => {
      const answer = await makeCode(post, answers && isHeadFly);
      if (answer.ok) setCode({ ...answer.value, post });
      return answer;
    });
  return (
    <section className="call-form" aria-labelledby="make-code">
      <h2 id="make-code">{tell('Let somebody join')}</h2>
      <div className="found-fields">
        <ChoiceField
          label={tell('For the post')}
          value={post}
          none={tell('choose a post')}
          choices={posts.map((each) => [each, postWords(each, house)] as const)}
          onChoose={(chosen) => {
            setPost(chosen);
            setCode(null);
          }}
        />
        {isHeadFly && post !== 'headFly' ? (
          <label className="call-check">
            <input
              type="checkbox"
              checked={answers}
              onChange={({ target }) => setAnswers(target.checked)}
            />
            {tell('I answer for them by name, where they are not signed off for it')}
          </label>
        ) : null}
      </div>
      <p className="buttons">
        <button type="button" disabled={!isLive || isBusy || post === ''} onClick={make}>
          {tell('Make a joining code')}
        </button>
      </p>
      {said}
      {code === null ? null : <ShownCode code={code} name={postWords(code.post, house)} />}
    </section>
  );
};

type ShownProps = { readonly code: JoiningCode; readonly name: string };

const ShownCode = ({ code: { code, link, expiresMs }, name }: ShownProps) => {
  const tell = useTell();
  const nowMs = useNow();
  const address = new URL(link, location.origin).href;
  const isOver = nowMs >= expiresMs;
  if (isOver) {
    return (
      <p role="status">
        {tell('The code for {name} is over since {time}. Make another.', {
          name,
          time: clockWords(expiresMs),
        })}
      </p>
    );
  }
  return (
    <div className="call-code" role="status">
      <div>
        <p>{tell('For {name}, once, until {time}', { name, time: clockWords(expiresMs) })}</p>
        <p className="call-code-large">{code}</p>
        <p>
          {tell('On the other device open {address} and type it, or scan this.', {
            address: `${location.origin}/live/join`,
          })}
        </p>
      </div>
      <QrCode text={address} name={tell('Joining code of {name} as QR', { name })} />
    </div>
  );
};
