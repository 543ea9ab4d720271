/** Signing in, staying signed in, and signing out. */
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { mayDo, type Secret } from '../auth/index.ts';
import { refuse } from './access-answers.ts';
import type { AppParts } from './app-parts.ts';
import { cookieOf, dropSession, setSession, setSignedIn } from './cookies.ts';
import { personOf, whoOf } from './rights.ts';

export const NAME = { type: 'string', minLength: 1, maxLength: 80, pattern: '\\S' } as const;
/** Longer than any that is kept, so that the rule about them is said by the rule itself. */
export const SECRET = { type: 'string', minLength: 1, maxLength: 1000 } as const;
export const TOKEN = { type: 'string', minLength: 1, maxLength: 100 } as const;
const ID = { type: 'string', minLength: 1, maxLength: 64 } as const;
/** What a person calls the device: rail, loading gallery, my phone. */
export const LABEL = { type: 'string', maxLength: 60 } as const;

export const bodyOf = <P extends Readonly<Record<string, object>>>(
  properties: P,
  optional: readonly (keyof P)[] = [],
) =>
  ({
    type: 'object',
    required: Object.keys(properties).filter((name) => !optional.includes(name)),
    additionalProperties: false,
    properties,
  }) as const;

export const paramsOf = (...names: readonly string[]) =>
  ({
    type: 'object',
    required: names,
    properties: Object.fromEntries(names.map((name) => [name, ID])),
  }) as const;

/** What the device shows of itself with a sign-in. */
export const comingOf = (request: FastifyRequest, label: string | undefined) => ({
  address: request.socket.remoteAddress ?? 'unknown',
  deviceToken: cookieOf(request, 'device'),
  oldSession: cookieOf(request, 'session'),
  label: (label ?? '').trim(),
});

export const sessionRoutes = (app: FastifyInstance, parts: AppParts): void => {
  waysIn(app, parts);
  ownSecrets(app, parts);
  ownDevices(app, parts);
};

type ByName = { readonly name: string; readonly passphrase: string; readonly device?: string };
type ByPin = { readonly person: string; readonly pin: string };

const waysIn = (app: FastifyInstance, { databases, now }: AppParts): void => {
  const auth = () => databases.auth();

  app.get('/api/session', async (request) => {
    const who = whoOf(request);
    const hasOwner = auth().hasOwner();
    const code = who.kind === 'thisMachine' ? auth().ownerCode() : null;
    return {
      kind: who.kind,
      ...(who.kind === 'person' || who.kind === 'program'
        ? { id: who.id, name: who.name, role: who.role }
        : {}),
      hasOwner,
      // Shown where the machine is, to who has it; anywhere else it is read in the terminal.
      ...(code === null ? {} : { ownerCode: code }),
      ...(mayDo(who, 'own') ? { isMine: auth().isMine() } : {}),
      byPin: auth().peopleByPin(cookieOf(request, 'device')),
    };
  });

  app.post<{ Body: ByName }>(
    '/api/session',
    {
      schema: {
        body: bodyOf({ name: NAME, passphrase: SECRET, device: LABEL }, ['device']),
      },
    },
    async (request, reply) => {
      const { device, ...given } = request.body;
      const done = await auth().signIn(given, comingOf(request, device));
      if (!done.ok) return refuse(reply, done.error);
      setSignedIn({ request, reply }, done.value, now().getTime());
      const { id, name, role } = done.value.person;
      return { id, name, role };
    },
  );

  app.post<{ Body: ByPin }>(
    '/api/session/by-pin',
    { schema: { body: bodyOf({ person: ID, pin: SECRET }) } },
    async (request, reply) => {
      const done = await auth().signInByPin(request.body, comingOf(request, undefined));
      if (!done.ok) return refuse(reply, done.error);
      setSignedIn({ request, reply }, done.value, now().getTime());
      const { id, name, role } = done.value.person;
      return { id, name, role };
    },
  );

  app.delete('/api/session', async (request, reply) => {
    const token = cookieOf(request, 'session');
    if (token !== null) auth().signOut(token);
    dropSession({ request, reply });
    return {};
  });
};

const ownSecrets = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.post<{ Body: { readonly passphrase?: string; readonly pin?: string } }>(
    '/api/session/proof',
    {
      schema: {
        body: {
          ...bodyOf({ passphrase: SECRET, pin: SECRET }, ['passphrase', 'pin']),
          minProperties: 1,
          maxProperties: 1,
        },
      },
    },
    async (request, reply) => {
      const { passphrase, pin = '' } = request.body;
      const secret: Secret = passphrase === undefined ? { pin } : { passphrase };
      const { address } = comingOf(request, undefined);
      const done = await auth().prove(personOf(request), secret, address);
      if (!done.ok) return refuse(reply, done.error);
      setSession({ request, reply }, done.value);
      return {};
    },
  );

  app.put<{ Body: { readonly pin: string } }>(
    '/api/session/pin',
    { schema: { body: bodyOf({ pin: SECRET }) } },
    async (request, reply) => {
      const done = await auth().setPin(personOf(request), request.body.pin);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );

  app.delete('/api/session/pin', async (request, reply) => {
    const done = auth().dropPin(personOf(request));
    return done.ok ? {} : refuse(reply, done.error);
  });

  app.put<{ Body: { readonly now: string; readonly next: string } }>(
    '/api/session/passphrase',
    { schema: { body: bodyOf({ now: SECRET, next: SECRET }) } },
    async (request, reply) => {
      const { address } = comingOf(request, undefined);
      const done = await auth().changePassphrase(personOf(request), request.body, address);
      if (!done.ok) return refuse(reply, done.error);
      setSession({ request, reply }, done.value);
      return {};
    },
  );
};

const ownDevices = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.get('/api/session/devices', async (request) => {
    const { id, session } = personOf(request);
    return { devices: auth().sessionsOf(id), own: session };
  });

  /** All but this one. */
  app.delete('/api/session/devices', async (request) => {
    const person = personOf(request);
    return { ended: auth().signOutAll(person, person.id) };
  });

  app.delete<{ Params: { session: string } }>(
    '/api/session/devices/:session',
    { schema: { params: paramsOf('session') } },
    async (request, reply) => {
      const person = personOf(request);
      const done = auth().signOutDevice(person, person.id, request.params.session);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );
};
