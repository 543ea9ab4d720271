/** The order of work of one set: found, drawn step by step, and changed by hand beside it. */
import type { Place } from '../address/address.ts';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useSet } from '../reckoning/use-work.ts';
import { AnswerView } from './answer-view.tsx';
import { OrderHead } from './order-head.tsx';
import { likelyJob, startFor } from './question.ts';
import { useOrder } from './use-order.ts';

type OrderPlace = Extract<Place, { readonly kind: 'order' }>;

export const OrderPage = ({ place }: { readonly place: OrderPlace }) => {
  const tell = useTell();
  const each = useSet(place.set);
  if (each === undefined) {
    return (
      <Notice degree="caution" title={tell('this house has no set {set}', { set: place.set })}>
        <p>
          {tell('Look along the wall, or type a number there. Nothing else is shown in its place.')}
        </p>
      </Notice>
    );
  }
  return <OneOrder each={each} place={place} />;
};

type OneProps = { readonly each: SetReckoning; readonly place: OrderPlace };

const OneOrder = ({ each, place }: OneProps) => {
  const tell = useTell();
  const job = place.job ?? likelyJob(each.set.recorded.state);
  const from = startFor(job, place.from);
  const answer = useOrder({ set: each.id, job, from });
  return (
    <>
      <OrderHead each={each} job={job} from={from} answer={answer} />
      <AnswerView key={`${each.id} ${job} ${from}`} each={each} from={from} answer={answer} />
      <TitleBlock
        drawing={tell('Order of work, set {id}', { id: each.id })}
        scale={tell('heights to one scale, across not')}
      />
    </>
  );
};
