import { studentWithin } from '#numerics';
import { type Kilograms, kilograms } from '#quantities';
import { type Known, known, unknownValue } from './known.ts';

/** Bricks of one kind that were weighed one by one, and what came of it. */
export type WeighedSample = {
  readonly count: number;
  readonly mean: Kilograms;
  readonly least: Kilograms;
  readonly most: Kilograms;
  /**
   * Standard deviation, with n − 1. Where only mean, least and most were kept, the most that it
   * can have been.
   */
  readonly deviation: Kilograms;
  /** ISO date. */
  readonly on: string;
  readonly by?: string;
};

type When = Pick<WeighedSample, 'on' | 'by'>;

/** Fewer say nothing of how bricks differ. */
export const SAMPLE_LEAST = 3;

/** A sample of which every weight was written down. */
export const sampleOfWeights = (massesKg: readonly number[], when: When): WeighedSample => {
  const count = massesKg.length;
  const [least, most] = [Math.min(...massesKg), Math.max(...massesKg)];
  const sum = massesKg.reduce((all, each) => all + each, 0);
  // Three times a tenth is more than three tenths; a mean is never outside its weights.
  const mean = Math.min(most, Math.max(least, sum / count));
  const squares = massesKg.reduce((all, each) => all + (each - mean) ** 2, 0);
  return {
    count,
    mean: kilograms(mean),
    least: kilograms(least),
    most: kilograms(most),
    deviation: kilograms(Math.sqrt(squares / (count - 1))),
    ...when,
  };
};

/**
 * A sample of which only number, mean, least and most were kept. Weights between those two with
 * that mean differ most where each is one of the two:
 *
 *     s² ≤ n/(n − 1) · (most − mean)·(mean − least)
 *
 * Source  Σ (most − x)·(x − least) ≥ 0 for weights between the two, divided by n
 * Omits   nothing that is safe: the scatter is taken at its most, so the weights themselves give
 *         a closer tolerance
 */
export const sampleOfSummary = (
  { count, mean, least, most }: Pick<WeighedSample, 'count' | 'mean' | 'least' | 'most'>,
  when: When,
): WeighedSample => {
  const squared = ((most - mean) * (mean - least) * count) / (count - 1);
  return {
    count,
    mean,
    least,
    most,
    deviation: kilograms(Math.sqrt(Math.max(0, squared))),
    ...when,
  };
};

const CONFIDENCE = 0.95;

/**
 * Half width of what one more brick of the kind may be off the mean of the sample: the bound of a
 * prediction interval, and never less than a brick of the sample was off.
 *
 *     Δ = max( t·s·√(1 + 1/n), most − mean, mean − least )
 *
 *     s  kg  deviation   standard deviation of the sample
 *     n  -   count       bricks weighed
 *     t  -               95 % of Student's t with n − 1 degrees of freedom lies within ±t
 *
 * Source  prediction interval for one more observation, handbook formula (from memory)
 * Holds   the sample was taken at random from all that the house owns of the kind
 * Omits   that errors of many bricks partly cancel: they are added up (C86), which errs wide
 * Check   weighed-sample.test.ts; docs/why/0012
 */
export const brickHalfWidth = ({ count, mean, least, most, deviation }: WeighedSample): number => {
  const predicted = studentWithin(CONFIDENCE, count - 1) * deviation * Math.sqrt(1 + 1 / count);
  return Math.max(predicted, most - mean, mean - least);
};

/** What the written mass of a kind allows its sample to be off; its own tolerance if it has one. */
const allowedHalfWidth = (sample: WeighedSample, written: Known<Kilograms>): number =>
  (written.known ? written.tolerance : undefined) ?? brickHalfWidth(sample);

/** Whether what is written of a kind and what its sample weighed cannot both be so. */
export const contradictsSample = (sample: WeighedSample, written: Known<Kilograms>): boolean => {
  if (!written.known) return false;
  const offKg = Math.abs(written.value - sample.mean);
  // Pounds added up and divided differ from pounds typed in the last binary place.
  return offKg > allowedHalfWidth(sample, written) + 1e-9 * written.value;
};

/**
 * The mass of a kind by its sample: the mean, off by what one more brick may be off. A house that
 * writes a wider tolerance keeps it, and none narrows what the scales say.
 */
export const massBySample = (
  sample: WeighedSample,
  written: Known<Kilograms> = unknownValue(),
): Known<Kilograms> => {
  const writtenHalf = written.known ? (written.tolerance ?? 0) : 0;
  const { by, on, count, mean } = sample;
  return known(
    mean,
    { basis: 'weighed', source: `sample of ${count}`, ...(by === undefined ? {} : { by }), on },
    Math.max(brickHalfWidth(sample), writtenHalf),
  );
};
