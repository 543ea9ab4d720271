import fc from 'fast-check';
import { expect, it } from 'vitest';
import { deadBands } from '#house';
import { INCH, metres } from '#quantities';
import { record } from '../../record.ts';

const SEED = 20_308;
const TOLERANCE = 1e-6;
const [LOW, HIGH] = [36, 736];

const inch = fc.integer({ min: LOW, max: HIGH });
const windows = fc.array(
  fc.tuple(inch, inch).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const),
  { maxLength: 5 },
);

/** Runs of inches that no window covers. */
const blanks = (all: readonly (readonly [number, number])[]): readonly (readonly number[])[] => {
  const painted = new Array<boolean>(HIGH).fill(false);
  for (const [from, to] of all) painted.fill(true, from, to);
  const runs: number[][] = [];
  for (let at = LOW; at < HIGH; at += 1) {
    if (painted[at]) continue;
    const run = runs.at(-1);
    // A window of one height cuts a band in two, though it covers no inch.
    const isCut = all.some(([from, to]) => from === at && to === at);
    if (run?.[1] === at && !isCut) run[1] = at + 1;
    else runs.push([at, at + 1]);
  }
  return runs;
};

it(`VAL-HSE-08 dead bands are the inches left blank (seed ${SEED})`, () => {
  const errors = fc.sample(windows, { seed: SEED, numRuns: 300 }).flatMap((all) => {
    const spans = all.map(([from, to]) => ({ from: metres(from * INCH), to: metres(to * INCH) }));
    const travel = { from: metres(LOW * INCH), to: metres(HIGH * INCH) };
    const found = deadBands([null, ...spans], travel);
    const wanted = blanks(all);
    expect(found).toHaveLength(wanted.length);
    return wanted.flatMap(([from = Number.NaN, to = Number.NaN], index) => [
      Math.abs((found[index]?.from ?? Number.NaN) / INCH - from),
      Math.abs((found[index]?.to ?? Number.NaN) / INCH - to),
    ]);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-08', worst, tolerance: TOLERANCE, unit: 'in', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(errors.length).toBeGreaterThan(800);
});
