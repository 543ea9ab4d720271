/** What the search found, in a frame of its own: nothing on it has been done. */
import { useMemo, useState } from 'react';
import { plateExaggeration } from '#drawings';
import { type CheckedOrder, isAccepted, judgedOrder, type WorkedOrder } from '#orders';
import {
  checkedWords,
  inHouseWords,
  orderCode,
  sayAssumption,
  sayBearing,
  sayPlan,
  sayWhyNoOrder,
} from '#sheets';
import type { Step } from '#state';
import type { OrderStartName } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ByHand } from './by-hand.tsx';
import { asFound, type HandOrder } from './hand-order.ts';
import { type Moment, momentsOf } from './moments.ts';
import { OrderKey } from './order-key.tsx';
import { OrderTable } from './order-table.tsx';
import { PlannedFrame } from './planned-frame.tsx';
import type { OrderAnswer } from './question.ts';
import { Strip } from './strip.tsx';

type ViewProps = {
  readonly each: SetReckoning;
  readonly from: OrderStartName;
  readonly answer: OrderAnswer | null;
};

export const AnswerView = ({ each, from, answer }: ViewProps) => {
  const tell = useTell();
  const { house } = useWork();
  if (answer === null) {
    return (
      <PlannedFrame word="PLANNED" title={tell('Not found yet')}>
        <p className="empty-words">
          {tell('The steps are drawn here as soon as an order is found.')}
        </p>
      </PlannedFrame>
    );
  }
  if ('refusals' in answer) {
    return (
      <div className="order-none">
        <Notice degree="caution" title={tell('no order of work can be asked for')}>
          {sayWhyNoOrder(answer, house).map((words) => (
            <p key={words} className="order-none-words">
              {words.charAt(0).toUpperCase() + words.slice(1)}
            </p>
          ))}
        </Notice>
      </div>
    );
  }
  return <Worked each={each} from={from} worked={answer} />;
};

type WorkedProps = {
  readonly each: SetReckoning;
  readonly from: OrderStartName;
  readonly worked: WorkedOrder;
};

/** The found order and the copy changed by hand, on one scale. */
const useBoth = ({ each, worked }: WorkedProps) => {
  const { house } = useWork();
  const { order, question } = worked;
  const [hand, setHand] = useState<HandOrder | null>(null);
  const found = useMemo(() => momentsOf(order, each.set, house), [order, each.set, house]);
  const steps: readonly Step[] | null = hand?.steps ?? null;
  const mine = useMemo(() => {
    if (steps === null) return null;
    const { job, start, kind } = question;
    const judged = judgedOrder(job, start, steps, kind, order.checked);
    return { order: judged, moments: momentsOf(judged, each.set, house) };
  }, [steps, question, order.checked, each.set, house]);
  const thicker = useMemo(() => {
    const stacks = [...found, ...(mine?.moments ?? [])].map((each_) => each_.drawn.state.standing);
    return plateExaggeration(
      each.set,
      house,
      stacks.map(({ stack }) => stack),
    );
  }, [found, mine, each.set, house]);
  return { found, hand, setHand, mine, thicker };
};

const Worked = (props: WorkedProps) => {
  const tell = useTell();
  const { each, from, worked } = props;
  const { house } = useWork();
  const { order, plan } = worked;
  const { found, hand, setHand, mine, thicker } = useBoth(props);
  const isGood = 'found' in plan && isAccepted(order);
  return (
    <>
      {isGood && order.steps.length > 0 ? null : <WhyNone worked={worked} />}
      <Wanting from={from} worked={worked} />
      <PlannedFrame
        word="PLANNED"
        title={'found' in plan ? tell('Found order') : tell('Where the work would begin')}
        note={
          'found' in plan
            ? tell('Order {orderCode}. ', { orderCode: orderCode(order) }) +
              checkedWords(order, house)
            : null
        }
      >
        <Strip
          name={tell('Steps of the found order')}
          moments={found}
          thicker={thicker}
          isWorked={isGood}
          takesKeys
        />
        <Actions each={each} from={from} worked={worked} moments={found}>
          <button
            type="button"
            aria-expanded={hand !== null}
            onClick={() => setHand(hand === null ? asFound(order.steps) : null)}
          >
            {hand === null
              ? 'found' in plan
                ? tell('Change by hand')
                : tell('Try one by hand')
              : tell('Put the changed one away')}
          </button>
        </Actions>
      </PlannedFrame>
      {hand === null || mine === null ? null : (
        <ByHand
          each={each}
          found={order}
          hand={hand}
          mine={mine}
          thicker={thicker}
          onChange={setHand}
        />
      )}
      <div className="order-foot">
        <Assumed worked={worked} />
        <OrderKey physics={order.physics} thicker={thicker} />
      </div>
    </>
  );
};

/** A sentence with the code of its rule behind it, which is not read first. */
const Coded = ({ words }: { readonly words: string }) => {
  const [code = ''] = / \[[A-Z0-9-]+\]$/.exec(words) ?? [];
  if (code === '') return words;
  return (
    <>
      {words.slice(0, -code.length)}
      <span className="code">{code}</span>
    </>
  );
};

/** Large, since it is what the person came to know. */
const WhyNone = ({ worked }: { readonly worked: WorkedOrder }) => {
  const tell = useTell();
  const { house } = useWork();
  const [first, ...others] = sayWhyNoOrder(worked, house);
  if ('found' in worked.plan && isAccepted(worked.order)) {
    return <p className="order-none order-none-words">{first}</p>;
  }
  const isRefused = 'found' in worked.plan;
  return (
    <div className="order-none">
      <Notice
        degree={isRefused ? 'danger' : 'caution'}
        title={isRefused ? tell('not to be used') : tell('no order of work')}
      >
        <p className="order-none-words">
          <Coded words={first ?? ''} />
        </p>
        {others.map((words) => (
          <p key={words} className="order-none-more">
            {words}
          </p>
        ))}
      </Notice>
    </div>
  );
};

/** What an order that exists still wants before anybody works by it. */
const Wanting = ({ from, worked }: Pick<ViewProps, 'from'> & { readonly worked: WorkedOrder }) => {
  const tell = useTell();
  const { order, plan, question } = worked;
  const { house } = useWork();
  const written = order.assumed.find(({ is }) => is === 'massesAsWritten');
  const weighed = order.assumed.find(({ is }) => is === 'noRestraintIfWeighed');
  const planned = 'found' in plan && plan.found.restraint !== null;
  const [needed, wish] = planned ? sayPlan(plan, house, question.start.standing) : [];
  return (
    <div className="order-cautions">
      {written === undefined || !('found' in plan) ? null : (
        <Notice degree="caution" title={tell('weigh or pull-test first')}>
          <p>{sayAssumption(written, house)}</p>
        </Notice>
      )}
      {needed === undefined ? null : (
        <Notice degree="caution" title={tell('have it ready before the first step')}>
          <p>{needed}</p>
          {weighed === undefined ? null : <p>{sayAssumption(weighed, house)}</p>}
          <p>{wish}</p>
          {order.bearing === null ? null : <p>{sayBearing(order.bearing, house)}</p>}
          {from === 'recorded' ? null : (
            <p>
              <Link to={{ kind: 'sheets', sheet: `permit/${order.set}` }}>
                {tell('Its out-of-balance permit')}
              </Link>
              {tell(', read and signed before it.')}
            </p>
          )}
        </Notice>
      )}
    </div>
  );
};

type ActionsProps = WorkedProps & {
  readonly moments: readonly Moment[];
  readonly children: React.ReactNode;
};

/** The sheet is made for the strike of a set as planned, and from an accepted order alone. */
const Actions = ({ each, from, worked, moments, children }: ActionsProps) => {
  const tell = useTell();
  const { order, plan } = worked;
  const isPrinted = 'found' in plan && isAccepted(order) && order.steps.length > 0;
  const hasSheet = order.job === 'strike' && from === 'planned';
  return (
    <div className="order-actions">
      <div className="buttons">
        {isPrinted && hasSheet ? (
          <Link
            to={{ kind: 'sheets', sheet: `strike-sheet/${each.id}` }}
            className="button primary"
          >
            {tell('Print strike sheet')}
          </Link>
        ) : null}
        {moments.length < 2 ? null : (
          <Link
            to={{ kind: 'house', part: 'section', at: `order:${each.id}:${order.job}:${from}:0` }}
            className="button"
          >
            {tell('Step by step in the section')}
          </Link>
        )}
        {children}
      </div>
      {isPrinted && !hasSheet ? <WhereElse order={order} /> : null}
      {moments.length < 2 ? null : (
        <details>
          <summary>{tell('The order as a table')}</summary>
          <OrderTable name={tell('The found order')} moments={moments} />
        </details>
      )}
    </div>
  );
};

/** A load is printed by gallery, with the other sets; the rest is not printed at all. */
const WhereElse = ({ order: { job, steps } }: { readonly order: CheckedOrder }) => {
  const tell = useTell();
  const { house } = useWork();
  if (job !== 'load') {
    return (
      <p className="quiet">
        {tell('Not printed: a strike sheet is made of a set that hangs as planned.')}
      </p>
    );
  }
  const used = new Set(steps.flatMap((step) => ('gallery' in step ? [step.gallery] : [])));
  return (
    <p className="quiet">
      {tell('Printed with the other sets, gallery by gallery:')}{' '}
      {house.galleries
        .filter(({ id }) => used.has(id))
        .map(({ id, name }, index) => (
          <span key={id}>
            {index === 0 ? '' : ', '}
            <Link to={{ kind: 'sheets', sheet: `loading-sheet/${id}` }}>{name}</Link>
          </span>
        ))}
      .
    </p>
  );
};

const Assumed = ({ worked: { order } }: { readonly worked: WorkedOrder }) => {
  const tell = useTell();
  const { house } = useWork();
  const said = order.assumed.map((each) => sayAssumption(each, house));
  const judged = order.verdict.assumed.map((words) =>
    tell('Assumed: {words}.', { words: inHouseWords(words, house) }),
  );
  return (
    <section aria-labelledby="assumed-head">
      <h2 id="assumed-head">{tell('Taken for granted')}</h2>
      <ul className="plain-list">
        {[...new Set([...said, ...judged])].map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p className="quiet">
        {tell(
          'Not checked: neighbouring and coupled sets, what is in the way, lift lines, batten ' +
            'and beams at each step, the anchors of restraints, speed.',
        )}
      </p>
    </section>
  );
};
