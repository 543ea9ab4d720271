/** What a person at a post says of the next action, each by a hold of a second. */

import type { CallDocuments } from '#call';
import { isBrickStep } from '#call';
import { unreachable } from '#outcome';
import type { PostId, SetNow } from '#state';
import { useTell } from '../language/use-tell.ts';
import { HoldButton } from './hold-button.tsx';
import { asksCount, type PostTask } from './tasks.ts';
import type { Saying } from './use-say.ts';

export type ActsProps = {
  readonly post: PostId;
  readonly task: PostTask;
  readonly set: SetNow;
  readonly documents: CallDocuments;
  readonly saying: Saying;
  /** As the second counted them; null before. */
  readonly plates: number | null;
  readonly onOther: () => void;
};

type Of<T extends PostTask['is']> = Omit<ActsProps, 'task'> & {
  readonly task: Extract<PostTask, { readonly is: T }>;
};

const Other = ({ onOther }: { readonly onOther: () => void }) => {
  const tell = useTell();
  return (
    <button type="button" className="plain" onClick={onOther}>
      {tell('Something else …')}
    </button>
  );
};

const AskLeave = ({ post, task, saying, onOther }: Of<'next' | 'mayReopen'>) => {
  const tell = useTell();
  const payload = { post, step: task.step, paper: null, override: null };
  return (
    <>
      <button
        type="button"
        className="plain next"
        disabled={saying.isPending}
        onClick={() => saying.say({ kind: 'leave asked', set: task.set, payload })}
      >
        <b>{tell('Ask leave')}</b>
      </button>
      <Other onOther={onOther} />
    </>
  );
};

const useOrdinal = (): ((count: number, isAdd: boolean) => string) => {
  const tell = useTell();
  return (count, isAdd) =>
    isAdd ? tell('plate {count} on', { count }) : tell('plate {count} off', { count });
};

const Bricks = ({ post, task, saying, onOther }: Of<'inHand'>) => {
  const tell = useTell();
  const ordinal = useOrdinal();
  const { step, leave, set } = task;
  if (!isBrickStep(step)) return null;
  const { plates } = leave;
  const tally = (next: number): void =>
    saying.say({ kind: 'plates counted', set, payload: { post, leave: leave.seq, count: next } });
  const isAll = plates === step.count;
  const done = (): void => {
    const told = { post, leave: leave.seq, as: 'done', plates, height: null, words: '' } as const;
    saying.say({ kind: 'step reported', set, payload: told });
  };
  const isAdd = step.act === 'add';
  const asTold = isAdd
    ? tell('{count} on, count as told', { count: plates })
    : tell('{count} off, count as told', { count: plates });
  return (
    <>
      {isAll ? (
        <HoldButton isNext isOff={saying.isPending} onGiven={done}>
          {asTold}
        </HoldButton>
      ) : (
        <HoldButton isNext isOff={saying.isPending} onGiven={() => tally(plates + 1)}>
          {ordinal(plates + 1, isAdd)}
        </HoldButton>
      )}
      {plates === 0 ? null : (
        <HoldButton isOff={saying.isPending} onGiven={() => tally(plates - 1)}>
          {tell('take one back')}
        </HoldButton>
      )}
      <Other onOther={onOther} />
    </>
  );
};

const Done = ({ post, task, saying, onOther }: Of<'inHand'>) => {
  const tell = useTell();
  const { leave, set } = task;
  const told = { post, leave: leave.seq, plates: null, height: null, words: '' } as const;
  return (
    <>
      <HoldButton
        isNext
        isOff={saying.isPending}
        onGiven={() => saying.say({ kind: 'step reported', set, payload: { ...told, as: 'done' } })}
      >
        {tell('done as told')}
      </HoldButton>
      <Other onOther={onOther} />
    </>
  );
};

const TakeBack = ({ task, saying }: Of<'waits'>) => {
  const tell = useTell();
  const payload = { asked: task.asked.seq, words: '' };
  return (
    <HoldButton
      isOff={saying.isPending}
      onGiven={() => saying.say({ kind: 'leave returned', set: task.set, payload })}
    >
      {tell('ask no more')}
    </HoldButton>
  );
};

const Confirm = ({ post, task, set, saying, plates }: Of<'wordAsked'>) => {
  const tell = useTell();
  const wants = asksCount(set, task.step);
  const { asked } = task;
  const second = (): void =>
    saying.say({
      kind: 'leave seconded',
      set: task.set,
      payload: { post, asked: asked.seq, plates: wants ? plates : null },
    });
  const no = { asked: asked.seq, words: 'the second did not confirm it' };
  return (
    <>
      <HoldButton isNext isOff={saying.isPending || (wants && plates === null)} onGiven={second}>
        {wants && plates !== null
          ? tell('{count} counted: I confirm', { count: plates })
          : tell('I confirm')}
      </HoldButton>
      <HoldButton
        isOff={saying.isPending}
        onGiven={() => saying.say({ kind: 'leave returned', set: task.set, payload: no })}
      >
        {tell('not so: no leave')}
      </HoldButton>
    </>
  );
};

export const TaskActs = ({ task, ...rest }: ActsProps) => {
  switch (task.is) {
    case 'next':
    case 'mayReopen':
      return <AskLeave {...rest} task={task} />;
    case 'waits':
      return <TakeBack {...rest} task={task} />;
    case 'wordAsked':
      return <Confirm {...rest} task={task} />;
    case 'inHand':
      return isBrickStep(task.step) ? (
        <Bricks {...rest} task={task} />
      ) : (
        <Done {...rest} task={task} />
      );
    default:
      return unreachable(task);
  }
};
