/**
 * How the page asks its server: with the build it is of, and an ear for the build that answers.
 * Part of the first view, so it holds no more than that.
 */

export type BuildNews = {
  /** What the server gives out now, as far as this page has heard. */
  readonly newest: string | null;
  /** The server has refused something because this page is too old for it. */
  readonly isRefused: boolean;
};

const HEADER = 'counterpoise-build';
const OLD_BUILD = '/problems/old-build';

/** The name that the build wrote into the page; null while the screens are worked on. */
export const ownBuild = (): string | null =>
  document.querySelector<HTMLMetaElement>(`meta[name=${HEADER}]`)?.content ?? null;

let news: BuildNews = { newest: null, isRefused: false };
/** What the server's clock is ahead of this device's, in ms. */
let aheadMs = 0;
const listeners = new Set<() => void>();

const settle = (next: BuildNews): void => {
  if (next.newest === news.newest && next.isRefused === news.isRefused) return;
  news = next;
  for (const listener of listeners) listener();
};

export const buildNews = (): BuildNews => news;

export const onBuildNews = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Now, by the clock of the server where it has been heard, and by that of the device. */
export const momentNow = (): { readonly serverMs: number; readonly deviceMs: number } => {
  const deviceMs = Date.now();
  return { deviceMs, serverMs: deviceMs + aheadMs };
};

/** Whether an answer says that this page is too old; the page then says so as well. */
export const isOldBuild = (body: { readonly type?: string } | null): boolean => {
  const isOld = body?.type === OLD_BUILD;
  if (isOld) settle({ ...news, isRefused: true });
  return isOld;
};

/** The stream says it too, and comes without a header that a page could read. */
export const heardBuild = (newest: string | null): void => {
  if (newest !== null) settle({ ...news, newest });
};

const hear = ({ headers }: Response): void => {
  const date = Date.parse(headers.get('date') ?? '');
  if (!Number.isNaN(date)) aheadMs = date - Date.now();
  heardBuild(headers.get(HEADER));
};

/** `fetch`, of our own server. */
export const houseFetch = async (path: string, init: RequestInit = {}): Promise<Response> => {
  const build = ownBuild();
  const headers = new Headers(init.headers);
  if (build !== null) headers.set(HEADER, build);
  const response = await fetch(path, { ...init, headers });
  hear(response);
  return response;
};
