/** An order of work as a document: heights and forces as text that reads back to the same value. */
import { unreachable } from '#outcome';
import type { UnitSystem } from '#quantities';
import type { Standing, Step } from '#state';
import type { Json, JsonObject } from './json.ts';
import { CURRENT_VERSION } from './migrations.ts';
import type { OrderOfWork } from './order-of-work.ts';
import { forceText, lengthText, restraintOf } from './write-measure.ts';

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
