import type { MeasureKind } from '#findings';

/** What a mass of its kind usually lies between, both ends counted in, and why. SI. */
export type Band = {
  readonly low: number;
  readonly high: number;
  readonly kind: Extract<MeasureKind, 'mass' | 'massPerLength' | 'massPerArea'>;
  readonly why: string;
  /** Where the numbers of the reason come from. The ends themselves are ours, and wide. */
  readonly source: string;
};

const MEMORY = 'trade tables, from memory';
const PRACTICE = 'common practice, no source';

/**
 * The bands of C87. Past an end something is likely wrong; inside one nothing is proved. They
 * catch a slip of the point and a mass typed per yard or for the whole; a pound typed as a
 * kilogram mostly stays inside, and is for UNI-002.
 */
export const BANDS = {
  brick: {
    low: 3,
    high: 30,
    kind: 'mass',
    why: 'a brick that one person lifts',
    source: PRACTICE,
  },
  carriage: {
    low: 15,
    high: 150,
    kind: 'mass',
    why: 'an arbor without bricks',
    source: PRACTICE,
  },
  battenPerLength: {
    low: 1.4,
    high: 12,
    kind: 'massPerLength',
    why: 'from aluminium tube 48.3 x 4.0 mm, 1.50 kg/m, to two steel pipes one over the other',
    source: 'tube of 2700 kg/m³, worked out; 1 1/2 in schedule 80 pipe, 5.4 kg/m, pipe tables',
  },
  liftLine: {
    low: 0.04,
    high: 0.7,
    kind: 'massPerLength',
    why: 'wire rope from 1/8 in, 0.043 kg/m, to 1/2 in, 0.63 kg/m',
    source: MEMORY,
  },
  cloth: {
    low: 0.05,
    high: 1.5,
    kind: 'massPerArea',
    why: 'from bobbinet, 51 g/m², to 32 oz velour, 723 g/m², painted or damp up to twice that',
    source: MEMORY,
  },
  hungCloth: {
    low: 0,
    high: 3,
    kind: 'massPerArea',
    why: 'the heaviest cloth at double fullness, over the whole length of the batten',
    source: PRACTICE,
  },
  hemPerLength: {
    low: 0.1,
    high: 6,
    kind: 'massPerLength',
    why: 'from jack chain, 0.37 kg/m, to 2 in schedule 40 pipe, 5.4 kg/m',
    source: MEMORY,
  },
  unit: {
    low: 0.9,
    high: 60,
    kind: 'mass',
    why: 'from a small can of 2 lb to a large moving head of 45 kg',
    source: MEMORY,
  },
  clamp: {
    low: 0.2,
    high: 3,
    kind: 'mass',
    why: 'a half coupler has 0.5 kg, a hook clamp 1 kg',
    source: MEMORY,
  },
  loom: {
    low: 0.1,
    high: 6,
    kind: 'massPerLength',
    why: 'from one cable 3 x 1.5 mm², 0.19 kg/m, to several multicores of 1 kg/m',
    source: 'table of control cables; multicores from memory',
  },
  pipe: {
    low: 0.4,
    high: 12,
    kind: 'massPerLength',
    why: 'from 1/2 in conduit, 0.45 kg/m, to 2 in schedule 80 pipe, 7.5 kg/m',
    source: MEMORY,
  },
  member: {
    low: 0.15,
    high: 12,
    kind: 'massPerLength',
    why: 'from light softwood, 19 x 64 mm has 0.51 kg/m, to steel pipe',
    source: 'softwood of 420 kg/m³, mean of class C24 of EN 338, worked out',
  },
  sheet: {
    low: 0.1,
    high: 25,
    kind: 'massPerArea',
    why: 'from light muslin, 0.12 kg/m², to 24 mm birch plywood, 16.3 kg/m²',
    source: 'plywood by a maker’s data sheet; muslin from memory',
  },
  hardware: {
    low: 0.01,
    high: 60,
    kind: 'mass',
    why: 'one piece of rigging hardware',
    source: PRACTICE,
  },
  item: {
    low: 0.05,
    high: 2000,
    kind: 'mass',
    why: 'one item on a batten',
    source: PRACTICE,
  },
} as const satisfies Readonly<Record<string, Band>>;

export type BandName = keyof typeof BANDS;
