/** One command of a person, from the tap to what became of it, in words. */
import { useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import { useOutcomeWords } from './outcome-words.ts';
import { live, useLive } from './use-live.ts';

type Command = Parameters<typeof live.give>[0];

export type Given = {
  readonly give: (command: Command) => void;
  readonly isPending: boolean;
  /** What became of it, or how far it is; empty where nothing was given. */
  readonly words: string;
  /** It was refused because nobody has said lately who is at this device. */
  readonly wantsProof: boolean;
  readonly forget: () => void;
};

/** Of `LIVE_REFUSALS` in server/live. */
const PROVE_ANEW = 'LIV-003';

export const useGiven = (): Given => {
  const tell = useTell();
  const say = useOutcomeWords();
  const { outbox, outcomes } = useLive();
  const [given, setGiven] = useState<string | null>(null);
  const pending = outbox.find(({ command }) => command.commandId === given);
  const outcome = given === null ? undefined : outcomes[given];
  const how = (): string => {
    if (pending?.way === 'asking') return tell('Unknown: checking');
    if (pending?.way === 'sending') return tell('Sending');
    return outcome === undefined ? '' : say(outcome);
  };
  return {
    give: (command) => setGiven(live.give(command)),
    isPending: pending !== undefined,
    words: how(),
    wantsProof: outcome?.outcome === 'refused' && outcome.code === PROVE_ANEW,
    forget: () => setGiven(null),
  };
};
