/** The server's answers, as far as the screens ask. Nothing here decides anything. */
import type { Refusal } from '#outcome';
import type { SelfCheckRecord } from '#selfcheck';
import { message, type Names } from '#texts';
import { houseFetch, isOldBuild } from '../offline/house-fetch.ts';
import { askSession } from '../people/session.ts';
import type { JsonObject } from './json.ts';

export type DocumentKind = 'house' | 'show' | 'state';
export type DatabaseName = 'demo' | 'house';

export type Summary = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly why: string;
  readonly remark: string;
};

export type Stored = Summary & { readonly document: JsonObject };

export type Sent = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly expectedRevision: number;
  readonly document: JsonObject;
  readonly savedBy: string;
  readonly why: string;
  /** Absent where a person wrote none. */
  readonly remark?: string;
};

/** What became of a save. `unreached` is no answer at all: the edits stay on this device. */
export type SaveAnswer =
  | { readonly outcome: 'saved'; readonly summary: Summary }
  | { readonly outcome: 'stale'; readonly current: Summary | null }
  | { readonly outcome: 'refused'; readonly refusals: readonly Refusal[]; readonly title: string }
  | { readonly outcome: 'unreached' };

export type Databases = {
  readonly inHand: DatabaseName;
  readonly hasHouse: boolean;
  /** Whose documents they are; absent where the answer is about the change alone. */
  readonly houseKey?: string;
};

export type NewHouse = {
  readonly name: string;
  readonly units: 'customary' | 'metric';
  readonly words: 'US' | 'UK';
  readonly operatingSide: 'stageRight' | 'stageLeft';
};

export type Server = {
  readonly databases: () => Promise<Databases>;
  readonly documents: () => Promise<readonly Stored[]>;
  readonly document: (id: string) => Promise<Stored>;
  readonly save: (sent: Sent, options?: { readonly leaving: boolean }) => Promise<SaveAnswer>;
  readonly take: (database: DatabaseName, house?: NewHouse) => Promise<Databases>;
};

export class ServerFault extends Error {
  readonly status: number | null;
  constructor(status: number | null, title: string) {
    super(title);
    this.status = status;
  }
}

const NOT_SIGNED_IN = message('Nobody is signed in on this device any more: sign in again.');
const NOT_BY_ROLE = message('Your role does not save this.');
const UNREACHED = message('The server was not reached.');
const ANSWERED = message('The server answered {status}.');

const answered = (status: number): string => ANSWERED.replace('{status}', `${status}`);

/** What to say of a fault: a sentence of ours with its names, or `{title}`, which is another's. */
export const faultText = (fault: unknown): { readonly text: string; readonly names: Names } => {
  const title = fault instanceof Error ? fault.message : String(fault);
  const status = fault instanceof ServerFault ? fault.status : null;
  if (status !== null && title === answered(status)) return { text: ANSWERED, names: { status } };
  return title === UNREACHED
    ? { text: UNREACHED, names: {} }
    : { text: '{title}', names: { title } };
};

const ask = async <T>(path: string, init?: RequestInit): Promise<T> => {
  const response = await houseFetch(path, init).catch(() => null);
  if (response === null) throw new ServerFault(null, UNREACHED);
  if (!response.ok) throw new ServerFault(response.status, await titleOf(response));
  return (await response.json()) as T;
};

const titleOf = async (response: Response): Promise<string> => {
  const body = (await response.json().catch(() => null)) as {
    readonly title?: string;
    readonly type?: string;
  } | null;
  isOldBuild(body);
  return body?.title ?? answered(response.status);
};

const withBody = (method: string, body: unknown): RequestInit => ({
  method,
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body),
});

const documentAt = (id: string): string => `/api/documents/${encodeURIComponent(id)}`;

const save: Server['save'] = async ({ id, ...sent }, { leaving } = { leaving: false }) => {
  const init = { ...withBody('PUT', sent), ...(leaving ? { keepalive: true } : {}) };
  const response = await houseFetch(documentAt(id), init).catch(() => null);
  if (response === null || response.status >= 500) return { outcome: 'unreached' };
  if (response.ok) return { outcome: 'saved', summary: (await response.json()) as Summary };
  const body = (await response.json().catch(() => ({}))) as {
    readonly title?: string;
    readonly refusals?: readonly Refusal[];
    readonly current?: Summary | null;
    readonly type?: string;
  };
  if (!isOldBuild(body) && response.status === 409)
    return { outcome: 'stale', current: body.current ?? null };
  if (response.status === 401) {
    // The strip says so too, and is the way to sign in.
    void askSession();
    return { outcome: 'refused', refusals: [], title: NOT_SIGNED_IN };
  }
  if (body.refusals?.[0]?.code === 'ACC-002') {
    return { outcome: 'refused', refusals: [], title: NOT_BY_ROLE };
  }
  return {
    outcome: 'refused',
    refusals: body.refusals ?? [],
    title: body.title ?? answered(response.status),
  };
};

export const server: Server = {
  databases: () => ask<Databases>('/api/database'),
  documents: async () => {
    const { documents } = await ask<{ readonly documents: readonly Summary[] }>('/api/documents');
    return Promise.all(documents.map(({ id }) => ask<Stored>(documentAt(id))));
  },
  document: (id) => ask<Stored>(documentAt(id)),
  save,
  take: (database, house) =>
    ask<Databases>('/api/database', withBody('POST', { database, ...house })),
};

/** A document that was set aside; its history is whole. */
export type Aside = Summary & {
  readonly name: string;
  readonly asideAt: string;
  readonly asideBy: string;
  readonly asideWhy: string;
};

export const askRevisions = async (id: string): Promise<readonly Summary[]> =>
  (await ask<{ readonly revisions: readonly Summary[] }>(`${documentAt(id)}/revisions`)).revisions;

export const askRevision = (id: string, revision: number): Promise<Stored> =>
  ask(`${documentAt(id)}/revisions/${revision}`);

export const askAside = async (): Promise<readonly Aside[]> =>
  (await ask<{ readonly documents: readonly Aside[] }>('/api/documents-aside')).documents;

export type Shelving = { readonly aside: boolean; readonly by: string; readonly why: string };

/** Sets a document aside or takes it back; what stood against it, or nothing. */
export const shelve = async (id: string, shelving: Shelving): Promise<readonly Refusal[]> => {
  const path = `${documentAt(id)}/aside`;
  const response = await houseFetch(path, withBody('POST', shelving)).catch(() => null);
  if (response === null) throw new ServerFault(null, UNREACHED);
  if (response.ok) return [];
  const body = (await response.json().catch(() => ({}))) as {
    readonly title?: string;
    readonly type?: string;
    readonly refusals?: readonly Refusal[];
  };
  isOldBuild(body);
  if (body.refusals !== undefined) return body.refusals;
  throw new ServerFault(response.status, body.title ?? answered(response.status));
};

export const askSelfCheck = (): Promise<SelfCheckRecord> => ask('/api/self-check');
