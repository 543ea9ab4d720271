/** What one step asks of a crew, in finished sentences of the house's own words. */
import { message } from '#texts';
import { filled } from './fill-words.ts';
import type { OrderWords } from './say-standing.ts';

/** Finished sentences, in the words of the house. */
export type Deed = {
  readonly who: string;
  readonly where: string;
  readonly does: string;
  readonly stopIf: string;
  /** Who calls, what is called, who reads it back how, and what is said when it is done. */
  readonly call: { readonly by: string; readonly says: string };
  readonly answer: { readonly by: string; readonly says: string };
  readonly done: string;
  /** How to give the step up: the nearest state that is held. */
  readonly abandon: string;
};

export const AS_BEFORE = message('the set stands as before this step');

/** A deed as a template writes it; the names go in at the end, in one place. */
export const deedOf = (
  template: { readonly [part in Exclude<keyof Deed, 'call' | 'answer'>]: string } & {
    readonly call: readonly [by: string, says: string];
    readonly answer: readonly [by: string, says: string];
  },
  { house, physics }: OrderWords,
  names: Readonly<Record<string, string>>,
): Deed => {
  const all = { set: physics.set, ...names };
  const say = (sentence: string): string => filled(sentence, house, all);
  const { call, answer } = template;
  return {
    who: say(template.who),
    where: say(template.where),
    does: say(template.does),
    stopIf: say(template.stopIf),
    call: { by: say(call[0]), says: say(call[1]) },
    answer: { by: say(answer[0]), says: say(answer[1]) },
    done: say(template.done),
    abandon: say(template.abandon),
  };
};
