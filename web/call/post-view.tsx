/**
 * One post of a call: the next action, large, with what is said and heard; STOP lowest. One page
 * at arm's length, without scrolling for a step on a tablet.
 */

import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { betweenOf, type CallDesk, type CallDocuments } from '#call';
import type { HouseNow, PostId } from '#state';
import { postWords } from '../call-desk/desk-words.ts';
import { useTell } from '../language/use-tell.ts';
import { LiveAlarmsLater } from '../live/live-later.tsx';
import { momentNow } from '../offline/house-fetch.ts';
import { Alarmed } from './alarmed.tsx';
import { Confirmed } from './confirmed.tsx';
import { CountPad, countOf } from './count-pad.tsx';
import { HeldNotes, NotLive, PaperNote } from './not-live.tsx';
import { Otherwise } from './otherwise.tsx';
import { PostBody } from './post-body.tsx';
import { PostHead } from './post-head.tsx';
import { PostSays } from './post-says.tsx';
import { Against, coverableOf, RefusedWords } from './refused.tsx';
import { StopBar } from './stop-bar.tsx';
import { StoppedActs, StoppedWords } from './stopped.tsx';
import { TaskActs } from './task-acts.tsx';
import { TaskBody } from './task-body.tsx';
import { taskWords } from './task-words.ts';
import { asksCount, type PostTask, stopsOn, tasksOf } from './tasks.ts';
import { type Saying, useSay } from './use-say.ts';
import { useWide } from './use-wide.ts';
import { useWakeLock } from './wake-lock.ts';
import { WallStrip } from './wall-strip.tsx';
import { WayOut } from './way-out.tsx';

export type PostProps = {
  readonly post: PostId;
  readonly now: HouseNow;
  readonly documents: CallDocuments;
  readonly desk: CallDesk;
  readonly posts: readonly PostId[];
  readonly isLive: boolean;
};

const useTasks = ({ now, documents, post, posts }: PostProps) => {
  const { house } = documents;
  return useMemo(() => {
    const order = house.lineSets.map(({ id }) => id);
    const waiting = new Set(
      posts.filter((each) => tasksOf(now, order, each).some(({ is }) => is !== 'waits')),
    );
    return { tasks: tasksOf(now, order, post), waiting };
  }, [now, house, post, posts]);
};

/** The set that a person chose of several, as long as it has something for the post. */
const useChosen = (tasks: readonly PostTask[]) => {
  const [chosen, choose] = useState<string | null>(null);
  const task = tasks.find(({ set }) => set === chosen) ?? tasks[0] ?? null;
  return [task, choose] as const;
};

export const PostView = (props: PostProps) => {
  const { post, now, documents, posts, isLive } = props;
  const { house } = documents;
  const isWide = useWide('three');
  const hasWall = useWide('wall');
  const { tasks, waiting } = useTasks(props);
  const [task, choose] = useChosen(tasks);
  const [stop] = stopsOn(now, task?.set ?? null);
  return (
    <div className="post-view">
      <PostHead {...{ post, posts, waiting, house, isLive }} />
      <LiveAlarmsLater />
      {stop === undefined ? (
        <Working
          {...props}
          task={task}
          tasks={tasks}
          isWide={isWide}
          hasWall={hasWall}
          onChoose={choose}
        />
      ) : (
        <>
          <PostBody>
            <StoppedWords stop={stop} now={now} house={house} />
            {isLive ? null : (
              <>
                <NotLive />
                <PaperNote now={now} house={house.id} task={task} />
              </>
            )}
          </PostBody>
          <div className="post-acts">
            <StoppedActs {...{ stop, now, house, post, posts, isLive }} />
          </div>
        </>
      )}
      <StopBar now={now} post={post} isLive={isLive} />
    </div>
  );
};

type WorkingProps = PostProps & {
  readonly task: PostTask | null;
  readonly tasks: readonly PostTask[];
  readonly isWide: boolean;
  readonly hasWall: boolean;
  readonly onChoose: (set: string) => void;
};

const Working = (props: WorkingProps) => {
  const { task, isWide, hasWall, now, documents, isLive } = props;
  const above = (
    <>
      <Alarmed now={now} documents={documents} />
      {isLive ? null : <NotLive />}
      <HeldNotes />
      <OtherTasks {...props} />
    </>
  );
  const below = isLive ? <Awake /> : <PaperNote now={now} house={documents.house.id} task={task} />;
  const beside = isWide ? (
    <div className="post-side">
      <Confirmed now={now} documents={documents} />
      {hasWall && task !== null ? (
        <WallStrip set={task.set} now={now} documents={documents} />
      ) : null}
    </div>
  ) : null;
  if (task !== null) {
    return <Task key={`${task.set} ${task.is}`} {...{ ...props, task, above, below, beside }} />;
  }
  return (
    <>
      <PostBody>
        {above}
        <div className="post-columns">
          <NothingNow {...props} />
          {beside}
        </div>
        {below}
      </PostBody>
      <div className="post-acts">{isLive ? <PostSays {...props} isNext /> : null}</div>
    </>
  );
};

/** More than one set waits at this post: by number, so that nobody works on the wrong one. */
const OtherTasks = ({ task, tasks, onChoose }: WorkingProps) => {
  const tell = useTell();
  const others = tasks.filter(({ set }) => set !== task?.set);
  if (others.length === 0) return null;
  return (
    <p className="other-tasks">
      {tell('Also here:')}
      {others.map(({ set }) => (
        <button key={set} type="button" onClick={() => onChoose(set)}>
          {tell('set {set}', { set })}
        </button>
      ))}
    </p>
  );
};

const NothingNow = ({ now, documents, post }: WorkingProps) => {
  const tell = useTell();
  const { house } = documents;
  const atWork = house.lineSets.flatMap(({ id }) => {
    const { leave, asked } = now.sets[id] ?? {};
    const who = leave?.post ?? asked?.secondOf ?? null;
    return who === null
      ? []
      : [tell('Set {set}: {post}', { set: id, post: postWords(who, house) })];
  });
  return (
    <section className="nothing-now" aria-label={postWords(post, house)}>
      <p className="task-action">{tell('Nothing for this post now')}</p>
      <p>{atWork.length === 0 ? tell('No set is at work.') : tell('At work:')}</p>
      {atWork.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <WayOut />
    </section>
  );
};

type TaskProps = Omit<WorkingProps, 'task'> & {
  readonly task: PostTask;
  readonly above: ReactNode;
  readonly below: ReactNode;
  readonly beside: ReactNode;
};

/** What the rules and the words make of the step, worked out once for each state of the house. */
const useWorkedOut = ({ post, task, now, documents, desk }: TaskProps) =>
  useMemo(() => {
    const between = betweenOf(now, task.set, task.step, desk);
    const asked = { set: task.set, post, step: task.step };
    const isToAsk = task.is === 'next' || task.is === 'mayReopen';
    const judged = isToAsk ? desk.judgeLeave(now, asked, momentNow().serverMs) : null;
    return { words: taskWords({ documents, desk, now, task, between }), judged };
  }, [now, task, post, desk, documents]);

const Task = (props: TaskProps) => {
  const { post, task, now, documents, isLive, isWide, above, below, beside } = props;
  const saying = useSay();
  const tell = useTell();
  const [isOther, setOther] = useState(false);
  const [typed, setTyped] = useState('');
  const { words, judged } = useWorkedOut(props);
  const set = now.sets[task.set];
  // What was said of one count is not held against the next.
  const { forget } = saying;
  const count = task.is === 'inHand' ? task.leave.plates : 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: at the next count, and no sooner
  useEffect(forget, [count]);
  if (set === undefined) return null;
  const plates = countOf(typed);
  const acts = { post, task, set, documents, saying, plates, onOther: () => setOther(true) };
  const pad =
    task.is === 'wordAsked' && asksCount(set, task.step) && isLive ? (
      <CountPad
        typed={typed}
        label={tell('Count every plate on the arbor yourself')}
        onType={setTyped}
      />
    ) : null;
  const against =
    saying.refused === null ? (
      <Against judged={judged} documents={documents} />
    ) : (
      <RefusedWords refused={saying.refused} />
    );
  return (
    <>
      <PostBody>
        {above}
        <div className="post-columns">
          {isOther && isLive ? (
            <Otherwise
              {...acts}
              coverable={coverableOf(judged)}
              says={<PostSays {...props} isNext={false} />}
              onBack={() => setOther(false)}
            />
          ) : (
            <TaskBody
              {...{ post, task, set, now, documents, isWide, isLive, words, against, pad }}
            />
          )}
          {pad === null ? beside : null}
        </div>
        {below}
      </PostBody>
      {isLive && !isOther ? (
        <div className="post-acts">
          <TaskActs {...acts} />
          <SayingWords saying={saying} />
        </div>
      ) : null}
    </>
  );
};

/** Until it is recorded it is not said; and what was lost must be said again. */
const SayingWords = ({ saying }: { readonly saying: Saying }) => (
  <p className="act-words" role="status">
    {saying.refused === null && (saying.isPending || saying.isLost) ? saying.words : ''}
  </p>
);

/** A screen that goes dark at the rail is woken with a glove; that it may is said once, small. */
const Awake = () => {
  const tell = useTell();
  return useWakeLock() === 'cannot' ? (
    <p className="awake">{tell('This browser lets the screen go dark by itself.')}</p>
  ) : null;
};
