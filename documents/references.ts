/** Ids that must be unlike, and ids that must be known. */
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { nearestName } from './nearest-name.ts';
import type { RefusalName } from './refusal-codes.ts';

/** Refuses every id after the first of its kind. An id that was itself refused is empty here. */
export const refuseDuplicates = (
  things: readonly { readonly id: string }[],
  path: string,
  faults: Faults,
): void => {
  const seen = new Map<string, number>();
  for (const [index, { id }] of things.entries()) {
    const first = seen.get(id);
    if (id !== '' && first !== undefined) {
      faults.refuse('duplicateId', pathTo(pathTo(path, index), 'id'), {
        found: `${describe(id)}, which is also the id of ${pathTo(path, first)}`,
        accepted: 'an id of its own',
      });
    } else seen.set(id, index);
  }
};

type Reference = {
  readonly found: string;
  readonly known: readonly string[];
  readonly path: string;
};

/** Refuses an id that nothing has, and names the nearest one that something has. */
export const refuseUnknown = (
  name: RefusalName,
  { found, known, path }: Reference,
  faults: Faults,
): boolean => {
  if (found === '' || known.includes(found)) return false;
  const near = nearestName(found, known);
  const list = known.slice(0, 12).join(', ') + (known.length > 12 ? ` and ${known.length - 12} more` : '');
  faults.refuse(name, path, {
    found: describe(found),
    accepted:
      near === undefined ? (list === '' ? 'none: there are none yet' : `one of ${list}`) : `perhaps ${near}`,
  });
  return true;
};
