/** Bricks of one kind that were weighed, and whether what is written agrees with them. */
import {
  type BrickKind,
  contradictsSample,
  massBySample,
  SAMPLE_LEAST,
  sampleOfSummary,
  sampleOfWeights,
  type WeighedSample,
} from '#house';
import { type Kilograms, kilograms } from '#quantities';
import type { Faults } from './faults.ts';
import { pathTo } from './json.ts';
import { list, only, variant } from './shape/collections.ts';
import { MASS } from './shape/limits.ts';
import { measure, plain } from './shape/measure.ts';
import { leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { mapped } from './shape/shape.ts';
import { count, day, name } from './shape/words.ts';

const SAMPLE_MOST = 500;

const weight: Shape<Kilograms> = plain(measure('mass', MASS, kilograms), kilograms(0));

const when = {
  on: needed(day, 'The day on which they were weighed.'),
  by: leftOut(name, 'Who weighed them.'),
};

const summary = object({
  told: needed(only('summary'), 'Only the sum of it was kept.'),
  count: needed(count({ min: SAMPLE_LEAST, max: SAMPLE_MOST }), 'How many were weighed.'),
  mean: needed(weight, 'Their mean.'),
  least: needed(weight, 'The lightest of them.'),
  most: needed(weight, 'The heaviest of them.'),
  ...when,
});

const written = variant('told', {
  each: object({
    told: needed(only('each'), 'Every weight is given.'),
    weights: needed(list(weight, { min: SAMPLE_LEAST, max: SAMPLE_MOST }), 'Brick by brick.'),
    ...when,
  }),
  summary,
});

/** Stands in for a sample that was refused; its document goes no further. */
const NO_WEIGHTS = [1, 1, 1];

export const brickSample: Shape<WeighedSample> = mapped(written, (sample) => {
  const { on, by } = sample;
  const at = { on, ...(by === undefined ? {} : { by }) };
  const weighed = sample.told === 'each' ? sample.weights.length : sample.count;
  if (weighed < SAMPLE_LEAST) return sampleOfWeights(NO_WEIGHTS, at);
  return sample.told === 'each' ? sampleOfWeights(sample.weights, at) : sampleOfSummary(sample, at);
});

/** The kind with the mass of its sample; refused where the two cannot both be so. */
export const weighedKind = (kind: BrickKind, index: number, faults: Faults): BrickKind => {
  const { sample, mass } = kind;
  const path = pathTo('brickKinds', index);
  if (sample === undefined || !faults.sound(path)) return kind;
  if (!(sample.least <= sample.mean && sample.mean <= sample.most)) {
    faults.refuse('sampleDisordered', pathTo(pathTo(path, 'sample'), 'mean'), {
      found: `${massText(sample.mean)}, with ${massText(sample.least)} to ${massText(sample.most)}`,
      accepted: 'a mean between the lightest and the heaviest',
    });
    return kind;
  }
  if (contradictsSample(sample, mass)) {
    faults.refuse('sampleContradicts', pathTo(path, 'mass'), {
      found: `${mass.known ? massText(mass.value) : ''}, where ${sample.count} weighed ${massText(
        sample.mean,
      )} in the mean`,
      accepted: 'a mass within its tolerance of the mean, or the mass left out',
    });
    return kind;
  }
  return { ...kind, mass: massBySample(sample, mass) };
};

/** A mass in a refusal, in both systems, since the reader may use either. */
const massText = (massKg: number): string =>
  `${massKg.toFixed(3)} kg (${(massKg / 0.45359237).toFixed(2)} lb)`;
