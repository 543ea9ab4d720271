/**
 * Tables packed into one TrueType font.
 *
 * Source  OpenType 1.9 (also ISO/IEC 14496-22), chapter "The OpenType Font File", from memory: a
 *         directory of 16 bytes a table in order of tags, each table on a boundary of 4 bytes
 */
import type { Tables } from './woff.ts';

const TRUE_TYPE = 0x00010000;
const HEADER = 12;
const ENTRY = 16;

const padded = (length: number): number => Math.ceil(length / 4) * 4;

const checkSum = (table: Buffer): number => {
  const whole = Buffer.alloc(padded(table.length));
  table.copy(whole);
  let sum = 0;
  for (let at = 0; at < whole.length; at += 4) sum = (sum + whole.readUInt32BE(at)) >>> 0;
  return sum;
};

const header = (count: number): Buffer => {
  const selector = Math.floor(Math.log2(count));
  const range = 2 ** selector * ENTRY;
  const bytes = Buffer.alloc(HEADER);
  bytes.writeUInt32BE(TRUE_TYPE, 0);
  [count, range, selector, count * ENTRY - range].forEach((value, index) => {
    bytes.writeUInt16BE(value, 4 + index * 2);
  });
  return bytes;
};

export const packFont = (tables: Tables): Buffer => {
  const sorted = [...tables].toSorted(([one], [other]) => (one < other ? -1 : 1));
  const directory: Buffer[] = [];
  const bodies: Buffer[] = [];
  let start = HEADER + sorted.length * ENTRY;
  for (const [tag, table] of sorted) {
    const entry = Buffer.alloc(ENTRY);
    entry.write(tag, 0, 'latin1');
    [checkSum(table), start, table.length].forEach((value, index) => {
      entry.writeUInt32BE(value, 4 + index * 4);
    });
    directory.push(entry);
    bodies.push(table, Buffer.alloc(padded(table.length) - table.length));
    start += padded(table.length);
  }
  return Buffer.concat([header(sorted.length), ...directory, ...bodies]);
};
