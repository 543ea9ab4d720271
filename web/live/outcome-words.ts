/** What became of a command, for the person who gave it. */
import type { Outcome } from '#events';
import { unreachable } from '#outcome';
import { message } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { refusalWords } from './refusal-words.ts';

const NOT_SENT = {
  notLive: message('Not done: this device is not live. Nothing was recorded.'),
  tooMany: message('Not kept: too many wait to be sent. Find out first why the server is away.'),
  buildTooOld: message('Not recorded: this page is too old for the server. Load it anew.'),
  notAllowed: message('Not recorded: you may not do this, or are not signed in.'),
  notUnderstood: message('Not recorded: the server did not understand it.'),
} as const;

export const useOutcomeWords = (): ((outcome: Outcome) => string) => {
  const tell = useTell();
  return (outcome) => {
    switch (outcome.outcome) {
      case 'accepted':
        return tell('Recorded, event {seq}.', { seq: outcome.seqs.at(-1) ?? '' });
      case 'refused':
        return tell('Not recorded ({code}): {words}', {
          code: outcome.code,
          words: tell(refusalWords(outcome.code, outcome.words)),
        });
      case 'notSent':
        return tell(NOT_SENT[outcome.why]);
      default:
        return unreachable(outcome);
    }
  };
};
