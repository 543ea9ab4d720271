/**
 * A web font opened into its tables.
 *
 * Source  WOFF File Format 1.0 (W3C Recommendation, 13 December 2012), from memory: a header of 44
 *         bytes, then 20 bytes a table; a table is packed by zlib where that makes it shorter
 */
import { inflateSync } from 'node:zlib';
import { assert } from '#outcome';

/** Tables by their tag of four letters. */
export type Tables = ReadonlyMap<string, Buffer>;

const SIGNATURE = 'wOFF';
const HEADER = 44;
const ENTRY = 20;

export const openWoff = (file: Buffer): Tables => {
  assert(file.toString('latin1', 0, 4) === SIGNATURE, 'a file of the face is a WOFF font');
  const count = file.readUInt16BE(12);
  return new Map(
    Array.from({ length: count }, (_, index) => tableAt(file, HEADER + index * ENTRY)),
  );
};

const tableAt = (file: Buffer, entry: number): readonly [string, Buffer] => {
  const tag = file.toString('latin1', entry, entry + 4);
  const [start, packed, length] = [4, 8, 12].map((offset) => file.readUInt32BE(entry + offset)) as [
    number,
    number,
    number,
  ];
  const bytes = file.subarray(start, start + packed);
  return [tag, packed < length ? inflateSync(bytes) : Buffer.from(bytes)];
};

/** A table that every TrueType font has. */
export const tableOf = (tables: Tables, tag: string): Buffer => {
  const table = tables.get(tag);
  assert(table !== undefined, `a file of the face has a ${tag} table`);
  return table;
};
