/** Schema of what the take-off of one item is asked. */

import { z } from 'zod';
import { BASES } from '#house';
import { ITEM_KINDS } from '#show';
import type { TakeoffInput } from './inputs.ts';
import * as n from './numbers.ts';

const basis = z.enum(BASES).describe('What a number rests on');
const words = z.string().min(1).max(120);

/** A number, or one with its half width (in its unit, or as a share of it) and its basis. */
const amount = (value: z.ZodNumber) =>
  z.union([
    value,
    z.strictObject({
      value,
      tolerance: z.exactOptional(z.number().min(0).describe('Half width in the unit of the value')),
      relative: z.exactOptional(n.share('Half width of the value')),
      basis: z.exactOptional(basis),
      source: z.exactOptional(words.describe('The document, sheet or sample, in words')),
    }),
  ]);

const mass = (about: string) => amount(n.mass(about));
const massOrNone = (about: string) => amount(n.massOrNone(about));
const length = (about: string) => amount(n.length(about));
const gap = (about: string) => amount(n.gap(about));
const perLength = (about: string) => amount(n.massPerLength(about));
const perArea = (about: string) => amount(z.number().min(0).max(500).describe(`${about}, kg/m²`));
const added = (about: string) =>
  amount(z.number().min(0).max(5).describe(`${about}, as a part of one`));

const asked = {
  name: z.exactOptional(words.describe('Name of the item')),
  basis,
  toleranceByBasis: z.exactOptional(
    z.partialRecord(z.enum(BASES), n.share('Half width of a number on this basis')),
  ),
  drop: z.exactOptional(gap('Height of the piece, top to lowest point')),
  pick: z.exactOptional(gap('Batten to the top of the piece')),
  centre: z.exactOptional(amount(n.share('Centre of gravity above the foot, of the height'))),
  placement: z.exactOptional(
    z.union([
      z.strictObject({ points: z.array(n.across('Place along the batten')).min(1).max(100) }),
      z.strictObject({ from: n.across('Right end of the load'), to: n.across('Left end') }),
    ]),
  ),
  carriedAs: z.exactOptional(z.enum(ITEM_KINDS).describe('How it loads the batten')),
};

const part = { name: words.describe('What it is'), count: n.count(1, 10_000, 'How many') };
const placed = { ...part, z: z.exactOptional(gap('Centre of the part above the foot')) };
const parts = <T extends z.ZodType>(one: T) => z.array(one).max(1000);

export const takeoff = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('mass'),
    mass: mass('Mass of the item'),
    hem: z.exactOptional(massOrNone('Pipe or chain in the hem of a cloth')),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('cloth'),
    width: length('Finished width'),
    areaMass: perArea('Mass of the flat cloth for each area'),
    fullness: added('Cloth added: 0.5 is one and a half widths'),
    hemAllowance: added('Hems, facings and webbing, added'),
    paint: added('Paint, added'),
    moisture: added('Moisture, added'),
    bottomMassPerLength: z.exactOptional(perLength('Pipe or chain in the hem')),
    ties: z.exactOptional(
      z.strictObject({
        count: amount(z.number().min(0).max(10_000).describe('How many ties')),
        each: mass('Mass of one tie'),
      }),
    ),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('frame'),
    members: z.exactOptional(
      parts(
        z.strictObject({
          ...placed,
          length: length('Length of one'),
          massPerLength: perLength('Mass for each length'),
        }),
      ),
    ),
    sheets: z.exactOptional(
      parts(
        z.strictObject({
          ...placed,
          area: amount(z.number().gt(0).max(10_000).describe('Area of one, m²')),
          massPerArea: perArea('Mass for each area'),
        }),
      ),
    ),
    hardware: z.exactOptional(parts(z.strictObject({ ...placed, each: mass('Mass of one') }))),
    allowance: added('Paint, glue and fixings, added'),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('units'),
    units: parts(
      z.strictObject({
        ...part,
        each: mass('Mass of one'),
        clampEach: z.exactOptional(massOrNone('Mass of its clamp')),
        xs: z.exactOptional(z.array(n.across('Place along the batten')).min(1).max(1000)),
      }),
    ).min(1),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('loom'),
    massPerLength: perLength('Mass of the loom for each length'),
    length: length('Full length'),
    fixedAt: z.exactOptional(gap('Height of its fixed end above the deck')),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('pipe'),
    massPerLength: perLength('Mass of the pipe for each length'),
    length: length('Length of the pipe'),
    fittings: z.exactOptional(massOrNone('Its fittings')),
    ...asked,
  }),
  z.strictObject({
    kind: z.literal('hardware'),
    lines: parts(z.strictObject({ ...part, each: mass('Mass of one') })).min(1),
    ...asked,
  }),
]) satisfies z.ZodType<TakeoffInput>;
