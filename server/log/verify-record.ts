/** The whole of a record held against itself: file, chain, revisions, answers. */
import type { DatabaseSync } from 'node:sqlite';
import {
  type EventLog,
  type Head,
  type HouseEvent,
  NOTHING_YET,
  sha256OfText,
  verifyChain,
} from '#events';
import type { RecordFile } from './record-file.ts';

export type RecordFaults = {
  /** One line each; empty where the record is whole. */
  readonly faults: readonly string[];
  readonly head: Head;
  readonly revisions: number;
};

const PAGE = 1000;
/** Enough to see what is wrong; a file of noise would fill a screen. */
const MOST_FAULTS = 20;

/** Every page of a log, in order. */
export function* pagesOf(log: Pick<EventLog, 'after'>): Generator<readonly HouseEvent[]> {
  let page = log.after(0, PAGE);
  while (page.length > 0) {
    yield page;
    page = log.after(page.at(-1)?.seq ?? 0, PAGE);
  }
}

export const verifyRecord = ({ database, log }: Pick<RecordFile, 'database' | 'log'>) => {
  const faults = [...faultsOfFile(database)];
  const texts = new Map<string, string>();
  let head = NOTHING_YET;
  try {
    for (const page of pagesOf(log)) {
      const held = verifyChain(page, head);
      if (!held.ok) {
        faults.push(`event ${held.error.seq} does not hold (${held.error.what})`);
        break;
      }
      head = held.value;
      for (const event of page) noteText(texts, event);
    }
  } catch (fault) {
    faults.push(fault instanceof Error ? fault.message : String(fault));
  }
  const revisions = revisionsOf(database, texts, faults);
  faults.push(...faultsOfAnswers(database));
  return { faults: faults.slice(0, MOST_FAULTS), head, revisions } satisfies RecordFaults;
};

const place = (document: string, revision: number): string => `${document} ${revision}`;

const noteText = (texts: Map<string, string>, event: HouseEvent): void => {
  if (event.kind !== 'document saved') return;
  texts.set(place(event.payload.document, event.payload.revision), event.payload.sha256);
};

const faultsOfFile = (database: DatabaseSync): readonly string[] => {
  const found = database.prepare(`PRAGMA integrity_check(${MOST_FAULTS})`).all();
  const broken = found.map((row) => String(Object.values(row)[0])).filter((line) => line !== 'ok');
  const loose = database.prepare('PRAGMA foreign_key_check').all();
  return [
    ...broken.map((line) => `file: ${line}`),
    ...loose.map((row) => `file: a row of ${String(row['table'])} refers to one that is not there`),
  ];
};

/** Each revision that an event tells of is there and is that text; older ones have no event. */
const revisionsOf = (
  database: DatabaseSync,
  texts: ReadonlyMap<string, string>,
  faults: string[],
): number => {
  let count = 0;
  const left = new Map(texts);
  for (const row of database.prepare('SELECT document, revision, text FROM revision').iterate()) {
    count += 1;
    const where = place(String(row['document']), Number(row['revision']));
    const told = left.get(where);
    if (told !== undefined && told !== sha256OfText(String(row['text']))) {
      faults.push(`revision ${where} is not the text that was saved`);
    }
    left.delete(where);
  }
  for (const where of left.keys()) faults.push(`revision ${where} was saved and is not there`);
  return count;
};

const faultsOfAnswers = (database: DatabaseSync): readonly string[] =>
  database
    .prepare(
      `SELECT seq FROM event WHERE command_id IS NOT NULL
       AND command_id NOT IN (SELECT command_id FROM answer) LIMIT ${MOST_FAULTS}`,
    )
    .all()
    .map((row) => `event ${String(row['seq'])} came of a command that has no answer`);
