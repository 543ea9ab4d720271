import type { PlannedStack } from '#assessment';
import type { Measure, Working } from '#findings';
import { term, workedOut } from '../show-working.ts';

/** Height of a stack as it was counted, against a limit. */
export const stackWorking = (
  stack: PlannedStack,
  limit: { readonly value: Measure; readonly source: string },
): Working =>
  workedOut(
    'height of the stack',
    'bricks and spreader plates, one on the other',
    [
      term('n', 'plates of brick', stack.plates, 'count'),
      term('s', 'spreader plates', stack.spreaders, 'count'),
    ],
    term('stack', 'height of the stack', stack.height, 'length'),
    {
      source: 'trade formula C6',
      limit,
      omits: 'dirt and burrs between plates: the stack stands higher than this',
    },
  );
