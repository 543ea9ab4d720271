import { deadBands } from '#house';
import { INCH, metres } from '#quantities';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';

const SEED = 20_308;
const [LOW, HIGH] = [36, 736];

type Window = readonly [from: number, to: number];

const windows: Make<readonly Window[]> = ({ several, whole, chance }) =>
  several(0, 5, (): Window => {
    const from = whole(LOW, HIGH);
    // Of one height, from an end of the travel, or any.
    const to = chance(0.1)
      ? from
      : chance(0.1)
        ? whole(0, 1) * (HIGH - LOW) + LOW
        : whole(LOW, HIGH);
    return [Math.min(from, to), Math.max(from, to)];
  });

/** Runs of inches that no window covers. */
const blanks = (all: readonly (readonly [number, number])[]): readonly (readonly number[])[] => {
  const painted = new Array<boolean>(HIGH).fill(false);
  for (const [from, to] of all) painted.fill(true, from, to);
  // A window of one height cuts a band in two, though it covers no inch.
  const cuts = new Set(all.flatMap(([from, to]) => (from === to ? [from] : [])));
  const runs: number[][] = [];
  for (let at = LOW; at < HIGH; at += 1) {
    if (painted[at]) continue;
    const run = runs.at(-1);
    if (run?.[1] === at && !cuts.has(at)) run[1] = at + 1;
    else runs.push([at, at + 1]);
  }
  return runs;
};

export const theCase: ValidationCase = {
  id: 'VAL-HSE-08',
  title: 'Heights that no gallery reaches',
  calculation: 'house',
  unit: 'in',
  tolerance: 1e-6,
  run: () =>
    enough(
      drawn(windows, { seed: SEED, count: 300 }).flatMap((all) => {
        const spans = all.map(([from, to]) => ({
          from: metres(from * INCH),
          to: metres(to * INCH),
        }));
        const travel = { from: metres(LOW * INCH), to: metres(HIGH * INCH) };
        const found = deadBands([null, ...spans], travel);
        const wanted = blanks(all);
        // A band too many or too few is no small error.
        if (found.length !== wanted.length) return [Number.POSITIVE_INFINITY];
        return wanted.flatMap(([from = Number.NaN, to = Number.NaN], index) => [
          Math.abs((found[index]?.from ?? Number.NaN) / INCH - from),
          Math.abs((found[index]?.to ?? Number.NaN) / INCH - to),
        ]);
      }),
      800,
    ),
};
