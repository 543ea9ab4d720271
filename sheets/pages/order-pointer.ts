/** Where a card is no order, it names the one to work by; else it says that it is none. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import type { CheckedOrder } from '#orders';
import { phrase, tradeWord } from '#texts';
import { acceptedOrder, askedOrder } from '../asked-order.ts';
import type { SheetContext } from '../context.ts';
import { orderCode } from '../order-code.ts';
import { notAnOrder, setDependsOn } from '../page-parts.ts';
import type { Notice } from '../sheet.ts';
import { whyNoStrike } from './strike-sheet.ts';

/**
 * The strike of the set, which is found in no time at all. Its load may take seconds, so a card
 * does not wait for it.
 */
export const strikeToWorkBy = (
  { orders, house }: Pick<SheetContext, 'orders' | 'house'>,
  set: SetAssessment,
): CheckedOrder | null => {
  const order = acceptedOrder(askedOrder(orders, { set: set.lineSet.id, kind: 'strike' }));
  return order !== null && whyNoStrike(set, order, house) === null ? order : null;
};

export const orderPointer = (order: CheckedOrder | null, house: House): Notice =>
  order === null
    ? notAnOrder(house)
    : {
        kind: 'notice',
        degree: 'plain',
        heading: phrase(house, '{strike} SHEET: ORDER {code}. DO NOT LOAD BY THIS', {
          strike: tradeWord(house, 'strike').toUpperCase(),
          code: orderCode(order),
        }),
        words: [],
      };

/** A card that names an order is another card when the order is another. */
export const cardDependsOn = (
  context: SheetContext,
  set: SetAssessment,
  order: CheckedOrder | null,
): unknown =>
  order === null
    ? setDependsOn(context, set)
    : { of: setDependsOn(context, set), order: orderCode(order) };
