import type { FastifyInstance } from 'fastify';
import { type JsonObject, readHouse, readShow, readState, writeDocument } from '#documents';
import type { Refusal } from '#outcome';
import { storeId } from '../demo.ts';
import type { DocumentKind, StoredDocument } from '../log/index.ts';
import { SERVER_REFUSALS } from '../refusal-codes.ts';
import type { AppParts } from './app-parts.ts';
import { problem } from './problems.ts';

type Put = {
  readonly kind: DocumentKind;
  readonly expectedRevision: number;
  readonly document: JsonObject;
  readonly savedBy: string;
  readonly why: string;
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
  },
} as const;

/** Documents: list, read, save, and every revision they had. A save that is stale is refused. */
export const documentRoutes = (app: FastifyInstance, { databases, now }: AppParts): void => {
  app.get('/api/documents', async () => ({
    database: databases.inHand(),
    documents: databases.store().list(),
  }));

  app.get<{ Params: { id: string } }>('/api/documents/:id', async (request, reply) => {
    const found = databases.store().current(request.params.id);
    return found === null ? problem(reply, 404, 'No such document.') : answer(found);
  });

  app.get<{ Params: { id: string } }>('/api/documents/:id/revisions', async (request) => ({
    revisions: databases.store().revisions(request.params.id),
  }));

  app.get<{ Params: { id: string; revision: string } }>(
    '/api/documents/:id/revisions/:revision',
    async (request, reply) => {
      const { id, revision } = request.params;
      const found = databases.store().revision(id, Number(revision));
      return found === null ? problem(reply, 404, 'No such revision.') : answer(found);
    },
  );

  app.put<{ Params: { id: string }; Body: Put }>(
    '/api/documents/:id',
    { schema: { body: PUT_BODY } },
    async (request, reply) => {
      const { id } = request.params;
      const { kind, document, expectedRevision, savedBy, why } = request.body;
      const text = writeDocument(document);
      const refusals = faultsOf(kind, text, id);
      if (refusals.length > 0) {
        return problem(reply, 422, 'The document was not understood; nothing changed.', {
          refusals,
        });
      }
      const savedAt = now().toISOString();
      const saved = databases
        .store()
        .save({ id, kind, text, expectedRevision, savedAt, savedBy, why });
      if (saved.ok) return saved.value;
      return problem(reply, 409, 'Someone has saved since; nothing changed.', {
        current: saved.error.current,
      });
    },
  );
};

const answer = ({ text, ...summary }: StoredDocument) => ({
  ...summary,
  document: JSON.parse(text) as unknown,
});

const READERS = { house: readHouse, show: readShow, state: readState } as const;

const faultsOf = (kind: DocumentKind, text: string, id: string): readonly Refusal[] => {
  const read = READERS[kind](text);
  if (!read.ok) return read.error;
  const own = storeId(JSON.parse(text) as { format: string });
  return own === id
    ? []
    : [
        {
          code: SERVER_REFUSALS.anotherDocument.code,
          path: 'id',
          found: own,
          accepted: `the document's own id, ${id}`,
        },
      ];
};
