/** Everything of a record as plain files, to be read and verified without this program. */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { canonicalJson, sha256OfText } from '#events';
import { NotOpened } from './database-file.ts';
import { openRecordFile, type RecordFile } from './record-file.ts';
import { pagesOf } from './verify-record.ts';

const README = `What a house recorded, as plain files in UTF-8.

record.json      keys of the house and of the record, and the last event (its head)
events.jsonl     every event, one a line, in order
answers.jsonl    every answer to a command, one a line
documents.jsonl  every revision of every document: who, when, why, and its file; what was set aside
documents/       their texts, byte for byte
SHA256SUMS       a SHA-256 of each file

To verify the files: sha256sum -c SHA256SUMS

To verify the events, for each line of events.jsonl:
- seq is one more than that of the line before; the first is 1.
- previous is the hash of the line before; that of the first is 64 zeros.
- Take the field hash out and write the rest as RFC 8785 (JCS) says: no blanks, names sorted. The
  lines are written so. SHA-256 (FIPS 180-4) of that text in UTF-8 is the hash.
- An event "document saved" has the SHA-256 of the text of its revision.

Times are milliseconds since 1970-01-01 UTC, of the server. The chain shows what was changed inside
it. It does not show events cut off at its end: compare the head with one on paper or on a device.
`;

export type TakenOut = {
  readonly events: number;
  readonly revisions: number;
  readonly files: number;
};

export const takeOut = (file: string, folder: string): TakenOut => {
  mkdirSync(folder, { recursive: true });
  if (readdirSync(folder).length > 0) {
    throw new NotOpened(`${folder} is not empty; nothing was written.`);
  }
  const source = openRecordFile(file);
  try {
    // One moment for all files, whatever is recorded meanwhile.
    source.database.exec('BEGIN');
    return written(source, folder);
  } finally {
    source.close();
  }
};

const written = (source: RecordFile, folder: string): TakenOut => {
  const sums: string[] = [];
  const write = (path: string, text: string): void => {
    writeFileSync(join(folder, path), text);
    sums.push(`${sha256OfText(text)}  ${path}\n`);
  };
  const { houseKey, recordKey, isRecord } = source.identity;
  const head = source.log.head();
  write('README.txt', README);
  write('record.json', `${JSON.stringify({ houseKey, recordKey, isRecord, head }, null, 2)}\n`);
  const events = [...pagesOf(source.log)].flat();
  write('events.jsonl', events.map((event) => `${canonicalJson(event)}\n`).join(''));
  const answers = source.database.prepare('SELECT answer FROM answer ORDER BY command_id').all();
  write('answers.jsonl', answers.map((row) => `${String(row['answer'])}\n`).join(''));
  const revisions = writeDocuments(source, folder, write);
  writeFileSync(join(folder, 'SHA256SUMS'), sums.join(''));
  return { events: events.length, revisions, files: sums.length };
};

const writeDocuments = (
  { database }: RecordFile,
  folder: string,
  write: (path: string, text: string) => void,
): number => {
  const lines: string[] = [];
  const folders = new Map<string, string>();
  const rows = database
    .prepare(
      `SELECT r.document, d.kind, r.revision, r.saved_at, r.saved_by, r.why, r.remark, r.text
       FROM revision r JOIN document d ON d.id = r.document ORDER BY r.document, r.revision`,
    )
    .iterate();
  for (const { text, ...row } of rows) {
    const id = String(row['document']);
    const own = folders.get(id) ?? `documents/${folders.size + 1}-${id.replace(/[^\w.-]/g, '_')}`;
    if (!folders.has(id)) mkdirSync(join(folder, own), { recursive: true });
    folders.set(id, own);
    const path = `${own}/revision-${String(row['revision']).padStart(4, '0')}.json`;
    write(path, String(text));
    lines.push(`${JSON.stringify({ ...row, file: path })}\n`);
  }
  const aside = database.prepare('SELECT * FROM shelving ORDER BY number').all();
  const shelves = aside.map((row) => `${JSON.stringify({ shelving: row })}\n`);
  write('documents.jsonl', [...lines, ...shelves].join(''));
  return lines.length;
};
