/** Lines for two people who looked together; one device with two names is one person. */
import type { House } from '#house';
import { phrase } from '#texts';
import type { Block, Words } from '../sheet.ts';
import { blank, strong } from '../sheet.ts';

const line = (who: string, house: House): Words => [
  `${who} `,
  blank(17),
  phrase(house, ' signed '),
  blank(11),
  phrase(house, ' at '),
  blank(6),
];

export const signLines = (
  house: House,
  title: string,
  who: readonly [string, string] = [phrase(house, 'Goes'), phrase(house, 'Comes')],
): readonly Block[] => [
  {
    kind: 'notice',
    degree: 'plain',
    heading: title,
    words: [
      phrase(
        house,
        'Both walked the rail with this in hand, and looked at each set that is named. ',
      ),
      strong(phrase(house, 'A count that neither of them saw is still the count of who made it.')),
    ],
  },
  ...who.map((each): Block => ({ kind: 'text', words: line(each, house) })),
];
