/** What bends and what carries, with all that is written nowhere plainly unknown. */
import type { Batten, BattenPipe, Block, Cable, Lift } from '#house';
import { unknownValue } from '#house';
import type { WrittenSet } from './line-set-shape.ts';

const unsaid = unknownValue();

type WrittenBatten = NonNullable<WrittenSet['batten']>;
type WrittenLift = NonNullable<WrittenSet['lift']>;

export const battenOf = (batten: WrittenBatten = {}): Batten => ({
  left: batten.left ?? unsaid,
  right: batten.right ?? unsaid,
  mass: batten.mass ?? unsaid,
  massPerLength: batten.massPerLength ?? unsaid,
  fittingsPerLine: batten.fittingsPerLine ?? unsaid,
  pipe: pipeOf(batten.pipe),
  splices: batten.splices ?? null,
  ...(batten.description === undefined ? {} : { description: batten.description }),
});

const pipeOf = (pipe: WrittenBatten['pipe'] = {}): BattenPipe => ({
  secondMoment: pipe.secondMoment ?? unsaid,
  sectionModulus: pipe.sectionModulus ?? unsaid,
  plasticModulus: pipe.plasticModulus ?? unsaid,
  elasticModulus: pipe.elasticModulus ?? unsaid,
  yieldStrength: pipe.yieldStrength ?? unsaid,
  wall: pipe.wall ?? null,
});

/** A set without a word on mule blocks has none: one who surveys a set cannot overlook them. */
export const liftOf = (lift: WrittenLift = {}): Lift => ({
  cable: cableOf(lift.cable),
  loftBlock: blockOf(lift.loftBlock),
  headBlock: blockOf(lift.headBlock),
  muleBlocks: lift.muleBlocks ?? [],
  lineTrims: lift.lineTrims ?? null,
  handLineMass: lift.handLineMass ?? unsaid,
});

const cableOf = (cable: WrittenLift['cable'] = {}): Cable => ({
  diameter: cable.diameter ?? unsaid,
  breakingStrength: cable.breakingStrength ?? unsaid,
  axialStiffness: cable.axialStiffness ?? unsaid,
  termination: cable.termination ?? null,
  ...(cable.description === undefined ? {} : { description: cable.description }),
});

const blockOf = (block: WrittenLift['loftBlock'] = {}): Block => ({
  sheaveDiameter: block.sheaveDiameter ?? unsaid,
  rated: block.rated ?? unsaid,
  bearing: block.bearing ?? null,
  fleetAngle: block.fleetAngle ?? unsaid,
});
