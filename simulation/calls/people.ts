/** Who works in a call: a post each, a device each, and the tasks that they are signed off for. */
import type { Task } from '#events';
import type { Chance } from '../chance.ts';
import { type Demo, galleriesOf } from './demo-call.ts';

export type Person = {
  readonly id: string;
  readonly name: string;
  readonly device: string;
  readonly post: string;
  readonly tasks: readonly Task[];
};

/** Kinds of what nobody asked for. */
export type Mischief =
  | 'askAnything'
  | 'askBeside'
  | 'askAhead'
  | 'override'
  | 'reportAgain'
  | 'actAlone'
  | 'lookAgain'
  | 'doubtSet'
  | 'doubtLock'
  | 'stop'
  | 'tag'
  | 'measure'
  | 'carryOff'
  | 'note'
  | 'goAway'
  | 'giveBack'
  | 'secondUnasked'
  | 'tellNonsense'
  | 'walk';

/** What a person does wrong, and how often; shares of what they do. */
export type Habits = {
  /** Something that nobody asked for. */
  readonly mischief: number;
  /** Given to one kind of it; null: all kinds. */
  readonly only: Mischief | null;
  /** Leaves out the last number of a count, and says the sum. */
  readonly skips: number;
  /** A brick more or less than is counted aloud. */
  readonly miscounts: number;
  /** Done, and never said. */
  readonly forgets: number;
  /** On the set beside the one that was told. */
  readonly wrongSet: number;
  /** Done in another way, and said so. */
  readonly otherwise: number;
  /** Not done, and said so. */
  readonly leaves: number;
};

export const habitsBy = (chance: Chance): Habits => {
  const share = (most: number): number => (chance.isIn(0.3) ? 0 : chance.next() * most);
  return {
    mischief: 0.03 + share(0.1),
    only: null,
    skips: share(0.12),
    miscounts: share(0.08),
    forgets: share(0.04),
    wrongSet: share(0.04),
    otherwise: share(0.04),
    leaves: share(0.06),
  };
};

const TASK_OF: Readonly<Record<string, Task>> = {
  headFly: 'lead',
  rail: 'rail',
  gallery: 'loader',
  deck: 'deck',
  marshal: 'deck',
  watcher: 'induct',
  bullLine: 'outOfBalance',
  caller: 'induct',
};

const postsOf = (demo: Demo): readonly string[] => {
  const galleries = galleriesOf(demo);
  return [
    ...['headFly', 'rail', 'deck', 'watcher', 'bullLine', 'marshal:run'],
    ...galleries.map((id) => `gallery:${id}`),
    ...galleries.map((id) => `marshal:drop:${id}`),
    'caller',
  ];
};

/** In some crews one person stands at two posts with two devices, and is still one person. */
export const crewOf = (demo: Demo, chance: Chance): readonly Person[] => {
  const double = chance.isIn(0.2) ? chance.oneOf(['watcher', 'headFly']) : null;
  return postsOf(demo).map((post, at) => {
    const [task = ''] = post.split(':');
    const number = post === double ? 2 : at + 1;
    const tasks = TASK_OF[task] === undefined ? [] : [TASK_OF[task]];
    const id = `person-${number}`;
    // Whoever has two posts is signed off for the work of both.
    const all: readonly Task[] = number === 2 ? ['lead'] : tasks;
    return { id, name: id, device: `tablet-${at + 1}`, post, tasks: all };
  });
};
