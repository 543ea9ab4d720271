/**
 * Every route and the right it needs. What is not named here is shut, and a test walks the routes
 * of the real program and compares. `HEAD` goes with `GET`.
 */
import type { Duty } from '../auth/index.ts';

/** `signedIn` is a person, whatever their role; `anyone` needs no name at all. */
export type Need = 'anyone' | 'signedIn' | Duty;

export type RouteRight = {
  readonly method: 'GET' | 'POST' | 'PUT' | 'DELETE';
  readonly url: string;
  readonly needs: Need;
  /** Asks for passphrase or PIN again where they were not given lately: it lets others in. */
  readonly isFresh?: true;
  /** What the body asks for beyond the need of the route. */
  readonly alsoFor?: (body: unknown) => Duty | null;
};

/** How the sets stand is recorded by those who run them, not by those who plan. */
const ofDocument = (body: unknown): Duty | null =>
  typeof body === 'object' && body !== null && 'kind' in body && body.kind === 'state'
    ? 'run'
    : null;

export const RIGHTS: readonly RouteRight[] = [
  // The program itself, which is the same for everybody, and what says how it is.
  { method: 'GET', url: '/*', needs: 'anyone' },
  { method: 'GET', url: '/sw.js', needs: 'anyone' },
  { method: 'GET', url: '/api/health', needs: 'anyone' },
  { method: 'GET', url: '/api/openapi.json', needs: 'anyone' },
  { method: 'GET', url: '/trust', needs: 'anyone' },
  { method: 'GET', url: '/trust/check.js', needs: 'anyone' },
  { method: 'GET', url: '/trust/counterpoise-authority.crt', needs: 'anyone' },

  { method: 'GET', url: '/api/database', needs: 'look' },
  { method: 'POST', url: '/api/database', needs: 'own' },
  { method: 'GET', url: '/api/documents', needs: 'look' },
  { method: 'GET', url: '/api/documents-aside', needs: 'look' },
  { method: 'GET', url: '/api/documents/:id', needs: 'look' },
  { method: 'PUT', url: '/api/documents/:id', needs: 'plan', alsoFor: ofDocument },
  { method: 'POST', url: '/api/documents/:id/aside', needs: 'plan' },
  { method: 'GET', url: '/api/documents/:id/revisions', needs: 'look' },
  { method: 'GET', url: '/api/documents/:id/revisions/:revision', needs: 'look' },
  { method: 'GET', url: '/api/events', needs: 'look' },
  // What a command of its kind needs beyond a note is judged with the command.
  { method: 'POST', url: '/api/commands', needs: 'note' },
  { method: 'GET', url: '/api/commands/:commandId', needs: 'look' },
  { method: 'POST', url: '/api/commands/:commandId/give-up', needs: 'note' },
  { method: 'GET', url: '/api/said', needs: 'look' },
  // Who is signed off, at which post and on which device, is looked at there.
  { method: 'GET', url: '/api/call', needs: 'look' },
  { method: 'POST', url: '/api/call', needs: 'run' },
  { method: 'DELETE', url: '/api/call', needs: 'run' },
  { method: 'POST', url: '/api/call/codes', needs: 'run' },
  { method: 'POST', url: '/api/call/join', needs: 'note' },
  { method: 'GET', url: '/api/self-check', needs: 'look' },
  { method: 'GET', url: '/api/self-check.pdf', needs: 'look' },
  { method: 'GET', url: '/api/sheet-code', needs: 'look' },
  { method: 'GET', url: '/api/sheet.csv', needs: 'look' },
  { method: 'GET', url: '/api/sheet.pdf', needs: 'look' },
  { method: 'GET', url: '/api/sheets', needs: 'look' },

  // Ways in: each is limited in how often it may be tried.
  { method: 'GET', url: '/api/session', needs: 'anyone' },
  { method: 'POST', url: '/api/session', needs: 'anyone' },
  { method: 'POST', url: '/api/session/by-pin', needs: 'anyone' },
  { method: 'POST', url: '/api/people/owner', needs: 'anyone' },
  { method: 'POST', url: '/api/invitation', needs: 'anyone' },
  { method: 'POST', url: '/api/invitation/join', needs: 'anyone' },

  // What a person does about themselves.
  { method: 'DELETE', url: '/api/session', needs: 'anyone' },
  { method: 'POST', url: '/api/session/proof', needs: 'signedIn' },
  { method: 'PUT', url: '/api/session/pin', needs: 'signedIn', isFresh: true },
  { method: 'DELETE', url: '/api/session/pin', needs: 'signedIn' },
  { method: 'PUT', url: '/api/session/passphrase', needs: 'signedIn' },
  { method: 'GET', url: '/api/session/devices', needs: 'signedIn' },
  { method: 'DELETE', url: '/api/session/devices', needs: 'signedIn' },
  { method: 'DELETE', url: '/api/session/devices/:session', needs: 'signedIn' },

  { method: 'GET', url: '/api/people', needs: 'look' },
  // Who is above the task is looked at there; an owner is above all.
  { method: 'POST', url: '/api/people/:id/competences', needs: 'note' },
  { method: 'DELETE', url: '/api/people/:id/competences/:competence', needs: 'note' },
  { method: 'PUT', url: '/api/people/:id/role', needs: 'own', isFresh: true },
  // Taking a right away asks for nothing again: it is to be done at once.
  { method: 'DELETE', url: '/api/people/:id', needs: 'own' },
  { method: 'GET', url: '/api/people/:id/devices', needs: 'own' },
  { method: 'DELETE', url: '/api/people/:id/devices', needs: 'own' },
  { method: 'DELETE', url: '/api/people/:id/devices/:session', needs: 'own' },
  { method: 'POST', url: '/api/people/:id/new-passphrase', needs: 'own', isFresh: true },
  { method: 'GET', url: '/api/people/invitations', needs: 'own' },
  { method: 'POST', url: '/api/people/invitations', needs: 'own', isFresh: true },
  { method: 'DELETE', url: '/api/people/invitations/:invitation', needs: 'own' },
  { method: 'PUT', url: '/api/people/this-machine', needs: 'own', isFresh: true },
  { method: 'GET', url: '/api/tokens', needs: 'own' },
  { method: 'POST', url: '/api/tokens', needs: 'own', isFresh: true },
  { method: 'DELETE', url: '/api/tokens/:token', needs: 'own' },
];
