/**
 * Asks the browser to keep these screens, so that they start without the server. Where it cannot,
 * as on plain HTTP from another machine, everything else works as before.
 */
import type { KeeperState } from '../keeping/kept.ts';
import { MAY_I_LOAD } from './leaving.ts';

const HOUR_MS = 3_600_000;
const WORKER = '/sw.js';

export type OfflineParts = { readonly state: () => KeeperState };

/** Whether edits are on this page that the server does not have. */
const isUnsaved = (state: KeeperState): boolean =>
  state.phase === 'open' && Object.values(state.documents).some(({ save }) => save.is !== 'saved');

/** A page at the rail is opened once and stands for weeks: it must ask by itself. */
const lookForNewer = (registration: ServiceWorkerRegistration): void => {
  const look = (): void => void registration.update().catch(() => undefined);
  setInterval(look, HOUR_MS);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') look();
  });
};

/** What a browser does not clear when it is short of room, or unused for a week. */
const askToKeep = (): void => {
  if (!matchMedia('(display-mode: standalone)').matches || !('storage' in navigator)) return;
  void navigator.storage.persist().catch(() => false);
};

export const startOffline = async ({ state }: OfflineParts): Promise<void> => {
  if (!('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  serviceWorker.addEventListener('message', ({ data, ports }) => {
    if (data === MAY_I_LOAD) ports[0]?.postMessage(isUnsaved(state()));
  });
  askToKeep();
  // A browser that is told to keep nothing refuses, or answers with nothing.
  const registration = await serviceWorker
    .register(WORKER, { updateViaCache: 'none' })
    .catch(() => undefined);
  if (registration !== undefined) lookForNewer(registration);
};
