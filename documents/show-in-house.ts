/** What a show asks of its house: sets, brick kinds, and heights that battens reach. */
import type { House } from '#house';
import { purchaseOf } from '#house';
import type { Hang, Show } from '#show';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { refuseUnknown } from './references.ts';
import { checkHouseId } from './show-checks.ts';
import { checkReachable, setById } from './travel.ts';

/** Faults against another house would be echoes, so a show for one is told that and no more. */
export const checkShowInHouse = (show: Show, house: House, faults: Faults): void => {
  if (!checkHouseId(show.houseId, house, faults)) return;
  const known = house.lineSets.map(({ id }) => id);
  for (const [index, hang] of show.hangs.entries()) {
    const path = pathTo('hangs', index);
    const set = { found: hang.set, known, path: pathTo(path, 'set') };
    if (refuseUnknown('setUnknown', set, faults)) continue;
    checkHeights(hang, { path, house }, faults);
    checkBricks(hang, { path, house }, faults);
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
