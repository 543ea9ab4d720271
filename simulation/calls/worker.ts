/** What somebody at a post has before them, and how they say a thing. */
import type { CallCommandKind, EventDraft } from '#events';
import type { HouseNow, SetNow, Step } from '#state';
import type { Chance } from '../chance.ts';
import type { Demo } from './demo-call.ts';
import type { Habits, Person } from './people.ts';
import type { Truth } from './truth.ts';

export type Said = EventDraft<CallCommandKind | 'note written'>;

/** Leave that they act on, and how they really do it. */
export type Doing = {
  readonly leave: number;
  readonly how: 'asTold' | 'otherwise' | 'not';
  /** The set that they really work on. */
  readonly on: string;
  /** Bricks that they move and do not count, or count and do not move. */
  readonly slip: number;
  readonly isSilent: boolean;
  readonly moved: number;
};

/** What somebody keeps in their head, and changes. */
export type Open<T> = { -readonly [K in keyof T]: T[K] };

export type Worker = {
  readonly person: Person;
  readonly demo: Demo;
  readonly now: HouseNow;
  readonly truth: Truth;
  readonly chance: Chance;
  readonly habits: Habits;
  readonly inPlay: readonly string[];
  readonly writtenMs: number;
  readonly memory: Open<{
    readonly doing: Open<Doing> | null;
    /** What a rule refused last, for who would have it all the same. */
    readonly refused: { readonly said: Said; readonly code: string } | null;
    readonly plansMade: number;
  }>;
};

export const CALL = 'call-1';

export const targetOf = ({ demo }: Pick<Worker, 'demo'>, set: string): string =>
  `set:${demo.documents.house.id}/${set}`;

export const setNow = ({ now }: Pick<Worker, 'now'>, set: string): SetNow | null =>
  now.sets[set] ?? null;

export const nextStep = ({ plan }: SetNow): Step | null => plan?.steps[plan.done] ?? null;

export const isBricks = (step: Step): step is Extract<Step, { readonly act: 'add' | 'remove' }> =>
  step.act === 'add' || step.act === 'remove';

/** The set beside it on the rail, as an eye slips a row. */
export const besideOf = ({ demo, chance }: Worker, set: string): string => {
  const ids = [...demo.sets.keys()];
  const at = ids.indexOf(set) + (chance.isIn(0.5) ? 1 : -1);
  return ids[at] ?? set;
};
