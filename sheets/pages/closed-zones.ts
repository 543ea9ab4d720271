/** Zones of a call: which set closes them, from which step to which. */
import type { Gallery, House } from '#house';
import { type CheckedOrder, stepsBetween } from '#orders';
import type { WorkZone } from '#state';
import { phrase } from '#texts';

/** Both ends as numbers of steps; the last is the step by which it is opened, or null. */
type Closed = { readonly from: number; readonly to: number | null };

const isZone = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'run'
    ? other.zone === 'run'
    : other.zone === 'drop' && one.gallery === other.gallery;

const isClosed = (closed: readonly WorkZone[], zone: WorkZone): boolean =>
  closed.some((each) => isZone(each, zone));

/** Step 0 is before the first step. */
const closedIn = (order: CheckedOrder, zone: WorkZone): readonly Closed[] => {
  const [start] = order.verdict.states;
  const spans: Closed[] = [];
  let from = start !== undefined && isClosed(start.standing.closed, zone) ? 0 : null;
  for (const { number, after } of stepsBetween(order)) {
    const is = isClosed(after.standing.closed, zone);
    if (is && from === null) from = number;
    if (!is && from !== null) {
      spans.push({ from, to: number });
      from = null;
    }
  }
  return from === null ? spans : [...spans, { from, to: null }];
};

const spanWords = ({ from, to }: Closed, house: House): string =>
  to === null
    ? phrase(house, '{from} to the end', { from })
    : phrase(house, '{from} to {to}', { from, to });

/** `Set 9: 4 to 9, 10 to 12`; null where the order never closes it. */
export const closedWords = (order: CheckedOrder, house: House, zone: WorkZone): string | null => {
  const spans = closedIn(order, zone);
  if (spans.length === 0) return null;
  const said = spans.map((each) => spanWords(each, house)).join(', ');
  return phrase(house, 'Set {set}: {said}', { set: order.set, said });
};

const isBelow = (floorM: number, { floor }: Pick<Gallery, 'floor'>): boolean =>
  floor.known && floor.value < floorM;

/** Every level that a brick from a gallery can come down on, by name. */
export const levelsBelow = (gallery: Gallery, house: House): readonly string[] => {
  const { galleries, rails, openings } = house;
  const { floor } = gallery;
  const below = floor.known
    ? [...galleries, ...rails].filter((each) => isBelow(floor.value, each))
    : [...galleries.filter(({ id }) => id !== gallery.id), ...rails];
  return [
    ...below.map(({ name }) => name),
    ...openings.map(({ name }) => phrase(house, 'below {name}, where it is open', { name })),
  ];
};
