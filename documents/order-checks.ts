/** Whether an order speaks of things that house, show and set have. It judges no step. */
import type { House, LineSet } from '#house';
import { purchaseOf } from '#house';
import type { Show } from '#show';
import type { Restraint, Step, WorkZone } from '#state';
import { boundsInOrder } from './bounds.ts';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import type { OrderOfWork } from './order-of-work.ts';
import { refuseUnknown } from './references.ts';
import { checkHouseId } from './show-checks.ts';
import { checkReachable, setById } from './travel.ts';

export const checkOrder = ({ start, steps }: OrderOfWork, faults: Faults): void => {
  for (const [index, restraint] of (start?.restraints ?? []).entries()) {
    checkBounds(restraint, pathTo('start.restraints', index), faults);
  }
  for (const [index, step] of steps.entries()) {
    if (step.act !== 'rig' && step.act !== 'unrig') continue;
    checkBounds(step.restraint, pathTo(pathTo('steps', index), 'restraint'), faults);
  }
};

const checkBounds = ({ from, to }: Restraint, path: string, faults: Faults): void => {
  if (from === null || to === null || from === to || !faults.sound(path)) return;
  boundsInOrder(from, to, { path: pathTo(path, 'from'), given: null, faults });
};

/** Faults against another house would be echoes, so an order for one is told that and no more. */
export const checkOrderInHouse = (order: OrderOfWork, house: House, faults: Faults): boolean => {
  if (!checkHouseId(order.houseId, house, faults)) return false;
  const known = house.lineSets.map(({ id }) => id);
  if (refuseUnknown('setUnknown', { found: order.set, known, path: 'set' }, faults)) return false;
  const set = setById(house, order.set);
  if (set === undefined) return false;
  if (purchaseOf(set.suspension) === null) {
    faults.refuse('setWithoutArbor', 'set', {
      found: `line set ${set.id}, which is ${set.suspension}`,
      accepted: 'a set of single or double purchase',
    });
    return false;
  }
  const plant: Plant = { house, set, faults };
  checkStart(order, plant);
  for (const [index, step] of order.steps.entries()) {
    checkStep(step, pathTo('steps', index), plant);
  }
  return true;
};

type Plant = { readonly house: House; readonly set: LineSet; readonly faults: Faults };

const checkStart = ({ start }: OrderOfWork, plant: Plant): void => {
  if (start === null) return;
  checkHeight(start.height, 'start.height', plant);
  for (const [index, { kind, tag }] of start.stack.entries()) {
    const path = pathTo(pathTo('start.stack', index), 'kind');
    if (tag !== 'spreader') checkKind(kind, path, plant);
  }
  for (const [index, zone] of start.closed.entries()) {
    checkZone(zone, pathTo('start.closed', index), plant);
  }
};

const checkStep = (step: Step, path: string, plant: Plant): void => {
  if (step.act === 'fly') checkHeight(step.to, pathTo(path, 'to'), plant);
  if (step.act === 'close' || step.act === 'reopen') checkZone(step.zone, path, plant);
  if (step.act !== 'add' && step.act !== 'remove') return;
  checkGallery(step.gallery, pathTo(path, 'gallery'), plant);
  const isKnown = checkKind(step.kind, pathTo(path, 'kind'), plant);
  if (step.act === 'add' && isKnown) checkServes(step.kind, pathTo(path, 'kind'), plant);
};

const checkHeight = (heightM: number, path: string, { set, faults }: Plant): void => {
  if (faults.sound(path)) checkReachable(set, heightM, { path, faults });
};

const checkKind = (found: string, path: string, { house, faults }: Plant): boolean => {
  const known = house.brickKinds.map(({ id }) => id);
  return found !== '' && !refuseUnknown('kindUnknown', { found, known, path }, faults);
};

/** What an order puts on is show weight: pipe weight stays on the arbor. */
const checkServes = (found: string, path: string, { house, faults }: Plant): void => {
  if (house.brickKinds.find(({ id }) => id === found)?.serves.show !== false) return;
  faults.refuse('notShowKind', path, {
    found: describe(found),
    accepted: 'a kind that serves show in the house',
  });
};

const checkGallery = (found: string, path: string, { house, faults }: Plant): void => {
  const known = house.galleries.map(({ id }) => id);
  refuseUnknown('galleryUnknown', { found, known, path }, faults);
};

const checkZone = (zone: WorkZone, path: string, plant: Plant): void => {
  if (zone.zone === 'drop') checkGallery(zone.gallery, pathTo(path, 'gallery'), plant);
};

export const checkOrderInShow = (order: OrderOfWork, show: Show, faults: Faults): void => {
  if (order.showId !== '' && order.showId !== show.id) {
    faults.refuse('showOther', 'show', {
      found: describe(order.showId),
      accepted: `${describe(show.id)}, the show that it is read with`,
    });
    return;
  }
  const hang = show.hangs.find(({ set }) => set === order.set);
  const known = (hang?.items ?? []).map(({ id }) => id);
  for (const item of Object.keys(order.start?.items ?? {})) {
    const path = pathTo('start.items', item);
    refuseUnknown('itemUnknown', { found: item, known, path }, faults);
  }
  for (const [index, step] of order.steps.entries()) {
    if (!('item' in step)) continue;
    const path = pathTo(pathTo('steps', index), 'item');
    refuseUnknown('itemUnknown', { found: step.item, known, path }, faults);
  }
};
