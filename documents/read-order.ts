/** Reads an order of work, alone or against its house and its show. */
import type { House } from '#house';
import type { Refusal, Result } from '#outcome';
import { ok } from '#outcome';
import type { Show } from '#show';
import type { Faults } from './faults.ts';
import { checkOrder, checkOrderInHouse, checkOrderInShow } from './order-checks.ts';
import type { OrderDocument, OrderOfWork } from './order-of-work.ts';
import type { WrittenOrder } from './order-shape.ts';
import { orderShape } from './order-shape.ts';
import type { Read, Reading } from './read-document.ts';
import { readFromText, readFromValue } from './read-document.ts';

type Against = { readonly house: House | undefined; readonly show: Show | undefined };

const assemble = (
  { house: houseId, show: showId, set, start, steps }: WrittenOrder,
  { house, show }: Against,
  faults: Faults,
): OrderOfWork => {
  const order: OrderOfWork = { houseId, showId, set, start, steps };
  checkOrder(order, faults);
  const isOurs = !house || checkOrderInHouse(order, house, faults);
  if (show && isOurs) checkOrderInShow(order, show, faults);
  return order;
};

const reading = (against: Against): Reading<WrittenOrder, OrderOfWork> => ({
  kind: 'order',
  shape: orderShape,
  assemble: (written, faults) => assemble(written, against, faults),
});

type Answer = Result<OrderDocument, readonly Refusal[]>;

const named = (read: Result<Read<OrderOfWork>, readonly Refusal[]>): Answer =>
  read.ok ? ok({ raw: read.value.raw, order: read.value.value }) : read;

/** With the house, its set, galleries, kinds and heights are checked; with the show, items. */
export const readOrder = (text: unknown, house?: House, show?: Show): Answer =>
  named(readFromText(reading({ house, show }), text));

/** The same for a value that has been parsed. */
export const readOrderValue = (value: unknown, house?: House, show?: Show): Answer =>
  named(readFromValue(reading({ house, show }), value));
