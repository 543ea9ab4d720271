/** What a show document may hold, field by field; items have a file of their own. */
import type { HangFamily, PlannedBricks, Trim } from '#show';
import { HANG_FAMILIES } from '#show';
import { envelopeOf } from './envelope.ts';
import { SETS_MAX } from './house-shape.ts';
import { item } from './item-shape.ts';
import { PLATES_MAX } from './line-set-shape.ts';
import { list, record } from './shape/collections.ts';
import * as known from './shape/known-values.ts';
import { orUnknown } from './shape/known-values.ts';
import { cueDuration, height } from './shape/measure.ts';
import type { ReadOf } from './shape/object.ts';
import { filled, leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { remembered } from './shape/shape.ts';
import { choice, count, flag, id, name, remark } from './shape/words.ts';

const GIVEN = { given: true };
const ITEMS_MAX = 200;

const trim: Shape<Trim> = object(
  {
    name: needed(name, 'Name of the height: in, out, playing.'),
    height: orUnknown(known.knownHeight, 'The height.'),
    reference: needed(
      choice(['batten', 'lowestPoint', 'lens']),
      'What was measured: batten, lowestPoint or lens.',
    ),
  },
  GIVEN,
);

const plannedBricks: Shape<PlannedBricks> = object({
  counts: needed(record(count({ min: 0, max: PLATES_MAX }), { max: 50 }), 'Show bricks by kind.'),
  reason: needed(remark, 'Why a person fixed them.'),
});

const hangFields = {
  set: needed(id, 'Line set on which it hangs.'),
  name: needed(name, 'What hangs there, in words.'),
  family: needed(choice<HangFamily>(HANG_FAMILIES), 'soft, hard, electric or other.'),
  halfDepth: orUnknown(known.knownGap, 'Depth up and down stage of the centre of the batten.'),
  trims: filled(list(trim, { max: 50 }), [], 'Its heights.'),
  items: filled(list(item, { max: ITEMS_MAX }), [], 'What hangs, item by item.'),
  bricks: filled(plannedBricks, null, 'Show bricks fixed by a person; absent: worked out.'),
  deadHungAt: filled(known.knownHeight, null, 'Height at which steel holds it, not its arbor.'),
  coupledWith: filled(list(id, { max: 20 }), [], 'Sets that must move with it.'),
  remark: leftOut(remark, 'Anything else worth knowing.'),
};

const hang = remembered(object(hangFields, GIVEN));

const cue = object({
  number: needed(id, 'Number of the cue.'),
  set: needed(id, 'Line set that it moves.'),
  from: needed(height, 'Height of the batten before.'),
  to: needed(height, 'Height of the batten after.'),
  duration: filled(cueDuration, null, 'Time from start to stop.'),
  releases: filled(flag, false, 'Whether something leaves the set in this cue.'),
  note: leftOut(remark, 'What the operator should know.'),
});

const showFields = {
  ...envelopeOf('show'),
  id: needed(id, 'Id of the show.'),
  name: needed(name, 'Name of the show.'),
  house: needed(id, 'Id of the house in which it hangs.'),
  demo: filled(flag, false, 'Whether it is made up for showing and learning.'),
  keptEmpty: filled(record(remark, { max: SETS_MAX }), {}, 'Sets kept empty, and why.'),
  hangs: filled(list(hang, { max: SETS_MAX }), [], 'What hangs on each set.'),
  cues: filled(remembered(list(cue, { max: 2000 })), [], 'Moves in the running.'),
  remarks: filled(list(remark, { max: 200 }), [], 'Remarks on the whole, one a line.'),
};

export const showShape = object(showFields, GIVEN);
export type WrittenShow = ReadOf<typeof showFields>;
