/** One case run and judged. Whatever it does, the answer is a verdict and never a crash. */
import type { Calculation, Comparison, ValidationCase } from '../validation/cases.ts';

/** The worst error of a case, in the unit and against the tolerance of its own comparison. */
export type Measure = {
  readonly case: string;
  readonly error: number;
  readonly tolerance: number;
  readonly unit: string;
};

export type CaseVerdict = {
  readonly id: string;
  readonly title: string;
  readonly calculation: Calculation;
  readonly comparisons: number;
  /** Nearest to its tolerance, or furthest over; null where nothing could be measured. */
  readonly worst: Measure | null;
  /** What is wrong with it; null where all is within tolerance. */
  readonly fault: string | null;
};

/** Error as a share of the tolerance; where whole numbers are compared, none or without end. */
export const shareOf = ({ error, tolerance }: Pick<Measure, 'error' | 'tolerance'>): number => {
  if (error === 0) return 0;
  return tolerance === 0 ? Number.POSITIVE_INFINITY : error / tolerance;
};

export const worseOf = (one: Measure | null, other: Measure | null): Measure | null => {
  if (one === null || other === null) return one ?? other;
  return shareOf(other) > shareOf(one) ? other : one;
};

type Compared = Pick<CaseVerdict, 'comparisons' | 'worst' | 'fault'>;

const faulty = (comparisons: number, fault: string): Compared => ({
  comparisons,
  worst: null,
  fault,
});

const compare = (id: string, { run, tolerance, unit }: Comparison): Compared => {
  let errors: readonly number[];
  try {
    errors = run();
  } catch (thrown) {
    return faulty(0, `it stopped: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
  }
  if (errors.length === 0) return faulty(0, 'it compared nothing');
  const strange = errors.find((error) => !Number.isFinite(error) || error < 0);
  if (strange !== undefined) return faulty(errors.length, `its error is ${strange} ${unit}`);
  const error = errors.reduce((worst, each) => Math.max(worst, each), 0);
  const fault = error > tolerance ? `${error} ${unit} is over ${tolerance} ${unit}` : null;
  return { comparisons: errors.length, worst: { case: id, error, tolerance, unit }, fault };
};

export const judgeCase = (one: ValidationCase): CaseVerdict => {
  const { id, title, calculation, also = [] } = one;
  const parts = [
    compare(id, one),
    ...also.map((part): Compared => {
      const compared = compare(id, part);
      const { fault } = compared;
      return { ...compared, fault: fault === null ? null : `${part.what}: ${fault}` };
    }),
  ];
  const faults = parts.flatMap(({ fault }) => (fault === null ? [] : [fault]));
  return {
    id,
    title,
    calculation,
    comparisons: parts.reduce((sum, { comparisons }) => sum + comparisons, 0),
    worst: parts.reduce<Measure | null>((worst, part) => worseOf(worst, part.worst), null),
    fault: faults.length === 0 ? null : faults.join('; '),
  };
};
