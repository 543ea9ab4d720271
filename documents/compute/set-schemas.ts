/** Schemas of the inputs about one set: its balance, its bricks, its pull test, its reach. */
import { z } from 'zod';
import type { BalanceInput, BricksInput, MixInput, PullTestInput, ReachInput } from './inputs.ts';
import * as n from './numbers.ts';

const uncertainty = z.exactOptional(n.massOrNone('Half width of what the mass may be off by'));

const hung = {
  mass: n.massOrNone('Mass of the piece'),
  drop: n.gap('Height of the piece, top to lowest point'),
  pick: n.gap('Batten to the top of the piece'),
  uncertainty,
};

const loom = {
  massPerLength: n.massPerLength('Mass of the loom for each length'),
  length: n.length('Full length of the loom'),
  uncertainty,
};

export const carriedItem = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('clear'),
    mass: hung.mass,
    drop: z.exactOptional(hung.drop),
    pick: z.exactOptional(hung.pick),
    uncertainty,
  }),
  z.strictObject({
    kind: z.literal('cloth'),
    mass: n.massOrNone('Mass of the cloth without its hem weight'),
    drop: n.length('Height of the cloth'),
    tie: n.gap('Batten to the top of the cloth'),
    hem: n.massOrNone('Pipe or chain in the hem, arriving all at once'),
    uncertainty,
    hemUncertainty: z.exactOptional(n.massOrNone('Half width of the mass in the hem')),
  }),
  z.strictObject({
    kind: z.literal('tipping'),
    ...hung,
    drop: n.length('Height of the piece'),
    centre: n.share('Centre of gravity above the foot, of the height'),
  }),
  z.strictObject({ kind: z.literal('standing'), ...hung, drop: n.length('Height of the piece') }),
  z.strictObject({
    kind: z.literal('loom'),
    ...loom,
    fixedAt: n.gap('Height of its fixed end above the deck'),
  }),
  z.strictObject({ kind: z.literal('deckLoom'), ...loom }),
]);

export const bareSet = {
  purchase: n.purchase,
  lines: n.count(1, 40, 'Number of lift lines'),
  lineMassPerLength: n.massPerLength('Mass of one lift line for each length'),
  batten: n.massOrNone('Batten with its fittings'),
  carriage: n.massOrNone('Arbor without bricks'),
  lowStop: n.gap('Batten height on the low stop'),
  highStop: n.gap('Batten height on the high stop'),
  arborTopAtLow: n.gap('Height where the lines meet the arbor, batten on its low stop'),
  wireEndAbove: n.gap('Lower end of the wire above the batten'),
  items: z.array(carriedItem).max(200).describe('What hangs on the batten'),
  battenUncertainty: z.exactOptional(n.massOrNone('Half width of the mass of the batten')),
  carriageUncertainty: z.exactOptional(n.massOrNone('Half width of the mass of the carriage')),
  brickUncertainty: z.exactOptional(n.massOrNone('Half width of the mass of all bricks')),
  friction: z.exactOptional(n.hold('Friction at the batten')),
  handLinePerBatten: z.exactOptional(n.handLine),
};

export const balance = z.strictObject({
  ...bareSet,
  bricks: n.massOrNone('All bricks and plates on the arbor, pipe weight among them'),
  heights: z.array(n.gap('Batten height')).max(10_000).describe('Where the imbalance is asked'),
}) satisfies z.ZodType<BalanceInput>;

const brick = z.strictObject({
  id: n.id,
  mass: n.mass('Mass of one'),
  thickness: n.gap('Thickness of one'),
  stock: n.count(0, 100_000, 'How many there are'),
});

export const spreader = z.exactOptional(
  z.strictObject({
    mass: n.massOrNone('Mass of one plate'),
    thickness: n.gap('Thickness of one plate'),
    every: n.length('Thickness of bricks between two plates'),
    rule: z.enum(['floor', 'ceil']).describe('How plates are counted from that thickness'),
  }),
);

const stack = {
  bricks: z.array(brick).min(1).max(20).describe('Kinds of brick'),
  stackHeight: n.gap('Usable rod'),
  spreader,
};

export const bricks = z.strictObject({
  target: n.massOrNone('Whole arbor wanted'),
  carriage: n.massOrNone('Arbor without bricks and plates'),
  ...stack,
  tolerance: z.exactOptional(n.massOrNone('How far off the target an answer may be')),
}) satisfies z.ZodType<BricksInput>;

export const mix = z.strictObject({
  balance: z.strictObject(bareSet),
  from: n.gap('Lowest batten height that counts'),
  to: n.gap('Highest batten height that counts'),
  ...stack,
  holds: z.exactOptional(
    z.strictObject({
      in: n.hold('What holds the batten against coming in'),
      out: n.hold('What holds the batten against going out'),
    }),
  ),
}) satisfies z.ZodType<MixInput>;

export const pullTest = z.strictObject({
  out: n.pull('Steady pull on the hand line that moves the batten out'),
  in: n.pull('Steady pull that moves it in; negative where it goes by itself'),
  handLinePerBatten: z.exactOptional(n.handLine),
  expectedImbalance: z.exactOptional(n.pull('What the take-off says, batten heavy positive')),
  itemMass: z.exactOptional(n.mass('Mass of the item that the test may correct')),
  carriedShare: z.exactOptional(
    z.number().gt(0).max(1).describe('Part of that item that hangs at the height of the test'),
  ),
}) satisfies z.ZodType<PullTestInput>;

export const reach = z.strictObject({
  lowStop: n.gap('Batten height on the low stop'),
  highStop: z.exactOptional(n.gap('Batten height on the high stop')),
  panAtLow: n.gap('Height of the bottom of the pan, batten on its low stop'),
  panThickness: n.gap('Thickness of the pan'),
  purchase: n.purchase,
  stack: n.gap('Thickness of the plates on the arbor'),
  galleryFloor: n.gap('Height of the floor of the gallery'),
  reachLow: n.gap('Lowest plate a loader can handle, above that floor'),
  reachHigh: n.gap('Highest plate a loader can handle, above that floor'),
}) satisfies z.ZodType<ReachInput>;
