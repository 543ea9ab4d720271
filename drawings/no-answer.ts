/** What stands on the drawing of a batten that nothing holds: word and reason, no figure. */

import type { Unstable } from '#beam';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import { tradeWord } from './trade-words.ts';

export type NoAnswer = { readonly word: string; readonly reason: string };

/** The engine's own reason has its figures in SI; a drawing says the same in words alone. */
export const noAnswerWords = ({ code }: Unstable, house: House): NoAnswer => {
  const batten = tradeWord(house, 'batten');
  switch (code) {
    case 'tipsOver':
      return {
        word: phrase(house, 'TIPS OVER'),
        reason: phrase(
          house,
          'The load as a whole pulls down on or beyond the outermost line, and no line can push. ' +
            'The {batten} turns until something stops it.',
          { batten },
        ),
      };
    case 'pieceTips':
      return {
        word: phrase(house, 'TIPS OVER'),
        reason: phrase(
          house,
          'A piece pulls down on or beyond the outermost of its picks, and no pick can push. ' +
            'The piece turns until something stops it.',
        ),
      };
    case 'tooFewLines':
      return {
        word: phrase(house, 'TURNS ABOUT ITS LINE'),
        reason: phrase(
          house,
          'One line alone lets the {batten} turn about it: two or more must hold it level.',
          { batten },
        ),
      };
    case 'noLoad':
      return {
        word: phrase(house, 'NOTHING WEIGHS'),
        reason: phrase(house, 'Nothing weighs on the lines, so nothing keeps them tight.'),
      };
    case 'notDetermined':
      return {
        word: phrase(house, 'NO ONE ANSWER'),
        reason: phrase(
          house,
          'Lines that do not stretch could share this load in more ways than one. ' +
            'How far they stretch must be known.',
        ),
      };
    default:
      return unreachable(code);
  }
};
