import type { FastifyInstance, FastifyReply } from 'fastify';
import { type JsonObject, readHouse, readShow, readState, writeDocument } from '#documents';
import type { Refusal } from '#outcome';
import type { CallNow } from '#state';
import { storeId } from '../demo.ts';
import type { DocumentKind, DocumentStore, Save, StoredDocument } from '../log/index.ts';
import type { CallParts } from './call-answers.ts';
import { problem, refusal } from './problems.ts';
import { handOf, nameFor } from './rights.ts';
import { documentsInUse } from './shelf.ts';

type Put = {
  readonly kind: DocumentKind;
  readonly expectedRevision: number;
  readonly document: JsonObject;
  readonly savedBy: string;
  readonly why: string;
  readonly remark?: string;
};

const PUT_BODY = {
  type: 'object',
  required: ['kind', 'expectedRevision', 'document', 'savedBy', 'why'],
  additionalProperties: false,
  properties: {
    kind: { enum: ['house', 'show', 'state'] },
    expectedRevision: { type: 'integer', minimum: 0 },
    document: { type: 'object' },
    savedBy: { type: 'string', maxLength: 80 },
    why: { type: 'string', maxLength: 200 },
    remark: { type: 'string', maxLength: 200 },
  },
} as const;

/** More than a group of houses fills in years; a program that runs away is stopped here. */
export const DOCUMENTS_MAX = 1000;

const ID = { type: 'string', minLength: 1, maxLength: 200 } as const;
const OF_DOCUMENT = {
  schema: { params: { type: 'object', required: ['id'], properties: { id: ID } } },
};
const OF_REVISION = {
  schema: {
    params: {
      type: 'object',
      required: ['id', 'revision'],
      properties: { id: ID, revision: { type: 'integer', minimum: 1, maximum: 1_000_000_000 } },
    },
  },
};

/** Documents: list, read, save, and every revision they had. A save that is stale is refused. */
export const documentRoutes = (app: FastifyInstance, parts: CallParts): void => {
  const { databases, now, room } = parts;
  app.get('/api/documents', async () => ({
    database: databases.inHand(),
    documents: documentsInUse(databases.store()),
  }));

  app.get<{ Params: { id: string } }>('/api/documents/:id', OF_DOCUMENT, async (request, reply) => {
    const found = databases.store().current(request.params.id);
    return found === null ? problem(reply, 404, 'No such document.') : answer(found);
  });

  app.get<{ Params: { id: string } }>(
    '/api/documents/:id/revisions',
    OF_DOCUMENT,
    async (request, reply) => {
      const revisions = databases.store().revisions(request.params.id);
      return revisions.length === 0 ? problem(reply, 404, 'No such document.') : { revisions };
    },
  );

  app.get<{ Params: { id: string; revision: number } }>(
    '/api/documents/:id/revisions/:revision',
    OF_REVISION,
    async (request, reply) => {
      const { id, revision } = request.params;
      const found = databases.store().revision(id, revision);
      return found === null ? problem(reply, 404, 'No such revision.') : answer(found);
    },
  );

  app.put<{ Params: { id: string }; Body: Put }>(
    '/api/documents/:id',
    { schema: { ...OF_DOCUMENT.schema, body: PUT_BODY } },
    async (request, reply) => {
      const { id } = request.params;
      const { document, remark = '', ...asked } = request.body;
      const text = writeDocument(document);
      const refusals = faultsOf(asked.kind, text, id);
      if (refusals.length > 0) {
        return problem(reply, 422, 'The document was not understood; nothing changed.', {
          refusals,
        });
      }
      const used = savedInCall(room.now().call, id);
      if (used !== null)
        return problem(reply, 409, 'A call is open on it; nothing was saved.', used);
      const savedAt = now().toISOString();
      // Who signed in is who saved, whatever name the page sends.
      const savedBy = nameFor(request) ?? asked.savedBy;
      const save = { ...asked, id, text, savedAt, savedBy, remark, ...handOf(request) };
      return saved(reply, databases.store(), save);
    },
  );
};

/** How the sets of an open call stand is said in it, and in nothing else. */
const savedInCall = (
  call: CallNow | null,
  id: string,
): { readonly refusals: readonly Refusal[] } | null => {
  if (call === null || id !== `state:${call.house}`) return null;
  const found = `an open call on ${call.show}`;
  const accepted = 'what is done and found, said in the call';
  return { refusals: [refusal('inCall', { found, accepted })] };
};

const answer = ({ text, ...summary }: StoredDocument) => ({
  ...summary,
  document: JSON.parse(text) as unknown,
});

const saved = (reply: FastifyReply, store: DocumentStore, save: Save) => {
  const refusals = notNow(store, save);
  if (refusals.length > 0) {
    return problem(reply, 422, 'The document was not saved; nothing changed.', { refusals });
  }
  const done = store.save(save);
  if (done.ok) return done.value;
  const { current } = done.error;
  const found = `a save that began from revision ${save.expectedRevision}`;
  return problem(reply, 409, 'Someone has saved since; nothing changed.', {
    current,
    refusals: [refusal('stale', { found, accepted: `revision ${current?.revision ?? 0}` })],
  });
};

/** What stands against a save that is understood and not stale. */
const notNow = (store: DocumentStore, { id, expectedRevision }: Save): readonly Refusal[] => {
  const aside = store.listAside();
  const own = aside.find((each) => each.id === id);
  if (own !== undefined) {
    const found = `set aside by ${own.asideBy} at ${own.asideAt}`;
    return [refusal('isAside', { found, accepted: 'a document in use; take this one back first' })];
  }
  const count = store.list().length + aside.length;
  if (expectedRevision > 0 || count < DOCUMENTS_MAX || store.current(id) !== null) return [];
  const accepted = `at most ${DOCUMENTS_MAX} documents`;
  return [refusal('tooMany', { found: `${count} documents`, accepted })];
};

const READERS = { house: readHouse, show: readShow, state: readState } as const;

const faultsOf = (kind: DocumentKind, text: string, id: string): readonly Refusal[] => {
  const read = READERS[kind](text);
  if (!read.ok) return read.error;
  const own = storeId(JSON.parse(text) as { format: string });
  if (own === id) return [];
  const accepted = `the document's own id, ${id}`;
  return [refusal('anotherDocument', { path: 'id', found: own, accepted })];
};
