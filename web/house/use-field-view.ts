/** Nearer, farther and along, by wheel, fingers and keys, over a drawing of the house. */
import {
  type KeyboardEvent,
  type PointerEvent,
  type RefObject,
  useEffect,
  useRef,
  useState,
} from 'react';
import {
  type FieldPlace,
  type FieldScale,
  type FieldSize,
  type FieldView,
  fitted,
  panned,
  zoomed,
} from '#drawings';

type ViewInHand = {
  readonly view: FieldView;
  readonly isWhole: boolean;
  readonly show: (view: FieldView | null) => void;
};

/** A quarter of what is shown, at one press of an arrow. */
const STEP_SHARE = 0.25;
const NEARER = 1.25;
/** From the whole house, so many times nearer; a batten is then as thick as a hand. */
const NEAREST = 40;
/** The seats are some way off. */
const FARTHEST = 6;

/** The view that somebody chose, or the whole where nobody has. */
export const useView = (whole: FieldView, field: FieldSize): ViewInHand => {
  const [chosen, setChosen] = useState<FieldView | null>(null);
  const wide = fitted(whole, field);
  const show = (next: FieldView | null): void => {
    const share = next === null ? 0 : (next.right - next.left) / (wide.right - wide.left);
    // Farther than the whole is empty paper.
    if (next === null || share > FARTHEST) setChosen(null);
    else if (share >= 1 / NEAREST) setChosen(next);
  };
  return { view: chosen === null ? wide : fitted(chosen, field), isWhole: chosen === null, show };
};

const middleOf = ({ left, right, bottom, top }: FieldView): FieldPlace => ({
  along: (left + right) / 2,
  up: (bottom + top) / 2,
});

/** What a key does to the view; undefined where it does nothing, null for the whole. */
export const viewByKey = (view: FieldView, key: string): FieldView | null | undefined => {
  const along = (view.right - view.left) * STEP_SHARE;
  const up = (view.top - view.bottom) * STEP_SHARE;
  switch (key) {
    case 'ArrowLeft':
      return panned(view, { along: -along, up: 0 });
    case 'ArrowRight':
      return panned(view, { along, up: 0 });
    case 'ArrowUp':
      return panned(view, { along: 0, up });
    case 'ArrowDown':
      return panned(view, { along: 0, up: -up });
    case '+':
    case '=':
      return zoomed(view, NEARER, middleOf(view));
    case '-':
      return zoomed(view, 1 / NEARER, middleOf(view));
    case '0':
      return null;
    default:
      return undefined;
  }
};

export const nearer = (view: FieldView): FieldView => zoomed(view, NEARER, middleOf(view));
export const farther = (view: FieldView): FieldView => zoomed(view, 1 / NEARER, middleOf(view));

type Spot = { readonly x: number; readonly y: number };

const spotIn = (element: Element, { clientX, clientY }: { clientX: number; clientY: number }) => {
  const box = element.getBoundingClientRect();
  return { x: clientX - box.left, y: clientY - box.top };
};

/** The place of the house under a spot of the paper. */
const placeAt = (view: FieldView, scale: FieldScale, { x, y }: Spot): FieldPlace => ({
  along: view.left + (x - scale.xOf(view.left)) / scale.perMetre,
  up: view.top - (y - scale.yOf(view.top)) / scale.perMetre,
});

/** A hand that moved less meant to touch, not to drag, px. */
const TOUCH_PX = 6;

type Now = Pick<ViewInHand, 'view' | 'show'> & { readonly scale: FieldScale };

/** The page scrolls under a wheel until a hand has taken the drawing. */
const useWheel = (ref: RefObject<HTMLElement | null>, now: RefObject<Now>): void => {
  useEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const onWheel = (event: WheelEvent): void => {
      const isTaken = element === document.activeElement || event.ctrlKey || event.metaKey;
      if (!isTaken) return;
      event.preventDefault();
      const { view: seen, scale: by, show: put } = now.current;
      put(zoomed(seen, Math.exp(-event.deltaY / 400), placeAt(seen, by, spotIn(element, event))));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [ref, now]);
};

export const useHands = (
  ref: RefObject<HTMLElement | null>,
  { view, show }: Pick<ViewInHand, 'view' | 'show'>,
  scale: FieldScale,
  onTouch: (at: FieldPlace) => void,
) => {
  const fingers = useRef(new Map<number, Spot>());
  const dragged = useRef(0);
  const now = useRef<Now>({ view, scale, show });
  useEffect(() => {
    now.current = { view, scale, show };
  });
  useWheel(ref, now);
  const moved = (id: number, to: Spot): void => {
    const before = fingers.current.get(id);
    if (before === undefined) return;
    const other = [...fingers.current].find(([finger]) => finger !== id)?.[1];
    fingers.current.set(id, to);
    dragged.current += Math.hypot(to.x - before.x, to.y - before.y);
    if (other !== undefined) {
      const apart = (one: Spot): number =>
        Math.max(1, Math.hypot(one.x - other.x, one.y - other.y));
      show(zoomed(view, apart(to) / apart(before), placeAt(view, scale, other)));
    } else if (dragged.current >= TOUCH_PX) {
      const along = (before.x - to.x) / scale.perMetre;
      show(panned(view, { along, up: (to.y - before.y) / scale.perMetre }));
    }
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0) return;
      if (fingers.current.size === 0) dragged.current = 0;
      fingers.current.set(event.pointerId, spotIn(event.currentTarget, event));
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void =>
      moved(event.pointerId, spotIn(event.currentTarget, event)),
    onPointerUp: (event: PointerEvent<HTMLElement>): void => {
      const isTouch = fingers.current.size === 1 && dragged.current < TOUCH_PX;
      const isOurs = fingers.current.delete(event.pointerId);
      if (isOurs && isTouch) onTouch(placeAt(view, scale, spotIn(event.currentTarget, event)));
    },
    onPointerCancel: (event: PointerEvent<HTMLElement>): void => {
      fingers.current.delete(event.pointerId);
    },
    onKeyDown: (event: KeyboardEvent<HTMLElement>): void => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const next = viewByKey(view, event.key);
      if (next === undefined) return;
      event.preventDefault();
      show(next);
    },
  };
};
