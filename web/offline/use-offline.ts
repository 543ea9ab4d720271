/** Begins once the documents stand on the screen and the browser has time. */
import { useEffect } from 'react';
import { useKeeper } from '../keeping/use-keeper.ts';
import { ownBuild } from './house-fetch.ts';
import { whenIdle } from './when-idle.ts';

export const useOffline = (isOpen: boolean): void => {
  const { state } = useKeeper();
  useEffect(() => {
    // While the screens are worked on, nothing is kept: it would be yesterday's.
    if (!isOpen || ownBuild() === null) return;
    // Where even that is not to be had, the page works as before and starts with the server.
    whenIdle(
      () => void import('./start.ts').then((it) => it.startOffline({ state })).catch(() => null),
    );
  }, [state, isOpen]);
};
