/** What an order of work may hold. Nothing in it has a default but the zones that nobody closed. */
import type { Standing, Step, WorkZone } from '#state';
import { ITEM_PHASES, SERVICES } from '#state';
import { envelopeOf } from './envelope.ts';
import { list, only, record, variant } from './shape/collections.ts';
import { effort, height } from './shape/measure.ts';
import type { ReadOf } from './shape/object.ts';
import { filled, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { mapped } from './shape/shape.ts';
import { choice, count, flag, id } from './shape/words.ts';
import { restraint, stackRun } from './state-shape.ts';

/** Far more than a day of work on one set. */
const STEPS_MAX = 1000;
/** The most that one person counts aloud before somebody counts again. */
const HANDLED_MAX = 500;

const ITEM = needed(id, 'Id of the item, as in the show.');
const GALLERY = needed(id, 'Loading gallery below which nobody may be.');

const zone: Shape<WorkZone> = variant('zone', {
  run: object({ zone: needed(only('run'), 'Where batten and arbor run.') }),
  drop: object({
    zone: needed(only('drop'), 'Where a brick falls that slips at a gallery.'),
    gallery: GALLERY,
  }),
});

/** The zone of a step stands beside its act, not in an object of its own. */
const zoneStep = <A extends 'close' | 'reopen'>(named: A): Shape<Step & { readonly act: A }> => {
  const act = needed(only(named), 'A marshal keeps people out, or lets them in again.');
  const shape = variant('zone', {
    run: object({ act, zone: needed(only('run'), 'Where batten and arbor run.') }),
    drop: object({
      act,
      zone: needed(only('drop'), 'Where a brick falls that slips at a gallery.'),
      gallery: GALLERY,
    }),
  });
  return mapped(shape, ({ act: done, ...rest }) => ({ act: done, zone: rest }));
};

const bricksStep = <A extends 'add' | 'remove'>(act: A) =>
  object({
    act: needed(only(act), 'Bricks onto the top of the stack, or off it.'),
    kind: needed(id, 'Brick kind.'),
    count: needed(count({ min: 1, max: HANDLED_MAX }), 'How many, one after the other.'),
    gallery: needed(id, 'Loading gallery from which they are handled.'),
  });

const restraintStep = <A extends 'rig' | 'unrig'>(act: A) =>
  object({
    act: needed(only(act), 'Something that holds the set goes on, or comes off.'),
    restraint: needed(restraint, 'What holds, which way, how much and where.'),
  });

const step: Shape<Step> = variant('act', {
  attach: object({
    act: needed(only('attach'), 'Onto the batten.'),
    item: ITEM,
    as: needed(
      choice(['attachedSlack', 'attachedResting', 'flying']),
      'Lying slack on the deck, taut on its rest, or hanging.',
    ),
  }),
  takeUp: object({ act: needed(only('takeUp'), 'Picks are drawn tight.'), item: ITEM }),
  rest: object({ act: needed(only('rest'), 'Set down on its rest.'), item: ITEM }),
  release: object({ act: needed(only('release'), 'Off the batten.'), item: ITEM }),
  add: bricksStep('add'),
  remove: bricksStep('remove'),
  fly: object({
    act: needed(only('fly'), 'Unlock, move, stop, lock.'),
    to: needed(height, 'Height of the batten where it stops.'),
  }),
  rig: restraintStep('rig'),
  unrig: restraintStep('unrig'),
  hangOnSteel: object({ act: needed(only('hangOnSteel'), 'Hung on steel, dead-hung.') }),
  takeOffSteel: object({ act: needed(only('takeOffSteel'), 'Let off its steel.') }),
  close: zoneStep('close'),
  reopen: zoneStep('reopen'),
  ease: object({
    act: needed(only('ease'), 'On a stop: unlocked and pulled towards leaving it.'),
    pull: needed(effort, 'How hard it was pulled.'),
    lifted: needed(flag, 'Whether it moved.'),
  }),
});

const start: Shape<Standing> = object({
  height: needed(height, 'Height of the batten.'),
  stack: needed(list(stackRun, { max: 500 }), 'Plates on the arbor, from the bottom up.'),
  items: needed(record(choice(ITEM_PHASES), { max: 200 }), 'Items by id; absent: away.'),
  restraints: needed(list(restraint, { max: 50 }), 'Everything that holds the set.'),
  service: needed(choice(SERVICES), 'Whether the set is in use.'),
  closed: filled(list(zone, { max: 20 }), [], 'Zones closed to people; absent: none is.'),
});

const orderFields = {
  ...envelopeOf('order'),
  house: needed(id, 'Id of the house.'),
  show: needed(id, 'Id of the show.'),
  set: needed(id, 'Line set that is worked on.'),
  start: filled(start, null, 'How the set stands at first; absent: as the record has it.'),
  steps: needed(list(step, { max: STEPS_MAX }), 'What is done, in this order.'),
};

export const orderShape = object(orderFields);
export type WrittenOrder = ReadOf<typeof orderFields>;
