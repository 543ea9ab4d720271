/** The one keeper of this page, and what of it a component looks at. */
import { createContext, useContext, useEffect, useSyncExternalStore } from 'react';
import { momentNow } from '../offline/house-fetch.ts';
import { laterCopies } from '../offline/later-copies.ts';
import { draftBox } from './draft.ts';
import { Keeper } from './keeper.ts';
import type { KeeperState } from './kept.ts';
import { nameOnDevice } from './name-on-device.ts';
import { server } from './server.ts';

export const keeper = new Keeper({
  server,
  drafts: draftBox(sessionStorage),
  copies: laterCopies,
  savedBy: nameOnDevice,
  moment: momentNow,
  later: (call, milliseconds) => {
    const timer = setTimeout(call, milliseconds);
    return () => clearTimeout(timer);
  },
});

export const KeeperContext = createContext(keeper);

export const useKeeper = (): Keeper => useContext(KeeperContext);

export const useKeeperState = (): KeeperState => {
  const { subscribe, state } = useKeeper();
  return useSyncExternalStore(subscribe, state);
};

/** Opens the documents, and looks again when the page comes back to the front or to the network. */
export const useKeeping = (): void => {
  useEffect(() => {
    const back = (): void => {
      if (document.visibilityState === 'visible') void keeper.refresh();
    };
    const online = (): void => keeper.flush(false);
    const leaving = (): void => keeper.flush(true);
    document.addEventListener('visibilitychange', back);
    window.addEventListener('online', online);
    window.addEventListener('pagehide', leaving);
    void keeper.open();
    return () => {
      document.removeEventListener('visibilitychange', back);
      window.removeEventListener('online', online);
      window.removeEventListener('pagehide', leaving);
    };
  }, []);
};
