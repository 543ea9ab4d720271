/** What a record of how things stand may hold. Absent means unknown, never bare or closed. */
import type { GalleryState, ItemPhase, SetState } from '#state';
import {
  ITEM_PHASES,
  KNOWLEDGE_BASES,
  PLATE_TAGS,
  RESTRAINT_KINDS,
  SERVICES,
  unknownSetState,
} from '#state';
import { metresText } from './bounds.ts';
import { envelopeOf } from './envelope.ts';
import { SETS_MAX } from './house-shape.ts';
import { PLATES_MAX } from './line-set-shape.ts';
import { list, pair, record } from './shape/collections.ts';
import { height, pull, rating } from './shape/measure.ts';
import type { ReadOf } from './shape/object.ts';
import { filled, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { checked, mapped } from './shape/shape.ts';
import { choice, count, flag, id, moment, name, remark } from './shape/words.ts';

type Interval = NonNullable<SetState['height']>;

const interval: Shape<Interval> = checked(
  mapped(pair(height, height), ([low, high]) => ({ low, high })),
  ({ low, high }, place) => {
    if (low <= high) return;
    place.faults.refuse('intervalReversed', place.path, {
      found: `${metresText(low)}, then ${metresText(high)}`,
      accepted: 'the lower height first',
    });
  },
);

/** One height where it was measured; two where the batten is somewhere between them. */
const heightOrInterval: Shape<Interval> = {
  schema: { anyOf: [height.schema, interval.schema] },
  standIn: interval.standIn,
  read: (value, place) => {
    if (Array.isArray(value)) return interval.read(value, place);
    const at = height.read(value, place);
    return { low: at, high: at };
  },
};

export const stackRun = object({
  kind: needed(id, 'Brick kind, or "spreader" for a spreader plate.'),
  count: needed(count({ min: 1, max: PLATES_MAX }), 'How many, one on the other.'),
  tag: needed(choice(PLATE_TAGS), 'pipe, show or spreader.'),
});

export const restraint = object({
  kind: needed(choice(RESTRAINT_KINDS), 'What holds.'),
  resists: needed(choice(['in', 'out', 'both']), 'Travel of the batten that it resists.'),
  rating: filled(rating, null, 'What it is rated for.'),
  from: filled(height, null, 'Lowest batten height at which it holds.'),
  to: filled(height, null, 'Highest batten height at which it holds.'),
  owner: filled(name, null, 'Who put it on.'),
  tag: filled(name, null, 'Number of its tag.'),
});

const knowledge = object({
  basis: needed(choice(KNOWLEDGE_BASES), 'How the rest of this set is known.'),
  at: filled(moment, null, 'When.'),
  by: filled(name, null, 'By whom.'),
  second: filled(name, null, 'The second person who looked.'),
});

const pullTest = object({
  out: needed(pull, 'Steady pull that moves the batten out.'),
  in: needed(pull, 'Steady pull that moves it in.'),
  height: needed(height, 'Height of the batten.'),
  at: needed(moment, 'When.'),
  by: needed(name, 'By whom.'),
});

type Phases = Readonly<Record<string, ItemPhase>>;
const phases = mapped(record(choice(ITEM_PHASES), { max: 200 }), (read: Phases) =>
  Object.entries(read).map(([item, phase]) => ({ item, phase })),
);

const setState: Shape<SetState> = object({
  height: filled(heightOrInterval, null, 'Height of the batten, or two between which it is.'),
  lock: filled(choice(['closed', 'open']), null, 'The rope lock.'),
  ring: filled(choice(['on', 'off']), null, 'The ring of the rope lock.'),
  collar: filled(choice(['secured', 'loose']), null, 'The collar on the rods.'),
  stack: filled(list(stackRun, { max: 500 }), null, 'Plates on the arbor, from the bottom up.'),
  items: filled(phases, null, 'Items by id, each with its phase.'),
  restraints: filled(list(restraint, { max: 50 }), null, 'Everything that holds the set.'),
  service: filled(choice(SERVICES), null, 'Whether the set is in use.'),
  tag: filled(
    object({
      number: needed(name, 'Number of the tag.'),
      reason: needed(remark, 'Why it hangs there.'),
    }),
    null,
    'Lock-out tag.',
  ),
  knowledge: filled(knowledge, unknownSetState.knowledge, 'How the rest of this set is known.'),
  pullTest: filled(pullTest, null, 'The last two-way pull test.'),
});

const loose = count({ min: 0, max: 100_000 });

const galleryState: Shape<GalleryState> = object({
  stock: filled(record(loose, { max: 50 }), {}, 'Loose bricks by kind; absent: not counted.'),
  reserved: filled(
    list(
      object({
        kind: needed(id, 'Brick kind.'),
        count: needed(count({ min: 1, max: 100_000 }), 'How many.'),
        for: needed(name, 'What they are kept for.'),
      }),
      { max: 200 },
    ),
    [],
    'Bricks that nobody else may take.',
  ),
  countedAt: filled(moment, null, 'When they were counted.'),
  countedBy: filled(name, null, 'By whom.'),
});

const stateFields = {
  ...envelopeOf('state'),
  house: needed(id, 'Id of the house that is recorded.'),
  demo: filled(flag, false, 'Whether it is made up for showing and learning.'),
  at: needed(moment, 'When the record was made.'),
  by: needed(name, 'Who made it.'),
  sets: filled(record(setState, { max: SETS_MAX }), {}, 'Line sets by id; absent: unknown.'),
  galleries: filled(record(galleryState, { max: 20 }), {}, 'Loading galleries by id.'),
  remarks: filled(list(remark, { max: 200 }), [], 'Remarks on the whole, one a line.'),
};

export const stateShape = object(stateFields);
export type WrittenState = ReadOf<typeof stateFields>;
