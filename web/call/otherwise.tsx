/**
 * What is not as told: nothing was done, fewer bricks, another height, or something else, in
 * words. It is a report, and is taken from everybody. Before leave: a second person on paper, and
 * what two people may do against a rule, with their reason.
 */

import { type ReactNode, useState } from 'react';
import { isBrickStep } from '#call';
import { decimalMarkOf, formatLength, metres } from '#quantities';
import { readMeasure } from '../call-desk/measures.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { CountPad, countOf } from './count-pad.tsx';
import { HoldButton } from './hold-button.tsx';
import type { ActsProps } from './task-acts.tsx';
import type { PostTask } from './tasks.ts';
import { WayOut } from './way-out.tsx';
import { WordsField } from './words-field.tsx';

type OtherProps = ActsProps & {
  /** Rules that stand against the step and that two people with a reason may set aside. */
  readonly coverable: readonly string[];
  /** That the post is clear of every zone, or back. */
  readonly says: ReactNode;
  readonly onBack: () => void;
};

type Of<T extends PostTask['is']> = Omit<OtherProps, 'task'> & {
  readonly task: Extract<PostTask, { readonly is: T }>;
};

const isMove = ({ task }: OtherProps): boolean =>
  task.step.act === 'fly' || task.step.act === 'ease';

/** Where it stopped, as a person reads it off; null where what was typed is no height. */
const useHeight = (documents: OtherProps['documents']) => {
  const voice = useVoice();
  const [typed, setTyped] = useState('');
  const mark = decimalMarkOf({ units: documents.house.units, ...voice });
  const read = typed.trim() === '' ? null : readMeasure('length', typed, { mark, path: 'height' });
  const heightM = read === null || !read.ok ? null : read.value;
  const echo =
    heightM === null ? null : formatLength(metres(heightM), documents.house, { style: 'fine' });
  return { typed, setTyped, heightM, echo, isWrong: read !== null && !read.ok };
};

const HeightField = ({ typed, setTyped, isWrong, echo }: ReturnType<typeof useHeight>) => {
  const tell = useTell();
  return (
    <>
      <WordsField
        label={tell('Height where the batten stands now')}
        value={typed}
        onChange={setTyped}
      />
      <p role="status">
        {isWrong ? tell('That is no height.') : ''}
        {echo ?? ''}
      </p>
    </>
  );
};

const InHand = (props: Of<'inHand'>) => {
  const { post, task, set, saying, documents } = props;
  const tell = useTell();
  const [words, setWords] = useState('');
  const [typed, setTyped] = useState('');
  const height = useHeight(documents);
  const { leave } = task;
  const isBricks = isBrickStep(task.step);
  const plates = isBricks ? countOf(typed) : null;
  const report = (as: 'notDone' | 'otherwise'): void =>
    saying.say({
      kind: 'step reported',
      set: task.set,
      payload: { post, leave: leave.seq, as, plates, height: height.heightM, words },
    });
  const moves = isMove(props);
  const standing = set.standing ?? leave.before;
  return (
    <>
      {isBricks ? (
        <CountPad
          typed={typed}
          label={tell('Bricks of this step, counted at the end')}
          onType={setTyped}
        />
      ) : null}
      {moves ? <HeightField {...height} /> : null}
      <WordsField label={tell('What was done, in words')} value={words} onChange={setWords} />
      <HoldButton
        isOff={
          saying.isPending || (isBricks && plates === null) || (moves && height.heightM === null)
        }
        onGiven={() => report('notDone')}
      >
        {isBricks
          ? tell('no more than these, count as told')
          : moves
            ? tell('not done, it stands there')
            : tell('not done, all as before')}
      </HoldButton>
      <HoldButton
        isOff={saying.isPending || words.trim() === ''}
        onGiven={() => report('otherwise')}
      >
        {tell('done otherwise')}
      </HoldButton>
      <p className="act-words">
        {standing === null
          ? ''
          : tell('Done otherwise makes the set UNKNOWN until it is looked at and counted.')}
      </p>
    </>
  );
};

/** One device and paper: the name of the second is recorded as of paper, and shown so. */
const OnPaper = ({ post, task, saying }: Of<'next' | 'mayReopen'>) => {
  const tell = useTell();
  const [name, setName] = useState('');
  const payload = { post, step: task.step, paper: name.trim(), override: null };
  return (
    <>
      <WordsField
        label={tell('Second person, whose word stands on paper')}
        value={name}
        onChange={setName}
      />
      <HoldButton
        isOff={saying.isPending || name.trim() === ''}
        onGiven={() => saying.say({ kind: 'leave asked', set: task.set, payload })}
      >
        {tell('ask leave, second on paper')}
      </HoldButton>
    </>
  );
};

const Override = ({ post, task, saying, coverable }: Of<'next' | 'mayReopen'>) => {
  const tell = useTell();
  const [why, setWhy] = useState('');
  if (coverable.length === 0) return null;
  const override = { why: why.trim(), rules: [...coverable] };
  const payload = { post, step: task.step, paper: null, override };
  return (
    <>
      <WordsField
        label={tell('Reason to do it all the same, with a second person ({rules})', {
          rules: coverable.join(', '),
        })}
        value={why}
        onChange={setWhy}
      />
      <HoldButton
        isOff={saying.isPending || why.trim() === ''}
        onGiven={() => saying.say({ kind: 'leave asked', set: task.set, payload })}
      >
        {tell('ask all the same')}
      </HoldButton>
    </>
  );
};

/** The set was touched, slipped, or is not what the screen says: any post may say so. */
const Doubt = ({ task, saying }: OtherProps) => {
  const tell = useTell();
  const [why, setWhy] = useState('');
  return (
    <>
      <WordsField
        label={tell('Set {set} is not as this screen says, because', { set: task.set })}
        value={why}
        onChange={setWhy}
      />
      <HoldButton
        isOff={saying.isPending || why.trim() === ''}
        onGiven={() =>
          saying.say({ kind: 'set doubted', set: task.set, payload: { why: why.trim() } })
        }
      >
        {tell('set {set} is not known', { set: task.set })}
      </HoldButton>
    </>
  );
};

export const Otherwise = (props: OtherProps) => {
  const { task, says, onBack } = props;
  const tell = useTell();
  return (
    <section className="otherwise" aria-label={tell('Otherwise than told')}>
      <h2>{tell('Set {set}: otherwise than told', { set: task.set })}</h2>
      {task.is === 'inHand' ? <InHand {...props} task={task} /> : null}
      {task.is === 'next' || task.is === 'mayReopen' ? (
        <>
          <OnPaper {...props} task={task} />
          <Override {...props} task={task} />
        </>
      ) : null}
      {task.is === 'inHand' ? null : <Doubt {...props} />}
      {says}
      <button type="button" className="plain" onClick={onBack}>
        {tell('Back')}
      </button>
      <WayOut />
    </section>
  );
};
