/**
 * Schema of the input about a batten on its lines. Bounds are far wider than any theatre, so that
 * a case out of a textbook can be asked too; places are held to the batten by the calculation.
 */
import { z } from 'zod';
import type { BattenInput } from './batten-inputs.ts';

const MASS_MAX = 1e9;
const SIZE_MAX = 1e15;
const COUNT_MAX = 1000;

const place = (about: string) => z.number().describe(`${about}, m across the stage`);
const mass = (about: string) => z.number().min(0).max(MASS_MAX).describe(about);
const above0 = (about: string) => z.number().gt(0).max(SIZE_MAX).describe(about);
const stiffness = (about: string) =>
  z.nullable(z.number().gt(0).max(SIZE_MAX)).describe(`${about}, N/m; null does not stretch`);
const trim = (about: string) =>
  z.exactOptional(
    z.number().describe(`${about}, m; positive is short and pulls up; 0 unless told`),
  );

const load = z.union([
  z.strictObject({ x: place('Where it pulls'), mass: mass('Of a load in one place, kg') }),
  z.strictObject({
    from: place('Left end of a spread load'),
    to: place('Right end of a spread load'),
    mass: mass('Of the whole patch, spread evenly, kg'),
  }),
]);
const loads = (about: string) => z.array(load).max(COUNT_MAX).describe(about);

const pipe = z.strictObject({
  massPerLength: mass('Of the pipe itself, kg/m; 0 where its weight is among the loads'),
  secondMoment: above0('Second moment of area I, m⁴'),
  elasticModulus: above0('Elastic modulus E, Pa'),
  sectionModulus: z.exactOptional(above0('Elastic section modulus S, m³; gives the stress')),
  plasticModulus: z.exactOptional(above0('Plastic section modulus Z, m³')),
  yieldStrength: z.exactOptional(above0('Yield strength Fy, Pa; gives the utilisation')),
});

const support = z.strictObject({
  x: place('Where it stands'),
  stiffness: stiffness('Of the stand'),
  height: z.number().describe('Of its top above the lower end of a true unstretched line, m'),
});

const splice = z.strictObject({
  x: place('Where the joint is'),
  strength: z.number().gt(0).max(1).describe('Moment it takes, as a part of that of the pipe'),
});

const piece = z.strictObject({
  bendingStiffness: z
    .nullable(z.number().gt(0).max(SIZE_MAX))
    .describe('E·I of the piece, N·m²; null does not bend'),
  loads: loads('What the piece weighs and carries'),
  picks: z
    .array(
      z.strictObject({
        x: place('Where it is picked up'),
        stiffness: stiffness('Of the line between batten and piece'),
        trim: trim('How much too short it is'),
      }),
    )
    .min(2)
    .max(40)
    .describe('Its picks; a piece on one pick is a point load'),
});

export const batten = z.strictObject({
  pipe,
  left: place('Left end of the batten'),
  right: place('Right end of the batten'),
  lines: z
    .array(
      z.strictObject({
        x: place('Where it meets the batten'),
        stiffness: stiffness('Of the whole line, batten to arbor'),
        trim: trim('How much too short it is'),
      }),
    )
    .min(1)
    .max(40)
    .describe('Lift lines, each in a place of its own'),
  loads: loads('What hangs on the batten besides itself'),
  tensionOnly: z.exactOptional(z.boolean().describe('Lines pull and never push: true unless told')),
  supports: z.exactOptional(
    z.array(support).max(40).describe('Stands and stops that push up and never hold down'),
  ),
  splices: z.exactOptional(z.array(splice).max(100).describe('Joints of the pipe')),
  pieces: z.exactOptional(
    z.array(piece).max(40).describe('Stiff pieces, each on two picks or more'),
  ),
}) satisfies z.ZodType<BattenInput>;
