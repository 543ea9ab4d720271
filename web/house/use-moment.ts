/** The house at the moment that the address names, or why there is none. */
import { useMemo } from 'react';
import {
  cueMoment,
  type HouseMoment,
  recordedMoment,
  type SetAssessment,
  stepMoment,
  trimMoment,
} from '#assessment';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { sayMoment } from '#sheets';
import { message, phrase } from '#texts';
import { useOrder } from '../order/use-order.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import type { MomentChoice } from './moment-choice.ts';

export type ShownMoment = {
  readonly moment: HouseMoment;
  /** "as recorded 25 November, 18:55". */
  readonly words: string;
};

export type MomentAnswer =
  | ShownMoment
  | { readonly missing: string }
  /** It is searched for. */
  | { readonly waiting: string };

type OrderChoice = Extract<MomentChoice, { readonly of: 'order' }>;

const BEGINS = {
  load: message('before the first step of hanging set {set}'),
  strike: message('before the first step of taking down set {set}'),
  change: message('before the first step of changing set {set}'),
} as const;

const AFTER = {
  load: message('after step {done} of hanging set {set}'),
  strike: message('after step {done} of taking down set {set}'),
  change: message('after step {done} of changing set {set}'),
} as const;

const orderWords = ({ set, job, done }: OrderChoice, house: House): string =>
  phrase(house, (done === 0 ? BEGINS : AFTER)[job], { set, done });

/** An order is searched for on its own thread; how the house stands otherwise is the record. */
export const useOrderMoment = (choice: OrderChoice): MomentAnswer => {
  const { house, sets } = useWork();
  const answer = useOrder(choice);
  return useMemo(() => {
    if (answer === null)
      return { waiting: phrase(house, 'The order of work is being searched for.') };
    if ('refusals' in answer) {
      const { set } = choice;
      return { missing: phrase(house, 'No order of work can be asked for on set {set}.', { set }) };
    }
    const { states } = answer.order.verdict;
    const state = states[choice.done];
    if (state === undefined) {
      const names = { steps: states.length - 1, done: choice.done };
      return { missing: phrase(house, 'That order has {steps} steps, and no step {done}.', names) };
    }
    const record = recordedMoment(sets.map(({ set }) => set));
    const moment = stepMoment(record, choice.set, state.standing);
    return { moment, words: orderWords(choice, house) };
  }, [answer, choice, house, sets]);
};

/** `inCall`: the sets as they stand in an open call, which is the record as long as it is. */
export const momentOf = (
  { house, sets, show, state }: Work,
  choice: Exclude<MomentChoice, OrderChoice>,
  inCall: readonly SetAssessment[] | null = null,
): MomentAnswer => {
  const all = sets.map(({ set }) => set);
  switch (choice.of) {
    case 'record': {
      if (inCall !== null) {
        const words = phrase(house, 'as every set stands in the call that is open');
        return { moment: recordedMoment(inCall), words };
      }
      const when =
        state === null
          ? phrase(house, 'nothing is recorded')
          : phrase(house, 'recorded {moment}', { moment: sayMoment(state.at, house) });
      return { moment: recordedMoment(all), words: when };
    }
    case 'trim': {
      const isThere = show.hangs.some(({ trims }) =>
        trims.some(({ name }) => name === choice.name),
      );
      const { name } = choice;
      if (!isThere)
        return { missing: phrase(house, 'The show has no trim called {name}.', { name }) };
      return { moment: trimMoment(all, name), words: phrase(house, 'trim {name}', { name }) };
    }
    case 'cue': {
      const { cues } = show;
      if (choice.done > cues.length) {
        return { missing: phrase(house, 'The show has {count} cues.', { count: cues.length }) };
      }
      const last = cues[choice.done - 1];
      const words =
        last === undefined
          ? phrase(house, 'before the first cue')
          : phrase(house, 'after cue {number}', { number: last.number });
      return { moment: cueMoment(all, cues, choice.done), words };
    }
    default:
      return unreachable(choice);
  }
};
