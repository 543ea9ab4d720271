/** The order of work that a screen asks for, searched for on another thread. */
import { useEffect, useMemo, useState } from 'react';
import { useWork } from '../reckoning/use-work.ts';
import { answerFrom } from './found.ts';
import type { Asked, OrderAnswer } from './question.ts';
import { FOUND_ORDERS } from './remembered.ts';
import { search } from './searcher.ts';

/** Null while it is searched for; leaving the screen ends the search. */
export const useOrder = ({ set, job, from }: Asked): OrderAnswer | null => {
  const { house, show, state, documents: raw } = useWork();
  const documents = useMemo(() => ({ house, show, state }), [house, show, state]);
  const asked = useMemo(() => ({ set, job, from }), [set, job, from]);
  const [, setFound] = useState<OrderAnswer | null>(null);
  const [fault, setFault] = useState<Error | null>(null);
  useEffect(() => {
    if (FOUND_ORDERS.find(documents, asked) !== null) return undefined;
    return search(
      { documents: raw, asked },
      {
        onFound: (found) => {
          const answer = answerFrom(documents, asked, found);
          FOUND_ORDERS.keep(documents, asked, answer);
          setFound(answer);
        },
        onFault: setFault,
      },
    );
  }, [documents, raw, asked]);
  // A screen that could not search must not look like one that found nothing.
  if (fault !== null) throw fault;
  return FOUND_ORDERS.find(documents, asked);
};
