/** The next action of a post in words: what is done, said, answered, and what it leads to. */
import type { CallDesk, CallDocuments } from '#call';
import type { StepBetween } from '#orders';
import { metres } from '#quantities';
import { type OrderWords, type SaidStep, sayStep, stepTitle } from '#sheets';
import type { HouseNow, OrderPhysics, SetNow, Step } from '#state';
import { phrase } from '#texts';
import { itemName } from './set-names.ts';
import type { PostTask } from './tasks.ts';

export type TaskWords = {
  /** In as few words as there are. */
  readonly action: string;
  /** Null where this device cannot work out what the step leads to. */
  readonly said: SaidStep | null;
  readonly physics: OrderPhysics | null;
};

const brickName = ({ house }: CallDocuments, kind: string): string =>
  house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;

export const bricksOfStep = (
  documents: CallDocuments,
  step: Extract<Step, { readonly act: 'add' | 'remove' }>,
): string => `${step.count} ${brickName(documents, step.kind)}`;

const actionOf = (
  documents: CallDocuments,
  { set, step }: PostTask,
  { standing, last }: SetNow,
): string => {
  const { house } = documents;
  if (step.act === 'add' || step.act === 'remove') {
    const bricks = bricksOfStep(documents, step);
    return step.act === 'add'
      ? phrase(house, 'Put on {bricks}', { bricks })
      : phrase(house, 'Take off {bricks}', { bricks });
  }
  const height = (standing ?? last)?.height ?? metres(0);
  const words = {
    house,
    nameOf: itemName(documents, set),
    physics: { set, galleries: house.galleries },
  };
  return stepTitle({ step, before: { standing: { height } } }, words);
};

type WordsParts = {
  readonly documents: CallDocuments;
  readonly desk: CallDesk | null;
  readonly now: HouseNow;
  readonly task: PostTask;
  readonly between: StepBetween | null;
};

export const taskWords = ({ documents, desk, now, task, between }: WordsParts): TaskWords => {
  const set = now.sets[task.set];
  const physics = desk?.physicsOf(now, task.set) ?? null;
  const action = set === undefined ? '' : actionOf(documents, task, set);
  if (between === null || physics === null) return { action, said: null, physics };
  const words: OrderWords = {
    house: documents.house,
    physics,
    nameOf: itemName(documents, task.set),
    // Leave is given with every mass at its worst and every single fault tried.
    isDoubtTried: true,
    areFaultsTried: true,
  };
  return { action, said: sayStep(between, words), physics };
};
