/** What the worker does with a request: a screen must start without the server, and no more. */

export type Asked = {
  readonly method: string;
  readonly url: string;
  /** Whether a person goes to an address, rather than a page fetching a part of itself. */
  readonly isPage: boolean;
  /** `https://house.example` */
  readonly own: string;
};

export type Way =
  /** As if there were no worker: the server answers, or nobody does. */
  | 'server'
  /** The server's page, and the kept one where the server is not reached. */
  | 'page'
  /** The same for a file that keeps its name when it changes. */
  | 'newest'
  /** From what is kept, whose name changes with its content; else the server. */
  | 'kept';

export const wayOf = ({ method, url, isPage, own }: Asked): Way => {
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== own) return 'server';
  // Nothing that the server says of documents, people or events is ever answered from here.
  if (pathname === '/api' || pathname.startsWith('/api/') || pathname === '/sw.js') return 'server';
  if (isPage) return 'page';
  return pathname.startsWith('/assets/') ? 'kept' : 'newest';
};

const OURS = 'counterpoise-build-';

/** Where a build keeps its files. */
export const keptAs = (build: string): string => `${OURS}${build}`;

/** Of all that this origin keeps, what other builds have kept; what is not ours stays. */
export const keptByOthers = (names: readonly string[], build: string): readonly string[] =>
  names.filter((name) => name.startsWith(OURS) && name !== keptAs(build));
