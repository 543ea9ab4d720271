/** What a show asks of its house: sets, brick kinds, and heights that battens reach. */
import type { House, Known } from '#house';
import { purchaseOf } from '#house';
import type { Metres } from '#quantities';
import type { Hang, Show } from '#show';
import { metresText } from './bounds.ts';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { refuseUnknown } from './references.ts';
import { checkHouseId } from './show-checks.ts';
import { checkReachable, setById } from './travel.ts';

/** Hangs that fit their house: with a memory, they come again as they are. */
const fitting = new WeakMap<Hang, House>();

/** Faults against another house would be echoes, so a show for one is told that and no more. */
export const checkShowInHouse = (show: Show, house: House, faults: Faults): void => {
  if (!checkHouseId(show.houseId, house, faults)) return;
  const known = house.lineSets.map(({ id }) => id);
  for (const [index, hang] of show.hangs.entries()) {
    if (fitting.get(hang) === house) continue;
    const path = pathTo('hangs', index);
    const set = { found: hang.set, known, path: pathTo(path, 'set') };
    if (refuseUnknown('setUnknown', set, faults)) continue;
    checkHeights(hang, { path, house }, faults);
    checkPlaces(hang, { path, house }, faults);
    checkBricks(hang, { path, house }, faults);
    if (faults.count() === 0) fitting.set(hang, house);
  }
  for (const set of Object.keys(show.keptEmpty)) {
    refuseUnknown('setUnknown', { found: set, known, path: pathTo('keptEmpty', set) }, faults);
  }
  for (const [index, cue] of show.cues.entries()) {
    const path = pathTo('cues', index);
    refuseUnknown('setUnknown', { found: cue.set, known, path: pathTo(path, 'set') }, faults);
    const set = setById(house, cue.set);
    if (!set) continue;
    for (const end of ['from', 'to'] as const) {
      const here = pathTo(path, end);
      if (faults.sound(here)) checkReachable(set, cue[end], { path: here, faults });
    }
  }
};

type Spot = { readonly path: string; readonly house: House };

/** Only heights of the batten itself; others wait until it is known how far down a piece hangs. */
const checkHeights = (hang: Hang, { path, house }: Spot, faults: Faults): void => {
  const set = setById(house, hang.set);
  if (!set) return;
  for (const [index, { height, reference }] of hang.trims.entries()) {
    const here = pathTo(pathTo(pathTo(path, 'trims'), index), 'height');
    if (height.known && reference === 'batten') {
      checkReachable(set, height.value, { path: here, faults });
    }
  }
  if (hang.deadHungAt?.known) {
    checkReachable(set, hang.deadHungAt.value, { path: pathTo(path, 'deadHungAt'), faults });
  }
};

/** The same length may be typed in feet for the batten and in inches for what hangs on it. */
const SAME_PLACE_M = 1e-9;

type Ends = { readonly left: Known<Metres>; readonly right: Known<Metres> };

const checkOnBatten = (x: number, { left, right }: Ends, path: string, faults: Faults): void => {
  if (!faults.sound(path)) return;
  const isPastLeft = left.known && x < left.value - SAME_PLACE_M;
  const isPastRight = right.known && x > right.value + SAME_PLACE_M;
  if (!isPastLeft && !isPastRight) return;
  faults.refuse('offBatten', path, {
    found: metresText(x),
    accepted: `a place on the batten, ${boundsText(left, right)}`,
  });
};

const boundsText = (left: Known<Metres>, right: Known<Metres>): string =>
  [
    left.known ? `from ${metresText(left.value)}` : '',
    right.known ? `to ${metresText(right.value)}` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');

/** Only where the house knows how long the batten is; an end that nobody measured refuses none. */
const checkPlaces = (hang: Hang, { path, house }: Spot, faults: Faults): void => {
  const batten = setById(house, hang.set)?.batten;
  if (batten === undefined) return;
  for (const [index, { placement, takeoff }] of hang.items.entries()) {
    const item = pathTo(pathTo(path, 'items'), index);
    const here = pathTo(item, 'placement');
    if (placement?.at === 'spread') {
      checkOnBatten(placement.from, batten, pathTo(here, 'from'), faults);
      checkOnBatten(placement.to, batten, pathTo(here, 'to'), faults);
    }
    for (const [point, x] of (placement?.at === 'points' ? placement.xs : []).entries()) {
      checkOnBatten(x, batten, pathTo(pathTo(here, 'points'), point), faults);
    }
    for (const [unit, { xs }] of (takeoff.by === 'units' ? takeoff.units : []).entries()) {
      const row = pathTo(pathTo(pathTo(pathTo(item, 'takeoff'), 'units'), unit), 'xs');
      for (const [place, x] of (xs ?? []).entries()) {
        checkOnBatten(x, batten, pathTo(row, place), faults);
      }
    }
  }
};

const checkBricks = (hang: Hang, { path, house }: Spot, faults: Faults): void => {
  if (hang.bricks === null) return;
  const set = setById(house, hang.set);
  const here = pathTo(path, 'bricks');
  if (set && purchaseOf(set.suspension) === null) {
    faults.refuse('bricksWithoutArbor', here, {
      found: `bricks on line set ${set.id}, which is ${set.suspension}`,
      accepted: 'no bricks here',
    });
    return;
  }
  const known = house.brickKinds.map(({ id }) => id);
  for (const kind of Object.keys(hang.bricks.counts)) {
    const at = pathTo(pathTo(here, 'counts'), kind);
    if (refuseUnknown('kindUnknown', { found: kind, known, path: at }, faults)) continue;
    if (house.brickKinds.find(({ id }) => id === kind)?.serves.show !== false) continue;
    faults.refuse('notShowKind', at, {
      found: describe(kind),
      accepted: 'a kind that serves show in the house',
    });
  }
};

/** Hangs in the rail order of the house; without it, or for a set it lacks, that of the file. */
export const inRailOrder = (hangs: readonly Hang[], house: House | undefined): readonly Hang[] => {
  if (!house) return hangs;
  const order = new Map(house.lineSets.map(({ id }, index) => [id, index]));
  const last = house.lineSets.length;
  return [...hangs].sort(
    (one, other) => (order.get(one.set) ?? last) - (order.get(other.set) ?? last),
  );
};
