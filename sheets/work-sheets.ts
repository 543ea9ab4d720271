/** Sheets of the work itself: each is of an order that was searched for and judged, or says why. */

import type { House } from '#house';
import type { CheckedOrder, OrderSource, ShowWork } from '#orders';
import { phrase } from '#texts';
import { acceptedOrder, askedOrder, workOf } from './asked-order.ts';
import { type SheetContext, setOf } from './context.ts';
import { briefingSheet } from './pages/briefing.ts';
import type { LeftOut } from './pages/loading-call.ts';
import { loadingSheet } from './pages/loading-sheet.ts';
import { noBriefingSheet, noLoadingSheet, noOrderSheet } from './pages/no-order.ts';
import { needsPermit, noPermitSheet, permitSheet } from './pages/permit.ts';
import { strikeSheet, whyNoStrike } from './pages/strike-sheet.ts';
import type { Sheet } from './sheet.ts';
import { sayWhyNoOrder } from './words/why-no-order.ts';
import { whyWords } from './words/why-words.ts';

type Source = {
  readonly house: Pick<House, 'galleries'>;
  readonly orders?: OrderSource | undefined;
};

/** By what hangs and not by what a search finds: a list is to be there at once. */
export const workSheetIds = ({ house, orders }: Source): readonly string[] => {
  const sets = workOf(orders, 'strike').map(({ set }) => set);
  if (sets.length === 0) return [];
  return [
    ...sets.map((set) => `strike-sheet/${set}`),
    ...house.galleries.map(({ id }) => `loading-sheet/${id}`),
    ...house.galleries.map(({ id }) => `unloading-sheet/${id}`),
    ...sets.map((set) => `permit/${set}`),
    ...CALL_KINDS.map((kind) => `briefing/${kind}`),
  ];
};

const CALL_KINDS = ['load', 'strike'] as const;

type Make = (context: SheetContext, of: string) => Sheet | undefined;

/** Undefined where the show has no such work. */
export const workSheetOf = (context: SheetContext, kind: string, of: string): Sheet | undefined =>
  MADE.get(kind)?.(context, of);

const strikeSheetOf = (context: SheetContext, id: string): Sheet | undefined => {
  const set = setOf(context, id);
  const asked = askedOrder(context.orders, { set: id, kind: 'strike' });
  if (set === undefined || asked === null) return undefined;
  const order = acceptedOrder(asked);
  const made = order === null ? null : strikeSheet(context, set, order);
  if (made?.ok === true) return made.value;
  const why = order === null ? null : whyNoStrike(set, order, context.house);
  return noOrderSheet(context, set, {
    id: `strike-sheet/${id}`,
    kind: 'strike-sheet',
    title: phrase(context.house, 'Strike sheet'),
    asked,
    ...(why === null ? {} : { reasons: [`${whyWords(why, context.house)}.`] }),
  });
};

type Call = { readonly orders: readonly CheckedOrder[]; readonly left: readonly LeftOut[] };

/** All work of one kind: what may be worked by, and why the rest may not. */
const callOf = ({ orders: source, house }: SheetContext, kind: ShowWork['kind']): Call => {
  const orders: CheckedOrder[] = [];
  const left: LeftOut[] = [];
  for (const work of workOf(source, kind)) {
    const asked = askedOrder(source, work);
    if (asked === null) continue;
    const order = acceptedOrder(asked);
    if (order !== null) orders.push(order);
    else left.push({ set: work.set, why: sayWhyNoOrder(asked, house).join(' ') });
  }
  return { orders, left };
};

const gallerySheetOf = (
  context: SheetContext,
  gallery: string,
  work: ShowWork['kind'],
): Sheet | undefined => {
  const isThere = context.house.galleries.some(({ id }) => id === gallery);
  if (!isThere || workOf(context.orders, work).length === 0) return undefined;
  const { orders, left } = callOf(context, work);
  const made = loadingSheet(context, { gallery, work, left }, orders);
  return made.ok ? made.value : noLoadingSheet(context, { gallery, work, left });
};

const briefingOf = (context: SheetContext, of: string): Sheet | undefined => {
  const kind = CALL_KINDS.find((each) => each === of);
  if (kind === undefined || workOf(context.orders, kind).length === 0) return undefined;
  const { orders, left } = callOf(context, kind);
  return orders.length === 0
    ? noBriefingSheet(context, kind, left)
    : briefingSheet(context, kind, orders, left);
};

/** Of both orders of a set, those that need it; where there is no order, why. */
const permitOf = (context: SheetContext, id: string): Sheet | undefined => {
  const set = setOf(context, id);
  const asked = CALL_KINDS.flatMap((kind) => {
    const each = askedOrder(context.orders, { set: id, kind });
    return each === null ? [] : [each];
  });
  const [first] = asked;
  if (set === undefined || first === undefined) return undefined;
  const orders = asked.flatMap((each) => {
    const order = acceptedOrder(each);
    return order === null ? [] : [order];
  });
  const needing = orders.filter(needsPermit);
  if (needing.length > 0) return permitSheet(context, set, needing);
  if (orders.length > 0) return noPermitSheet(context, set, orders);
  return noOrderSheet(context, set, {
    id: `permit/${id}`,
    kind: 'permit',
    title: phrase(context.house, 'Out-of-balance permit'),
    asked: first,
  });
};

const MADE: ReadonlyMap<string, Make> = new Map<string, Make>([
  ['strike-sheet', strikeSheetOf],
  ['loading-sheet', (context, of) => gallerySheetOf(context, of, 'load')],
  ['unloading-sheet', (context, of) => gallerySheetOf(context, of, 'strike')],
  ['permit', permitOf],
  ['briefing', briefingOf],
]);
