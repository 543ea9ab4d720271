/**
 * Keeps the worst error a validation case measured, for the "error today" column of
 * VALIDATION.md. Nothing is written unless RECORD=1, so an ordinary test run leaves no trace.
 *
 *     record({ id: 'VAL-BAL-01', worst: 3e-10, tolerance: 1e-9, unit: 'N', cases: 41 });
 *
 * `worst` and `tolerance` share one unit ('N', 'kg', 'relative' ...). `cases` is how many
 * comparisons `worst` is the largest of. Call it once the case has compared everything.
 */
import { appendFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';

export type Measured = {
  readonly id: string;
  readonly worst: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly cases: number;
};

const FOLDER = join(import.meta.dirname, '..', 'build');
export const MEASURED_FILE = join(FOLDER, 'validation-errors.jsonl');

const ID = /^VAL-[A-Z][A-Z0-9]*-\d{2,}$/;

/** What is wrong with a measurement, or nothing. Apart so that it can be tested without a disk. */
export const faultOf = ({ id, worst, tolerance, unit, cases }: Measured): string | undefined => {
  if (!ID.test(id)) return `id ${JSON.stringify(id)} is not of the form VAL-BAL-01`;
  if (!Number.isFinite(worst) || worst < 0) return `${id}: worst error is ${worst}`;
  if (!Number.isFinite(tolerance) || tolerance < 0) return `${id}: tolerance is ${tolerance}`;
  if (!Number.isInteger(cases) || cases < 1) return `${id}: compared ${cases} cases`;
  if (unit.trim() === '') return `${id}: the unit of the error is missing`;
  if (worst > tolerance) return `${id}: worst error ${worst} ${unit} is over ${tolerance} ${unit}`;
  return undefined;
};

/** Throws when the measurement is not one, or is over its own tolerance. */
export const record = (measured: Measured): void => {
  const fault = faultOf(measured);
  if (fault !== undefined) throw new Error(fault);
  if (process.env.RECORD !== '1') return;
  mkdirSync(FOLDER, { recursive: true });
  appendFileSync(MEASURED_FILE, `${JSON.stringify(measured)}\n`);
};
