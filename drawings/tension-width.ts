/** How thick a lift line is drawn: a few steps, each about twice the pull of the one before. */
import { phrase, type Voice } from '#texts';
import type { BattenSubject } from './batten-frame.ts';

type Step = { readonly upTo: number; readonly width: number };

const STEPS: readonly Step[] = [
  { upTo: 0.05, width: 1 },
  { upTo: 0.1, width: 1.75 },
  { upTo: 0.2, width: 3 },
  { upTo: 0.4, width: 4.5 },
  { upTo: 0.8, width: 6.5 },
  { upTo: Infinity, width: 9 },
];

/** A share of what a line may carry, as a width in units of the drawing. */
export const widthOfShare = (share: number): number =>
  STEPS.find(({ upTo }) => share <= upTo)?.width ?? 9;

/** Against the limit of a line; where none is known, against all that the lines carry together. */
export const tensionWidth = (
  tensionN: number,
  { lineLimitN, state }: Pick<BattenSubject, 'lineLimitN' | 'state'>,
): number => {
  const wholeN = state.lines.reduce((sum, { tension }) => sum + tension, 0);
  const againstN = lineLimitN ?? wholeN;
  return widthOfShare(againstN > 0 ? tensionN / againstN : 0);
};

export const widthWords = (lineLimitN: number | null, voice: Voice): string =>
  lineLimitN === null
    ? phrase(voice, 'the thicker a line, the larger its share of the whole load')
    : phrase(voice, 'the thicker a line, the nearer to its limit');
