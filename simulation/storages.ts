/** Where a record is kept over a crash: in a file as the house keeps it, or in memory, quickly. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { memoryLog } from '#events';
import { openHouseRecord } from '#server';
import type { Storage } from './house.ts';

/** A commit of it is at once and whole, so what it holds is what a disk would. */
export const inMemory = (): Storage => {
  const log = memoryLog();
  return { open: () => log, remove: () => undefined };
};

export const onDisk = (): Storage => {
  const folder = mkdtempSync(join(tmpdir(), 'false-weather-'));
  let ids = 0;
  const newId = (): string => {
    ids += 1;
    return `id-${ids}`;
  };
  return {
    open: () => {
      const record = openHouseRecord(join(folder, 'house.sqlite'), { nowMs: () => 0, newId });
      return { ...record.log, close: record.close };
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
};
