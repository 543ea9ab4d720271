/** One thing done on these screens: what it says, and the passphrase or PIN where it is asked. */
import { type ReactNode, useState } from 'react';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { Answer } from './ask-people.ts';
import { Said } from './field.tsx';
import { Proof } from './proof.tsx';
import { askSession } from './session.ts';
import { againstWords } from './words.ts';

const PROOF_NEEDED = 'ACC-007';

type Work = () => Promise<Answer<unknown>>;

export type Act = {
  readonly isBusy: boolean;
  /** Does it; where the secret is wanted anew, it is asked for and it is done then. */
  readonly act: (work: Work, done?: string) => Promise<void>;
  /** To stand where the act was begun. */
  readonly said: ReactNode;
};

type Said_ = { readonly words: string; readonly isBad: boolean };

const NOTHING: Said_ = { words: '', isBad: false };

export const useAct = (): Act => {
  const tell = useTell();
  const voice = useVoice();
  const [isBusy, setBusy] = useState(false);
  const [said, setSaid] = useState<Said_>(NOTHING);
  const [waiting, setWaiting] = useState<{ work: Work; done: string } | null>(null);
  const act = async (work: Work, done = ''): Promise<void> => {
    setBusy(true);
    setSaid(NOTHING);
    setWaiting(null);
    try {
      const answer = await work();
      if (answer.ok) setSaid({ words: done, isBad: false });
      else if (answer.against.code === PROOF_NEEDED) setWaiting({ work, done });
      else setSaid({ words: againstWords(answer.against, voice), isBad: true });
      if (!answer.ok && answer.against.code === 'ACC-001') await askSession();
    } catch {
      setSaid({ words: tell('The server was not reached. Nothing was done.'), isBad: true });
    }
    setBusy(false);
  };
  const shown =
    waiting === null ? (
      <Said {...said} />
    ) : (
      <Proof
        why={tell('You signed in a while ago. This asks for your passphrase or PIN once more.')}
        onProved={() => void act(waiting.work, waiting.done)}
        onLeave={() => setWaiting(null)}
      />
    );
  return { isBusy, act, said: shown };
};
