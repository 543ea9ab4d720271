import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FirstDocument } from './databases.ts';
import type { DocumentKind } from './log/index.ts';

const KINDS: Readonly<Record<string, DocumentKind>> = {
  'counterpoise-house': 'house',
  'counterpoise-show': 'show',
  'counterpoise-state': 'state',
};

/** Key of a document in the store: a house has one state, and each show its own name. */
export const storeId = (raw: { readonly format: string; readonly id?: string; house?: string }) =>
  KINDS[raw.format] === 'state' ? `state:${raw.house}` : `${KINDS[raw.format]}:${raw.id}`;

/** The documents of the demo houses, as they lie in the examples folder. */
export const demoDocuments = (examples: string): readonly FirstDocument[] =>
  readdirSync(examples, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap((entry) =>
      readdirSync(join(examples, entry.name))
        .filter((file) => file.endsWith('.json'))
        .map((file) => documentFrom(readFileSync(join(examples, entry.name, file), 'utf8'))),
    );

const documentFrom = (text: string): FirstDocument => {
  const raw = JSON.parse(text) as { format: string; id?: string; house?: string };
  const kind = KINDS[raw.format];
  if (kind === undefined) throw new Error(`an example has an unknown format: ${raw.format}`);
  return { id: storeId(raw), kind, text };
};
