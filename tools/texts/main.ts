/** Brings every catalogue up to the code: new texts stand empty at their place, old ones go. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../running/program.ts';
import { readSources } from '../tidy/sources.ts';
import { type Catalogue, nextCatalogue } from './catalogue.ts';
import { CATALOGUES } from './check.ts';
import { messagesIn } from './gather.ts';

const read = (path: string): Catalogue =>
  existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as Catalogue) : {};

const messages = messagesIn(readSources());
for (const { language, path } of CATALOGUES) {
  const file = join(ROOT, path);
  const next = nextCatalogue(messages, read(file));
  writeFileSync(file, `${JSON.stringify(next, null, 2)}\n`);
  const empty = Object.values(next).filter((text) => text === '').length;
  process.stdout.write(`${language}: ${messages.length} texts, ${empty} not translated\n`);
}
