import { measure } from '#findings';
import { FOOT } from '#quantities';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenPlanned } from '../rule.ts';

/** Spreader plate every 2 ft (610 mm) of stack: an operating guide and a school's crew guide. */
const USUAL_SPACING_M = 2 * FOOT;

/**
 * STK-004: a stack that usually takes spreader plates stands in a house that lists none, so that
 * neither their mass nor their height is in any result.
 */
export const spreadersNotListed = whenPlanned(({ plan, house, set: { lineSet } }) =>
  house.spreader === null && isAbove(plan.stack.height, USUAL_SPACING_M)
    ? [
        raise('STK-004', {
          at: { set: lineSet.id },
          measured: measure(plan.stack.height, 'length'),
          limit: measure(USUAL_SPACING_M, 'length'),
        }),
      ]
    : [],
);
