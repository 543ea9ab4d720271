/** The way to the list of keys: a button to look for, and a question mark. */
import { lazy, memo, Suspense, useEffect, useRef, useState } from 'react';
import { useAddress } from '../address/use-address.ts';
import { useTell } from '../language/use-tell.ts';
import { isTyping } from './is-typing.ts';

const KeyDialog = lazy(async () => ({
  default: (await import('./key-dialog.tsx')).KeyDialog,
}));

export const KeyCard = memo(() => {
  const tell = useTell();
  const { place } = useAddress();
  const [isOpen, setOpen] = useState(false);
  const before = useRef<Element | null>(null);
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isTyping(event.target)) return;
      event.preventDefault();
      event.stopPropagation();
      before.current = document.activeElement;
      setOpen(true);
    };
    // Before a cell of the hang list hears it, where any letter begins to type.
    window.addEventListener('keydown', press, true);
    return () => window.removeEventListener('keydown', press, true);
  }, []);
  const close = (): void => {
    setOpen(false);
    if (before.current instanceof HTMLElement) before.current.focus();
  };
  return (
    <>
      <button
        type="button"
        className="keys-button"
        onClick={({ currentTarget }) => {
          before.current = currentTarget;
          setOpen(true);
        }}
      >
        {tell('Keys')}
      </button>
      {isOpen ? (
        <Suspense fallback={null}>
          <KeyDialog screen={place.kind} onClose={close} />
        </Suspense>
      ) : null}
    </>
  );
});
KeyCard.displayName = 'KeyCard';
