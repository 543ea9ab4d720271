import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, GRAVITY, POUND } from '#quantities';
import { battenFrom } from './drawn-battens.ts';
import { solved } from './example-battens.ts';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, BattenSolution, LiftLine, Load } from './types.ts';

const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

const load = fc.record({
  at: number(0, 1),
  to: fc.option(number(0, 1), { freq: 2 }),
  mass: number(1, 150),
});

const line = fc.record({
  gap: number(0.3, 1),
  stiffness: number(2e4, 2e5),
  trim: fc.oneof(fc.constant(0), number(-0.02, 0.02)),
});

const battens = fc
  .record({
    left: number(-9, -4),
    length: number(8, 16),
    overhang: number(0.01, 0.12),
    lines: fc.array(line, { minLength: 3, maxLength: 7 }),
    loads: fc.array(load, { minLength: 1, maxLength: 8 }),
    massPerLength: number(1, 8),
    secondMoment: number(5e-8, 1e-6),
  })
  .map(battenFrom);

const SEED = 20_301;
const RUNS = { seed: SEED, numRuns: 300 };

/**
 * A part in 10⁹ of what is compared: a system of a dozen equations whose condition is some 10⁵
 * keeps ten of the sixteen digits.
 */
const PART = 1e-9;

const weightN = ({ pipe, left, right, loads }: BattenCase): number =>
  GRAVITY * loads.reduce((sum, { mass }) => sum + mass, pipe.massPerLength * (right - left));

const middle = (load: Load): number => ('x' in load ? load.x : (load.from + load.to) / 2);

const momentNm = ({ pipe, left, right, loads }: BattenCase): number =>
  GRAVITY *
  loads.reduce(
    (sum, load) => sum + load.mass * middle(load),
    (pipe.massPerLength * (right - left) * (left + right)) / 2,
  );

const near = (found: number, wanted: number, scale: number, what = ''): void => {
  const off = Math.abs(found - wanted);
  expect(off <= PART * scale, `${what}: ${found} for ${wanted}, of ${scale}`).toBe(true);
};

const allNear = (found: readonly number[], wanted: readonly number[], scale: number): void => {
  expect(found).toHaveLength(wanted.length);
  for (const [index, each] of wanted.entries()) {
    near(found[index] ?? Number.NaN, each, scale, `entry ${index}`);
  }
};

/** Runs a law on battens that hang; those that would tip over are skipped. */
const law = (title: string, holds: (the: BattenCase, of: BattenSolution) => void): void => {
  it(`${title} (seed ${SEED})`, () => {
    fc.assert(
      fc.property(battens, (the) => {
        const answer = solveBatten(the);
        if (!answer.ok) throw new Error(JSON.stringify(answer.error));
        fc.pre(!('unstable' in answer.value));
        if (!('unstable' in answer.value)) holds(the, answer.value);
      }),
      RUNS,
    );
  });
};

const moveLoad = (load: Load, by: (x: number) => number): Load => {
  if ('x' in load) return { ...load, x: by(load.x) };
  const ends = [by(load.from), by(load.to)];
  return { mass: load.mass, from: Math.min(...ends), to: Math.max(...ends) };
};

const loadTimes = (the: BattenCase, times: number): BattenCase => ({
  ...the,
  pipe: { ...the.pipe, massPerLength: the.pipe.massPerLength * times },
  loads: the.loads.map((load) => ({ ...load, mass: load.mass * times })),
});

const linesOf = (the: BattenCase, change: (line: LiftLine, index: number) => LiftLine) => ({
  ...the,
  lines: the.lines.map(change),
});

describe('the answer for any batten', () => {
  law('holds the load up, and level', (the, { tensions }) => {
    const sumN = tensions.reduce((sum, each) => sum + each, 0);
    const turned = tensions.reduce((sum, each, i) => sum + each * (the.lines[i]?.x ?? 0), 0);
    near(sumN, weightN(the), weightN(the), 'forces');
    near(turned, momentNm(the), weightN(the) * (the.right - the.left), 'moments');
  });

  law('is mirrored when the batten is', (the, solution) => {
    const mirrored = solved({
      ...the,
      left: -the.right,
      right: -the.left,
      lines: the.lines.map((line) => ({ ...line, x: -line.x })),
      loads: the.loads.map((load) => moveLoad(load, (x) => -x)),
    });
    allNear(mirrored.tensions, solution.tensions, weightN(the));
    near(mirrored.moment.max.value, solution.moment.max.value, weightN(the));
    near(mirrored.shear.max.value, -solution.shear.min.value, weightN(the));
    near(mirrored.deflection.max.value, solution.deflection.max.value, 1);
  });

  law('does not care in which order lines and loads are told', (the, { tensions }) => {
    const turned = solved({
      ...the,
      lines: the.lines.toReversed(),
      loads: the.loads.toReversed(),
    });
    allNear(turned.tensions, tensions.toReversed(), weightN(the));
  });

  law('moves along with the batten', (the, { tensions }) => {
    const along = solved({
      ...the,
      left: the.left + 20,
      right: the.right + 20,
      lines: the.lines.map((line) => ({ ...line, x: line.x + 20 })),
      loads: the.loads.map((load) => moveLoad(load, (x) => x + 20)),
    });
    allNear(along.tensions, tensions, weightN(the));
  });

  law('is three times as large when loads and trims are', (the, solution) => {
    const heavy = linesOf(loadTimes(the, 3), (line) => ({ ...line, trim: 3 * (line.trim ?? 0) }));
    const { tensions, moment, deflection } = solved(heavy);
    allNear(
      tensions,
      solution.tensions.map((each) => 3 * each),
      3 * weightN(the),
    );
    near(moment.max.value, 3 * solution.moment.max.value, 3 * weightN(the));
    near(deflection.min.value, 3 * solution.deflection.min.value, 3);
  });

  law(
    'keeps its tensions at twice the length where E·I is eight times as much',
    (the, solution) => {
      // y = P·L³/(E·I) and y = T/k: with the same k, y stays where E·I goes with the cube of L.
      const large: BattenCase = {
        ...the,
        pipe: {
          ...the.pipe,
          massPerLength: the.pipe.massPerLength / 2,
          secondMoment: the.pipe.secondMoment * 8,
        },
        left: 2 * the.left,
        right: 2 * the.right,
        lines: the.lines.map((line) => ({ ...line, x: 2 * line.x })),
        loads: the.loads.map((load) => moveLoad(load, (x) => 2 * x)),
      };
      const { tensions, moment } = solved(large);
      allNear(tensions, solution.tensions, weightN(the));
      near(moment.min.value, 2 * solution.moment.min.value, 2 * weightN(the));
    },
  );

  law('is the same in feet and pounds as in metres and kilograms', (the, solution) => {
    const feet = (x: number): number => x / FOOT;
    // The same numbers asked as if foot and pound were the units, with E·I and k changed to suit.
    const { massPerLength, secondMoment, elasticModulus } = the.pipe;
    const asked = solved({
      pipe: {
        massPerLength: (massPerLength / POUND) * FOOT,
        secondMoment: secondMoment / FOOT ** 4,
        elasticModulus: (elasticModulus / POUND) * FOOT ** 2,
      },
      left: feet(the.left),
      right: feet(the.right),
      lines: the.lines.map(({ x, stiffness, trim = 0 }) => ({
        x: feet(x),
        stiffness: stiffness === null ? null : (stiffness / POUND) * FOOT,
        trim: feet(trim),
      })),
      loads: the.loads.map((load) => ({
        ...moveLoad(load, feet),
        mass: load.mass / POUND,
      })),
    });
    allNear(
      asked.tensions.map((each) => each * POUND),
      solution.tensions,
      weightN(the),
    );
    near(asked.moment.max.value * POUND * FOOT, solution.moment.max.value, weightN(the));
  });
});

describe('lines that only pull', () => {
  law('never push, and those that are slack have play', (the, solution) => {
    const { tensions, slack, deflection } = solution;
    for (const [i, { trim = 0, stiffness }] of the.lines.entries()) {
      const [pull, y] = [tensions[i] ?? Number.NaN, deflection.atLines[i] ?? Number.NaN];
      expect(pull).toBeGreaterThanOrEqual(0);
      if (slack[i] === true) {
        expect(pull).toBe(0);
        expect(y + trim).toBeLessThanOrEqual(1e-9);
      } else near(y + trim, pull / (stiffness ?? Number.NaN), 1);
    }
  });

  law('add up load by load where all of them stay tight', (the, _) => {
    const linear = { ...the, tensionOnly: false };
    const [first, ...rest] = the.loads;
    const none = { ...the.pipe, massPerLength: 0 };
    const untrimmed = linesOf(linear, ({ trim: _trim, ...line }) => line);
    const parts = [
      solved({ ...linear, loads: rest }),
      solved({ ...untrimmed, pipe: none, loads: first === undefined ? [] : [first] }),
    ];
    const sums = the.lines.map((_line, i) =>
      parts.reduce((sum, { tensions }) => sum + (tensions[i] ?? 0), 0),
    );
    const whole = solved(linear);
    allNear(whole.tensions, sums, Math.max(weightN(the), ...whole.tensions.map(Math.abs)));
    const real = solved(the);
    if (!real.slack.includes(true)) allNear(real.tensions, sums, weightN(the));
  });
});
