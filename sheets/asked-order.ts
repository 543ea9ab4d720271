/** The orders of work of a show, as sheets ask for them. */
import type { CheckedOrder, NotAsked, OrderSource, ShowWork, WorkedOrder } from '#orders';
import { whyNotPrinted } from '#orders';

export type AskedOrder = WorkedOrder | NotAsked;

/** All work of one kind that the show has, in rail order; none where nobody gave orders. */
export const workOf = (
  orders: OrderSource | undefined,
  kind: ShowWork['kind'],
): readonly ShowWork[] => (orders?.jobs ?? []).filter((job) => job.kind === kind);

/** Null where the show has no such work: nothing hangs there, or the set does not move alone. */
export const askedOrder = (
  orders: OrderSource | undefined,
  { set, kind }: ShowWork,
): AskedOrder | null =>
  orders !== undefined && workOf(orders, kind).some((job) => job.set === set)
    ? orders.of(set, kind)
    : null;

/** The order to work by; null where none was found that may be printed. */
export const acceptedOrder = (asked: AskedOrder | null): CheckedOrder | null => {
  if (asked === null || 'refusals' in asked || !('found' in asked.plan)) return null;
  return whyNotPrinted(asked.order) === null ? asked.order : null;
};
