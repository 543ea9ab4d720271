/** Keeps the screen of a post from going dark, where the browser can; else it is said. */
import { useEffect, useState } from 'react';

export type Wake = 'asking' | 'kept' | 'cannot';

/** It is given only while the page is seen, and goes when it is not: it is asked for anew. */
export const useWakeLock = (): Wake => {
  const [wake, setWake] = useState<Wake>('asking');
  useEffect(() => {
    let isWanted = true;
    let lock: WakeLockSentinel | null = null;
    const ask = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (isWanted) lock = given;
        else await given.release();
        setWake('kept');
      } catch {
        // No such thing in this browser or without HTTPS, or the battery is low.
        setWake('cannot');
      }
    };
    void ask();
    const again = (): void => void ask();
    document.addEventListener('visibilitychange', again);
    return () => {
      isWanted = false;
      document.removeEventListener('visibilitychange', again);
      void lock?.release();
    };
  }, []);
  return wake;
};
