import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { eventLogContract } from '../../events/event-log.contract.ts';
import { openHouseRecord } from './house-record.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-log-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;
eventLogContract('SQLite', () => {
  files += 1;
  const record = openHouseRecord(join(folder, `${files}.sqlite`), {
    nowMs: () => 1000,
    newId: randomUUID,
  });
  return { ...record.log, close: record.close };
});
