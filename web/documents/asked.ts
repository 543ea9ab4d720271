/** What the server is asked for while a screen stands open: answers, waiting and faults. */
import { useEffect, useState } from 'react';

export type Asked<T> =
  | { readonly is: 'waiting' }
  | { readonly is: 'here'; readonly value: T }
  | { readonly is: 'failed'; readonly title: string };

type Answer<T> = { readonly of: string; readonly asked: Asked<T> };

const WAITING = { is: 'waiting' } as const;

/** Asks again when `key` changes; an answer to an older question is not shown. */
export const useAsked = <T>(
  key: string,
  ask: () => Promise<T>,
): Asked<T> & { again: () => void } => {
  const [answer, setAnswer] = useState<Answer<T> | null>(null);
  const [round, setRound] = useState(0);
  const question = `${key} ${round}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked follows from the key
  useEffect(() => {
    let isOpen = true;
    const hear = (asked: Asked<T>): void => {
      if (isOpen) setAnswer({ of: question, asked });
    };
    ask().then(
      (value) => hear({ is: 'here', value }),
      (fault: unknown) =>
        hear({ is: 'failed', title: fault instanceof Error ? fault.message : String(fault) }),
    );
    return () => {
      isOpen = false;
    };
  }, [question]);
  const asked = answer?.of === question ? answer.asked : WAITING;
  return { ...asked, again: () => setRound(round + 1) };
};
