/** One thing said in a call, from the touch to what became of it, in words. */
import { useRef, useState } from 'react';
import type { CommandAnswer } from '#events';
import { useTell } from '../language/use-tell.ts';
import { useOutcomeWords } from '../live/outcome-words.ts';
import { useLive } from '../live/use-live.ts';
import type { CallSaid } from './store.ts';
import { callStore } from './use-call.ts';

export type Refused = Extract<CommandAnswer, { readonly outcome: 'refused' }>;

export type Saying = {
  readonly say: (said: CallSaid) => void;
  /** On its way: whether it was recorded is not known yet. */
  readonly isPending: boolean;
  /** How far it is or what became of it; empty where nothing was said. */
  readonly words: string;
  readonly isRecorded: boolean;
  /** By a rule, or by the record; nothing was recorded. */
  readonly refused: Refused | null;
  /** It did not reach the record, so it must be said again or written on paper. */
  readonly isLost: boolean;
  readonly forget: () => void;
};

type Given = { readonly is: 'asking' } | { readonly is: 'given'; readonly id: string | null };

export const useSay = (): Saying => {
  const tell = useTell();
  const outcomeWords = useOutcomeWords();
  const { outbox, outcomes } = useLive();
  const [given, setGiven] = useState<Given | null>(null);
  /** Only the last thing said is followed here. */
  const turn = useRef(0);
  const id = given?.is === 'given' ? given.id : null;
  const pending = outbox.find(({ command }) => command.commandId === id);
  const outcome = id === null ? undefined : outcomes[id];
  const how = (): string => {
    if (given === null) return '';
    if (given.is === 'asking' || pending?.way === 'sending') return tell('Sending');
    if (pending !== undefined) return tell('Unknown: checking');
    if (outcome !== undefined) return outcomeWords(outcome);
    return id === null ? tell('Not recorded: no call is open on this device.') : '';
  };
  const refused = outcome?.outcome === 'refused' ? outcome : null;
  return {
    say: (said) => {
      turn.current += 1;
      const mine = turn.current;
      setGiven({ is: 'asking' });
      void callStore.give(said).then((commandId) => {
        if (turn.current === mine) setGiven({ is: 'given', id: commandId });
      });
    },
    isPending: given?.is === 'asking' || pending !== undefined,
    words: how(),
    isRecorded: outcome?.outcome === 'accepted',
    refused,
    isLost: outcome?.outcome === 'notSent' || (given?.is === 'given' && id === null),
    forget: () => setGiven(null),
  };
};
