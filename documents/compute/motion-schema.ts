/** Schemas of the inputs about what is set free: a set that nothing holds, a thing that falls. */
import { z } from 'zod';
import type { DroppedInput, ReleasableInput, RunawayInput } from './motion-inputs.ts';
import * as n from './numbers.ts';

const imbalance = (about: string) => n.eitherWay(`${about}, at the batten, positive batten heavy`);

const travel = {
  curve: z
    .array(
      z.strictObject({
        height: n.gap('Batten height'),
        below: imbalance('Imbalance just below this height'),
        above: imbalance('Imbalance just above it'),
        contact: z.exactOptional(
          z
            .strictObject({ low: imbalance('Lowest'), high: imbalance('Highest') })
            .describe('What deck and batten may share at the height itself'),
        ),
      }),
    )
    .min(1)
    .max(1000)
    .describe('Imbalance over the travel, straight between nodes; nodes go upward'),
  lowStop: n.gap('Batten height on the low stop'),
  highStop: n.gap('Batten height on the high stop'),
  height: n.gap('Batten height when it is let go'),
  hold: z.exactOptional(n.hold('What a hold drags with, such as a lock that slips')),
};

export const releasable = z.strictObject(travel) satisfies z.ZodType<ReleasableInput>;

const hangingNode = z.strictObject({
  height: n.gap('Batten height'),
  below: n.massOrNone('Mass on the batten just below this height'),
  above: n.massOrNone('Mass on the batten just above it'),
});

const moves = z.strictObject({
  purchase: n.purchase,
  arbor: n.massOrNone('Arbor with all its bricks'),
  hanging: z
    .union([
      n.massOrNone('Batten and all that hangs on it, where nothing lands on the way'),
      z
        .array(hangingNode)
        .min(1)
        .max(1000)
        .describe('The same along the travel, with the jumps of the curve'),
    ])
    .describe('Mass on the batten'),
  lineMass: n.massOrNone('Lift lines that run with the batten, all together'),
  blockMass: n.massOrNone('Blocks that turn, as mass at the rim (J/R²), all together'),
  friction: z
    .strictObject({
      share: n.share('Of the weights that hang at the moment'),
      of: z
        .enum(['batten', 'both'])
        .describe('Weights of the batten and all on it, or those and the pull of the arbor'),
      constant: n.hold('And at the batten in any case'),
    })
    .describe('Measured, or the rule of the house'),
});

export const runaway = z.strictObject({
  ...travel,
  moves,
  already: z.exactOptional(
    z
      .strictObject({
        way: z.enum(['in', 'out']).describe('In is down'),
        speed: n.speedAboveNone('Of the batten'),
      })
      .describe('Where it moves already when it is let go'),
  ),
  liftLines: z.exactOptional(
    z
      .strictObject({
        stiffness: z.exactOptional(n.spring('Of all lines together, at the batten')),
        largestShare: z.exactOptional(
          z
            .number()
            .gt(0)
            .max(1)
            .describe('Part of the whole in the most loaded line, 1/n where they share evenly'),
        ),
        breakingStrength: z.exactOptional(n.force('Of one line, after its end and bend')),
      })
      .describe('For the pull when the light side is stopped and the heavy side runs on'),
  ),
  stop: z.exactOptional(
    z
      .union([
        z.strictObject({ stiffness: n.spring('Of the stop') }),
        z.strictObject({ distance: n.length('Over which the stop gives, at a steady force') }),
      ])
      .describe('How the stop gives'),
  ),
}) satisfies z.ZodType<RunawayInput>;

export const dropped = z.strictObject({
  mass: n.mass('What falls'),
  from: n.level('Height that it falls from, above the deck'),
  speed: n.speed('Across, as it leaves; 0 where it is let fall'),
  air: z.exactOptional(
    z
      .strictObject({
        dragCoefficient: n.dragCoefficient,
        area: n.area('Seen from below'),
        density: n.density('Of the air'),
      })
      .describe('For the fall with drag beside the one without'),
  ),
  bounce: z
    .strictObject({
      least: n.gap('At least so far'),
      shareOfFall: n.share('And at least so much of the fall'),
    })
    .describe('Rule of the house for what bounces, rolls or splinters'),
  levels: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(200).describe('Of the level'),
        height: n.level('Of its floor above the deck, below zero under it'),
      }),
    )
    .min(1)
    .max(50)
    .describe('Whatever may lie below: galleries, deck, traps, pit'),
}) satisfies z.ZodType<DroppedInput>;
