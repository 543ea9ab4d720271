/** The order of work of a set in one line a step, and the way to the whole of it. */
import { useEffect, useMemo, useState } from 'react';
import { isAccepted, stepsBetween, type WorkedOrder, type WorkKind } from '#orders';
import { sayWhyNoOrder, stepTitle } from '#sheets';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { sizeWords, wordsOf } from '../order/moments.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { likelyJob, startFor } from '../order/question.ts';
import { useOrder } from '../order/use-order.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';

type Props = { readonly each: SetReckoning };

/** A hand that still types is not made to wait for a search. */
const REST_MS = 900;

/** Whether nothing of what an order rests on has changed for a while. */
const useRested = (): boolean => {
  const { house, show, state } = useWork();
  const now = useMemo(() => ({ house, show, state }), [house, show, state]);
  const [rested, setRested] = useState<object | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setRested(now), REST_MS);
    return () => clearTimeout(timer);
  }, [now]);
  return rested === now;
};

export const OrderInShort = ({ each }: Props) => {
  const tell = useTell();
  const isRested = useRested();
  const job = likelyJob(each.set.recorded.state);
  const title =
    job === 'load'
      ? tell('Order of work in short, to hang it')
      : tell('Order of work in short, to strike it');
  return (
    <PlannedFrame word="PLANNED" title={title}>
      {isRested ? (
        <Searched each={each} job={job} />
      ) : (
        <p className="quiet">{tell('An order is searched for once the set stays as it is …')}</p>
      )}
      <p>
        <Link to={{ kind: 'order', set: each.id, job: null, from: null }}>
          {tell('The order of work of this set')}
        </Link>
        <span className="quiet">
          {tell(
            ': drawn step by step, with what holds it. No bricks go on or come off by this list.',
          )}
        </span>
      </p>
    </PlannedFrame>
  );
};

const Searched = ({ each, job }: Props & { readonly job: WorkKind }) => {
  const tell = useTell();
  const { house } = useWork();
  const answer = useOrder({ set: each.id, job, from: startFor(job, null) });
  if (answer === null) return <p className="quiet">{tell('Searching for an order …')}</p>;
  const isWorked = !('refusals' in answer) && 'found' in answer.plan && isAccepted(answer.order);
  if (isWorked) return <Steps each={each} worked={answer} />;
  return (
    <ul className="plain-list">
      {sayWhyNoOrder(answer, house).map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
};

const Steps = ({ each, worked }: Props & { readonly worked: WorkedOrder }) => {
  const { house } = useWork();
  const { order } = worked;
  const words = wordsOf(order, each.set, house);
  return (
    <>
      <p>
        <b>{sizeWords(order, house)}</b>
      </p>
      <ol className="steps-in-short">
        {stepsBetween(order).map((between) => (
          <li key={between.number}>{stepTitle(between, words)}</li>
        ))}
      </ol>
    </>
  );
};
