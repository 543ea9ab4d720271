/** documents/schema/: the published form of each document, as reading takes it. */
import type { Json } from '#documents';
import { DOCUMENT_KINDS, schemaOf, writeDocument } from '#documents';
import type { Paper } from './paper.ts';

export const schemas: readonly Paper[] = DOCUMENT_KINDS.map((kind) => ({
  path: `documents/schema/${kind}.schema.json`,
  make: async () => writeDocument(schemaOf(kind) as Json),
}));
