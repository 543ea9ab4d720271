/** The self-checks of this page and of its server, and what of them a component looks at. */
import { createContext, useContext, useEffect, useSyncExternalStore } from 'react';
import { askSelfCheck } from '../keeping/server.ts';
import { type Checks, type Watch, type WatchParts, watchChecks } from './watch.ts';

/** Put in by the build of the screens: the copy of the program that they were made from. */
declare const BUILT_FROM: { readonly version: string; readonly build: string } | undefined;

const NOT_BUILT = { version: 'not built', build: 'not built' };

/** A case takes a few milliseconds; with less than these left the next one waits. */
const ENOUGH_MS = 10;
/** On a page that is never idle a case is run all the same, after so long. */
const PATIENCE_MS = 500;

/** Where there is no idle time to ask for, the next turn is as good, for one case. */
const whenIdle: WatchParts['whenIdle'] = (call) => {
  if ('requestIdleCallback' in window) {
    const slice = (left: IdleDeadline): void => call(() => left.timeRemaining() > ENOUGH_MS);
    window.requestIdleCallback(slice, { timeout: PATIENCE_MS });
  } else setTimeout(() => call(() => false), 0);
};

/** Version and build of these screens. */
export const builtFrom = (): typeof NOT_BUILT =>
  typeof BUILT_FROM === 'undefined' ? NOT_BUILT : BUILT_FROM;

const watch: Watch = watchChecks({
  installation: {
    ...builtFrom(),
    platform: navigator.userAgent,
  },
  // The cases are 40 kB, and nobody waits for them before the first screen stands.
  steps: async () => {
    await new Promise<void>((resolve) => whenIdle(() => resolve()));
    return (await import('#selfcheck')).selfCheckSteps();
  },
  askServer: askSelfCheck,
  whenIdle,
  later: (call, milliseconds) => void setTimeout(call, milliseconds),
  now: () => new Date(),
});

const ChecksContext = createContext(watch);

export const useChecks = (): Checks => {
  const { subscribe, checks } = useContext(ChecksContext);
  return useSyncExternalStore(subscribe, checks);
};

/** Begins both once the first screen stands. */
export const useSelfChecks = (): void => {
  const { start } = useContext(ChecksContext);
  useEffect(() => start(), [start]);
};
