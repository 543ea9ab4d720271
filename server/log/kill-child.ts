/**
 * Takes commands and saves as fast as it can until it is killed. What is acknowledged is told on
 * standard output after the commit and never before: `number seq hash`, one a line.
 */
import { randomUUID } from 'node:crypto';
import { writeSync } from 'node:fs';
import { type Command, receiveCommand } from '#events';
import { openHouseRecord } from './index.ts';

const [file = '', firstText = '1', isOnceText = ''] = process.argv.slice(2);
const record = openHouseRecord(file, { nowMs: Date.now, newId: randomUUID });
let revision = record.store.current('show:a')?.revision ?? 0;

const acknowledge = (words: string): void => {
  writeSync(1, `${words}\n`);
};

const takeOne = (n: number): void => {
  const command: Command = {
    ...{ commandId: `command-${n}`, device: 'd1', target: 'set:11', seen: null, clientMs: n },
    ...{ kind: 'note written', payload: { text: `note ${n}`, writtenMs: null } },
  };
  const speaker = { by: 'p1', nowMs: Date.now(), newId: randomUUID };
  const done = receiveCommand(record.log, command, speaker, () => null);
  if (!done.ok) throw new Error(done.error.detail);
  const event = done.value.events.at(-1);
  acknowledge(`${n} ${event?.seq} ${event?.hash}`);
};

const saveOne = (n: number): void => {
  const done = record.store.save({
    ...{ id: 'show:a', kind: 'show', text: `{"n":${n}}`, expectedRevision: revision },
    ...{ savedAt: new Date().toISOString(), savedBy: 'TD', why: 'edited', remark: '' },
  });
  if (!done.ok) throw new Error('the save was stale');
  revision = done.value.revision;
  acknowledge(`saved ${revision} ${record.log.head().seq}`);
};

acknowledge('open');
const first = Number(firstText);
// For the count of flushes: so many, and an end.
const last = isOnceText === '' ? Number.POSITIVE_INFINITY : first + Number(isOnceText) - 1;
for (let n = first; n <= last; n += 1) {
  takeOne(n);
  if (isOnceText === '' && n % 7 === 0) saveOne(n);
}
record.close();
