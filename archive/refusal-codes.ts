/** Every reason for which an archive is not taken. A code is never reused and never renumbered. */
import { type Refusal, refusal } from '#outcome';

type ArchiveRefusal = {
  readonly code: string;
  readonly title: string;
  /** One sentence: what was found, and why it is not taken. */
  readonly meaning: string;
};

const code = (id: string, title: string, meaning: string): ArchiveRefusal => ({
  code: id,
  title,
  meaning,
});

export const REFUSALS = {
  notArchive: code('ARC-001', 'Not an archive', 'No manifest of this program is in the file.'),
  tooLarge: code('ARC-002', 'File too large', 'No archive of a house is as large as this.'),
  opensTooLarge: code('ARC-003', 'Opens too large', 'Opened it would fill the memory.'),
  notOpened: code('ARC-004', 'Cannot be unpacked', 'The packing is broken or of another kind.'),
  badManifest: code('ARC-005', 'Manifest not read', 'The list of what is inside is not ours.'),
  newer: code('ARC-006', 'Newer form', 'A newer program wrote it; this one cannot read it.'),
  missing: code('ARC-007', 'File missing', 'The manifest names a file that is not there.'),
  damaged: code('ARC-008', 'File damaged', 'A file is not what it was when it was packed.'),
  unlisted: code('ARC-009', 'File not listed', 'A file is there that the manifest does not name.'),
  badPath: code('ARC-010', 'Path not taken', 'A path leads elsewhere, or stands there twice.'),
  notText: code('ARC-011', 'Document not text', 'A document in it is not written in UTF-8.'),
} as const satisfies Readonly<Record<string, ArchiveRefusal>>;

export const refuse = (
  name: keyof typeof REFUSALS,
  where: string,
  words: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, where, words);
