/** Revisions of documents as files: `documents/show-clockmaker/revision-0003.json`. */
import { strToU8 } from 'fflate';
import { slug } from './file-names.ts';
import type { ArchiveFile, Revision } from './manifest.ts';

export type StoredText = Revision & { readonly text: string };

const DIGITS = 4;

export const documentFiles = (stored: readonly StoredText[]): readonly ArchiveFile[] => {
  const folders = new Map<string, string>();
  return stored.map(({ text, ...document }) => {
    const folder = folders.get(document.id) ?? slug(document.id, new Set(folders.values()));
    folders.set(document.id, folder);
    const number = String(document.revision).padStart(DIGITS, '0');
    return {
      path: `documents/${folder}/revision-${number}.json`,
      bytes: strToU8(text),
      document,
    };
  });
};
