/**
 * The moments of an order one after the other. A step that is chosen opens whole beneath its own
 * row, so that neither hides the other.
 */
import {
  Fragment,
  type KeyboardEvent,
  type ReactNode,
  type RefObject,
  useCallback,
  useEffect,
  useEffectEvent,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { useWidth } from '../drawing/use-width.ts';
import { momentFor } from './keys.ts';
import { MomentCard } from './moment-card.tsx';
import type { Moment } from './moments.ts';
import { OpenStep } from './open-step.tsx';

type StripProps = {
  readonly name: string;
  readonly moments: readonly Moment[];
  readonly thicker: number;
  /** Whether a crew may work by it: only then is it said how. */
  readonly isWorked: boolean;
  /** Whether the arrows reach it while nothing else wants them. */
  readonly takesKeys?: boolean;
  /** Which moment is open, where somebody else has to know. */
  readonly open?: number | null;
  readonly onOpen?: (number: number | null) => void;
  /** Buttons and boxes for the step that is open. */
  readonly children?: (moment: Moment) => ReactNode;
};

const cardIn = (list: HTMLOListElement | null, number: number): HTMLElement | null =>
  list?.querySelector<HTMLElement>(`:scope > [data-moment="${number}"]`) ?? null;

/** The last card in the row of the open one; found again whenever the width changes. */
const useRowEnd = (open: number | null, count: number) => {
  const [list, width] = useWidth<HTMLOListElement>();
  const [rowEnd, setRowEnd] = useState<number | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another width makes other rows
  useLayoutEffect(() => {
    const top = open === null ? undefined : cardIn(list.current, open)?.offsetTop;
    if (open === null || top === undefined) {
      setRowEnd(null);
      return;
    }
    let end = open;
    while (end + 1 < count && cardIn(list.current, end + 1)?.offsetTop === top) end += 1;
    setRowEnd(end);
  }, [open, count, width]);
  return { list, rowEnd };
};

const isPlainKey = ({ ctrlKey, metaKey, altKey }: KeyboardEvent | globalThis.KeyboardEvent) =>
  !ctrlKey && !metaKey && !altKey;

type KeysAsked = {
  readonly list: RefObject<HTMLOListElement | null>;
  readonly open: number | null;
  readonly count: number;
  readonly takesKeys: boolean;
  readonly setOpen: (number: number | null) => void;
};

/** Keys on a card, and on the page while nothing else wants them; the hand follows the card. */
const useStripKeys = ({ list, open, count, takesKeys, setOpen }: KeysAsked) => {
  const goTo = (number: number | null): void => {
    setOpen(number);
    const at = number ?? open;
    if (at === null) return;
    cardIn(list.current, at)?.querySelector<HTMLElement>('.card-name')?.focus();
  };
  const press = (event: KeyboardEvent): void => {
    const { target } = event;
    const isCard = target instanceof HTMLElement && target.matches('.card-name');
    if (!isPlainKey(event) || !isCard) return;
    const here = Number(target.closest('[data-moment]')?.getAttribute('data-moment'));
    const next = momentFor(event.key, event.key === 'Escape' ? open : here, count);
    if (next === undefined) return;
    event.preventDefault();
    goTo(next);
  };
  const pressOnPage = useEffectEvent((event: globalThis.KeyboardEvent): void => {
    if (event.target !== document.body || !isPlainKey(event)) return;
    const next = momentFor(event.key, open, count);
    if (next === undefined) return;
    event.preventDefault();
    goTo(next);
  });
  useEffect(() => {
    if (!takesKeys) return undefined;
    const listen = (event: globalThis.KeyboardEvent): void => pressOnPage(event);
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [takesKeys]);
  return press;
};

export const Strip = (props: StripProps) => {
  const { name, moments, thicker, isWorked, takesKeys = false, onOpen, children } = props;
  const id = useId();
  const [own, setOwn] = useState<number | null>(null);
  const wanted = props.open === undefined ? own : props.open;
  const open = wanted === null ? null : Math.min(wanted, moments.length - 1);
  const setOpen = onOpen ?? setOwn;
  const { list, rowEnd } = useRowEnd(open, moments.length);
  const press = useStripKeys({ list, open, count: moments.length, takesKeys, setOpen });
  const openNow = useRef(open);
  useEffect(() => {
    openNow.current = open;
  });
  // The same function for every card and every time, so that a card that is not new stays drawn.
  const pick = useCallback(
    (number: number) => setOpen(number === openNow.current ? null : number),
    [setOpen],
  );
  const shown = open === null ? undefined : moments[open];
  return (
    <ol className="strip-of-steps" aria-label={name} ref={list} onKeyDown={press}>
      {moments.map((moment) => (
        <Fragment key={moment.number}>
          <MomentCard
            moment={moment}
            thicker={thicker}
            isOpen={moment.number === open}
            isEntry={moment.number === (open ?? 0)}
            panel={`${id}-open`}
            onPick={pick}
          />
          {moment.number !== rowEnd || shown === undefined ? null : (
            <li className="opened-step" id={`${id}-open`}>
              <OpenStep moment={shown} thicker={thicker} isWorked={isWorked}>
                {children?.(shown)}
              </OpenStep>
            </li>
          )}
        </Fragment>
      ))}
    </ol>
  );
};
