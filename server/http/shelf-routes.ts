import type { FastifyInstance } from 'fastify';
import type { Refusal } from '#outcome';
import type { CallNow } from '#state';
import type { CallParts } from './call-answers.ts';
import { problem, refusal } from './problems.ts';
import { handOf, nameFor } from './rights.ts';
import { againstAside, againstReturn, documentsAside } from './shelf.ts';

type Move = { readonly aside: boolean; readonly by: string; readonly why: string };

const MOVE_BODY = {
  type: 'object',
  required: ['aside', 'by', 'why'],
  additionalProperties: false,
  properties: {
    aside: { type: 'boolean' },
    by: { type: 'string', maxLength: 80 },
    why: { type: 'string', maxLength: 200 },
  },
} as const;

/** What the open call rests on stays in use until it is closed. */
const inCall = (call: CallNow | null, id: string): readonly Refusal[] =>
  call?.documents.some((each) => each.id === id) === true
    ? [refusal('inCall', { found: `an open call on ${call.show}`, accepted: 'close it first' })]
    : [];

/** Documents that are set aside: out of the lists, with their history, and to be taken back. */
export const shelfRoutes = (app: FastifyInstance, { databases, now, room }: CallParts): void => {
  app.get('/api/documents-aside', async () => ({
    documents: documentsAside(databases.store()),
  }));

  app.post<{ Params: { id: string }; Body: Move }>(
    '/api/documents/:id/aside',
    { schema: { body: MOVE_BODY } },
    async (request, reply) => {
      const store = databases.store();
      const { id } = request.params;
      const { aside: isAside, why } = request.body;
      const by = nameFor(request) ?? request.body.by;
      const document = store.current(id);
      if (document === null) return problem(reply, 404, 'No such document.');
      const used = inCall(room.now().call, id);
      const refusals = isAside
        ? [...used, ...againstAside(store, document)]
        : againstReturn(store, document);
      if (refusals.length > 0) {
        const title = isAside ? 'It was not set aside.' : 'It was not taken back.';
        return problem(reply, 409, title, { refusals });
      }
      const at = now().toISOString();
      if (store.shelve({ id, isAside, at, by, why, ...handOf(request) })) return { id, isAside };
      const [found, accepted] = isAside
        ? ['set aside', 'a document in use']
        : ['in use', 'a document set aside'];
      return problem(reply, 409, 'It is so already.', {
        refusals: [refusal('isSoAlready', { found, accepted })],
      });
    },
  );
};
