/** What a record of how things stand says of itself, of the house and of the show. */
import type { House } from '#house';
import { purchaseOf } from '#house';
import type { Show } from '#show';
import type { HouseState, SetState } from '#state';
import { boundsInOrder } from './bounds.ts';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { refuseUnknown } from './references.ts';
import { checkHouseId } from './show-checks.ts';
import { checkReachable, setById } from './travel.ts';

export const checkState = (state: HouseState, faults: Faults): void => {
  const notLater = (moment: string | null, path: string): void => {
    if (!moment || !faults.sound('at', path)) return;
    if (new Date(moment).getTime() <= new Date(state.at).getTime()) return;
    faults.refuse('laterThanRecord', path, {
      found: moment,
      accepted: `at or before ${state.at}, when the record was made`,
    });
  };
  for (const [id, set] of Object.entries(state.sets)) {
    const path = pathTo('sets', id);
    notLater(set.knowledge.at, pathTo(pathTo(path, 'knowledge'), 'at'));
    notLater(set.pullTest?.at ?? null, pathTo(pathTo(path, 'pullTest'), 'at'));
    checkSet(set, path, faults);
  }
  for (const [id, { countedAt }] of Object.entries(state.galleries)) {
    notLater(countedAt, pathTo(pathTo('galleries', id), 'countedAt'));
  }
};

const checkSet = (set: SetState, path: string, faults: Faults): void => {
  if (set.service === 'lockedOut' && set.tag === null) {
    faults.refuse('lockedOutUntagged', pathTo(path, 'tag'), {
      found: 'nothing, with service lockedOut',
      accepted: 'the number and the reason on the tag',
    });
  }
  const { by, second } = set.knowledge;
  if (by !== null && by !== '' && by === second) {
    faults.refuse('sameTwice', pathTo(pathTo(path, 'knowledge'), 'second'), {
      found: describe(second),
      accepted: `somebody other than ${by}`,
    });
  }
  for (const [index, { from, to }] of (set.restraints ?? []).entries()) {
    const here = pathTo(pathTo(path, 'restraints'), index);
    if (from === null || to === null || from === to || !faults.sound(here)) continue;
    boundsInOrder(from, to, { path: pathTo(here, 'from'), given: null, faults });
  }
};

/** Half a foot: how far a height read off at the rail may be off, stops included. */
const MEASURED = 0.15;

export const checkStateInHouse = (state: HouseState, house: House, faults: Faults): boolean => {
  if (!checkHouseId(state.houseId, house, faults)) return false;
  const sets = house.lineSets.map(({ id }) => id);
  const kinds = house.brickKinds.map(({ id }) => id);
  for (const [id, set] of Object.entries(state.sets)) {
    const path = pathTo('sets', id);
    if (refuseUnknown('setUnknown', { found: id, known: sets, path }, faults)) continue;
    checkSetInHouse(set, { path, id, house, kinds }, faults);
  }
  const galleries = house.galleries.map(({ id }) => id);
  for (const [id, { stock, reserved }] of Object.entries(state.galleries)) {
    const path = pathTo('galleries', id);
    refuseUnknown('galleryUnknown', { found: id, known: galleries, path }, faults);
    for (const kind of Object.keys(stock)) {
      const here = pathTo(pathTo(path, 'stock'), kind);
      refuseUnknown('kindUnknown', { found: kind, known: kinds, path: here }, faults);
    }
    for (const [index, { kind }] of reserved.entries()) {
      const here = pathTo(pathTo(pathTo(path, 'reserved'), index), 'kind');
      refuseUnknown('kindUnknown', { found: kind, known: kinds, path: here }, faults);
    }
  }
  return true;
};

type Spot = {
  readonly path: string;
  readonly id: string;
  readonly house: House;
  readonly kinds: readonly string[];
};

const checkSetInHouse = (
  state: SetState,
  { path, id, house, kinds }: Spot,
  faults: Faults,
): void => {
  const set = setById(house, id);
  if (!set) return;
  const measured = (height: number | undefined, here: string): void => {
    if (height === undefined || !faults.sound(here)) return;
    checkReachable(set, height, { path: here, faults, slack: MEASURED });
  };
  measured(state.height?.low, pathTo(path, 'height'));
  measured(state.height?.high, pathTo(path, 'height'));
  measured(state.pullTest?.height, pathTo(pathTo(path, 'pullTest'), 'height'));
  if (state.stack === null) return;
  const stack = pathTo(path, 'stack');
  if (purchaseOf(set.suspension) === null && state.stack.length > 0) {
    faults.refuse('bricksWithoutArbor', stack, {
      found: `plates on line set ${id}, which is ${set.suspension}`,
      accepted: 'no stack here',
    });
    return;
  }
  for (const [index, { kind, tag }] of state.stack.entries()) {
    const here = pathTo(pathTo(stack, index), 'kind');
    if (tag === 'spreader') continue;
    refuseUnknown('kindUnknown', { found: kind, known: kinds, path: here }, faults);
  }
};

/** A record may tell of things beside or on a set only as far as the show knows them. */
export const checkStateInShow = (state: HouseState, show: Show, faults: Faults): void => {
  for (const [id, { items }] of Object.entries(state.sets)) {
    const hang = show.hangs.find(({ set }) => set === id);
    const known = (hang?.items ?? []).map((item) => item.id);
    for (const { item } of items ?? []) {
      const path = pathTo(pathTo(pathTo('sets', id), 'items'), item);
      refuseUnknown('itemUnknown', { found: item, known, path }, faults);
    }
  }
};
