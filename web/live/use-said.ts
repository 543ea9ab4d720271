/** Notes and sign-offs of one target or of the house, read anew when something happened. */
import { useEffect, useState } from 'react';
import { askSaid, type SaidHere } from './server.ts';
import { startLive, useLive } from './use-live.ts';

/** Of a burst of events one reading is enough. */
const REST_MS = 300;

/** `failed`: this device could not read them; what it had read stays. */
export const useSaid = (
  target: string | null,
): { readonly said: SaidHere | null; readonly hasFailed: boolean } => {
  const { seq } = useLive();
  const [state, setState] = useState<{ said: SaidHere | null; hasFailed: boolean }>({
    said: null,
    hasFailed: false,
  });
  useEffect(startLive, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each event may be one of these.
  useEffect(() => {
    let isWanted = true;
    const timer = setTimeout(async () => {
      const said = await askSaid(target);
      if (!isWanted) return;
      setState((before) => ({ said: said ?? before.said, hasFailed: said === null }));
    }, REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [target, seq]);
  return state;
};
