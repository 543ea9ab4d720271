/** The copy that a person changes: judged at every change, laid beside the found one. */
import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { type CheckedOrder, isAccepted } from '#orders';
import { ordersBeside } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { BesideTable } from './beside-table.tsx';
import { EditStep } from './edit-step.tsx';
import {
  backTo,
  differsFrom,
  type HandOrder,
  undone,
  withoutStep,
  withStep,
  withStepMoved,
} from './hand-order.ts';
import { type Moment, nameOfItem } from './moments.ts';
import { PlannedFrame } from './planned-frame.tsx';
import { Strip } from './strip.tsx';
import { Unreplayed } from './unreplayed.tsx';
import { Verdict } from './verdict.tsx';

type Judged = { readonly order: CheckedOrder; readonly moments: readonly Moment[] };

type HandProps = {
  readonly each: SetReckoning;
  readonly found: CheckedOrder;
  readonly hand: HandOrder;
  readonly mine: Judged;
  readonly thicker: number;
  readonly onChange: (next: HandOrder) => void;
};

/** Its own undo, while the keys are pressed inside it; the documents keep theirs. */
const useOwnUndo = (onUndo: () => void) => {
  const box = useRef<HTMLDivElement>(null);
  const undo = useEffectEvent(onUndo);
  useEffect(() => {
    const within = box.current;
    if (within === null) return undefined;
    // It appears beneath what is on the screen, because somebody asked for it.
    within.focus();
    const press = (event: KeyboardEvent): void => {
      const isField = event.target instanceof HTMLInputElement;
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || isField) return;
      event.preventDefault();
      event.stopPropagation();
      undo();
    };
    within.addEventListener('keydown', press);
    return () => within.removeEventListener('keydown', press);
  }, []);
  return box;
};

/** Which step is open, and where the hand is after a change. */
const useHand = (hand: HandOrder, onChange: HandProps['onChange']) => {
  const [open, setOpen] = useState<number | null>(null);
  const box = useOwnUndo(() => change(undone(hand)));
  const isChanging = useRef<boolean>(false);
  const change = (next: HandOrder, show: number | null = open): void => {
    isChanging.current = true;
    onChange(next);
    setOpen(show);
  };
  // The button that was pressed may be gone with its step: the hand stays in the order.
  // biome-ignore lint/correctness/useExhaustiveDependencies: after each change, whatever it was
  useEffect(() => {
    if (!isChanging.current) return;
    isChanging.current = false;
    const name = box.current?.querySelector<HTMLElement>('.moment.open .card-name');
    (name ?? box.current)?.focus();
  }, [hand, open]);
  return { open, setOpen, box, change };
};

export const ByHand = ({ each, found, hand, mine, thicker, onChange }: HandProps) => {
  const tell = useTell();
  const { house } = useWork();
  const { open, setOpen, box, change } = useHand(hand, onChange);
  const { order, moments } = mine;
  const beside = ordersBeside(found, order, { house, nameOf: nameOfItem(each.set) });
  return (
    <div ref={box} tabIndex={-1} className="by-hand">
      <PlannedFrame word="WHAT IF" title={tell('Changed by hand')}>
        <Verdict
          beside={beside}
          order={order}
          isChanged={differsFrom(hand, found.steps)}
          set={each.set}
        />
        <TakeBack hand={hand} found={found} onChange={change} />
        <Strip
          name={tell('Steps of the order changed by hand')}
          moments={moments}
          thicker={thicker}
          isWorked={isAccepted(order)}
          open={open}
          onOpen={setOpen}
        >
          {(moment) => (
            <EditStep
              key={`${moment.number} of ${hand.past.length}`}
              moment={moment}
              order={order}
              onDrop={() => change(withoutStep(hand, moment.number - 1))}
              onMove={(by) =>
                change(withStepMoved(hand, moment.number - 1, by), moment.number + by)
              }
              onInsert={(step) => change(withStep(hand, moment.number, step), moment.number + 1)}
            />
          )}
        </Strip>
        <Unreplayed
          order={order}
          set={each.set}
          onDrop={(index) => change(withoutStep(hand, index))}
          onEarlier={(index) => change(withStepMoved(hand, index, -1))}
        />
        <details>
          <summary>{tell('Both orders as a table')}</summary>
          <BesideTable beside={beside} />
        </details>
      </PlannedFrame>
    </div>
  );
};

type BackProps = Pick<HandProps, 'hand' | 'found'> & {
  readonly onChange: (next: HandOrder, show?: number | null) => void;
};

const TakeBack = ({ hand, found, onChange }: BackProps) => {
  const tell = useTell();
  return (
    <div className="buttons">
      <button
        type="button"
        disabled={hand.past.length === 0}
        onClick={() => onChange(undone(hand))}
      >
        {tell('Undo the last change')}
      </button>
      <button
        type="button"
        disabled={!differsFrom(hand, found.steps)}
        onClick={() => onChange(backTo(hand, found.steps), null)}
      >
        {tell('Back to the found order')}
      </button>
    </div>
  );
};
