/** What the judge says of the order changed by hand, beside the found one. */
import type { SetAssessment } from '#assessment';
import { type CheckedOrder, isAccepted } from '#orders';
import type { OrdersBeside } from '#sheets';
import { told } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { BrokenRule } from './open-step.tsx';

type VerdictProps = {
  readonly beside: OrdersBeside;
  readonly order: CheckedOrder;
  readonly isChanged: boolean;
  readonly set: SetAssessment;
};

/** The first broken rule by name, and the two orders in a sentence each. */
export const Verdict = ({ beside, order, isChanged, set }: VerdictProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { broken, refused } = order.verdict;
  return (
    <div className="verdict">
      <div role="status" className="verdict-first">
        {!isChanged ? (
          <p>
            {tell(
              'Nothing is changed yet. Open a step to take it out, move it, or put one after it.',
            )}
          </p>
        ) : broken !== null ? (
          <>
            <p className="verdict-where">
              {broken.step < 0
                ? tell('Broken before the first step')
                : tell('Broken at step {step}', { step: broken.step + 1 })}
            </p>
            <BrokenRule breach={broken} bricks={order.physics.bricks} set={set} />
          </>
        ) : refused !== null ? (
          <Notice
            degree="caution"
            title={tell('step {step} cannot be replayed', { step: refused.step + 1 })}
          >
            <p>
              {tell('Found {found}. Accepted: {accepted}.', {
                found: told(voice, refused.refusal.found),
                accepted: told(voice, refused.refusal.accepted),
              })}
            </p>
          </Notice>
        ) : isAccepted(order) ? (
          <p>
            <b>{tell('The judge finds nothing broken.')}</b>{' '}
            {tell('It is still only a question: sheets are made of the found order.')}
          </p>
        ) : null}
      </div>
      <dl className="beside-orders">
        <div>
          <dt>{tell('found')}</dt>
          <dd>{beside.left}</dd>
        </div>
        <div className={broken === null ? undefined : 'broken'}>
          <dt>{tell('by hand')}</dt>
          <dd>{beside.right}</dd>
        </div>
      </dl>
    </div>
  );
};
