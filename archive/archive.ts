/** An archive that was read: whole, and every file as it was packed. */
import type { LeftOut, Made, Revision } from './manifest.ts';

/** A revision of a document with its text, byte for byte as it was kept. */
export type KeptRevision = Revision & { readonly path: string; readonly text: string };

export type Archive = {
  readonly made: Made;
  readonly leftOut: readonly LeftOut[];
  readonly paths: readonly string[];
  readonly revisions: readonly KeptRevision[];
};

const ORDER = ['house', 'show', 'state'] as const;

/** The newest revision of each document: houses first, since shows are read against them. */
export const newestOf = ({ revisions }: Archive): readonly KeptRevision[] => {
  const newest = new Map<string, KeptRevision>();
  for (const one of revisions) {
    if (one.revision > (newest.get(one.id)?.revision ?? 0)) newest.set(one.id, one);
  }
  return [...newest.values()].toSorted(
    (one, other) => ORDER.indexOf(one.kind) - ORDER.indexOf(other.kind),
  );
};
