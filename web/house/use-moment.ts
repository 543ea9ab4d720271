/** The house at the moment that the address names, or why there is none. */
import { useMemo } from 'react';
import { cueMoment, type HouseMoment, recordedMoment, stepMoment, trimMoment } from '#assessment';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { sayMoment } from '#sheets';
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

const JOB_WORDS = { load: 'hanging', strike: 'taking down', change: 'changing' } as const;

const orderWords = ({ set, job, done }: OrderChoice, house: House): string => {
  const at = done === 0 ? 'before the first step' : `after step ${done}`;
  return `${at} of ${JOB_WORDS[job]} ${tradeWord(house, 'set')} ${set}`;
};

/** An order is searched for on its own thread; how the house stands otherwise is the record. */
export const useOrderMoment = (choice: OrderChoice): MomentAnswer => {
  const { house, sets } = useWork();
  const answer = useOrder(choice);
  return useMemo(() => {
    if (answer === null) return { waiting: 'The order of work is being searched for.' };
    if ('refusals' in answer) {
      return { missing: `No order of work can be asked for on set ${choice.set}.` };
    }
    const { states } = answer.order.verdict;
    const state = states[choice.done];
    if (state === undefined) {
      return { missing: `That order has ${states.length - 1} steps, and no step ${choice.done}.` };
    }
    const record = recordedMoment(sets.map(({ set }) => set));
    const moment = stepMoment(record, choice.set, state.standing);
    return { moment, words: orderWords(choice, house) };
  }, [answer, choice, house, sets]);
};

export const momentOf = (
  { sets, show, state }: Work,
  choice: Exclude<MomentChoice, OrderChoice>,
): MomentAnswer => {
  const all = sets.map(({ set }) => set);
  switch (choice.of) {
    case 'record': {
      const when = state === null ? 'nothing is recorded' : `recorded ${sayMoment(state.at)}`;
      return { moment: recordedMoment(all), words: when };
    }
    case 'trim': {
      const isThere = show.hangs.some(({ trims }) =>
        trims.some(({ name }) => name === choice.name),
      );
      if (!isThere) return { missing: `The show has no trim called ${choice.name}.` };
      return { moment: trimMoment(all, choice.name), words: `trim ${choice.name}` };
    }
    case 'cue': {
      const { cues } = show;
      if (choice.done > cues.length) return { missing: `The show has ${cues.length} cues.` };
      const last = cues[choice.done - 1];
      const words = last === undefined ? 'before the first cue' : `after cue ${last.number}`;
      return { moment: cueMoment(all, cues, choice.done), words };
    }
    default:
      return unreachable(choice);
  }
};
