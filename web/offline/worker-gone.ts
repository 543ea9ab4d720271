/**
 * Takes the worker off a device again: the server gives this in its place when it is set to. It
 * clears what was kept, ends itself, and loads open pages anew, but for those that say they hold
 * edits which are not saved. Here alone a worker takes over at once: the one before may be broken.
 */
import { MAY_I_LOAD } from './leaving.ts';
import type { PageOfWorker, WorkerScope } from './worker-events.ts';
import { keptByOthers } from './worker-rules.ts';

const scope = self as unknown as WorkerScope;

/** A page that is well answers in an instant; one that is broken has nothing to lose. */
const PATIENCE_MS = 1000;

const holdsEdits = (page: PageOfWorker): Promise<boolean> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data === true);
    setTimeout(() => resolve(false), PATIENCE_MS);
    page.postMessage(MAY_I_LOAD, [port2]);
  });

const anew = async (page: PageOfWorker): Promise<void> => {
  if (!(await holdsEdits(page))) await page.navigate(page.url);
};

const leave = async (): Promise<void> => {
  const names = keptByOthers(await caches.keys(), '');
  await Promise.all(names.map((name) => caches.delete(name)));
  await scope.registration.unregister();
  // Where nothing was kept nothing is stale, and a page is not loaded round and round.
  if (names.length === 0) return;
  const pages = await scope.clients.matchAll({ type: 'window' });
  await Promise.all(pages.map(anew));
};

scope.addEventListener('install', (event) => event.waitUntil(scope.skipWaiting()));
scope.addEventListener('activate', (event) => event.waitUntil(leave()));
