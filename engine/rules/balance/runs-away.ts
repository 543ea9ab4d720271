import { measure } from '#findings';
import { isBelow, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenFlown } from '../rule.ts';
import { type Curve, readCurve } from './curve-reading.ts';

/**
 * BAL-008: over its whole free travel a set grows more arbor heavy on the way out. Then no height
 * on it settles: whichever way it goes, it goes faster the further it goes (C27).
 */
export const runsAway = whenFlown(({ plan, set: { lineSet } }) => {
  const { from, to } = plan.freeRange;
  if (isSameHeight(from, to) || !fallsEverywhere(plan.curve, from, to)) return [];
  const atFrom = readCurve(plan.curve, from, 'above');
  const atTo = readCurve(plan.curve, to, 'below');
  if (atFrom === null || atTo === null) return [];
  return [
    raise('BAL-008', {
      at: { set: lineSet.id },
      measured: measure(atFrom.imbalanceN - atTo.imbalanceN, 'force'),
      facts: { from: measure(from, 'length'), to: measure(to, 'length') },
    }),
  ];
});

const fallsEverywhere = (curve: Curve, fromM: number, toM: number): boolean => {
  const heights = curve.nodes
    .map(({ height }) => height as number)
    .filter((heightM) => heightM > fromM && heightM < toM);
  const places = [fromM, ...heights, toM];
  return places.slice(1).every((upperM, index) => {
    const lower = readCurve(curve, places[index] ?? fromM, 'above');
    const upper = readCurve(curve, upperM, 'below');
    const upperAbove = readCurve(curve, upperM, 'above');
    if (lower === null || upper === null || upperAbove === null) return false;
    if (isSameHeight(lower.heightM, upper.heightM)) return true;
    // A piece that still leaves the deck inside the range lifts U there, and settles it.
    const jumps = upperM < toM && upperAbove.imbalanceN > upper.imbalanceN;
    return !jumps && isBelow(upper.imbalanceN, lower.imbalanceN);
  });
};
