/** What waits for the word of the posts of this device: seen, counted, and said by this person. */
import { useState } from 'react';
import type { CallDocuments } from '#call';
import type { PostId } from '#state';
import { CountPad, countOf } from '../call/count-pad.tsx';
import { TaskActs } from '../call/task-acts.tsx';
import { asksCount } from '../call/tasks.ts';
import { useSay } from '../call/use-say.ts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { actorWords, momentWords, postWords, rulesWords, stepWords } from './desk-words.ts';
import { type SetInCall, waitingFor } from './first-sets.ts';
import { SetName } from './set-name.tsx';
import { nameOfPiece } from './set-on-desk.ts';
import type { OpenDesk } from './use-desk.ts';
import { useNow } from './use-now.ts';

export const WaitsPart = ({ open }: { readonly open: OpenDesk }) => {
  const tell = useTell();
  const { now, here } = open;
  const waiting = here.posts.flatMap((post) =>
    waitingFor(now, post).map((each) => ({ ...each, post })),
  );
  if (waiting.length === 0) return null;
  return (
    <section className="call-part" aria-labelledby="waits-head">
      <h2 id="waits-head">{tell('Waits for your word')}</h2>
      {waiting.map((each) => (
        <OneWait key={`${each.id} ${each.post}`} open={open} {...each} />
      ))}
    </section>
  );
};

type WaitProps = SetInCall & { readonly open: OpenDesk; readonly post: PostId };

const OneWait = ({ open, id, set, post }: WaitProps) => {
  const tell = useTell();
  const voice = useVoice();
  const nowMs = useNow();
  const { now, names, house, work, here } = open;
  const { asked } = set;
  const each = work.sets.find((one) => one.id === id);
  if (asked === null || each === undefined) return null;
  const context = { house, set: id, nameOf: nameOfPiece(each) };
  return (
    <div className="call-block">
      <SetName each={each} />
      <p className="call-action">{stepWords(asked.step, set.standing, context)}</p>
      <p>
        {tell('{post}, {name}, asked {moment}', {
          post: postWords(asked.post, house),
          name: actorWords(asked, now, { names, voice }),
          moment: momentWords(asked.atMs, nowMs, voice),
        })}
      </p>
      {asked.override === null ? null : (
        <Notice
          degree="caution"
          title={tell('against a rule: {rules}', {
            rules: rulesWords(asked.override.rules, voice),
          })}
        >
          <p>{tell('The reason given: {why}', { why: asked.override.why })}</p>
          <p>
            {tell(
              'Your word with theirs sets it aside, for this step, by both names, in sight of ' +
                'all. It covers nothing that holds a weight.',
            )}
          </p>
        </Notice>
      )}
      {here.documents === null ? (
        <p>{tell('This device has other revisions than the call, so it works nothing out.')}</p>
      ) : (
        <Acts key={asked.seq} documents={here.documents} {...{ post, id, set, asked }} />
      )}
    </div>
  );
};

type ActsProps = SetInCall & {
  readonly documents: CallDocuments;
  readonly post: PostId;
  readonly asked: NonNullable<SetInCall['set']['asked']>;
};

/** The count is entered by whoever gives the word: it begins empty, and no figure is offered. */
const Acts = ({ documents, post, id, set, asked }: ActsProps) => {
  const tell = useTell();
  const saying = useSay();
  const [typed, setTyped] = useState('');
  const task = { is: 'wordAsked', set: id, step: asked.step, asked } as const;
  return (
    <div className="call-acts">
      {asksCount(set, asked.step) ? (
        <CountPad
          typed={typed}
          label={tell('Count every plate on the arbor yourself')}
          onType={setTyped}
        />
      ) : null}
      <TaskActs
        {...{ post, task, set, documents, saying }}
        plates={countOf(typed)}
        onOther={() => undefined}
      />
      <p role="status">{saying.words}</p>
    </div>
  );
};
