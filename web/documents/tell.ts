/** What came of the last thing done on the screen, in words; refusals stand beside it. */
import type { Refusal } from '#outcome';
import type { Kept, Open } from '../keeping/kept.ts';

export type Outcome = { readonly words: string; readonly refusals?: readonly Refusal[] };
export type Tell = (outcome: Outcome) => void;

/** What the form of one act on a document is given. */
export type ActProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly onTell: Tell;
  readonly onLeave: () => void;
};

export const faultWords = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
