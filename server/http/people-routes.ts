/** People, their roles and sign-offs; how they come in; programs. */

import type { FastifyInstance } from 'fastify';
import { ROLES, type Role, type Task } from '#events';
import { PROGRAM_ROLES, type ProgramRole, TASKS } from '../auth/index.ts';
import { refuse } from './access-answers.ts';
import type { AppParts } from './app-parts.ts';
import { setSignedIn } from './cookies.ts';
import { whoOf } from './rights.ts';
import { bodyOf, comingOf, LABEL, NAME, paramsOf, SECRET, TOKEN } from './session-routes.ts';

const ROLE = { enum: ROLES } as const;

export const peopleRoutes = (app: FastifyInstance, parts: AppParts): void => {
  comingIn(app, parts);
  invitationRoutes(app, parts);
  personRoutes(app, parts);
  competenceRoutes(app, parts);
  deviceRoutes(app, parts);
  programRoutes(app, parts);
};

type Coming = { readonly name: string; readonly passphrase: string; readonly device?: string };
type Owner = Coming & { readonly code: string };
type Joining = Coming & { readonly token: string };

const COMING = { name: NAME, passphrase: SECRET, device: LABEL } as const;

/** Who comes in gave a passphrase just now, and is signed in by it. */
const comingIn = (app: FastifyInstance, { databases, now }: AppParts): void => {
  const auth = () => databases.auth();

  app.post<{ Body: Owner }>(
    '/api/people/owner',
    { schema: { body: bodyOf({ ...COMING, code: TOKEN }, ['device']) } },
    async (request, reply) => {
      const coming = comingOf(request, request.body.device);
      const made = await auth().makeOwner(request.body, coming.address);
      if (!made.ok) return refuse(reply, made.error);
      const { passphrase } = request.body;
      const done = await auth().signIn({ name: made.value.name, passphrase }, coming);
      if (!done.ok) return refuse(reply, done.error);
      setSignedIn({ request, reply }, done.value, now().getTime());
      return { id: made.value.id, name: made.value.name, role: made.value.role };
    },
  );

  /** By POST, so that the token stands in no address and in no log. */
  app.post<{ Body: { readonly token: string } }>(
    '/api/invitation',
    { schema: { body: bodyOf({ token: TOKEN }) } },
    async (request, reply) => {
      const found = auth().invitationBy(request.body.token);
      if (!found.ok) return refuse(reply, found.error);
      const { name, role, person, expiresAtMs } = found.value;
      return { name, role, isNewPassphrase: person !== null, expiresAtMs };
    },
  );

  app.post<{ Body: Joining }>(
    '/api/invitation/join',
    { schema: { body: bodyOf({ ...COMING, token: TOKEN }, ['device']) } },
    async (request, reply) => {
      const { passphrase } = request.body;
      const joined = await auth().join(request.body);
      if (!joined.ok) return refuse(reply, joined.error);
      const { id, name, role } = joined.value;
      const done = await auth().signIn(
        { name, passphrase },
        comingOf(request, request.body.device),
      );
      if (!done.ok) return refuse(reply, done.error);
      setSignedIn({ request, reply }, done.value, now().getTime());
      return { id, name, role };
    },
  );
};

const invitationRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.get('/api/people/invitations', async () => ({ invitations: auth().invitations() }));

  app.post<{ Body: { readonly name: string; readonly role: Role } }>(
    '/api/people/invitations',
    { schema: { body: bodyOf({ name: NAME, role: ROLE }) } },
    async (request, reply) => {
      const made = auth().invite(whoOf(request), request.body);
      return made.ok ? made.value : refuse(reply, made.error);
    },
  );

  app.delete<{ Params: { invitation: string } }>(
    '/api/people/invitations/:invitation',
    { schema: { params: paramsOf('invitation') } },
    async (request, reply) => {
      const done = auth().withdraw(request.params.invitation);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );
};

const personRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.get('/api/people', async () => ({
    people: auth().people(),
    competences: auth().competences(),
  }));

  app.put<{ Params: { id: string }; Body: { readonly role: Role } }>(
    '/api/people/:id/role',
    { schema: { params: paramsOf('id'), body: bodyOf({ role: ROLE }) } },
    async (request, reply) => {
      const done = auth().changeRole(whoOf(request), request.params.id, request.body.role);
      return done.ok ? done.value : refuse(reply, done.error);
    },
  );

  app.delete<{ Params: { id: string } }>(
    '/api/people/:id',
    { schema: { params: paramsOf('id') } },
    async (request, reply) => {
      const done = auth().removePerson(whoOf(request), request.params.id);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );

  app.post<{ Params: { id: string } }>(
    '/api/people/:id/new-passphrase',
    { schema: { params: paramsOf('id') } },
    async (request, reply) => {
      const made = auth().inviteAnew(whoOf(request), request.params.id);
      return made.ok ? made.value : refuse(reply, made.error);
    },
  );

  app.put<{ Body: { readonly isMine: boolean } }>(
    '/api/people/this-machine',
    { schema: { body: bodyOf({ isMine: { type: 'boolean' } }) } },
    async (request) => {
      auth().setMine(request.body.isMine);
      return { isMine: auth().isMine() };
    },
  );
};

type Given = { readonly task: Task; readonly lastDay?: string };

const competenceRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();
  const day = { type: 'string', maxLength: 10 } as const;

  app.post<{ Params: { id: string }; Body: Given }>(
    '/api/people/:id/competences',
    {
      schema: {
        params: paramsOf('id'),
        body: bodyOf({ task: { enum: TASKS }, lastDay: day }, ['lastDay']),
      },
    },
    async (request, reply) => {
      const { task, lastDay = null } = request.body;
      const person = request.params.id;
      const done = auth().giveCompetence(whoOf(request), { person, task, lastDay });
      return done.ok ? done.value : refuse(reply, done.error);
    },
  );

  app.delete<{ Params: { id: string; competence: string } }>(
    '/api/people/:id/competences/:competence',
    { schema: { params: paramsOf('id', 'competence') } },
    async (request, reply) => {
      const { id: person, competence: id } = request.params;
      const done = auth().revokeCompetence(whoOf(request), { person, id });
      return done.ok ? {} : refuse(reply, done.error);
    },
  );
};

const deviceRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.get<{ Params: { id: string } }>(
    '/api/people/:id/devices',
    { schema: { params: paramsOf('id') } },
    async (request) => ({ devices: auth().sessionsOf(request.params.id) }),
  );

  app.delete<{ Params: { id: string } }>(
    '/api/people/:id/devices',
    { schema: { params: paramsOf('id') } },
    async (request) => ({ ended: auth().signOutAll(whoOf(request), request.params.id) }),
  );

  app.delete<{ Params: { id: string; session: string } }>(
    '/api/people/:id/devices/:session',
    { schema: { params: paramsOf('id', 'session') } },
    async (request, reply) => {
      const { id, session } = request.params;
      const done = auth().signOutDevice(whoOf(request), id, session);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );
};

const programRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  const auth = () => databases.auth();

  app.get('/api/tokens', async () => ({ programs: auth().programs() }));

  app.post<{ Body: { readonly name: string; readonly role: ProgramRole } }>(
    '/api/tokens',
    { schema: { body: bodyOf({ name: NAME, role: { enum: PROGRAM_ROLES } }) } },
    async (request, reply) => {
      const made = auth().addProgram(whoOf(request), request.body);
      return made.ok ? made.value : refuse(reply, made.error);
    },
  );

  app.delete<{ Params: { token: string } }>(
    '/api/tokens/:token',
    { schema: { params: paramsOf('token') } },
    async (request, reply) => {
      const done = auth().revokeProgram(request.params.token);
      return done.ok ? {} : refuse(reply, done.error);
    },
  );
};
