/** Orders for the sheets of a show: those that the order screen found, and else worked out here. */
import { type OrderSource, showOrders } from '#orders';
import { type Documents, startFor } from './question.ts';
import { FOUND_ORDERS, type Memory } from './remembered.ts';

export const ordersOf = (documents: Documents, memory: Memory = FOUND_ORDERS): OrderSource => {
  const { house, show, state } = documents;
  const source = showOrders(house, show, state);
  return {
    jobs: source.jobs,
    of: (set, kind) => {
      const asked = { set, job: kind, from: startFor(kind, null) };
      const known = memory.find(documents, asked);
      if (known !== null) return known;
      const answer = source.of(set, kind);
      memory.keep(documents, asked, answer);
      return answer;
    },
  };
};
