/** What stands above the visits of a loading sheet: who is not on it, and what lies there. */

import type { House } from '#house';
import type { CountOfKind } from '#orders';
import { phrase, phraseCount } from '#texts';
import type { Block, Paragraph, Words } from '../sheet.ts';
import { box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { bricksWords } from '../words/say-standing.ts';
import { type Call, countOf, type LeftOut } from './loading-call.ts';

/** Named before anything is read: a list that looks whole and is not sends a crew wrong. */
export const leftBlocks = (left: readonly LeftOut[], house: House): readonly Block[] =>
  left.length === 0
    ? []
    : [
        {
          kind: 'notice',
          degree: 'caution',
          heading: phraseCount(
            house,
            left.length,
            ['NOT ON THIS SHEET: SET {sets}', 'NOT ON THIS SHEET: SETS {sets}'],
            { sets: left.map(({ set }) => set).join(', ') },
          ),
          words: [
            phrase(house, 'Nobody loads them by this. '),
            ...left.flatMap(
              ({ set, why }): Words => [
                strong(phrase(house, 'Set {set}: ', { set })),
                `${why}${why.endsWith('.') ? ' ' : '. '}`,
              ],
            ),
          ],
        },
      ];

const totals = (bricks: readonly CountOfKind[], house: House): string =>
  [...new Set(bricks.map(({ kind }) => kind))]
    .map((kind) => bricksWords(countOf(kind, bricks), kind, house))
    .join(', ');

const backWords = (bricks: readonly CountOfKind[], house: House): Paragraph => ({
  kind: 'text',
  words: [
    box,
    strong(phrase(house, ' Bring here and count first: ')),
    filled(
      '{bricks}. The record has them on arbors that are taken to be bare, and nobody has ' +
        'written where they lie.',
      house,
      { bricks: totals(bricks, house) },
    ),
  ],
});

/** What lies there that nobody counted there, and what lies there and is not to be taken. */
export const stockBlocks = (
  gallery: string,
  { orders, brought }: Pick<Call, 'orders' | 'brought'>,
  house: House,
): readonly Block[] => {
  const kept = orders.flatMap(({ assumed }) =>
    assumed.flatMap((each) =>
      each.is === 'stockKept' && each.gallery === gallery
        ? each.kept.map((held) => `${bricksWords(held.count, held.kind, house)} (${held.for})`)
        : [],
    ),
  );
  return [
    ...(brought.length === 0 ? [] : [backWords(brought, house)]),
    ...(kept.length === 0
      ? []
      : [
          {
            kind: 'text' as const,
            words: [
              strong(phrase(house, 'Lies here and is not taken: ')),
              `${[...new Set(kept)].join(', ')}.`,
            ] satisfies Words,
          },
        ]),
  ];
};
