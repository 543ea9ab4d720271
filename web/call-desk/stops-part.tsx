/** STOP lifted: by the head flyman with whoever called it, or with a substitute and the reason. */
import { useState } from 'react';
import type { HouseNow, PostId, StopNow } from '#state';
import { HoldButton } from '../call/hold-button.tsx';
import { useSay } from '../call/use-say.ts';
import { TextField } from '../house-found/choice-field.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { actorWords, type Names } from './desk-words.ts';

type StopsProps = {
  readonly now: HouseNow;
  readonly names: Names;
  readonly posts: readonly PostId[];
  readonly isLive: boolean;
};

export const StopsPart = (props: StopsProps) => {
  const tell = useTell();
  const { stops } = props.now;
  if (stops.length === 0) return null;
  return (
    <section className="call-part" aria-labelledby="stops-head">
      <h2 id="stops-head">{tell('To lift STOP')}</h2>
      {props.posts.includes('headFly') ? null : (
        <p>{tell('The head flyman lifts it, on the device that stands as head flyman.')}</p>
      )}
      {stops.map((stop) => (
        <OneStop key={stop.seq} stop={stop} {...props} />
      ))}
    </section>
  );
};

/** Two people, as far as the record knows: without sign-in it does not. */
const isAnother = ({ by }: StopNow, { posts }: HouseNow): boolean => {
  const head = new Map(Object.entries(posts)).get('headFly')?.by ?? null;
  return by !== null && head !== null && by !== head;
};

const OneStop = (props: StopsProps & { readonly stop: StopNow }) => {
  const { stop, now, posts, isLive } = props;
  return (
    <div className="call-block">
      <CallerWords {...props} />
      <OwnWord stop={stop} posts={posts} isLive={isLive} />
      {posts.includes('headFly') ? (
        <Lift stop={stop} isLive={isLive} needsName={!(stop.isAgreed && isAnother(stop, now))} />
      ) : null}
    </div>
  );
};

const CallerWords = ({ stop, now, names }: StopsProps & { readonly stop: StopNow }) => {
  const tell = useTell();
  const voice = useVoice();
  const caller = actorWords(stop, now, { names, voice });
  return (
    <>
      <p>
        {stop.isAgreed
          ? tell('{caller}, who called it, says that work may go on.', { caller })
          : tell('{caller}, who called it, has not said that work may go on.', { caller })}
      </p>
      {stop.isAgreed && !isAnother(stop, now) ? (
        <p>
          {tell(
            'The record cannot tell them from the head flyman, so somebody else stands in by ' +
              'name, with the reason.',
          )}
        </p>
      ) : null}
    </>
  );
};

type LiftProps = {
  readonly stop: StopNow;
  readonly isLive: boolean;
  /** Of a substitute for whoever called it, and why. */
  readonly needsName: boolean;
};

const Lift = ({ stop, isLive, needsName }: LiftProps) => {
  const tell = useTell();
  const saying = useSay();
  const [name, setName] = useState('');
  const [why, setWhy] = useState('');
  const isNamed = name.trim() !== '' && why.trim() !== '';
  const lift = (): void => {
    const substitute = needsName ? { name: name.trim(), why: why.trim() } : null;
    const payload = { post: 'headFly', stop: stop.seq, substitute };
    saying.say({ kind: 'stop lifted', set: null, payload });
  };
  return (
    <>
      {needsName ? (
        <div className="found-fields">
          <TextField label={tell('A substitute for them, by name')} value={name} onType={setName} />
          <TextField label={tell('and the reason')} value={why} onType={setWhy} />
        </div>
      ) : null}
      <p className="buttons">
        <HoldButton isOff={!isLive || saying.isPending || (needsName && !isNamed)} onGiven={lift}>
          {tell('lift this STOP')}
        </HoldButton>
        <span role="status">{saying.words}</span>
      </p>
    </>
  );
};

type OwnProps = Pick<StopsProps, 'posts' | 'isLive'> & { readonly stop: StopNow };

/** What whoever stands at this device says of it: that it was heard, and that work may go on. */
const OwnWord = ({ stop, posts, isLive }: OwnProps) => {
  const tell = useTell();
  const saying = useSay();
  const unheard = posts.filter((post) => !(post in stop.heard));
  const isOwn = stop.post !== null && posts.includes(stop.post) && !stop.isAgreed;
  if (unheard.length === 0 && !isOwn) return null;
  return (
    <p className="buttons">
      {unheard.length === 0 ? null : (
        <button
          type="button"
          disabled={!isLive}
          onClick={() => {
            for (const post of unheard) {
              saying.say({ kind: 'stop heard', set: null, payload: { post, stop: stop.seq } });
            }
          }}
        >
          {tell('I have heard it')}
        </button>
      )}
      {isOwn ? (
        <HoldButton
          isOff={!isLive || saying.isPending}
          onGiven={() =>
            saying.say({ kind: 'stop agreed', set: null, payload: { stop: stop.seq } })
          }
        >
          {tell('work may go on, as far as I am concerned')}
        </HoldButton>
      ) : null}
      <span role="status">{saying.words}</span>
    </p>
  );
};
