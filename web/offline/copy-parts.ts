/** Where a copy is kept, and what of it must be written. */
import type { Copy } from '../keeping/copies.ts';
import type { Stored, Summary } from '../keeping/server.ts';

/** A copy is of one house and of one of its databases; another one has a place of its own. */
export const keyOf = ({ databases: { houseKey = 'this address', inHand } }: Copy): string =>
  `${houseKey} ${inHand}`;

/** Which documents the box does not hold yet as they are, and which it holds too many. */
export const toWrite = (
  copy: Copy,
  held: readonly Pick<Summary, 'id' | 'revision' | 'savedAt'>[],
): { readonly put: readonly Stored[]; readonly gone: readonly string[] } => {
  const ids = new Set(copy.documents.map(({ id }) => id));
  return {
    put: copy.documents.filter(
      ({ id, revision, savedAt }) =>
        !held.some(
          (each) => each.id === id && each.revision === revision && each.savedAt === savedAt,
        ),
    ),
    gone: held.flatMap(({ id }) => (ids.has(id) ? [] : [id])),
  };
};
