/** Loose bricks gallery by gallery. Reserved ones stand apart and are not free. */

import { tradeWord } from '#drawings';
import type { BrickKind, Gallery, House } from '#house';
import type { GalleryState } from '#state';
import { message, phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { makeSheet, notAnOrder, voidWords } from '../page-parts.ts';
import type { Block, Column, Row, Sheet, SheetData, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMoment } from '../words/say-moment.ts';
import { brickMass } from '../words/say-set.ts';

const columnsOf = (house: House): readonly Column[] => [
  { head: phrase(house, 'Kind'), align: 'left', share: 0.2 },
  { head: phrase(house, 'Start'), align: 'right', share: 0.13 },
  { head: phrase(house, 'In'), align: 'left', share: 0.09, isWritten: true },
  { head: phrase(house, 'Out'), align: 'left', share: 0.09, isWritten: true },
  { head: phrase(house, 'Expected'), align: 'left', share: 0.12, isWritten: true },
  { head: phrase(house, 'Counted'), align: 'left', share: 0.12, isWritten: true },
  { head: phrase(house, 'Reserved'), align: 'right', share: 0.12 },
  { head: phrase(house, 'Free'), align: 'right', share: 0.13 },
];

const NOT_COUNTED = message('not counted');

const reservedOf = (state: GalleryState | undefined, kind: string): number =>
  (state?.reserved ?? [])
    .filter((each) => each.kind === kind)
    .reduce((sum, { count }) => sum + count, 0);

const kindName = (brick: BrickKind, house: House): string =>
  brick.mass.known ? `${brick.name}, ${brickMass(brick.mass.value, house)}` : brick.name;

const rowOf = (brick: BrickKind, state: GalleryState | undefined, house: House): Row => {
  const start = state?.stock[brick.id];
  const reserved = reservedOf(state, brick.id);
  const held: Words = [reserved === 0 ? '0' : strong(`${reserved}`)];
  return {
    cells: [
      [kindName(brick, house)],
      [start === undefined ? phrase(house, NOT_COUNTED) : strong(`${start}`)],
      [''],
      [''],
      [''],
      [''],
      held,
      [
        start === undefined
          ? phrase(house, NOT_COUNTED)
          : strong(`${Math.max(0, start - reserved)}`),
      ],
    ],
    rule: 'hair',
  };
};

const floorWords = ({ coursesAllowed }: Gallery, house: House): string => {
  const bricks = tradeWord(house, 'bricks');
  return coursesAllowed.known
    ? phrase(house, 'Floor: at most {value} courses of {bricks}.', {
        value: coursesAllowed.value,
        bricks,
      })
    : phrase(house, 'Floor: how many courses of {bricks} it may carry is not known.', { bricks });
};

const countedWords = (state: GalleryState | undefined, house: House): string => {
  if (state === undefined || state.countedAt === null) {
    return phrase(house, 'Nobody has recorded a count here.');
  }
  const at = sayMoment(state.countedAt, house);
  return state.countedBy === null
    ? phrase(house, 'Start is the count of {at}.', { at })
    : phrase(house, 'Start is the count of {at} by {by}.', { at, by: state.countedBy });
};

const reservedWords = (state: GalleryState | undefined, house: House): readonly Block[] =>
  (state?.reserved ?? []).map(({ kind, count, for: purpose }) => {
    const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
    return {
      kind: 'text',
      words: [
        strong(phrase(house, 'Reserved, not free: {count} {name}', { count, name })),
        phrase(house, ' for {purpose}.', { purpose }),
      ],
    };
  });

const galleryBlocks = (gallery: Gallery, { house, state }: SheetContext): readonly Block[] => {
  const stock = state?.galleries[gallery.id];
  return [
    { kind: 'heading', text: gallery.name },
    { kind: 'text', words: [`${floorWords(gallery, house)} ${countedWords(stock, house)}`] },
    {
      kind: 'table',
      columns: columnsOf(house),
      rows: house.brickKinds.map((brick) => rowOf(brick, stock, house)),
    },
    ...reservedWords(stock, house),
  ];
};

const dataOf = ({ house, state }: SheetContext): SheetData => ({
  columns: [
    'gallery',
    'kind',
    'start (number)',
    'reserved (number)',
    'free (number)',
    'counted at',
    'floor courses allowed (number)',
  ],
  rows: house.galleries.flatMap((gallery) =>
    house.brickKinds.map((brick) => {
      const stock = state?.galleries[gallery.id];
      const start = stock?.stock[brick.id] ?? null;
      const reserved = reservedOf(stock, brick.id);
      const { coursesAllowed } = gallery;
      return [
        gallery.name,
        brick.name,
        start,
        reserved,
        start === null ? null : Math.max(0, start - reserved),
        stock?.countedAt ?? null,
        coursesAllowed.known ? coursesAllowed.value : null,
      ];
    }),
  ),
});

export const galleryStockSheet = (context: SheetContext): Sheet => {
  const { house, show, state } = context;
  return makeSheet(context, {
    id: 'gallery-stock',
    kind: 'gallery-stock',
    title: phrase(house, 'Gallery stock'),
    name: show?.name ?? house.name,
    beside: phrase(house, 'loose bricks by number, as last counted'),
    blocks: [
      notAnOrder(house),
      {
        kind: 'text',
        words: [
          phrase(
            house,
            'What goes in and out, and what is then expected, comes from the order of work, ',
          ),
          phrase(house, 'which is not made yet: those columns are blank for the gallery lead.'),
        ],
      },
      ...house.galleries.flatMap((gallery) => galleryBlocks(gallery, context)),
      { kind: 'inkLines', count: 4 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: {
      kinds: house.brickKinds,
      galleries: house.galleries,
      units: house.units,
      words: house.words,
      stock: state?.galleries ?? null,
    },
    data: dataOf(context),
  });
};
