/**
 * Lets the screens start where the server is not reached. It keeps all files of one build, and
 * answers from them; what the server knows it never answers. A newer worker waits until no page of
 * the older one is open, so that no open page loses the parts that it has not loaded yet: it takes
 * over neither pages nor requests by itself.
 */
import type { WorkerScope } from './worker-events.ts';
import { keptAs, keptByOthers, wayOf } from './worker-rules.ts';

/** Written in by the build. */
declare const THIS_BUILD: { readonly build: string; readonly files: readonly string[] };

const scope = self as unknown as WorkerScope;
const { build, files } = THIS_BUILD;
const PAGE = '/index.html';

/** On a weak network a person waits so long for the newer before the kept one is taken, in ms. */
const PATIENCE = { page: 3000, newest: 1000 };

/** Files whose name tells their content are taken over from the build before. */
const fetched = async (path: string): Promise<Response> => {
  const own = path.startsWith('/assets/') ? await caches.match(path) : undefined;
  const response = own ?? (await fetch(path, { cache: 'reload' }));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response;
};

const keepAll = async (): Promise<void> => {
  const kept = await caches.open(keptAs(build));
  const paths = files.map((file) => `/${file}`).filter((path) => path !== PAGE);
  for (const path of paths) await kept.put(path, await fetched(path));
  // The page comes last: where it is kept, all that it needs is.
  await kept.put(PAGE, await fetched(PAGE));
};

/** A page opens with the newest build that is kept whole. */
const keptPage = async (): Promise<Response | undefined> => {
  for (const name of (await caches.keys()).toReversed()) {
    const page = await (await caches.open(name)).match(PAGE);
    if (page !== undefined) return page;
  }
  return undefined;
};

const fromServer = (request: Request): Promise<Response | null> =>
  fetch(request).then(
    (response) => (response.status >= 500 ? null : response),
    () => null,
  );

const after = (milliseconds: number): Promise<null> =>
  new Promise((resolve) => setTimeout(() => resolve(null), milliseconds));

/** What the server has, and what is kept where it is not reached, or not soon. */
const newest = async (request: Request, way: keyof typeof PATIENCE): Promise<Response> => {
  const server = fromServer(request);
  const answer = await Promise.race([server, after(PATIENCE[way])]);
  if (answer !== null) return answer;
  const kept = await (way === 'page' ? keptPage() : caches.match(request));
  return kept ?? (await server) ?? Response.error();
};

scope.addEventListener('install', (event) => event.waitUntil(keepAll()));

scope.addEventListener('activate', (event) => {
  const clear = async (): Promise<void> => {
    const others = keptByOthers(await caches.keys(), build);
    await Promise.all(others.map((name) => caches.delete(name)));
  };
  event.waitUntil(clear());
});

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { method, url, mode } = request;
  const way = wayOf({ method, url, isPage: mode === 'navigate', own: scope.location.origin });
  if (way === 'server') return;
  if (way !== 'kept') event.respondWith(newest(request, way));
  else event.respondWith(caches.match(request).then((kept) => kept ?? fetch(request)));
});
