/**
 * An archive read back. Every file of the manifest must be there with its size and its hash, and
 * no other; one that is not is refused by its name, and with it the whole archive.
 */
import { type Unzipped, unzipSync } from 'fflate';
import { decodeUtf8 } from '#exchange';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { Archive, KeptRevision } from './archive.ts';
import { ARCHIVE_BYTES_MAX, FILES_MAX, OPENED_BYTES_MAX, REFUSALS_MAX } from './limits.ts';
import { isOwnPath, MANIFEST, type Manifest, readManifest } from './manifest.ts';
import { refuse } from './refusal-codes.ts';
import { sha256 } from './sha256.ts';

type Refused<T> = Result<T, readonly Refusal[]>;

/** Told as files are looked through, so that a person sees that it goes on. */
export type OnFile = (done: number, of: number) => void;

const cannot = (where: string, found: string): Refusal =>
  refuse('notOpened', where, { found, accepted: 'an archive as this program writes it' });

/** Why a file is not even opened; it can be asked before its bytes are read. */
export const sizeFault = (file: string, bytes: number): Refusal | null => {
  const accepted = `at most ${ARCHIVE_BYTES_MAX} bytes`;
  const isTooLarge = bytes > ARCHIVE_BYTES_MAX;
  return isTooLarge ? refuse('tooLarge', file, { found: `${bytes} bytes`, accepted }) : null;
};

/** Names and sizes as the file claims them, unpacking nothing. */
const listOf = (file: string, bytes: Uint8Array): Refused<readonly string[]> => {
  const names: string[] = [];
  let size = 0;
  try {
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        names.push(name);
        size += originalSize;
        return false;
      },
    });
  } catch {
    return fail([cannot(file, 'a file that cannot be unpacked')]);
  }
  const accepted = `at most ${FILES_MAX} files and ${OPENED_BYTES_MAX} bytes opened`;
  if (names.length > FILES_MAX || size > OPENED_BYTES_MAX) {
    const found = `${names.length} files and ${size} bytes opened`;
    return fail([refuse('opensTooLarge', file, { found, accepted })]);
  }
  const bad = names.find((name, at) => !isOwnPath(name) || names.indexOf(name) !== at);
  if (bad === undefined) return ok(names);
  const found = JSON.stringify(bad.slice(0, 80));
  const own = 'each path once, of letters, digits, points and dashes';
  return fail([refuse('badPath', file, { found, accepted: own })]);
};

/** One part of it; undefined where it cannot be unpacked. */
const partOf = (bytes: Uint8Array, name: string): Unzipped[string] | undefined => {
  try {
    return unzipSync(bytes, { filter: (each) => each.name === name })[name];
  } catch {
    return undefined;
  }
};

/** All parts at once; where one is broken, those that are not, one by one. */
const partsOf = (bytes: Uint8Array, names: readonly string[]): Unzipped => {
  try {
    return unzipSync(bytes);
  } catch {
    return Object.fromEntries(
      names.flatMap((name) => {
        const part = partOf(bytes, name);
        return part === undefined ? [] : [[name, part]];
      }),
    );
  }
};

const faultOf = (
  { path, bytes, sha256: hash }: Manifest['files'][number],
  part: Uint8Array | undefined,
  names: ReadonlySet<string>,
): Refusal | null => {
  const accepted = `${bytes} bytes with the hash ${hash.slice(0, 12)}…`;
  if (!names.has(path)) return refuse('missing', path, { found: 'nothing', accepted });
  if (part === undefined) {
    return refuse('damaged', path, { found: 'a part that cannot be unpacked', accepted });
  }
  const found = part.length === bytes ? sha256(part) : null;
  if (found === hash) return null;
  const words =
    found === null ? `${part.length} bytes` : `as many with the hash ${found.slice(0, 12)}…`;
  return refuse('damaged', path, { found: words, accepted });
};

const revisionsOf = (manifest: Manifest, parts: Unzipped): Refused<readonly KeptRevision[]> => {
  const faults: Refusal[] = [];
  const revisions = manifest.files.flatMap(({ path, document }): readonly KeptRevision[] => {
    if (document === undefined) return [];
    const decoded = decodeUtf8(parts[path] ?? new Uint8Array());
    if (decoded.ok) return [{ ...document, path, text: decoded.text }];
    const found = `a byte that is no UTF-8, at ${decoded.at}`;
    faults.push(refuse('notText', path, { found, accepted: 'a document as JSON in UTF-8' }));
    return [];
  });
  return faults.length === 0 ? ok(revisions) : fail(faults);
};

const manifestOf = (file: string, bytes: Uint8Array): Refused<Manifest> => {
  const part = partOf(bytes, MANIFEST);
  if (part === undefined) return fail([cannot(`${file}: ${MANIFEST}`, 'a broken part')]);
  const decoded = decodeUtf8(part);
  return decoded.ok ? readManifest(decoded.text) : fail([cannot(MANIFEST, 'no UTF-8')]);
};

export const readArchive = (
  file: string,
  bytes: Uint8Array,
  onFile: OnFile = () => {},
): Refused<Archive> => {
  const large = sizeFault(file, bytes.length);
  if (large !== null) return fail([large]);
  const names = listOf(file, bytes);
  if (!names.ok) return names;
  if (!names.value.includes(MANIFEST)) {
    const found = `${names.value.length} files and no ${MANIFEST}`;
    return fail([refuse('notArchive', file, { found, accepted: 'an archive of this program' })]);
  }
  const manifest = manifestOf(file, bytes);
  if (!manifest.ok) return manifest;
  const { made, leftOut, files } = manifest.value;
  const parts = partsOf(bytes, names.value);
  const there = new Set(names.value);
  const listed = new Set([MANIFEST, ...files.map(({ path }) => path)]);
  const faults = names.value
    .filter((name) => !listed.has(name))
    .map((name) =>
      refuse('unlisted', name, { found: 'a file', accepted: `only what ${MANIFEST} names` }),
    );
  for (const [at, each] of files.entries()) {
    const fault = faultOf(each, parts[each.path], there);
    if (fault !== null) faults.push(fault);
    onFile(at + 1, files.length);
  }
  if (faults.length > 0) return fail(faults.slice(0, REFUSALS_MAX));
  const revisions = revisionsOf(manifest.value, parts);
  if (!revisions.ok) return revisions;
  return ok({ made, leftOut, paths: files.map(({ path }) => path), revisions: revisions.value });
};
