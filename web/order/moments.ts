/** The moments of an order as the screen shows them: state, words and sign of each. */
import type { SetAssessment } from '#assessment';
import type { GlyphName, OrderMoment } from '#drawings';
import type { House } from '#house';
import { type CheckedOrder, type StepBetween, stepsBetween } from '#orders';
import type { Breach, OrderState } from '#rules';
import { type BesideCell, type OrderWords, orderCells, type SaidStep, sayStep } from '#sheets';
import type { Step } from '#state';
import { ENGLISH, phrase, phraseCount, type Voice } from '#texts';

export type Moment = {
  /** 0 is how the set stands before the first step. */
  readonly number: number;
  readonly drawn: OrderMoment;
  readonly cell: BesideCell;
  /** Null at the start, and for a step that could not be replayed. */
  readonly said: SaidStep | null;
  readonly sign: GlyphName;
  readonly breaches: readonly Breach[];
  /** Whether it leaves the set as it was, a zone closed or opened, and nothing is wrong there. */
  readonly isZone: boolean;
  /** Whether every mass was taken at its worst, so that there is a doubt to show. */
  readonly isDoubtTried: boolean;
};

export const nameOfItem =
  ({ takeoffs }: SetAssessment) =>
  (id: string): string =>
    takeoffs.find(({ item }) => item.id === id)?.item.name ?? id;

export const wordsOf = (
  { physics, checked }: CheckedOrder,
  set: SetAssessment,
  house: House,
): OrderWords => ({
  house,
  physics,
  nameOf: nameOfItem(set),
  isDoubtTried: checked.doubt === 'worst',
  areFaultsTried: checked.faults === 'check',
});

/** Which end is heavy, by what is listed; between two ends of a contact it rests. */
const signOf = ({ imbalance: { lowN, highN } }: OrderState): GlyphName => {
  if (lowN > 0) return 'battenHeavy';
  if (highN < 0) return 'arborHeavy';
  return highN > lowN ? 'resting' : highN > 0 ? 'battenHeavy' : 'arborHeavy';
};

const isZoneStep = (step: Step | null): boolean =>
  step !== null && (step.act === 'close' || step.act === 'reopen');

export const breachesAt = ({ verdict }: CheckedOrder, step: number): readonly Breach[] =>
  [...(verdict.broken === null ? [] : [verdict.broken]), ...verdict.alsoBroken].filter(
    (each) => each.step === step,
  );

/** The start, and then each step that the judge could replay. */
export const momentsOf = (
  order: CheckedOrder,
  set: SetAssessment,
  house: House,
): readonly Moment[] => {
  const { physics, verdict } = order;
  const words = wordsOf(order, set, house);
  const cells = orderCells(order, { house, nameOf: words.nameOf });
  const [first] = verdict.states;
  if (first === undefined) return [];
  const momentOf = (state: OrderState, between: StepBetween | null, index: number): Moment[] => {
    const cell = cells[index];
    if (cell === undefined) return [];
    const step = between?.step ?? null;
    const before = between?.before.standing ?? null;
    return [
      {
        number: index,
        drawn: { set, physics, state, step, before, isHeld: !cell.isBroken },
        cell,
        said: between === null ? null : sayStep(between, words),
        sign: signOf(state),
        breaches: breachesAt(order, index - 1),
        isZone: isZoneStep(step) && !cell.isBroken,
        isDoubtTried: words.isDoubtTried,
      },
    ];
  };
  return [
    ...momentOf(first, null, 0),
    ...stepsBetween(order).flatMap((between) => momentOf(between.after, between, between.number)),
  ];
};

/** `12 steps, 2 galleries`: what a crew asks first. */
export const sizeWords = (
  { steps }: Pick<CheckedOrder, 'steps'>,
  voice: Voice = ENGLISH,
): string => {
  const galleries = new Set(steps.flatMap((step) => ('gallery' in step ? [step.gallery] : [])));
  const works =
    steps.length === 0
      ? phrase(voice, 'no steps')
      : phraseCount(voice, steps.length, ['{count} step', '{count} steps']);
  const places =
    galleries.size === 0
      ? phrase(voice, 'no galleries')
      : phraseCount(voice, galleries.size, ['{count} gallery', '{count} galleries']);
  return `${works}, ${places}`;
};
