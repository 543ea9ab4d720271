import type { GalleryWindow } from '#assessment';
import { measure } from '#findings';
import type { HeightSpan } from '#house';
import { isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { type PlannedCase, whenPlanned } from '../rule.ts';
import { fact } from '../show-working.ts';

/**
 * STK-003: with the planned bricks on and the batten in, some gallery reaches the top of the
 * stack. It judges the full stack at the low stop and at the working height; the plates below
 * and the way there are the order of work. A set without show bricks has nothing to reach.
 */
export const outOfReach = whenPlanned((the) => {
  const { plan, set } = the;
  if (plan.stack.show.every(({ count }) => count === 0)) return [];
  // A window that is not known is missed by UNK-001, and may be the one that reaches.
  const windows = set.windows.map(({ window }) => window);
  if (windows.length === 0 || windows.some(({ known }) => !known)) return [];
  const spans = windows.flatMap((window) => (window.known ? [window.value] : []));
  const { lowStop, workingHeight } = set.lineSet;
  const inside = [lowStop.height, workingHeight].flatMap((height) =>
    height.known ? [height.value] : [],
  );
  if (inside.length === 0) return [];
  if (spans.some((span) => inside.some((heightM) => reaches(span, heightM)))) return [];
  return [
    raise('STK-003', {
      at: { set: set.lineSet.id },
      limitSource: 'reach of a loader at each gallery, from the house',
      facts: {
        plates: measure(plan.stack.plates, 'count'),
        lowStop: fact(lowStop.height, 'length'),
        working: fact(workingHeight, 'length'),
        ...nearestFacts(the),
      },
    }),
  ];
});

const reaches = (span: HeightSpan | null, heightM: number): boolean =>
  span !== null &&
  (heightM >= span.from || isSameHeight(heightM, span.from)) &&
  (heightM <= span.to || isSameHeight(heightM, span.to));

type Reached = { readonly gallery: string; readonly span: HeightSpan };

const reachedBy = ({ gallery, window }: GalleryWindow): readonly Reached[] =>
  window.known && window.value !== null ? [{ gallery, span: window.value }] : [];

/** The lowest batten height at which anybody reaches the top of the stack, and from where. */
const nearestFacts = ({ set, house }: PlannedCase) => {
  const reached = set.windows
    .flatMap(reachedBy)
    .toSorted((one, other) => one.span.from - other.span.from)[0];
  if (reached === undefined) return { first: 'no height of the batten', from: 'no gallery' };
  const name = house.galleries.find(({ id }) => id === reached.gallery)?.name ?? reached.gallery;
  return { first: measure(reached.span.from, 'length'), from: name };
};
