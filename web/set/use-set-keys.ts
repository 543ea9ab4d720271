import { useEffect } from 'react';
import { go } from '../address/use-address.ts';

/** Left and right lead to the sets beside this one, while nothing else wants the keys. */
export const useSetKeys = (order: readonly string[], here: string): void => {
  const key = order.join('\n');
  useEffect(() => {
    const ids = key.split('\n');
    const press = (event: KeyboardEvent): void => {
      if (event.target !== document.body || event.ctrlKey || event.metaKey || event.altKey) return;
      const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
      const next = step === undefined ? undefined : ids[ids.indexOf(here) + step];
      if (next === undefined) return;
      event.preventDefault();
      go({ kind: 'set', set: next }, { replace: true });
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [key, here]);
};
