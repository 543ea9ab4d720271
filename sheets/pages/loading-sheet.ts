/** For the loaders of one gallery: each visit in its order, with what is there before and after. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result, refusal } from '#outcome';
import type { Step } from '#state';
import { hangName, type SheetContext, setOf } from '../context.ts';
import {
  type CheckedOrder,
  orderCode,
  type StepBetween,
  stepsBetween,
  whyNotPrinted,
} from '../order.ts';
import { BODY_WIDTH, houseFor, makeSheet, voidWords } from '../page-parts.ts';
import { SHEET_REFUSALS } from '../refusal-codes.ts';
import type { Block, Column, Row, Sheet, SheetData, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { height } from '../words/say-set.ts';
import { bricksWords, looksLikeWords } from '../words/say-standing.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { checkedWords, gapBlocks } from './order-blocks.ts';

type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;
type Stock = Readonly<Record<string, number>>;

/** Bricks of one kind, handled at one place in one go. */
type Visit = {
  readonly order: CheckedOrder;
  readonly between: StepBetween;
  readonly step: BrickStep;
  /** Loose on the gallery before and after; null where nobody counted that kind. */
  readonly looseBefore: number | null;
  readonly looseAfter: number | null;
};

const bricksOf = ({ step }: StepBetween): BrickStep | null =>
  step.act === 'add' || step.act === 'remove' ? step : null;

/** Loose bricks before the first order, as its judge was told. */
const stockOf = (gallery: string, [first]: readonly CheckedOrder[]): Stock =>
  first?.physics.galleries.find(({ id }) => id === gallery)?.stock ?? {};

/** In the order of the orders, and in each as its steps come; what is loose runs along. */
const visitsOf = (gallery: string, orders: readonly CheckedOrder[]): readonly Visit[] => {
  const loose = new Map(Object.entries(stockOf(gallery, orders)));
  return orders.flatMap((order) =>
    stepsBetween(order).flatMap((between): readonly Visit[] => {
      const step = bricksOf(between);
      if (step === null || step.gallery !== gallery) return [];
      const before = loose.get(step.kind) ?? null;
      const after = before === null ? null : before + (step.act === 'add' ? -1 : 1) * step.count;
      if (after !== null) loose.set(step.kind, after);
      return [{ order, between, step, looseBefore: before, looseAfter: after }];
    }),
  );
};

/** Fewer than none: the orders cannot be worked one after the other from this stock. */
const shortOf = (visits: readonly Visit[], house: Pick<House, 'brickKinds'>): string | null => {
  const short = visits.find(({ looseAfter }) => looseAfter !== null && looseAfter < 0);
  if (short === undefined) return null;
  const { order, between, step, looseBefore } = short;
  const wanted = bricksWords(step.count, step.kind, house);
  return `set ${order.set}, step ${between.number} wants ${wanted}, and ${looseBefore} are there`;
};

/** Why there is no loading sheet of a gallery; null where there is one. */
const whyNoLoading = (
  gallery: string,
  orders: readonly CheckedOrder[],
  house: Pick<House, 'brickKinds'>,
): string | null => {
  const bad = orders.find((order) => whyNotPrinted(order) !== null);
  if (bad !== undefined) return `set ${bad.set}: ${whyNotPrinted(bad)}`;
  const visits = visitsOf(gallery, orders);
  return visits.length === 0 ? 'no order has bricks handled there' : shortOf(visits, house);
};

/** Galleries that have a loading sheet, as the orders come to them. */
export const galleriesToLoad = (orders: readonly CheckedOrder[]): readonly string[] => {
  const steps = orders.flatMap((order) => stepsBetween(order).map(bricksOf));
  const galleries = new Set(steps.flatMap((step) => (step === null ? [] : [step.gallery])));
  return [...galleries].filter(
    (gallery) => whyNoLoading(gallery, orders, { brickKinds: [] }) === null,
  );
};

const plates = ({ after }: StepBetween): number =>
  after.standing.stack
    .filter(({ tag }) => tag !== 'spreader')
    .reduce((sum, { count }) => sum + count, 0);

/** A box for each brick, in fives as a tally is kept. */
const TALLY_MOST = 40;
const tally = (count: number): Words =>
  count > TALLY_MOST
    ? [blank(12)]
    : Array.from({ length: count }, (_, index) => index).flatMap(
        (index): Words => (index > 0 && index % 5 === 0 ? ['  ', box] : [box]),
      );

const COLUMNS = (house: House): readonly Column[] => [
  { head: 'Visit', align: 'right', share: 0.06 },
  { head: 'Set, step', align: 'left', share: 0.12 },
  { head: inHouseWords('Batten at', house), align: 'left', share: 0.12 },
  { head: 'Do, and tally', align: 'left', share: 0.28 },
  { head: inHouseWords('On the arbor then', house), align: 'right', share: 0.12 },
  { head: 'Here before', align: 'right', share: 0.1 },
  { head: 'Here then', align: 'right', share: 0.1 },
  { head: 'Marshal', align: 'left', share: 0.13, isWritten: true },
  { head: 'Done', align: 'left', share: 0.09, isWritten: true },
];

const NOT_COUNTED = 'not counted';

const rowOf = ({ order, between, step, ...loose }: Visit, index: number, house: House): Row => {
  const bricks = bricksWords(step.count, step.kind, house);
  const others = looksLikeWords(step.kind, house);
  const looks = others.length === 0 ? '' : ` Not ${others.join(', ')}. `;
  return {
    cells: [
      [`${index + 1}`],
      [strong(order.set), `, step ${between.number}`],
      [height(between.before.standing.height, house)],
      [strong(`${step.act === 'add' ? 'ON' : 'OFF'} ${bricks}. `), looks, ...tally(step.count)],
      [strong(`${plates(between)}`)],
      [loose.looseBefore === null ? NOT_COUNTED : `${loose.looseBefore}`],
      [loose.looseAfter === null ? NOT_COUNTED : `${loose.looseAfter}`],
      [''],
      [''],
    ],
    rule: 'hair',
  };
};

const RULES =
  'One brick at a time, counted aloud. None before the lead has said set and count, below is ' +
  'clear with a marshal, and the rail is locked, ringed and empty. Collar tight before the lock ' +
  'is opened. STOP stops all: hands off, collar tight, say the count. Between two visits others ' +
  'work by the sheet of the set: wait for its step.';

const setNames = (context: SheetContext, orders: readonly CheckedOrder[]): Words => [
  strong('Orders: '),
  orders
    .map((order) => {
      const set: SetAssessment | undefined = setOf(context, order.set);
      const name = set === undefined ? '' : ` ${hangName(set, context.show)}`;
      return `set ${order.set}${name}, ${order.job}, ${orderCode(order)}`;
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
      words: [strong(`${sets.length === 1 ? 'Set' : 'Sets'} ${named}: `), words],
      isNote: true,
    };
  });

const blocksOf = (
  context: SheetContext,
  visits: readonly Visit[],
  orders: readonly CheckedOrder[],
): readonly Block[] => {
  const { house } = context;
  const table = {
    kind: 'table' as const,
    columns: COLUMNS(house),
    rows: visits.map((visit, index) => rowOf(visit, index, house)),
  };
  return [
    ...gapBlocks(orders, house),
    { kind: 'text', words: setNames(context, orders) },
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
    plates(between),
    looseBefore,
    looseAfter,
  ]),
});

/**
 * The loading sheet of a gallery, or why there is none: every order of the call must have been
 * replayed to its end with nothing broken, and the loose bricks must last for one after the other.
 */
export const loadingSheet = (
  context: SheetContext,
  gallery: string,
  orders: readonly CheckedOrder[],
): Result<Sheet, Refusal> => {
  const { house, show } = context;
  const id = `loading-sheet/${gallery}`;
  const why = whyNoLoading(gallery, orders, house);
  if (why !== null) {
    const accepted =
      'orders replayed to their ends with nothing broken, and bricks for all of them';
    return fail(refusal(SHEET_REFUSALS.notToWorkBy.code, id, { found: why, accepted }));
  }
  const visits = visitsOf(gallery, orders);
  const there = orders.filter((order) => visits.some((visit) => visit.order === order));
  const name = house.galleries.find((each) => each.id === gallery)?.name ?? gallery;
  return ok(
    makeSheet(context, {
      id,
      kind: 'loading-sheet',
      title: 'Loading sheet',
      name,
      beside: show?.name ?? house.name,
      orientation: 'landscape',
      blocks: blocksOf(context, visits, there),
      voidIf: voidWords(context, null),
      dependsOn: {
        house: houseFor(context),
        stock: stockOf(gallery, orders),
        orders: there.map(orderCode),
      },
      data: dataOf(visits),
    }),
  );
};
