/**
 * A call with the crew: opened and closed by who leads it, joined by a short code for a post. What
 * is done in it comes as commands; what the server adds to the record here is who is where.
 */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type CallDocuments, NOTHING_OPEN, openDesk, openingOf } from '#call';
import { readState } from '#documents';
import type { CallNow, HouseState } from '#state';
import { inTransaction } from '../log/index.ts';
import { refuse } from './access-answers.ts';
import { type CallParts, headFlyIn, noCall, notForThem, notSignedOff } from './call-answers.ts';
import { type CallIds, currentOf, documentsOfCall, readCallDocuments } from './call-documents.ts';
import { joiningRoutes } from './call-joining.ts';
import { CALL_DEVICE, hasPart, recordOf, sayIn } from './call-parts.ts';
import { textAfterCall } from './call-state.ts';
import { problem, refusal } from './problems.ts';
import { handOf, nameFor, whoOf } from './rights.ts';
import { bodyOf, NAME } from './session-routes.ts';

const DOCUMENT = { type: 'string', minLength: 1, maxLength: 80 } as const;
const WORDS = { type: 'string', maxLength: 400 } as const;

export const callRoutes = (app: FastifyInstance, parts: CallParts): void => {
  app.get('/api/call', async () => callNow(parts));
  openRoute(app, parts);
  closeRoute(app, parts);
  joiningRoutes(app, parts);
};

/** The call, and from where in the record a device folds it. */
const callNow = ({ room }: CallParts) => {
  const { call, seq } = room.now();
  return { call, from: call?.seq ?? null, head: seq };
};

type Open = {
  readonly house: string;
  readonly show: string;
  readonly state: string | null;
  readonly device: string;
  readonly name: string;
};

const OPEN_BODY = bodyOf({
  house: DOCUMENT,
  show: DOCUMENT,
  state: { ...DOCUMENT, type: ['string', 'null'] },
  device: CALL_DEVICE,
  name: NAME,
});

/** Both ways that an id is written: as in the store, and as in the document itself. */
const inStore = (kind: string, id: string): string =>
  id.startsWith(`${kind}:`) ? id : `${kind}:${id}`;

const idsOf = ({ house, show, state }: Open): CallIds => ({
  house: inStore('house', house),
  show: inStore('show', show),
  state: state === null ? null : inStore('state', state),
});

const openRoute = (app: FastifyInstance, parts: CallParts): void => {
  const { room, databases, now } = parts;
  app.post<{ Body: Open }>('/api/call', { schema: { body: OPEN_BODY } }, async (request, reply) => {
    const who = whoOf(request);
    if (!hasPart(who, databases.auth().hasOwner())) return notForThem(reply, who);
    const open = room.now().call;
    if (open !== null) {
      const found = `a call on ${open.show}, opened ${new Date(open.openedMs).toISOString()}`;
      return problem(reply, 409, 'A call is open already.', {
        current: open,
        refusals: [refusal('callIsOpen', { found, accepted: 'close it first' })],
      });
    }
    const unsigned = notSignedOff(reply, parts, who, 'headFly');
    if (unsigned !== null) return unsigned;
    const current = currentOf(databases.store(), idsOf(request.body));
    if (!current.ok) return problem(reply, 404, `No such document in use: ${current.error}.`);
    const read = readCallDocuments(current.value.texts, now().toISOString());
    if (!read.ok) {
      const title = 'The documents do not fit together; no call was opened.';
      return problem(reply, 422, title, { refusals: read.error });
    }
    const { device, name } = request.body;
    const desk = openDesk(read.value);
    const nowMs = now().getTime();
    const call = randomUUID();
    const opened = {
      ...{ call, isDrill: false, house: read.value.house.id, show: read.value.show.id },
      documents: current.value.found.map(({ id, revision }) => ({ id, revision })),
      ...openingOf(read.value, nowMs),
    };
    const taken = { call, post: 'headFly', name: nameFor(request) ?? name, answeredBy: null };
    const seat = { call, post: 'headFly', client: device, answersBy: null };
    const say = (): void =>
      sayIn(
        recordOf(databases),
        [
          { kind: 'call opened', target: 'house', payload: opened },
          { kind: 'post taken', target: 'house', payload: taken },
        ],
        { who, nowMs, device },
        // From nothing: how the rules judge each set is said with the opening.
        (event) => (event.kind === 'call opened' ? desk.follow(NOTHING_OPEN, event) : []),
      );
    const done = databases.auth().takeSeat(who, seat, { code: null, say });
    return done.ok ? callNow(parts) : refuse(reply, done.error);
  });
};

const closeRoute = (app: FastifyInstance, parts: CallParts): void => {
  const { room, databases } = parts;
  app.delete<{ Body: { readonly words: string } }>(
    '/api/call',
    { schema: { body: bodyOf({ words: WORDS }) } },
    async (request, reply) => {
      const who = whoOf(request);
      if (!hasPart(who, databases.auth().hasOwner())) return notForThem(reply, who);
      const { call } = room.now();
      if (call === null) return noCall(reply);
      const unsigned = notSignedOff(reply, parts, who, 'headFly');
      return unsigned ?? closed(request, reply, { parts, call, words: request.body.words });
    },
  );
};

type Closing = { readonly parts: CallParts; readonly call: CallNow; readonly words: string };

/** How the sets stand and that the call is over: in one act, so that there is never one alone. */
const closed = (
  request: FastifyRequest,
  reply: FastifyReply,
  { parts, call, words }: Closing,
): FastifyReply | ReturnType<typeof callNow> => {
  const { databases, room, now } = parts;
  const store = databases.store();
  const documents = documentsOfCall(store, call);
  if (documents === null) return problem(reply, 409, 'The documents of the call cannot be read.');
  const nowMs = Math.max(now().getTime(), databases.log().head().atMs);
  const who = whoOf(request);
  const by = nameFor(request) ?? headFlyIn(room.now())?.name ?? 'this machine';
  const id = `state:${call.house}`;
  const state = stateBefore(store.current(id)?.text ?? null, documents);
  const closing = { by, atMs: nowMs, nameOf: nameIn(parts) };
  const text = textAfterCall({ ...documents, state }, room.now(), closing);
  inTransaction(databases.record().database, () => {
    const saved = store.save({
      ...{ id, kind: 'state', text, savedBy: by, why: 'call closed', remark: '' },
      expectedRevision: store.current(id)?.revision ?? 0,
      savedAt: new Date(nowMs).toISOString(),
      ...handOf(request),
    });
    if (!saved.ok) throw new Error('defect: the newest revision is not the newest');
    const payload = { call: call.id, words };
    const device = who.kind === 'person' ? who.device : 'this-machine';
    sayIn(recordOf(databases), [{ kind: 'call closed', target: 'house', payload }], {
      ...{ who, nowMs, device },
    });
  });
  return callNow(parts);
};

/**
 * What the call adds to: remarks and reserved bricks of the newest record stay, also where the call
 * was opened as if nothing was known. Of one that cannot be read nothing is taken over.
 */
const stateBefore = (text: string | null, { house, show, state }: CallDocuments): HouseState => {
  const read = text === null ? null : readState(text, house, show);
  return read?.ok === true ? read.value.state : state;
};

const nameIn = ({ databases }: CallParts): ((by: string) => string) => {
  const names = new Map(
    databases
      .auth()
      .people()
      .map(({ id, name }) => [id, name]),
  );
  return (by) => names.get(by) ?? (by === '' ? 'nobody by name' : by);
};
