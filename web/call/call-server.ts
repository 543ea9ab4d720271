/** What the screens of a call ask of the server. Nothing here decides anything. */

import type { JsonObject } from '../keeping/json.ts';
import { houseFetch } from '../offline/house-fetch.ts';
import type { CallBegin } from './store.ts';

const get = async <T>(path: string): Promise<T | null> => {
  const response = await houseFetch(path, { headers: { accept: 'application/json' } }).catch(
    () => null,
  );
  return response?.ok === true ? ((await response.json().catch(() => null)) as T | null) : null;
};

export const askBegin = (): Promise<CallBegin | null> => get('/api/call');

/** A document as it was when the call was opened on it; null where the server did not give it. */
export const askRevision = async (id: string, revision: number): Promise<JsonObject | null> => {
  const path = `/api/documents/${encodeURIComponent(id)}/revisions/${revision}`;
  return (await get<{ readonly document: JsonObject }>(path))?.document ?? null;
};
