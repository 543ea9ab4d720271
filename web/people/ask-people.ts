/** What the screens of people ask of the server, and what stood against it. */
import type { Role, Task } from '#events';
import { ServerFault } from '../keeping/server.ts';
import { houseFetch } from '../offline/house-fetch.ts';

export type Someone = { readonly id: string; readonly name: string; readonly role: Role };

export type Competence = {
  readonly id: string;
  readonly person: string;
  readonly task: Task;
  readonly signedBy: string | null;
  readonly signedAtMs: number;
  readonly lapsesAtMs: number | null;
};

export type People = {
  readonly people: readonly Someone[];
  readonly competences: readonly Competence[];
};

export type Invitation = {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly person: string | null;
  readonly expiresAtMs: number;
};

export type Made = { readonly invitation: Invitation; readonly token: string };

export type Offered = {
  readonly name: string;
  readonly role: Role;
  readonly isNewPassphrase: boolean;
};

export type Device = {
  readonly id: string;
  readonly label: string;
  readonly beganAtMs: number;
  readonly seenAtMs: number;
};

export type Program = {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly expiresAtMs: number;
  readonly usedAtMs: number | null;
};

/** A refusal by its code; the words are those of the screens. */
export type Against = {
  readonly code: string | null;
  readonly accepted: string;
  /** Seconds until the next attempt is taken, where that helps. */
  readonly waitSeconds: number | null;
};

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly against: Against };

type Problem = {
  readonly refusals?: readonly { readonly code: string; readonly accepted: string }[];
};

type Method = 'GET' | 'POST' | 'PUT' | 'DELETE';

export const askPeople = async <T>(
  method: Method,
  path: string,
  body?: unknown,
): Promise<Answer<T>> => {
  const init =
    body === undefined
      ? { method }
      : {
          method,
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(body),
        };
  const response = await houseFetch(path, init).catch(() => null);
  if (response === null) throw new ServerFault(null, 'The server was not reached.');
  const read = (await response.json().catch(() => ({}))) as T & Problem;
  if (response.ok) return { ok: true, value: read };
  const [refusal] = read.refusals ?? [];
  const wait = Number(response.headers.get('retry-after') ?? '');
  return {
    ok: false,
    against: {
      code: refusal?.code ?? null,
      accepted: refusal?.accepted ?? '',
      waitSeconds: wait > 0 ? wait : null,
    },
  };
};

/** How this device is named in the lists, as far as its browser says what it is. */
export const deviceLabel = (): string =>
  ['iPad', 'iPhone', 'Android', 'Windows', 'Macintosh', 'Linux'].find((each) =>
    navigator.userAgent.includes(each),
  ) ?? '';
