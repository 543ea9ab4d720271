/** The errors that the validation cases measured in a run with RECORD=1. */
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { MEASURED_FILE, type Measured } from '../../validation/record.ts';
import { runNode, TOOLS } from '../running/program.ts';
import { CannotMake } from './paper.ts';

const run = async (): Promise<void> => {
  process.stderr.write('Running the validation cases to measure their errors ...\n');
  rmSync(MEASURED_FILE, { force: true });
  const { code, output } = await runNode([TOOLS.vitest, 'run', '--project', 'validation'], {
    shown: false,
    env: { RECORD: '1', NO_COLOR: '1' },
  });
  if (code !== 0) throw new CannotMake([`the validation cases fail:\n${output}`]);
};

/** A case may record more than once: the worst stands, and the comparisons add up. */
const merge = (all: readonly Measured[]): ReadonlyMap<string, Measured> => {
  const byId = new Map<string, Measured>();
  for (const next of all) {
    const before = byId.get(next.id);
    if (before === undefined) {
      byId.set(next.id, next);
      continue;
    }
    if (before.unit !== next.unit) {
      throw new CannotMake([`${next.id} is recorded in ${before.unit} and in ${next.unit}`]);
    }
    const worse = next.worst > before.worst ? next : before;
    byId.set(next.id, { ...worse, cases: before.cases + next.cases });
  }
  return byId;
};

export const readMeasured = (text: string): ReadonlyMap<string, Measured> =>
  merge(
    text
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line) as Measured),
  );

/** With `again` false, what the last run measured. */
export const measured = async (again: boolean): Promise<ReadonlyMap<string, Measured>> => {
  if (again) await run();
  if (!existsSync(MEASURED_FILE)) {
    throw new CannotMake(['no validation case recorded an error; see validation/record.ts']);
  }
  return readMeasured(readFileSync(MEASURED_FILE, 'utf8'));
};

/** Under this an error is the last bits of the arithmetic, and differs between machines. */
const NOISE = 1e-12;

/** One significant figure, so that the paper is the same on every machine. */
export const printedError = (worst: number): string => {
  if (worst < NOISE) return '0';
  const rounded = Number(worst.toPrecision(1));
  return rounded >= 0.001 && rounded < 1e6 ? String(rounded) : rounded.toExponential(0);
};
