/** What stands in `manifest.json`: who made the archive, and every file with its size and hash. */
import * as z from 'zod';
import { readJson } from '#documents';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { PATH_MAX } from './limits.ts';
import { refuse } from './refusal-codes.ts';

export const MANIFEST = 'manifest.json';
export const FORMAT = 'counterpoise-archive';
export const VERSION = 1;

const words = z.string().max(400);

const revision = z.strictObject({
  /** As the database has it: `show:clockmaker`. */
  id: z.string().min(1).max(80),
  kind: z.enum(['house', 'show', 'state']),
  revision: z.int().min(1),
  savedAt: words,
  savedBy: words,
  why: words,
  /** What a person wrote on it to find it by. */
  remark: words.optional(),
  /** Set aside: out of the lists, with its history. */
  aside: z.boolean().optional(),
});

const file = z.strictObject({
  path: z.string().min(1).max(PATH_MAX),
  bytes: z.int().min(0),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  document: revision.optional(),
});

const made = z.strictObject({ at: words, by: words, version: words, build: words });
const leftOut = z.strictObject({ what: words, why: words });

const manifest = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  made,
  leftOut: z.array(leftOut).max(1000),
  files: z.array(file),
});

export type Revision = Readonly<z.infer<typeof revision>>;
export type Made = Readonly<z.infer<typeof made>>;
/** What was asked for and is not in the archive, with the reason. */
export type LeftOut = Readonly<z.infer<typeof leftOut>>;
export type Manifest = Readonly<z.infer<typeof manifest>>;

/** A file on its way into an archive. */
export type ArchiveFile = {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** Which revision of which document it is, where it is one. */
  readonly document?: Revision;
};

/** Folders of our own making: no way up, no root, no sign of another file system. */
export const isOwnPath = (path: string): boolean =>
  path.length <= PATH_MAX && /^[A-Za-z0-9][\w.-]*(?:\/[A-Za-z0-9][\w.-]*)*$/.test(path);

const versionOf = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && 'version' in value ? value.version : undefined;

export const readManifest = (text: string): Result<Manifest, readonly Refusal[]> => {
  const json = readJson(text);
  if (!json.ok) return json;
  const version = versionOf(json.value);
  if (typeof version === 'number' && version > VERSION) {
    const found = `version ${version}`;
    return fail([refuse('newer', MANIFEST, { found, accepted: `version ${VERSION}` })]);
  }
  const read = manifest.safeParse(json.value);
  if (read.success) return ok(read.data);
  const [issue] = read.error.issues;
  const where = [MANIFEST, ...(issue?.path ?? [])].join(' ');
  const accepted = `a manifest of ${FORMAT}, version ${VERSION}`;
  return fail([refuse('badManifest', where, { found: issue?.message ?? 'another', accepted })]);
};
