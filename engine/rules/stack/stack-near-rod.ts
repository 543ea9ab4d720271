import { measure } from '#findings';
import { isAbove, NEAR_ROD } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenPlanned } from '../rule.ts';
import { stackWorking } from './stack-working.ts';

/** STK-002: the planned stack fits, and leaves less than a twentieth of the rod. */
export const stackNearRod = whenPlanned(({ plan, set: { lineSet } }) => {
  const rod = lineSet.arbor?.usableRod;
  // A rod that nobody has measured is missed by STK-001.
  if (rod === undefined || !rod.known) return [];
  const heightM = plan.stack.height;
  const nearM = NEAR_ROD * rod.value;
  if (isAbove(heightM, rod.value) || !isAbove(heightM, nearM)) return [];
  const source = '95 % of the usable rod: common practice, no source';
  const limit = measure(nearM, 'length');
  return [
    raise('STK-002', {
      at: { set: lineSet.id },
      measured: measure(heightM, 'length'),
      limit,
      limitSource: source,
      facts: { rod: measure(rod.value, 'length') },
      working: stackWorking(plan.stack, { value: limit, source }),
    }),
  ];
});
