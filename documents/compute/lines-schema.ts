/** Schemas of the inputs about lines and blocks, and about what the building carries. */
import { z } from 'zod';
import { BEARINGS, TERMINATIONS } from '#house';
import type { LinesInput, TotalsInput } from './lines-inputs.ts';
import { CONSTRUCTIONS } from './lines-inputs.ts';
import * as n from './numbers.ts';

const id = (about: string) => z.string().min(1).max(32).describe(about);

const cable = z.strictObject({
  diameter: n.length('Diameter of the rope'),
  breakingStrength: n.force('Breaking strength of the catalogue, before any end or bend'),
  termination: z.enum(TERMINATIONS).describe('How the end of the line is made'),
  smallestSheave: n.length('Diameter of the smallest sheave that the line runs over'),
  axialStiffness: z.exactOptional(n.stiffForce('EA of the rope, force over strain')),
  construction: z.exactOptional(
    z.enum(CONSTRUCTIONS).describe('Gives EA by published stretch factors where EA is not given'),
  ),
});

const line = z.strictObject({
  x: n.across('Where the line meets the batten'),
  tension: n.hold('Tension at the batten'),
  muleBlocks: z.exactOptional(
    z
      .array(
        z.strictObject({ x: n.across('Of the block'), z: n.gap('Of the block above the deck') }),
      )
      .max(10)
      .describe('Blocks between loft block and head block, from the loft block on'),
  ),
  fleetOffset: z.exactOptional(
    n.across('How far up- or downstage of the plane of its loft sheave the next block is'),
  ),
});

const moving = {
  mass: n.mass('What moves'),
  stiffness: n.spring('Stiffness of all lines that take it together'),
};

const move = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('steady'),
    mass: moving.mass,
    acceleration: n.acceleration('Rate of the start going out or of the stop coming in'),
  }),
  z.strictObject({
    kind: z.literal('suddenStop'),
    ...moving,
    speed: n.speed('At which the line stops, or goes tight'),
  }),
  z.strictObject({
    kind: z.literal('drop'),
    ...moving,
    drop: n.gap('Free fall before the line goes tight'),
  }),
]);

export const lines = z.strictObject({
  purchase: n.purchase,
  lines: z.array(line).min(1).max(40).describe('The lines of one set, from stage right'),
  headX: n.across('Where the head block is'),
  loftHeight: n.gap('Height of the lines over the loft blocks'),
  headHeight: n.gap('Height of the lines over the head block'),
  wireEndHeight: n.gap('Height of the lower ends of the wires'),
  attachHeight: n.gap('Height where the lines meet the arbor; double purchase: its block'),
  lineMassPerLength: n.massPerLength('Mass of one lift line for each length'),
  cable: z.exactOptional(cable),
  handLineMass: z.exactOptional(n.massOrNone('The whole hand line, on the head block')),
  handLineTension: z.exactOptional(
    n.hold('In each leg of the hand line from a pull over the head block'),
  ),
  friction: z.exactOptional(
    z.strictObject({
      bearing: z.enum(BEARINGS).describe('Bearings of all blocks'),
      batten: z.enum(['out', 'in']).describe('Which way the batten travels'),
    }),
  ),
  held: z.exactOptional(
    z.strictObject({
      battenSide: n.massOrNone('Batten and all that hangs on it'),
      arbor: n.massOrNone('Arbor with its bricks'),
    }),
  ),
  moves: z.exactOptional(z.array(move).max(100).describe('Starts, stops and falls')),
  bridles: z.exactOptional(
    z
      .array(
        z.strictObject({
          load: n.hold('Load in the point where the legs meet'),
          left: n.gap('From below the upper end of the left leg to that point'),
          right: n.gap('The same of the right leg'),
          height: n.length('Upper ends above that point'),
        }),
      )
      .max(100)
      .describe('Pairs of legs'),
  ),
  turningBlocks: z.exactOptional(
    z
      .array(
        z.strictObject({
          tension: n.hold('Of the rope'),
          turn: z.number().min(0).max(180).describe('Through which it turns, degrees'),
        }),
      )
      .max(100)
      .describe('Floor blocks and anchors; 180 degrees with parallel legs'),
  ),
}) satisfies z.ZodType<LinesInput>;

const set = z.strictObject({
  set: id('Name of the set'),
  bay: z.exactOptional(id('Bay of its head block; none where it stands on steel of its own')),
  purchase: n.purchase,
  arborMass: n.massOrNone('Arbor with all its bricks'),
  handLineMass: n.massOrNone('The whole hand line'),
  arborWireMass: z.exactOptional(
    n.massOrNone('Wire that hangs from the head steel on the side of the arbor, all legs'),
  ),
  lines: z
    .array(
      z.strictObject({
        x: n.across('Of the line'),
        tension: n.hold('Tension at the loft block'),
      }),
    )
    .max(40)
    .describe('Its lines; none where the batten is not known'),
  moving: z.exactOptional(z.boolean().describe('Its loads are raised by the moving share')),
});

const floor = z.strictObject({
  id: id('Name of the gallery'),
  length: n.length('Of its floor along the wall'),
  width: n.length('Of its floor'),
  peopleAndTools: n.massOrNone('All who stand on it, with their tools'),
  bricks: z
    .array(
      z.strictObject({
        count: n.count(0, 100_000, 'Bricks of this kind on the floor'),
        mass: n.mass('Mass of one'),
        floorLength: n.length('Length of floor that one takes in the row'),
      }),
    )
    .max(20)
    .describe('Kinds of brick on the floor'),
});

export const totals = z.strictObject({
  bays: z.array(id('Name of a bay')).max(100).describe('Bays of the head-block beam'),
  wells: z
    .array(
      z.strictObject({
        id: id('Name of the loft well'),
        x: n.across('Middle of the well'),
        width: n.length('Lines within half of it on either side stand on this well'),
      }),
    )
    .max(100)
    .describe('Loft wells'),
  movingShare: z.exactOptional(n.share('Added to the loads of sets that move')),
  states: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(200).describe('Of this moment'),
        sets: z.array(set).max(500).describe('Every set, hung or bare'),
      }),
    )
    .min(1)
    .max(5000)
    .describe('Moments to total, such as the steps of an order of work'),
  floors: z.exactOptional(z.array(floor).max(50).describe('Gallery floors')),
}) satisfies z.ZodType<TotalsInput>;
