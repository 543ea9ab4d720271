/** Loose bricks gallery by gallery. Reserved ones stand apart and are not free. */

import { tradeWord } from '#drawings';
import type { BrickKind, Gallery, House } from '#house';
import type { GalleryState } from '#state';
import type { SheetContext } from '../context.ts';
import { makeSheet, notAnOrder, voidWords } from '../page-parts.ts';
import type { Block, Column, Row, Sheet, SheetData, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMoment } from '../words/say-moment.ts';
import { brickMass } from '../words/say-set.ts';

const COLUMNS: readonly Column[] = [
  { head: 'Kind', align: 'left', share: 0.2 },
  { head: 'Start', align: 'right', share: 0.13 },
  { head: 'In', align: 'left', share: 0.09, isWritten: true },
  { head: 'Out', align: 'left', share: 0.09, isWritten: true },
  { head: 'Expected', align: 'left', share: 0.12, isWritten: true },
  { head: 'Counted', align: 'left', share: 0.12, isWritten: true },
  { head: 'Reserved', align: 'right', share: 0.12 },
  { head: 'Free', align: 'right', share: 0.13 },
];

const NOT_COUNTED = 'not counted';

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
      [start === undefined ? NOT_COUNTED : strong(`${start}`)],
      [''],
      [''],
      [''],
      [''],
      held,
      [start === undefined ? NOT_COUNTED : strong(`${Math.max(0, start - reserved)}`)],
    ],
    rule: 'hair',
  };
};

const floorWords = ({ coursesAllowed }: Gallery, house: House): string => {
  const bricks = tradeWord(house, 'bricks');
  return coursesAllowed.known
    ? `Floor: at most ${coursesAllowed.value} courses of ${bricks}.`
    : `Floor: how many courses of ${bricks} it may carry is not known.`;
};

const countedWords = (state: GalleryState | undefined): string => {
  if (state === undefined || state.countedAt === null) return 'Nobody has recorded a count here.';
  const by = state.countedBy === null ? '' : ` by ${state.countedBy}`;
  return `Start is the count of ${sayMoment(state.countedAt)}${by}.`;
};

const reservedWords = (state: GalleryState | undefined, house: House): readonly Block[] =>
  (state?.reserved ?? []).map(({ kind, count, for: purpose }) => {
    const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
    return {
      kind: 'text',
      words: [strong(`Reserved, not free: ${count} ${name}`), ` for ${purpose}.`],
    };
  });

const galleryBlocks = (gallery: Gallery, { house, state }: SheetContext): readonly Block[] => {
  const stock = state?.galleries[gallery.id];
  return [
    { kind: 'heading', text: gallery.name },
    { kind: 'text', words: [`${floorWords(gallery, house)} ${countedWords(stock)}`] },
    {
      kind: 'table',
      columns: COLUMNS,
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
    title: 'Gallery stock',
    name: show?.name ?? house.name,
    beside: `loose ${tradeWord(house, 'bricks')} by number, as last counted`,
    blocks: [
      notAnOrder,
      {
        kind: 'text',
        words: [
          'What goes in and out, and what is then expected, comes from the order of work, ',
          'which is not made yet: those columns are blank for the gallery lead.',
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
