/** What the numbers of an order of work say of one another, where each is right by itself. */
import { boundsInOrder, metresText } from '../bounds.ts';
import type { Faults } from '../faults.ts';
import { pathTo } from '../json.ts';
import { refuseDuplicates, refuseUnknown } from '../references.ts';
import type {
  OrderSetInput,
  PlanInput,
  RestraintInput,
  StandingInput,
  StepInput,
  VerifyInput,
  ZoneInput,
} from './order-inputs.ts';

export const checkPlan = (input: PlanInput, faults: Faults): void => {
  const plant = { set: input.set, faults };
  checkAsked(input, faults);
  const { goal } = input;
  refuseItems(Object.keys(goal.items), 'goal.items', plant);
  refuseKinds(Object.keys(goal.bricks), 'goal.bricks', plant);
  refuseKinds(Object.keys(input.spare ?? {}), 'spare', plant);
  for (const [index, item] of (input.rests ?? []).entries()) {
    refuseItem(item, pathTo('rests', index), plant);
  }
  if (goal.height !== null) checkHeight(goal.height, 'goal.height', plant);
};

export const checkVerify = (input: VerifyInput, faults: Faults): void => {
  const plant = { set: input.set, faults };
  checkAsked(input, faults);
  for (const [index, step] of input.steps.entries()) {
    checkStep(step, pathTo('steps', index), plant);
  }
};

type Plant = { readonly set: OrderSetInput; readonly faults: Faults };

const checkAsked = (
  { set, start, doubt, lock }: Pick<PlanInput, 'set' | 'start' | 'doubt' | 'lock'>,
  faults: Faults,
): void => {
  checkSet(set, faults);
  if (doubt === 'worst' || lock === 'planning') checkDoubts(set, faults);
  checkStart(start, { set, faults });
};

const checkSet = (set: OrderSetInput, faults: Faults): void => {
  if (set.lowStop >= set.highStop) {
    faults.refuse('stopsReversed', 'set.lowStop', {
      found: `${metresText(set.lowStop)}, with the high stop at ${metresText(set.highStop)}`,
      accepted: 'a low stop below the high stop',
    });
  }
  refuseDuplicates(set.bricks, 'set.bricks', faults);
  refuseDuplicates(set.galleries, 'set.galleries', faults);
  for (const [index, { looksLike = [] }] of set.bricks.entries()) {
    const path = pathTo(pathTo('set.bricks', index), 'looksLike');
    for (const [at, kind] of looksLike.entries()) {
      refuseKind(kind, pathTo(path, at), { set, faults });
    }
  }
  for (const [index, { reachLow, reachHigh, stock }] of set.galleries.entries()) {
    const path = pathTo('set.galleries', index);
    refuseKinds(Object.keys(stock), pathTo(path, 'stock'), { set, faults });
    if (reachLow < reachHigh) continue;
    faults.refuse('reachReversed', pathTo(path, 'reachLow'), {
      found: `${metresText(reachLow)}, with reachHigh ${metresText(reachHigh)}`,
      accepted: 'a lowest reach below the highest one',
    });
  }
};

/**
 * With every mass at its worst, one of which nobody has said how far off it is has no worst; and
 * with people in the path of a fault, an item off by its tolerance is one of the faults.
 */
const checkDoubts = (set: OrderSetInput, faults: Faults): void => {
  const needed = (uncertainty: number | undefined, path: string): void => {
    if (uncertainty !== undefined) return;
    faults.refuse('fieldMissing', path, {
      found: 'nothing, with masses to be tried at their worst, or people in the path of a fault',
      accepted: 'what it may be off by, kg; 0 where it is exact',
    });
  };
  needed(set.battenUncertainty, 'set.battenUncertainty');
  needed(set.carriageUncertainty, 'set.carriageUncertainty');
  for (const [index, { uncertainty }] of set.bricks.entries()) {
    needed(uncertainty, pathTo(pathTo('set.bricks', index), 'uncertainty'));
  }
  for (const [id, item] of Object.entries(set.items)) {
    const path = pathTo('set.items', id);
    needed(item.uncertainty, pathTo(path, 'uncertainty'));
    if (item.kind === 'cloth' && item.hem > 0) {
      needed(item.hemUncertainty, pathTo(path, 'hemUncertainty'));
    }
  }
};

const checkStart = (start: StandingInput, plant: Plant): void => {
  checkHeight(start.height, 'start.height', plant);
  refuseItems(Object.keys(start.items), 'start.items', plant);
  for (const [index, { kind, tag }] of start.stack.entries()) {
    const path = pathTo(pathTo('start.stack', index), 'kind');
    if (tag !== 'spreader') refuseKind(kind, path, plant);
  }
  for (const [index, restraint] of start.restraints.entries()) {
    checkRestraint(restraint, pathTo('start.restraints', index), plant);
  }
  for (const [index, zone] of start.closed.entries()) {
    checkZone(zone, pathTo('start.closed', index), plant);
  }
};

const checkStep = (step: StepInput, path: string, plant: Plant): void => {
  if ('item' in step) refuseItem(step.item, pathTo(path, 'item'), plant);
  if ('kind' in step) refuseKind(step.kind, pathTo(path, 'kind'), plant);
  if ('gallery' in step) refuseGallery(step.gallery, pathTo(path, 'gallery'), plant);
  if ('zone' in step) checkZone(step.zone, pathTo(path, 'zone'), plant);
  if ('to' in step) checkHeight(step.to, pathTo(path, 'to'), plant);
  if ('restraint' in step) checkRestraint(step.restraint, pathTo(path, 'restraint'), plant);
};

const checkRestraint = ({ from, to }: RestraintInput, path: string, { faults }: Plant): void => {
  if (from === null || to === null || from === to) return;
  boundsInOrder(from, to, { path: pathTo(path, 'from'), given: null, faults });
};

/** A micrometre: a stop holds a batten that is on it, so a height next to it will not do. */
const SAME_M = 1e-6;

const checkHeight = (
  height: number,
  path: string,
  { set: { lowStop, highStop }, faults }: Plant,
): void => {
  if (height >= lowStop - SAME_M && height <= highStop + SAME_M) return;
  faults.refuse('outsideTravel', path, {
    found: metresText(height),
    accepted: `a batten height from ${metresText(lowStop)} to ${metresText(highStop)}`,
  });
};

const checkZone = (zone: ZoneInput, path: string, plant: Plant): void => {
  if (zone.zone === 'drop') refuseGallery(zone.gallery, pathTo(path, 'gallery'), plant);
};

const refuseItem = (found: string, path: string, { set, faults }: Plant): void => {
  refuseUnknown('itemUnknown', { found, known: Object.keys(set.items), path }, faults);
};

const refuseItems = (ids: readonly string[], path: string, plant: Plant): void => {
  for (const id of ids) refuseItem(id, pathTo(path, id), plant);
};

const refuseKind = (found: string, path: string, { set, faults }: Plant): void => {
  const known = set.bricks.map(({ id }) => id);
  refuseUnknown('kindUnknown', { found, known, path }, faults);
};

const refuseKinds = (kinds: readonly string[], path: string, plant: Plant): void => {
  for (const kind of kinds) refuseKind(kind, pathTo(path, kind), plant);
};

const refuseGallery = (found: string, path: string, { set, faults }: Plant): void => {
  const known = set.galleries.map(({ id }) => id);
  refuseUnknown('galleryUnknown', { found, known, path }, faults);
};
