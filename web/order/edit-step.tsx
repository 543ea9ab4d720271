/** What may be done with the step that is open: out, earlier, later, another one after it. */
import { useState } from 'react';
import type { CheckedOrder } from '#orders';
import type { Step } from '#state';
import { useTell } from '../language/use-tell.ts';
import { InsertStep } from './insert-step.tsx';
import type { Moment } from './moments.ts';

type EditProps = {
  readonly moment: Moment;
  readonly order: CheckedOrder;
  readonly onDrop: () => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onInsert: (step: Step) => void;
};

export const EditStep = ({ moment, order, onDrop, onMove, onInsert }: EditProps) => {
  const tell = useTell();
  const [isInserting, setInserting] = useState(false);
  const { number, drawn } = moment;
  return (
    <div className="edit-step">
      <div className="buttons">
        {number === 0 ? null : (
          <>
            <button type="button" onClick={onDrop}>
              {tell('Take this step out')}
            </button>
            <button type="button" disabled={number === 1} onClick={() => onMove(-1)}>
              {tell('Earlier')}
            </button>
            <button
              type="button"
              disabled={number === order.steps.length}
              onClick={() => onMove(1)}
            >
              {tell('Later')}
            </button>
          </>
        )}
        <button
          type="button"
          aria-expanded={isInserting}
          onClick={() => setInserting(!isInserting)}
        >
          {number === 0 ? tell('Put a step first') : tell('Put a step after it')}
        </button>
      </div>
      {isInserting ? (
        <InsertStep drawn={drawn} onInsert={onInsert} onLeave={() => setInserting(false)} />
      ) : null}
    </div>
  );
};
