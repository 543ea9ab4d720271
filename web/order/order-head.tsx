/** Which set, what is to be done with it and from where, and the whole order in one sentence. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { isAccepted, type WorkKind } from '#orders';
import { orderCells, orderSummary, sayPlan } from '#sheets';
import { phrase } from '#texts';
import type { OrderStartName } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { nameOfItem, sizeWords } from './moments.ts';
import { type OrderAnswer, STARTS } from './question.ts';

type HeadProps = {
  readonly each: SetReckoning;
  readonly job: WorkKind;
  readonly from: OrderStartName;
  readonly answer: OrderAnswer | null;
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const jobWords = (house: House): readonly (readonly [WorkKind, string])[] => [
  ['load', phrase(house, 'Hang it')],
  ['strike', capital(tradeWord(house, 'strike'))],
  ['change', phrase(house, 'From the record to the plan')],
];

const startWords = (house: House): Readonly<Record<OrderStartName, string>> => ({
  bare: phrase(house, 'bare on the low stop'),
  planned: phrase(house, 'as planned, at its highest trim'),
  recorded: phrase(house, 'as recorded'),
});

export const OrderHead = ({ each, job, from, answer }: HeadProps) => {
  const tell = useTell();
  const { house } = useWork();
  const words = startWords(house);
  return (
    <div className="order-head">
      <div className="order-title">
        <h1>
          <span className="only-said">{tell('Order of work, set')} </span>
          <span className="order-number">{each.id}</span>
          <span className="only-said">: </span>
          {each.set.hang?.name ?? tell('empty')}
        </h1>
        <nav aria-label={tell('Job')} className="order-choice">
          {jobWords(house).map(([kind, name]) => (
            <Link
              key={kind}
              to={{ kind: 'order', set: each.id, job: kind, from: null }}
              isHere={kind === job}
            >
              {name}
            </Link>
          ))}
        </nav>
        {STARTS[job].length < 2 ? (
          <p className="order-start">{tell('from: {start}', { start: words[from] })}</p>
        ) : (
          <nav aria-label={tell('From')} className="order-start">
            <span aria-hidden="true">{tell('from:')}</span>
            {STARTS[job].map((start) => (
              <Link
                key={start}
                to={{ kind: 'order', set: each.id, job, from: start }}
                isHere={start === from}
              >
                {words[start]}
              </Link>
            ))}
          </nav>
        )}
      </div>
      <Summary each={each} answer={answer} />
    </div>
  );
};

/** How many steps, what the judge says, the most that it could set free, what was searched. */
const Summary = ({ each, answer }: Pick<HeadProps, 'each' | 'answer'>) => {
  const tell = useTell();
  const { house } = useWork();
  if (answer === null) {
    return (
      <p className="order-sum" role="status">
        {tell('Searching for an order that holds at every moment … Leaving this screen stops it.')}
      </p>
    );
  }
  if ('refusals' in answer) return null;
  const { plan, order, question } = answer;
  // Why there is none stands large beneath.
  const isWorked = 'found' in plan && isAccepted(order) && order.steps.length > 0;
  if (!isWorked) return null;
  const named = { house, nameOf: nameOfItem(each.set) };
  const judged = orderSummary(order, orderCells(order, named), house);
  const searched = sayPlan(plan, house, question.start.standing).at(-1) ?? '';
  return (
    <p className="order-sum">
      <b>{capital(sizeWords(order, house))}.</b> {judged}
      <small>{searched}</small>
    </p>
  );
};
