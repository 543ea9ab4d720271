/** A button that is held for a second, its border filling; by finger, by mouse and by key. */
import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useId,
  useRef,
  useState,
} from 'react';
import { useTell } from '../language/use-tell.ts';
import { AGAIN_MS, HOLD_MS, type Hold, type HoldInput, holdStep, IDLE } from './hold.ts';

type HoldButtonProps = {
  readonly onGiven: () => void;
  /** The next action of this post; all else is less. */
  readonly isNext?: boolean;
  readonly isOff?: boolean;
  readonly children: ReactNode;
};

const useHold = (onGiven: () => void) => {
  const [hold, setHold] = useState<Hold>(IDLE);
  const now = useRef<Hold>(IDLE);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const put = (input: HoldInput): void => {
    const [next, isGiven] = holdStep(now.current, input);
    if (next !== now.current) {
      clearTimeout(timer.current);
      if (next.is === 'holding')
        timer.current = setTimeout(() => put({ kind: 'elapsed' }), HOLD_MS);
      if (next.is === 'armed') timer.current = setTimeout(() => put({ kind: 'waited' }), AGAIN_MS);
    }
    now.current = next;
    setHold(next);
    if (isGiven) onGiven();
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  return [hold, put] as const;
};

const isPress = ({ key }: KeyboardEvent): boolean => key === 'Enter' || key === ' ';

/** What a screen reader sends for a press comes from no finger: it has no size and no force. */
const isVirtual = ({ width, height, pressure }: globalThis.PointerEvent): boolean =>
  (width === 0 && height === 0) || (width <= 1 && height <= 1 && pressure === 0);

/** It says at its foot how it is done, since a button that does nothing at a touch is a riddle. */
const useHoldWords = (hold: Hold): string => {
  const tell = useTell();
  if (hold.is === 'armed') return tell('Press once more to say it');
  if (hold.is === 'holding') return tell('Hold …');
  if (hold.is === 'idle' && hold.wasShort) return tell('Too short: hold it for 1 s');
  return '';
};

/** What a hand, a key, a screen reader and a switch do to the button. */
const useHands = (put: (input: HoldInput) => void) => {
  /** Whether a hand is on it that can hold: then a click says nothing by itself. */
  const isByHand = useRef(false);
  const down = (by: 'pointer' | 'key'): void => {
    isByHand.current = true;
    put({ kind: 'down', by });
  };
  const leave = (): void => {
    isByHand.current = false;
    put({ kind: 'left' });
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLButtonElement>): void => {
      if (event.button !== 0 || isVirtual(event.nativeEvent)) return;
      // A finger is followed by the button it began on; sliding off must be seen as leaving it.
      if (event.currentTarget.hasPointerCapture(event.pointerId)) {
        event.currentTarget.releasePointerCapture(event.pointerId);
      }
      down('pointer');
    },
    onPointerUp: (): void => put({ kind: 'up' }),
    onPointerLeave: leave,
    onPointerCancel: leave,
    onBlur: leave,
    onKeyDown: (event: KeyboardEvent): void => {
      if (!isPress(event)) return;
      event.preventDefault();
      if (!event.repeat) down('key');
    },
    onKeyUp: (event: KeyboardEvent): void => {
      if (!isPress(event)) return;
      event.preventDefault();
      put({ kind: 'up' });
      isByHand.current = false;
    },
    onClick: (): void => {
      put({ kind: 'click', isByHand: isByHand.current });
      isByHand.current = false;
    },
  };
};

export const HoldButton = ({ onGiven, isNext, isOff = false, children }: HoldButtonProps) => {
  const tell = useTell();
  const how = useId();
  const [hold, put] = useHold(onGiven);
  const hands = useHands(put);
  const words = useHoldWords(hold);
  return (
    <button
      type="button"
      className={isNext ? 'hold next' : 'hold'}
      data-hold={hold.is}
      disabled={isOff}
      aria-describedby={how}
      onContextMenu={(event) => event.preventDefault()}
      {...hands}
    >
      <svg className="hold-ring" aria-hidden="true">
        <rect pathLength={1} width="100%" height="100%" />
      </svg>
      <span className="hold-says">
        {isNext ? tell('Hold 1 s:') : tell('Hold:')} <b>{children}</b>
      </span>
      <span id={how} className="hold-words" role="status">
        {words}
      </span>
    </button>
  );
};
