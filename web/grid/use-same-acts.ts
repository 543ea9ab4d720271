import { useEffect, useMemo, useRef } from 'react';

type Acts = Readonly<Record<string, (...given: never[]) => unknown>>;

/**
 * Acts that are the same values from one drawing to the next, while what they do follows the
 * newest: what is handed nothing else need not be drawn again.
 */
export const useSameActs = <T extends Acts>(acts: T): T => {
  const newest = useRef<Acts>(acts);
  useEffect(() => {
    newest.current = acts;
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the names of the acts never change
  return useMemo(() => {
    const same = (name: string) => [name, (...given: never[]) => newest.current[name]?.(...given)];
    return Object.fromEntries(Object.keys(acts).map(same)) as T;
  }, []);
};
