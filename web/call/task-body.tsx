/** The one next action of a post: which set, what to do, what to say and hear, when to stop. */

import type { ReactNode } from 'react';
import type { CallDocuments } from '#call';
import { unreachable } from '#outcome';
import type { HouseNow, PostId, SetNow } from '#state';
import { postWords } from '../call-desk/desk-words.ts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { neighboursOf, pieceOf, whatHangs } from './set-names.ts';
import { StackView } from './stack-view.tsx';
import type { TaskWords } from './task-words.ts';
import type { PostTask } from './tasks.ts';

type BodyProps = {
  readonly post: PostId;
  readonly task: PostTask;
  readonly set: SetNow;
  readonly now: HouseNow;
  readonly documents: CallDocuments;
  readonly words: TaskWords;
  readonly isWide: boolean;
  readonly isLive: boolean;
  /** What stands against it; it stands where one reads what to do. */
  readonly against: ReactNode;
  /** Where a count is typed, in the place of the drawing; null where none is asked. */
  readonly pad: ReactNode;
};

export const SetHead = ({
  id,
  now,
  documents,
}: {
  readonly id: string;
  readonly now: HouseNow;
  readonly documents: CallDocuments;
}) => {
  const tell = useTell();
  const hangs = whatHangs(documents, id, now.sets[id]);
  const piece = pieceOf(documents, id);
  const beside = neighboursOf(documents, now, id);
  return (
    <div className="set-head">
      <h2>
        <span className="set-number">{id}</span>
        <span className="set-name">{piece ?? hangs}</span>
      </h2>
      <p className="set-beside">{tell('beside it: {sets}', { sets: beside.join(', ') })}</p>
    </div>
  );
};

const useProgress = ({ task }: BodyProps): string | null => {
  const tell = useTell();
  const { step } = task;
  if (step.act !== 'add' && step.act !== 'remove') return null;
  const done = task.is === 'inHand' ? task.leave.plates : 0;
  const left = step.count - done;
  const names = { done, left };
  return step.act === 'add'
    ? tell('{done} on, {left} to come. One at a time, count aloud.', names)
    : tell('{done} off, {left} to come. One at a time, count aloud.', names);
};

/** Who calls a step is the post that does it; the second hears the call and answers. */
const SayAndHear = ({ task, words }: BodyProps) => {
  const tell = useTell();
  const { said } = words;
  if (said === null) return null;
  const isSecond = task.is === 'wordAsked';
  const call = tell('“{words}”', { words: said.call.says });
  const answer = tell('“{words}”', { words: said.answer.says });
  return (
    <dl className="say-hear">
      <dt>{tell('Say')}</dt>
      <dd>{isSecond ? answer : call}</dd>
      <dt>{tell('Hear')}</dt>
      <dd>{isSecond ? call : answer}</dd>
      <dt>{tell('After')}</dt>
      <dd>{said.expect[0]}</dd>
    </dl>
  );
};

const StopIf = ({ words }: BodyProps) => {
  const tell = useTell();
  if (words.said === null) return null;
  const { stopIf } = words.said;
  return (
    <div className="stop-if">
      <Glyph name="caution" />
      <p>
        <b>{tell('Stop if')}</b> {stopIf}.
      </p>
    </div>
  );
};

const Where = (props: BodyProps) => {
  const tell = useTell();
  const { words, task } = props;
  const progress = useProgress(props);
  if (progress !== null) return <p className="task-does">{progress}</p>;
  if (words.said !== null) return <p className="task-does">{words.said.does}</p>;
  return task.is === 'next' ? (
    <p className="task-does">{tell('This device cannot work out what it leads to.')}</p>
  ) : null;
};

/** Whose turn it is, and what has been asked and given so far. */
const useTurn = ({ task, now, documents, isLive }: BodyProps): string => {
  const tell = useTell();
  const { house } = documents;
  // What was given may have been taken back since, or STOP said.
  if (!isLive) {
    return task.is === 'inHand'
      ? tell('Leave had been given when this device last heard. Ask by voice.')
      : tell('No leave had been given when this device last heard.');
  }
  switch (task.is) {
    case 'inHand':
      return tell('Leave is given: do it now.');
    case 'wordAsked':
      return tell('{post}, {name}, asks for your word.', {
        post: postWords(task.asked.post, house),
        name: now.posts[task.asked.post]?.name ?? tell('nobody by name'),
      });
    case 'waits':
      return tell('Leave is asked. It waits for the word of: {post}.', {
        post: postWords(task.asked.secondOf, house),
      });
    case 'next':
      return tell('Next. Leave is not asked yet.');
    case 'mayReopen':
      return tell('No order opens it again. It is opened on the word of the lead alone.');
    default:
      return unreachable(task);
  }
};

export const TaskBody = (props: BodyProps) => {
  const { task, set, now, documents, words, isWide, against, pad } = props;
  const turn = useTurn(props);
  const before = task.is === 'inHand' ? task.leave.before : set.standing;
  return (
    <section className="task" aria-label={words.action}>
      <div className="task-main">
        <SetHead id={task.set} now={now} documents={documents} />
        <p className="task-action">{words.action}</p>
        <p className="task-turn">{turn}</p>
        {against}
        <Where {...props} />
        <SayAndHear {...props} />
      </div>
      {pad}
      {before === null || pad !== null ? null : (
        <StackView
          task={task}
          before={before}
          house={documents.house}
          physics={words.physics}
          isWide={isWide}
        />
      )}
      <StopIf {...props} />
      {words.said?.clear == null ? null : <p className="task-clear">{words.said.clear}</p>}
    </section>
  );
};
