/** Steps from the one on that makes no sense: not drawn, since nobody knows how the set stands. */
import type { SetAssessment } from '#assessment';
import type { CheckedOrder } from '#orders';
import { stepTitle } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { wordsOf } from './moments.ts';

type UnreplayedProps = {
  readonly order: CheckedOrder;
  readonly set: SetAssessment;
  readonly onDrop: (index: number) => void;
  readonly onEarlier: (index: number) => void;
};

export const Unreplayed = ({ order, set, onDrop, onEarlier }: UnreplayedProps) => {
  const tell = useTell();
  const { house } = useWork();
  const { refused, states } = order.verdict;
  const last = states.at(-1);
  if (refused === null || last === undefined) return null;
  const words = wordsOf(order, set, house);
  return (
    <section aria-label={tell('Steps not replayed')} className="unreplayed">
      <p className="caution-word">{tell('Not replayed, so not drawn:')}</p>
      <ol>
        {order.steps.slice(refused.step).map((step, offset) => {
          const index = refused.step + offset;
          const between = { step, number: index + 1, before: last, after: last, proofs: [] };
          const title = stepTitle(between, words);
          return (
            <li key={`${index} ${title}`}>
              <span>
                {index + 1}. {title}
              </span>
              <span className="buttons">
                <button type="button" onClick={() => onDrop(index)}>
                  {tell('Take step {number} out', { number: index + 1 })}
                </button>
                <button type="button" disabled={index === 0} onClick={() => onEarlier(index)}>
                  {tell('Step {number} earlier', { number: index + 1 })}
                </button>
              </span>
            </li>
          );
        })}
      </ol>
    </section>
  );
};
