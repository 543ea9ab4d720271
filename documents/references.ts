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

/**
 * Refuses an id that nothing has, and names the nearest one that something has. Where an id of
 * those that are known was itself refused, nobody can say which are missing.
 */
export const refuseUnknown = (
  name: RefusalName,
  { found, known, path }: Reference,
  faults: Faults,
): boolean => {
  if (found === '' || known.includes(found) || known.includes('')) return false;
  const near = nearestName(found, known);
  faults.refuse(name, path, {
    found: describe(found),
    accepted: near === undefined ? oneOf(known) : `perhaps ${near}`,
  });
  return true;
};

const TOLD = 12;

const oneOf = (known: readonly string[]): string => {
  if (known.length === 0) return 'none: there are none yet';
  const more = known.length > TOLD ? ` and ${known.length - TOLD} more` : '';
  return `one of ${known.slice(0, TOLD).join(', ')}${more}`;
};
