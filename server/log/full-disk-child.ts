/**
 * On a disk that is about to be full: what a record does, said as JSON. The folder holds a file
 * named `ballast`, which is taken away to make room.
 */
import { randomUUID } from 'node:crypto';
import { appendFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { receiveCommand, verifyChain } from '#events';
import { openHouseRecord } from './house-record.ts';
import { RecordFault } from './transaction.ts';

const [folder = ''] = process.argv.slice(2);
const file = join(folder, 'house.sqlite');
const surroundings = { nowMs: Date.now, newId: randomUUID };

const save = (record: ReturnType<typeof openHouseRecord>, text: string, revision: number) => {
  try {
    record.store.save({
      ...{ id: 'show:a', kind: 'show', text, expectedRevision: revision },
      ...{ savedAt: new Date().toISOString(), savedBy: 'TD', why: 'edited', remark: '' },
    });
    return 'saved';
  } catch (fault) {
    return fault instanceof RecordFault ? fault.statusCode : String(fault);
  }
};

const take = (record: ReturnType<typeof openHouseRecord>, n: number) => {
  const done = receiveCommand(
    record.log,
    {
      ...{ commandId: `command-${n}`, device: 'd1', target: 'house', seen: null, clientMs: 1 },
      ...{ kind: 'note written', payload: { text: 'x'.repeat(2000), writtenMs: null } },
    },
    { by: null, nowMs: Date.now(), newId: randomUUID },
    () => null,
  );
  return done.ok ? done.value.answer.outcome : done.error.kind;
};

/** The last bytes go too, so that nothing at all can be written. */
const fill = (): void => {
  for (const size of [65_536, 4096, 512, 1]) {
    try {
      for (let times = 0; times < 1000; times += 1) {
        appendFileSync(join(folder, 'filling'), new Uint8Array(size));
      }
    } catch {
      // No room for that many.
    }
  }
};

const makeRoom = (): void => {
  for (const name of ['ballast', 'filling']) rmSync(join(folder, name), { force: true });
};

const record = openHouseRecord(file, surroundings);
let n = 1;
while (take(record, n) === 'accepted' && n < 5000) n += 1;
fill();
const refused = take(record, n);
const saved = save(record, '{}', 0);
const readable = record.log.after(0, 10_000).length;
makeRoom();
const withRoom = [take(record, n), save(record, '{}', 0)];
fill();
record.close();

/** A server that is started while the disk is full. */
const opened = (() => {
  try {
    const again = openHouseRecord(file, surroundings);
    const found = [again.log.head().seq, take(again, n + 1), take(again, n)];
    again.close();
    return found;
  } catch (fault) {
    return fault instanceof Error ? fault.message : String(fault);
  }
})();
makeRoom();
const last = openHouseRecord(file, surroundings);
const taken = take(last, n + 1);
const isWhole = verifyChain(last.log.after(0, 10_000)).ok && last.identity().isRecord;
last.close();
process.stdout.write(
  JSON.stringify({ n, refused, saved, readable, withRoom, opened, taken, isWhole }),
);
