/** What the server is asked for while a screen stands open: answers, waiting and faults. */
import { useEffect, useState } from 'react';
import { useVoice } from '../language/use-tell.ts';
import { faultWords } from './tell.ts';

export type Asked<T> =
  | { readonly is: 'waiting' }
  | { readonly is: 'here'; readonly value: T }
  | { readonly is: 'failed'; readonly title: string };

type Heard<T> =
  | Exclude<Asked<T>, { readonly is: 'failed' }>
  | { readonly is: 'failed'; readonly fault: unknown };

type Answer<T> = { readonly of: string; readonly asked: Heard<T> };

const WAITING = { is: 'waiting' } as const;

/** Asks again when `key` changes; an answer to an older question is not shown. */
export const useAsked = <T>(
  key: string,
  ask: () => Promise<T>,
): Asked<T> & { again: () => void } => {
  const voice = useVoice();
  const [answer, setAnswer] = useState<Answer<T> | null>(null);
  const [round, setRound] = useState(0);
  const question = `${key} ${round}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked follows from the key
  useEffect(() => {
    let isOpen = true;
    const hear = (asked: Heard<T>): void => {
      if (isOpen) setAnswer({ of: question, asked });
    };
    ask().then(
      (value) => hear({ is: 'here', value }),
      (fault: unknown) => hear({ is: 'failed', fault }),
    );
    return () => {
      isOpen = false;
    };
  }, [question]);
  const asked = answer?.of === question ? answer.asked : WAITING;
  const again = (): void => setRound(round + 1);
  return asked.is === 'failed'
    ? { is: 'failed', title: faultWords(voice, asked.fault), again }
    : { ...asked, again };
};
