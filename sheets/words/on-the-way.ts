/** What a set passes while it is flown, between the two heights at which a crew sees it stand. */
import type { StepBetween } from '#orders';
import type { OrderNode, Step } from '#state';
import { isIn } from './move-deeds.ts';
import type { OrderWords } from './say-standing.ts';

type FlyStep = Extract<Step, { readonly act: 'fly' }>;

export type Peaks = { readonly lowN: number; readonly highN: number };

const passed = (
  step: FlyStep,
  between: StepBetween,
  { physics }: Pick<OrderWords, 'physics'>,
): readonly OrderNode[] => {
  const { before, after } = between;
  const { stack } = before.standing;
  const { items } = (isIn(step, between) ? before : after).standing;
  const [lowM, highM] = [before.standing.height, after.standing.height].toSorted((a, b) => a - b);
  return physics
    .curve({ stack, items })
    .filter(({ heightM }) => heightM > (lowM ?? 0) && heightM < (highM ?? 0));
};

/** The worst that the set passes between two heights, each way, N; null where nothing does. */
export const onTheWay = (
  step: FlyStep,
  between: StepBetween,
  words: Pick<OrderWords, 'physics'>,
): Peaks | null => {
  const values = passed(step, between, words).flatMap(({ belowN, aboveN }) => [belowN, aboveN]);
  return values.length === 0 ? null : { lowN: Math.min(...values), highN: Math.max(...values) };
};

/**
 * The most that a step can pull each way: before it, after it and all the way between, every mass
 * at its worst where that was tried. Below zero is arbor heavy.
 */
export const peaksOf = (
  between: StepBetween,
  words: Pick<OrderWords, 'physics' | 'isDoubtTried'>,
): Peaks => {
  const { before, after, step } = between;
  const ends = [before.imbalance, after.imbalance];
  const way =
    step.act === 'fly'
      ? passed(step, between, words).flatMap(({ belowN, aboveN, doubtN }) => [
          { lowN: belowN, highN: belowN, doubtN },
          { lowN: aboveN, highN: aboveN, doubtN },
        ])
      : [];
  const all = [...ends, ...way];
  const doubt = words.isDoubtTried ? 1 : 0;
  return {
    lowN: Math.min(...all.map(({ lowN, doubtN }) => lowN - doubt * doubtN)),
    highN: Math.max(...all.map(({ highN, doubtN }) => highN + doubt * doubtN)),
  };
};
