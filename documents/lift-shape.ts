/**
 * What bends and what carries: the tube of a batten with its joints, and the lines with their
 * blocks. Every field may be left out and is unknown then. All of it came into version 1 of the
 * house after the first release, so a house written before reads with unknowns here.
 */
import type { MuleBlock } from '#house';
import { BEARINGS, TERMINATIONS, WALLS } from '#house';
import { listOrUnknown } from './list-or-unknown.ts';
import { list } from './shape/collections.ts';
import * as known from './shape/known-values.ts';
import { orUnknown } from './shape/known-values.ts';
import { across, height, lineTrim } from './shape/measure.ts';
import { leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { choice, count, name } from './shape/words.ts';

const GIVEN = { given: true };
export const LINES_MAX = 40;

export const pipe = object(
  {
    secondMoment: leftOut(known.knownSecondMoment, 'Second moment of area of the tube.'),
    sectionModulus: leftOut(known.knownSectionModulus, 'Elastic section modulus of the tube.'),
    plasticModulus: leftOut(known.knownSectionModulus, 'Plastic section modulus of the tube.'),
    elasticModulus: leftOut(known.knownElasticModulus, 'Modulus of elasticity of its metal.'),
    yieldStrength: leftOut(known.knownStrength, 'Yield strength of its metal.'),
    wall: leftOut(choice(WALLS), 'Wall on which the values rest: nominal, or design (thinner).'),
  },
  GIVEN,
);

const splice = object(
  {
    x: needed(across, 'Where two lengths of tube meet, positive to stage left.'),
    strength: orUnknown(known.knownShare, 'Share of the moment of the whole tube that it takes.'),
  },
  GIVEN,
);

export const splices = listOrUnknown(list(splice, { max: 40 }));

const cable = object(
  {
    diameter: leftOut(known.knownCable, 'Diameter of a lift line.'),
    breakingStrength: leftOut(known.knownForce, 'Of the catalogue, before any end or bend.'),
    axialStiffness: leftOut(known.knownAxialStiffness, 'EA: force over stretch for each length.'),
    termination: leftOut(choice(TERMINATIONS), 'How the ends of the lines are made.'),
    description: leftOut(name, 'What the line is.'),
  },
  GIVEN,
);

const block = object(
  {
    sheaveDiameter: leftOut(known.knownSheave, 'Diameter at the bottom of the groove.'),
    rated: leftOut(known.knownForce, 'Resultant that one block may carry.'),
    bearing: leftOut(choice(BEARINGS), 'What the sheave turns on.'),
    fleetAngle: leftOut(known.knownFleetAngle, 'Furthest that a line leaves its plane.'),
  },
  GIVEN,
);

const muleBlock: Shape<MuleBlock> = object(
  {
    line: needed(count({ min: 1, max: LINES_MAX }), 'Which line, from stage right, from 1.'),
    x: needed(across, 'Where it stands across the stage.'),
    z: needed(height, 'Its height above the deck.'),
    rated: orUnknown(known.knownForce, 'Resultant that it may carry.'),
  },
  GIVEN,
);

const lineTrims = listOrUnknown(list(lineTrim, { min: 1, max: LINES_MAX }));

export const lift = object(
  {
    cable: leftOut(cable, 'The lift lines; written as a whole, it holds instead of the one below.'),
    loftBlock: leftOut(block, 'The loft blocks, all of one kind.'),
    headBlock: leftOut(block, 'The head block.'),
    muleBlocks: leftOut(
      list(muleBlock, { max: 100 }),
      'Blocks that turn one line between loft block and head block; absent: there are none.',
    ),
    lineTrims: leftOut(
      lineTrims,
      'How much shorter than true each line is, from stage right; longer is negative.',
    ),
    handLineMass: leftOut(known.knownMass, 'The whole hand line, which hangs on the head block.'),
  },
  GIVEN,
);
