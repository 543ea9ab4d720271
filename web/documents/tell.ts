/** What came of the last thing done on the screen, in words; refusals stand beside it. */
import type { Refusal } from '#outcome';
import { phrase, told, type Voice } from '#texts';
import type { Kept, Open } from '../keeping/kept.ts';
import { faultText } from '../keeping/server.ts';

export type Outcome = { readonly words: string; readonly refusals?: readonly Refusal[] };
export type Tell = (outcome: Outcome) => void;

/** What the form of one act on a document is given. */
export type ActProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly onTell: Tell;
  readonly onLeave: () => void;
};

export const faultWords = (voice: Voice, fault: unknown): string => {
  const { text, names } = faultText(fault);
  return phrase(
    voice,
    text,
    'title' in names ? { title: told(voice, `${names['title']}`) } : names,
  );
};
