/** Shapes of what a call says and does: standings, steps and finds, as they stand on the wire. */
import * as z from 'zod';
import {
  ITEM_PHASES,
  KNOWLEDGE_BASES,
  PLATE_TAGS,
  RESTRAINT_KINDS,
  SERVICES,
  type Standing,
  type Step,
} from '#state';
import * as field from './fields.ts';

const NUMBER = 'a finite number';
const FAR = 1e7;
/** A measure in SI: metres, newtons, kilograms. */
export const figure = () =>
  z
    .number({ error: NUMBER })
    .min(-FAR, { error: NUMBER })
    .max(FAR, { error: NUMBER })
    .describe('a finite number, SI');

const some = <S extends z.ZodType>(shape: S, max: number) => {
  const accepted = `a list of at most ${max}`;
  return z.array(shape, { error: accepted }).max(max, { error: accepted });
};

const byName = <S extends z.ZodType>(shape: S) =>
  z.record(field.text(80), shape, { error: 'an object of names' });

const words = (max = 400) => field.text(max, 0);
export const post = () => field.text(80);
export const call = () => field.id();
export const stock = () => byName(field.whole(0));

const run = field.fields({
  kind: field.text(80),
  count: field.whole(0),
  tag: field.oneOf(PLATE_TAGS),
});

export const restraint = field.fields({
  kind: field.oneOf(RESTRAINT_KINDS),
  resists: field.oneOf(['in', 'out', 'both']),
  rating: figure().nullable(),
  from: figure().nullable(),
  to: figure().nullable(),
  owner: field.text(120).nullable(),
  tag: field.text(80).nullable(),
});

export const zone = z.discriminatedUnion('zone', [
  field.fields({ zone: z.literal('run') }),
  field.fields({ zone: z.literal('drop'), gallery: field.text(80) }),
]);

/** Measures are branded by their name alone: what was read by this shape is one. */
const branded = <T>(shape: z.ZodType): z.ZodType<T> => shape as z.ZodType<T>;

export const standing = branded<Standing>(
  field.fields({
    height: figure(),
    stack: some(run, 500),
    items: byName(field.oneOf(ITEM_PHASES)),
    restraints: some(restraint, 50),
    service: field.oneOf(SERVICES),
    closed: some(zone, 20),
  }),
);

const item = field.text(80);
const bricks = { kind: field.text(80), count: field.whole(1), gallery: field.text(80) };

export const step = branded<Step>(
  z.discriminatedUnion('act', [
    field.fields({
      act: z.literal('attach'),
      item,
      as: field.oneOf(['attachedSlack', 'attachedResting', 'flying']),
    }),
    field.fields({ act: z.literal('takeUp'), item }),
    field.fields({ act: z.literal('rest'), item }),
    field.fields({ act: z.literal('release'), item }),
    field.fields({ act: z.literal('add'), ...bricks }),
    field.fields({ act: z.literal('remove'), ...bricks }),
    field.fields({ act: z.literal('fly'), to: figure() }),
    field.fields({ act: z.literal('rig'), restraint }),
    field.fields({ act: z.literal('unrig'), restraint }),
    field.fields({ act: z.literal('hangOnSteel') }),
    field.fields({ act: z.literal('takeOffSteel') }),
    field.fields({ act: z.literal('close'), zone }),
    field.fields({ act: z.literal('reopen'), zone }),
    field.fields({ act: z.literal('ease'), pull: figure(), lifted: z.boolean() }),
  ]),
);

export const STEPS_MAX = 1000;
export const steps = () => some(step, STEPS_MAX);

export const knowledge = field.fields({
  basis: field.oneOf(KNOWLEDGE_BASES),
  at: field.text(40).nullable(),
  by: field.text(120).nullable(),
  second: field.text(120).nullable(),
});

export const tag = field.fields({ number: field.text(80), reason: field.text(400) });

/** A second person, or a name on paper where there is one device only. */
export const second = z.discriminatedUnion('is', [
  field.fields({
    is: z.literal('device'),
    by: field.id().nullable(),
    device: field.id().nullable(),
    post: post(),
  }),
  field.fields({ is: z.literal('paper'), name: field.text(120) }),
]);

export const override = field.fields({
  why: field.text(400),
  rules: some(field.text(20), 20),
});

/** A set as the record had it when the call was opened; null where it was not known. */
export const opening = field.fields({
  standing: standing.nullable(),
  doubt: field.text(400).nullable(),
  knowledge,
  tag: tag.nullable(),
});

export const document = field.fields({ id: field.text(80), revision: field.whole(1) });
export const openings = () => byName(opening);
export const documents = () => some(document, 10);
export const openGalleries = () =>
  byName(
    field.fields({ stock: stock(), countedMs: field.ms().nullable(), by: words().nullable() }),
  );
