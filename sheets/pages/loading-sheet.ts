/** For the loaders of one gallery: each visit in its order, with what is there before and after. */

import type { House } from '#house';
import type { CheckedOrder, ShowWork } from '#orders';
import { fail, ok, type Refusal, type Result, refusal } from '#outcome';
import { message, phrase, phraseCount } from '#texts';
import { hangName, type SheetContext, setOf } from '../context.ts';
import { orderCode } from '../order-code.ts';
import { BODY_WIDTH, houseFor, makeSheet, voidWords } from '../page-parts.ts';
import { SHEET_REFUSALS } from '../refusal-codes.ts';
import type { Block, Column, Row, Sheet, SheetData, SheetKind, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { height } from '../words/say-set.ts';
import { bricksWords, looksLikeWords } from '../words/say-standing.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { type Call, callOf, type LeftOut, platesThen, type Visit } from './loading-call.ts';
import { leftBlocks, stockBlocks } from './loading-notes.ts';
import { checkedWords, gapBlocks } from './order-blocks.ts';

/** A box for each brick, in fives as a tally is kept. */
const TALLY_MOST = 40;
const tally = (count: number): Words =>
  count > TALLY_MOST
    ? [blank(12)]
    : Array.from({ length: count }, (_, index) => index).flatMap(
        (index): Words => (index > 0 && index % 5 === 0 ? ['  ', box] : [box]),
      );

const COLUMNS = (house: House): readonly Column[] => [
  { head: phrase(house, 'Visit'), align: 'right', share: 0.06 },
  { head: phrase(house, 'Set, step'), align: 'left', share: 0.12 },
  { head: inHouseWords('Batten at', house), align: 'left', share: 0.12 },
  { head: phrase(house, 'Do, and tally'), align: 'left', share: 0.28 },
  { head: inHouseWords('On the arbor then', house), align: 'right', share: 0.12 },
  { head: phrase(house, 'Here before'), align: 'right', share: 0.1 },
  { head: phrase(house, 'Here then'), align: 'right', share: 0.1 },
  { head: phrase(house, 'Marshal'), align: 'left', share: 0.13, isWritten: true },
  { head: phrase(house, 'Done'), align: 'left', share: 0.09, isWritten: true },
];

const NOT_COUNTED = message('not counted');

const rowOf = ({ order, between, step, ...loose }: Visit, index: number, house: House): Row => {
  const bricks = bricksWords(step.count, step.kind, house);
  const others = looksLikeWords(step.kind, house);
  const looks =
    others.length === 0 ? '' : phrase(house, ' Not {others}. ', { others: others.join(', ') });
  return {
    cells: [
      [`${index + 1}`],
      [strong(order.set), phrase(house, ', step {number}', { number: between.number })],
      [height(between.before.standing.height, house)],
      [
        strong(
          step.act === 'add'
            ? phrase(house, 'ON {bricks}. ', { bricks })
            : phrase(house, 'OFF {bricks}. ', { bricks }),
        ),
        looks,
        ...tally(step.count),
      ],
      [strong(`${platesThen(between)}`)],
      [loose.looseBefore === null ? phrase(house, NOT_COUNTED) : `${loose.looseBefore}`],
      [loose.looseAfter === null ? phrase(house, NOT_COUNTED) : `${loose.looseAfter}`],
      [''],
      [''],
    ],
    rule: 'hair',
  };
};

const RULES = message(
  'One brick at a time, counted aloud. None before the lead has said set and count, below is ' +
    'clear with a marshal, and the rail is locked, ringed and empty. Collar tight before the ' +
    'lock is opened. STOP stops all: hands off, collar tight, say the count. Between two visits ' +
    'others work by the sheet of the set: wait for its step.',
);

const setNames = (context: SheetContext, orders: readonly CheckedOrder[]): Words => [
  strong(phrase(context.house, 'Orders: ')),
  orders
    .map((order) => {
      const set = setOf(context, order.set);
      const name = set === undefined ? '' : ` ${hangName(set, context.show, context.house)}`;
      const job = inHouseWords(order.job, context.house);
      return phrase(context.house, 'set {set}{name}, {job}, {orderCode}', {
        set: order.set,
        name,
        job,
        orderCode: orderCode(order),
      });
    })
    .join('; '),
  '.',
];

/** What was tried, once for all the sets of which it is true. */
const checkedNotes = (orders: readonly CheckedOrder[], house: House): readonly Block[] =>
  [...new Set(orders.map((order) => checkedWords(order, house)))].map((words) => {
    const sets = orders.filter((order) => checkedWords(order, house) === words);
    const named = sets.map(({ set }) => set).join(', ');
    return {
      kind: 'text',
      words: [
        strong(phraseCount(house, sets.length, ['Set {named}: ', 'Sets {named}: '], { named })),
        words,
      ],
      isNote: true,
    };
  });

const blocksOf = (context: SheetContext, gallery: string, call: Call): readonly Block[] => {
  const { house } = context;
  const { visits, orders, left } = call;
  const table = {
    kind: 'table' as const,
    columns: COLUMNS(house),
    rows: visits.map((visit, index) => rowOf(visit, index, house)),
  };
  return [
    ...leftBlocks(left, house),
    ...gapBlocks(orders, house),
    { kind: 'text', words: setNames(context, orders) },
    ...stockBlocks(gallery, call, house),
    { kind: 'text', words: [filled(RULES, house)] },
    fitted(table, BODY_WIDTH.landscape),
    ...checkedNotes(orders, house),
    { kind: 'inkLines', count: 2 },
  ];
};

const dataOf = (visits: readonly Visit[]): SheetData => ({
  columns: [
    'number',
    'set',
    'step (number)',
    'on or off',
    'kind',
    'bricks (number)',
    'plates then (number)',
    'here before (number)',
    'here then (number)',
  ],
  rows: visits.map(({ order, between, step, looseBefore, looseAfter }, index) => [
    index + 1,
    order.set,
    between.number,
    step.act === 'add' ? 'on' : 'off',
    step.kind,
    step.count,
    platesThen(between),
    looseBefore,
    looseAfter,
  ]),
});

export const GALLERY_SHEETS = {
  load: { kind: 'loading-sheet', title: message('Loading sheet') },
  strike: { kind: 'unloading-sheet', title: message('Unloading sheet') },
} as const satisfies Readonly<Record<ShowWork['kind'], { kind: SheetKind; title: string }>>;

/** A gallery, what it is called for, and the sets of the call that have no order. */
export type GalleryCall = {
  readonly gallery: string;
  readonly work: ShowWork['kind'];
  readonly left?: readonly LeftOut[];
};

/**
 * The sheet of the loaders of a gallery, or why there is none. Orders are worked as they come; one
 * that was not replayed to its end with nothing broken, or for which the loose bricks do not last,
 * is named and left out.
 */
export const loadingSheet = (
  context: SheetContext,
  { gallery, work, left = [] }: GalleryCall,
  orders: readonly CheckedOrder[],
): Result<Sheet, Refusal> => {
  const { house, show } = context;
  const { kind, title } = GALLERY_SHEETS[work];
  const id = `${kind}/${gallery}`;
  const made = callOf(gallery, context, orders);
  const call = { ...made, left: [...left, ...made.left] };
  if (call.visits.length === 0) {
    const reasons = call.left.map(({ set, why }) =>
      phrase(house, 'set {set}: {why}', { set, why }),
    );
    const found = [phrase(house, 'no order has bricks handled there'), ...reasons].join('; ');
    const accepted = phrase(
      house,
      'orders replayed to their ends with nothing broken, and bricks for them',
    );
    return fail(refusal(SHEET_REFUSALS.notToWorkBy.code, id, { found, accepted }));
  }
  return ok(
    makeSheet(context, {
      id,
      kind,
      title: phrase(house, title),
      name: house.galleries.find((each) => each.id === gallery)?.name ?? gallery,
      beside: show?.name ?? house.name,
      orientation: 'landscape',
      blocks: blocksOf(context, gallery, call),
      voidIf: voidWords(context, null),
      dependsOn: {
        house: houseFor(context),
        visits: dataOf(call.visits),
        orders: call.orders.map(orderCode),
        left: call.left,
        brought: call.brought,
      },
      data: dataOf(call.visits),
    }),
  );
};
