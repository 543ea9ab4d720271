/** Whether there is room for three columns beside each other: a tablet at the rail, a monitor. */
import { useCallback, useMemo, useSyncExternalStore } from 'react';

const WIDTHS = { three: '(min-width: 900px)', wall: '(min-width: 1200px)' } as const;

/** `three`: drawing, words and who is where side by side; `wall`: the sets beside it as well. */
export const useWide = (what: keyof typeof WIDTHS): boolean => {
  const list = useMemo(() => window.matchMedia(WIDTHS[what]), [what]);
  const subscribe = useCallback(
    (listener: () => void): (() => void) => {
      list.addEventListener('change', listener);
      return () => list.removeEventListener('change', listener);
    },
    [list],
  );
  return useSyncExternalStore(subscribe, () => list.matches);
};
