/**
 * What a worker hears, as far as ours listen: the types of the browser's page, which these screens
 * are checked with, do not know of workers that answer requests.
 */
export type Lasting = Event & { readonly waitUntil: (end: Promise<unknown>) => void };

export type Asking = Lasting & {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
};

export type PageOfWorker = {
  readonly url: string;
  readonly postMessage: (message: unknown, ports: readonly MessagePort[]) => void;
  readonly navigate: (url: string) => Promise<unknown>;
};

export type WorkerScope = {
  readonly addEventListener: {
    (kind: 'install' | 'activate', call: (event: Lasting) => void): void;
    (kind: 'fetch', call: (event: Asking) => void): void;
  };
  readonly location: { readonly origin: string };
  readonly skipWaiting: () => Promise<void>;
  readonly registration: { readonly unregister: () => Promise<boolean> };
  readonly clients: {
    readonly matchAll: (which: { readonly type: 'window' }) => Promise<readonly PageOfWorker[]>;
  };
};
