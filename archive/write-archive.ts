/** Files and their manifest to one ZIP. The same files give the same bytes. */
import { strToU8, zipSync } from 'fflate';
import { assert } from '#outcome';
import {
  type ArchiveFile,
  FORMAT,
  isOwnPath,
  type LeftOut,
  MANIFEST,
  type Made,
  type Manifest,
  VERSION,
} from './manifest.ts';
import { sha256 } from './sha256.ts';

export type ToWrite = {
  readonly made: Made;
  readonly files: readonly ArchiveFile[];
  readonly leftOut: readonly LeftOut[];
};

/** A constant, so that the same files give the same bytes; ZIP has no room for "no day". */
const DAY = new Date(2000, 0, 1);

/** These are packed already. */
const PACKED = /\.(?:pdf|xlsx)$/;

export const writeArchive = ({ made, files, leftOut }: ToWrite): Uint8Array => {
  const paths = files.map(({ path }) => path);
  assert(paths.every(isOwnPath), 'paths of an archive are of our own making');
  assert(new Set(paths).size === paths.length, 'no path stands in an archive twice');
  const manifest: Manifest = {
    format: FORMAT,
    version: VERSION,
    made,
    leftOut: [...leftOut],
    files: files.map(({ path, bytes, document }) => ({
      path,
      bytes: bytes.length,
      sha256: sha256(bytes),
      ...(document === undefined ? {} : { document }),
    })),
  };
  const text = strToU8(`${JSON.stringify(manifest, null, 2)}\n`);
  const parts = files.map(
    ({ path, bytes }) => [path, [bytes, { level: PACKED.test(path) ? 0 : 6 }]] as const,
  );
  return zipSync(Object.fromEntries([[MANIFEST, text], ...parts]), { mtime: DAY });
};
