/** Orders that were found once for the same documents are not searched for again. */
import type { Asked, Documents, OrderAnswer } from './question.ts';

type Kept = Documents & { readonly answers: Map<string, OrderAnswer> };

/** Documents in view come and go with every edit: only the orders of the last few are kept. */
const DOCUMENTS_MOST = 4;

export type Memory = {
  readonly find: (documents: Documents, asked: Asked) => OrderAnswer | null;
  readonly keep: (documents: Documents, asked: Asked, answer: OrderAnswer) => void;
};

const keyOf = ({ set, job, from }: Asked): string => JSON.stringify([set, job, from]);

export const orderMemory = (): Memory => {
  const kept: Kept[] = [];
  const of = ({ house, show, state }: Documents): Kept | undefined =>
    kept.find((each) => each.house === house && each.show === show && each.state === state);
  return {
    find: (documents, asked) => of(documents)?.answers.get(keyOf(asked)) ?? null,
    keep: (documents, asked, answer) => {
      const { house, show, state } = documents;
      const before = of(documents);
      if (before === undefined) {
        kept.unshift({ house, show, state, answers: new Map([[keyOf(asked), answer]]) });
        kept.splice(DOCUMENTS_MOST);
        return;
      }
      before.answers.set(keyOf(asked), answer);
    },
  };
};

/** Of this page: what the order screen found need not be searched again for a sheet. */
export const FOUND_ORDERS = orderMemory();
