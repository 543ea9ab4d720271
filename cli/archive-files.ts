import { mkdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import {
  documentFiles,
  newestOf,
  readArchive,
  type StoredText,
  showFiles,
  slug,
  writeArchive,
} from '#archive';
import { type JsonObject, writeDocument } from '#documents';
import { thisInstallation } from '#installation';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { wrote } from './export-table.ts';
import { type Opened, openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { progress, sayRefusals, type Voice } from './voice.ts';

export type ArchiveOptions = {
  readonly house: string;
  readonly show: string;
  readonly state?: string;
  readonly by: string;
  readonly out: string;
};

/** Files have no revisions of a database, so each is the first of its own. */
const storedOf = ({ house, show, state }: Opened, at: string, by: string): StoredText[] => {
  const of = (kind: 'house' | 'show' | 'state', id: string, raw: JsonObject): StoredText => ({
    id: `${kind}:${id}`,
    kind,
    revision: 1,
    savedAt: at,
    savedBy: by,
    why: 'from file',
    text: writeDocument(raw),
  });
  return [
    of('house', house.house.id, house.raw),
    of('show', show.show.id, show.raw),
    ...(state === null ? [] : [of('state', state.state.houseId, state.raw)]),
  ];
};

/** Documents, tables and drawings of one show in one file. */
export const makeArchive = async (voice: Voice, options: ArchiveOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const at = new Date().toISOString();
  const { version, build } = thisInstallation();
  const files = [
    ...documentFiles(storedOf(opened, at, options.by)),
    ...showFiles({
      house: opened.house.house,
      show: opened.show,
      state: opened.state?.state ?? null,
      line: `From files, ${at}.`,
    }),
  ];
  const leftOut = [
    { what: 'earlier revisions', why: 'made from files, which have none' },
    { what: 'sheets', why: 'counterpoise sheets writes them' },
  ];
  const bytes = writeArchive({ made: { at, by: options.by, version, build }, files, leftOut });
  if (!(await wrote(voice, options.out, bytes))) return EXIT.badInput;
  voice.out(`${options.out}: ${files.length} files\n`);
  return EXIT.clear;
};

const bytesOf = async (file: string): Promise<Result<Uint8Array, readonly Refusal[]>> => {
  try {
    return ok(new Uint8Array(await readFile(file)));
  } catch (fault) {
    const found = `it could not be read (${(fault as { code?: string }).code})`;
    const accepted = 'an archive of this program';
    return fail([{ code: COMMAND_REFUSALS.noFile.code, path: '', found, accepted }]);
  }
};

export type CheckOptions = { readonly file: string; readonly out?: string };

/** Whether every file of an archive is as it was packed; the newest documents, where asked for. */
export const checkArchive = async (
  voice: Voice,
  { file, out }: CheckOptions,
): Promise<ExitCode> => {
  const bytes = await bytesOf(file);
  let tell: ((done: number) => void) | null = null;
  const say = (done: number, of: number): void => {
    tell ??= progress(voice, 'Files', of);
    tell(done);
  };
  const read = bytes.ok ? readArchive(basename(file), bytes.value, say) : bytes;
  if (!read.ok) {
    sayRefusals(voice, file, read.error);
    return EXIT.badInput;
  }
  const { made, paths, revisions, leftOut } = read.value;
  voice.out(`${file}: whole, ${paths.length} files, ${revisions.length} revisions.\n`);
  voice.out(`Made ${made.at} by ${made.by}, version ${made.version}, build ${made.build}.\n`);
  for (const { what, why } of leftOut) voice.out(`Not in it: ${what} (${why}).\n`);
  if (out === undefined) return EXIT.clear;
  await mkdir(out, { recursive: true });
  for (const { id, revision, text } of newestOf(read.value)) {
    const target = join(out, `${slug(id)}.json`);
    if (!(await wrote(voice, target, text))) return EXIT.badInput;
    voice.out(`${target}: revision ${revision} of ${id}\n`);
  }
  return EXIT.clear;
};
