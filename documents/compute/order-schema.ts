/** Schemas of the inputs about the order of work on one set. */
import { z } from 'zod';
import { ITEM_PHASES, PLATE_TAGS, RESTRAINT_KINDS, SERVICES } from '#state';
import * as n from './numbers.ts';
import type { PlanInput, VerifyInput } from './order-inputs.ts';
import { bareSet, carriedItem, spreader } from './set-schemas.ts';

const STEPS_MAX = 1000;
const PLATES_MAX = 500;

const name = (about: string) => z.string().min(1).max(64).describe(about);
const itemId = name('Id of the item');
const galleryId = name('Id of the gallery');
const counts = (about: string) => z.record(n.id, n.count(0, 100_000, about)).describe(about);

const { purchase, lines, lineMassPerLength, batten, carriage, lowStop, highStop } = bareSet;
const { arborTopAtLow, wireEndAbove, battenUncertainty, carriageUncertainty } = bareSet;

const set = z.strictObject({
  id: name('What the set is called'),
  purchase,
  lines,
  lineMassPerLength,
  batten,
  carriage,
  lowStop,
  highStop,
  arborTopAtLow,
  wireEndAbove,
  battenUncertainty,
  carriageUncertainty,
  items: z.record(itemId, carriedItem).describe('All that hangs or may come to hang, by id'),
  lowStopRated: n.hold('Standing load that the low stop is rated for'),
  highStopRated: n.hold('Standing load that the high stop is rated for, arbor on its bottom stop'),
  workingHeight: n.gap('Highest batten height at which riggers work'),
  lockLimit: n.hold('What the rope lock holds'),
  hands: z
    .strictObject({
      brief: n.hold('For a moment'),
      steady: n.hold('As long as a flight takes'),
    })
    .describe('Pull on the hand line of as many people as may take it'),
  friction: z
    .strictObject({
      share: n.share('Of the weight of the batten and all on it'),
      constant: n.hold('And at the batten in any case'),
    })
    .describe('Measured, or the rule of the house'),
  panAtLow: n.gap('Height of the bottom of the pan, batten on its low stop'),
  panThickness: n.gap('Thickness of the pan'),
  usableRod: n.gap('Usable rod'),
  arborMassLimit: z.exactOptional(n.mass('The most that the arbor may weigh')),
  bricks: z
    .array(
      z.strictObject({
        id: n.id,
        mass: n.mass('Mass of one'),
        thickness: n.gap('Thickness of one'),
        uncertainty: z.exactOptional(n.massOrNone('Half width of the mass of one')),
        looksLike: z.exactOptional(
          z.array(n.id).max(20).describe('Kinds that a loader can take it for; none unless told'),
        ),
      }),
    )
    .min(1)
    .max(20)
    .describe('Kinds of brick, those of the pipe weight among them'),
  spreader,
  galleries: z
    .array(
      z.strictObject({
        id: galleryId,
        floor: n.level('Height of its floor'),
        reachLow: n.gap('Lowest plate that a loader handles, above that floor'),
        reachHigh: n.gap('Highest plate, above that floor'),
        stock: counts('Loose bricks by kind; none of a kind that is not named'),
      }),
    )
    .max(20)
    .describe('Where bricks are handled'),
});

const orNull = <T extends z.ZodType>(schema: T) => z.nullable(schema);

const restraint = z.strictObject({
  kind: z.enum(RESTRAINT_KINDS).describe('What holds'),
  resists: z.enum(['in', 'out', 'both']).describe('Travel of the batten that it resists'),
  rating: orNull(n.hold('What it is rated for; null: nobody has said, so it holds nothing')),
  from: orNull(n.gap('Lowest batten height at which it holds')),
  to: orNull(n.gap('Highest batten height at which it holds')),
  owner: orNull(name('Who put it on')),
  tag: orNull(name('Number of its tag')),
});

const zone = z.discriminatedUnion('zone', [
  z.strictObject({ zone: z.literal('run') }),
  z.strictObject({ zone: z.literal('drop'), gallery: galleryId }),
]);

const start = z.strictObject({
  height: n.gap('Batten height'),
  stack: z
    .array(
      z.strictObject({
        kind: n.id,
        count: n.count(1, PLATES_MAX, 'How many, one on the other'),
        tag: z.enum(PLATE_TAGS).describe('Pipe weight stays on; show bricks come and go'),
      }),
    )
    .max(PLATES_MAX)
    .describe('Plates on the arbor, from the bottom up'),
  items: z.record(itemId, z.enum(ITEM_PHASES)).describe('Items by id; absent: away'),
  restraints: z.array(restraint).max(50).describe('Everything else that holds the set'),
  service: z.enum(SERVICES).describe('Whether the set is in use'),
  closed: z.array(zone).max(20).describe('Zones closed to people'),
});

const acts = <A extends string>(...names: readonly [A, ...A[]]) => z.literal(names);

const step = z.discriminatedUnion('act', [
  z.strictObject({
    act: acts('attach'),
    item: itemId,
    as: z
      .enum(['attachedSlack', 'attachedResting', 'flying'])
      .describe('Lying slack on the deck, taut on its rest, or hanging'),
  }),
  z.strictObject({ act: acts('takeUp', 'rest', 'release'), item: itemId }),
  z.strictObject({
    act: acts('add', 'remove'),
    kind: n.id,
    count: n.count(1, PLATES_MAX, 'How many, one after the other'),
    gallery: galleryId,
  }),
  z.strictObject({ act: acts('fly'), to: n.gap('Batten height where it stops') }),
  z.strictObject({ act: acts('rig', 'unrig'), restraint }),
  z.strictObject({ act: acts('hangOnSteel', 'takeOffSteel') }),
  z.strictObject({ act: acts('close', 'reopen'), zone }),
  z.strictObject({
    act: acts('ease'),
    pull: n.hold('On a stop, at the batten, towards leaving it'),
    lifted: z.boolean().describe('Whether it moved'),
  }),
]);

const asked = {
  set,
  start: start.describe('How the set stands at first'),
  doubt: z.enum(['worst', 'none']).describe('Every mass at its worst, or as it is written'),
  lock: z
    .enum(['planning', 'nominal'])
    .describe(
      'Planning: people may be in the path of a fault; nominal: nobody ever is. Without ' +
        'uncertainties only doubt none with lock nominal can be asked',
    ),
};

export const plan = z.strictObject({
  ...asked,
  goal: z
    .strictObject({
      items: z.record(itemId, z.enum(['on', 'away'])).describe('The rest stays as it is'),
      bricks: counts('Show bricks by kind; none of a kind that is not named'),
      height: orNull(n.gap('Batten height; null: wherever it ends')),
      service: z.enum(['in', 'deadHung']),
    })
    .describe('How the set is to stand'),
  restraint: z
    .enum(['either', 'in', 'out', 'none'])
    .describe('What one more restraint may resist where staging alone finds no order'),
  steel: z.exactOptional(n.hold('Rating of the steel that the set is to hang on')),
  rests: z.exactOptional(
    z
      .array(itemId)
      .max(200)
      .describe('Pieces that lie on horses with their picks taut; unless told, those that tip'),
  ),
  spare: z.exactOptional(counts('Bricks that may lie on the arbor on the way only')),
  callHeights: z.exactOptional(n.length('Heights that are called are multiples of this')),
}) satisfies z.ZodType<PlanInput>;

export const verify = z.strictObject({
  ...asked,
  steps: z.array(step).max(STEPS_MAX).describe('What is done, in this order'),
}) satisfies z.ZodType<VerifyInput>;
