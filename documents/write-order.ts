/** An order of work as a document: heights and forces as text that reads back to the same value. */
import { unreachable } from '#outcome';
import type { UnitSystem } from '#quantities';
import { FOOT, POUND_FORCE } from '#quantities';
import type { Restraint, Standing, Step } from '#state';
import type { Json, JsonObject } from './json.ts';
import { CURRENT_VERSION } from './migrations.ts';
import type { OrderOfWork } from './order-of-work.ts';

export const orderDocument = (order: OrderOfWork, units: UnitSystem): JsonObject => ({
  format: 'counterpoise-order',
  version: CURRENT_VERSION,
  house: order.houseId,
  show: order.showId,
  set: order.set,
  ...(order.start === null ? {} : { start: startOf(order.start, units) }),
  steps: order.steps.map((step) => stepOf(step, units)),
});

const startOf = (start: Standing, units: UnitSystem): Json => ({
  height: lengthText(start.height, units),
  stack: start.stack.map(({ kind, count, tag }) => ({ kind, count, tag })),
  items: { ...start.items },
  restraints: start.restraints.map((restraint) => restraintOf(restraint, units)),
  service: start.service,
  ...(start.closed.length > 0 ? { closed: start.closed.map((zone) => ({ ...zone })) } : {}),
});

const stepOf = (step: Step, units: UnitSystem): Json => {
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'add':
    case 'remove':
    case 'hangOnSteel':
    case 'takeOffSteel':
      return { ...step };
    case 'fly':
      return { act: step.act, to: lengthText(step.to, units) };
    case 'rig':
    case 'unrig':
      return { act: step.act, restraint: restraintOf(step.restraint, units) };
    case 'close':
    case 'reopen':
      return { act: step.act, ...step.zone };
    case 'ease':
      return { act: step.act, pull: forceText(step.pull, units), lifted: step.lifted };
    default:
      return unreachable(step);
  }
};

const restraintOf = (
  { kind, resists, rating, from, to, owner, tag }: Restraint,
  units: UnitSystem,
): Json => ({
  kind,
  resists,
  ...(rating === null ? {} : { rating: forceText(rating, units) }),
  ...(from === null ? {} : { from: lengthText(from, units) }),
  ...(to === null ? {} : { to: lengthText(to, units) }),
  ...(owner === null ? {} : { owner }),
  ...(tag === null ? {} : { tag }),
});

const lengthText = (si: number, units: UnitSystem): string =>
  measureText(si, units, { size: FOOT, unit: 'ft', siUnit: 'm' });

const forceText = (si: number, units: UnitSystem): string =>
  measureText(si, units, { size: POUND_FORCE, unit: 'lbf', siUnit: 'N' });

type Unit = { readonly size: number; readonly unit: string; readonly siUnit: string };

/** A thousandth of a micrometre, or of a micronewton: bits of a conversion and nothing else. */
const SAME = 1e-9;

/** In ft or lbf where few digits say it all; else in SI, which loses none. */
const measureText = (si: number, units: UnitSystem, { size, unit, siUnit }: Unit): string => {
  if (units === 'customary') {
    for (const digits of [0, 1, 2, 3, 4]) {
      const text = (si / size).toFixed(digits);
      if (Math.abs(Number(text) * size - si) <= SAME) return `${text} ${unit}`;
    }
  }
  return `${String(si).includes('e') ? si.toFixed(12) : si} ${siUnit}`;
};
