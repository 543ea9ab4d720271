import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
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

const SEED = 20_307;
const RUNS = { seed: SEED, numRuns: 300 };

/**
 * A part in 10⁹ of what is compared: a system of a dozen equations whose condition is some 10⁵
 * keeps ten of the sixteen digits.
 */
const PART = 1e-9;

const weightN = ({ pipe, left, right, loads }: BattenCase): number =>
  GRAVITY * loads.reduce((sum, { mass }) => sum + mass, pipe.massPerLength * (right - left));

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

const linesOf = (the: BattenCase, change: (line: LiftLine, index: number) => LiftLine) => ({
  ...the,
  lines: the.lines.map(change),
});

describe('energy', () => {
  law('of a batten never falls when there is one more line to restrain it', (the, solution) => {
    const [one, other] = [the.lines[0]?.x ?? 0, the.lines[1]?.x ?? 0];
    const more = { x: one + 0.37 * (other - one), stiffness: 7e4, trim: 0.003 };
    const wider = solved({ ...the, lines: [...the.lines, more] });
    const added = the.lines.length;
    const scaleJ = Math.abs(energyJ(the, solution)) + 1;
    expect(energyJ({ ...the, lines: [...the.lines, more] }, wider)).toBeGreaterThanOrEqual(
      energyJ(the, solution) - PART * scaleJ,
    );
    expect(wider.tensions[added]).toBeGreaterThanOrEqual(0);
  });
});

/**
 * Potential energy: work of the loads given up, and what pipe and wires hold. A line more is a
 * restraint more, so the least potential energy rises, and what the lines have to hold falls.
 */
const energyJ = (the: BattenCase, { tensions, at }: BattenSolution): number => {
  const loads: readonly Load[] = [
    ...the.loads,
    { from: the.left, to: the.right, mass: the.pipe.massPerLength * (the.right - the.left) },
  ];
  // Clapeyron: bending energy is half the work of all forces on the bar, lines among them.
  const workJ = loads.reduce((sum, load) => sum + load.mass * GRAVITY * meanDrop(load, at), 0);
  const heldJ = tensions.reduce(
    (sum, pull, i) => sum + pull * at(the.lines[i]?.x ?? 0).deflection,
    0,
  );
  const wiresJ = tensions.reduce((sum, pull, i) => {
    return sum + pull ** 2 / (2 * (the.lines[i]?.stiffness ?? Number.NaN));
  }, 0);
  return (workJ - heldJ) / 2 + wiresJ - workJ;
};

/** Mean deflection under a load: Gauss with five points in each of sixteen parts. */
const NODES = [
  [0, 128 / 225],
  [0.538469310105683, 0.478628670499366],
  [-0.538469310105683, 0.478628670499366],
  [0.906179845938664, 0.236926885056189],
  [-0.906179845938664, 0.236926885056189],
] as const;

const meanDrop = (load: Load, at: BattenSolution['at']): number => {
  if ('x' in load) return at(load.x).deflection;
  const parts = 64;
  const step = (load.to - load.from) / parts;
  let mean = 0;
  for (let part = 0; part < parts; part++) {
    const centre = load.from + (part + 0.5) * step;
    for (const [node, weight] of NODES) {
      mean += (weight / 2 / parts) * at(centre + (node * step) / 2).deflection;
    }
  }
  return mean;
};

describe('changes', () => {
  /** Some hundredth of a millimetre, and some newtons: far below what changes a line's side. */
  const SMALL_M = 1e-6;
  const SMALL_KG = 1e-3;
  /** Differences of near numbers lose half the digits; nothing else is lost. */
  const DIFFERENCE = 1e-5;

  const sameSides = (one: BattenSolution, other: BattenSolution): boolean =>
    one.slack.every((each, i) => each === other.slack[i]);

  law('of trim are symmetric, balanced, and those that trim makes', (the, solution) => {
    const matrix = solution.sensitivity();
    const largest = Math.max(...matrix.flat().map(Math.abs));
    for (const [j, row] of matrix.entries()) {
      allNear(
        row,
        matrix.map((other) => other[j] ?? Number.NaN),
        largest,
      );
      near(
        row.reduce((sum, each) => sum + each, 0),
        0,
        largest,
        'no weight comes of a trim',
      );
      const trimmed = solved(
        linesOf(the, (line, i) => (i === j ? { ...line, trim: (line.trim ?? 0) + SMALL_M } : line)),
      );
      if (!sameSides(solution, trimmed)) continue;
      for (const [i, each] of row.entries()) {
        const change = ((trimmed.tensions[i] ?? 0) - (solution.tensions[i] ?? 0)) / SMALL_M;
        // A weight of 10⁴ N rounds at 10⁻¹² N, over a micrometre 10⁻⁶ N/m.
        expect(Math.abs(change - each)).toBeLessThanOrEqual(DIFFERENCE * largest + 1e-3);
      }
    }
  });

  law('of load are those that a load makes', (the, solution) => {
    const x = the.left + 0.61 * (the.right - the.left);
    const influence = solution.influence(x);
    near(
      influence.reduce((sum, each) => sum + each, 0),
      1,
      1,
      'one newton for one',
    );
    const spread = { from: the.left, to: x };
    near(solution.influence({ from: x, to: x })[0] ?? NaN, influence[0] ?? NaN, 1, 'no stretch');
    // Spread over a stretch it is the mean of all places in it: 2000 of them, to 1 in 10⁵.
    const mean = solution.influence(spread).map((each, i) => {
      let sum = 0;
      for (let k = 0; k < 2000; k++) {
        sum += solution.influence(spread.from + ((k + 0.5) / 2000) * (x - spread.from))[i] ?? NaN;
      }
      return Math.abs(each - sum / 2000);
    });
    expect(Math.max(...mean)).toBeLessThan(1e-5);
    const loaded = solved({ ...the, loads: [...the.loads, { x, mass: SMALL_KG }] });
    if (!sameSides(solution, loaded)) return;
    const largest = Math.max(1, ...influence.map(Math.abs));
    for (const [i, each] of influence.entries()) {
      const change = (loaded.tensions[i] ?? 0) - (solution.tensions[i] ?? 0);
      expect(Math.abs(change / (SMALL_KG * GRAVITY) - each)).toBeLessThanOrEqual(
        DIFFERENCE * largest,
      );
    }
  });
});

describe('along the batten', () => {
  const shares = [0.03, 0.21, 0.48, 0.67, 0.93];

  law('the moment is what the shear adds up to', (the, solution) => {
    const length = the.right - the.left;
    for (const share of shares) {
      const to = the.left + share * length;
      // The moment of all forces left of a cut, by the definition of it.
      const pulls = solution.tensions.reduce((sum, pull, i) => {
        const arm = to - (the.lines[i]?.x ?? 0);
        return arm > 0 ? sum + pull * arm : sum;
      }, 0);
      const loads = [
        ...the.loads,
        { from: the.left, to: the.right, mass: the.pipe.massPerLength * length },
      ].reduce((sum, load) => sum + momentLeftOf(load, to), 0);
      near(solution.at(to).moment, pulls - loads, weightN(the) * length, `at ${share}`);
      const { moment, shear, deflection } = solution;
      const there = solution.at(to);
      const slack = PART * weightN(the) * length;
      expect(there.moment).toBeLessThanOrEqual(moment.max.value + slack);
      expect(there.moment).toBeGreaterThanOrEqual(moment.min.value - slack);
      expect(there.shear).toBeLessThanOrEqual(shear.max.value + slack);
      expect(there.shear).toBeGreaterThanOrEqual(shear.min.value - slack);
      expect(there.deflection).toBeLessThanOrEqual(deflection.max.value + PART);
      expect(there.deflection).toBeGreaterThanOrEqual(deflection.min.value - PART);
    }
  });

  law('nothing is deeper, higher or more bent than the extremes', (the, solution) => {
    const { moment, deflection, sag } = solution;
    const tight = the.lines.filter((_, i) => solution.slack[i] === false).map(({ x }) => x);
    const steps = 400;
    const over = { momentNm: 0, metres: 0, ofSpan: 0 };
    for (let step = 0; step <= steps; step++) {
      const x = the.left + ((the.right - the.left) * step) / steps;
      const { moment: here, deflection: y } = solution.at(x);
      const { max, min } = deflection;
      over.momentNm = Math.max(over.momentNm, here - moment.max.value, moment.min.value - here);
      over.metres = Math.max(over.metres, y - max.value, min.value - y);
      const next = tight.findIndex((each) => each >= x);
      const [from, to] = [tight[next - 1], tight[next]];
      if (from === undefined || to === undefined || sag === null) continue;
      const [first, last] = [solution.at(from).deflection, solution.at(to).deflection];
      const chord = first + ((last - first) * (x - from)) / (to - from);
      over.ofSpan = Math.max(over.ofSpan, (y - chord) / (to - from) - sag.value / sag.span);
    }
    expect(over.momentNm).toBeLessThan(1e-6);
    expect(over.metres).toBeLessThan(1e-12);
    expect(over.ofSpan).toBeLessThan(1e-12);
    expect(solution.at(deflection.max.x).deflection).toBeCloseTo(deflection.max.value, 12);
    expect(solution.at(deflection.min.x).deflection).toBeCloseTo(deflection.min.value, 12);
    expect(solution.at(moment.max.x).moment).toBeCloseTo(moment.max.value, 6);
  });

  law('the bend is the moment over E·I, the slope that of the bent line', (the, { at }) => {
    const rigidity = the.pipe.elasticModulus * the.pipe.secondMoment;
    const step = (the.right - the.left) * 1e-3;
    const places = [
      ...the.lines.map(({ x }) => x),
      ...the.loads.flatMap((load) => ('x' in load ? [load.x] : [load.from, load.to])),
    ];
    for (const share of shares) {
      const x = the.left + share * (the.right - the.left);
      // Within one segment a quartic: the five-point rules for it are exact.
      if (places.some((place) => Math.abs(place - x) <= 2 * step)) continue;
      const [a, b, c, d, e] = [-2, -1, 0, 1, 2].map((k) => at(x + k * step).deflection) as [
        number,
        number,
        number,
        number,
        number,
      ];
      const bend = (-a + 16 * b - 30 * c + 16 * d - e) / (12 * step * step);
      const slope = (a - 8 * b + 8 * d - e) / (12 * step);
      const here = at(x);
      // A metre of deflection rounds at 10⁻¹⁶ m; over the square of a centimetre, 10⁻¹² a metre.
      expect(Math.abs(bend + here.moment / rigidity)).toBeLessThanOrEqual(1e-9);
      expect(Math.abs(slope - here.slope)).toBeLessThanOrEqual(1e-11);
    }
  });
});

const momentLeftOf = (load: Load, to: number): number => {
  if ('x' in load) return load.mass * GRAVITY * Math.max(0, to - load.x);
  const length = load.to - load.from;
  const within = Math.min(length, Math.max(0, to - load.from));
  if (length === 0) return load.mass * GRAVITY * Math.max(0, to - load.from);
  return ((load.mass * GRAVITY * within) / length) * (to - load.from - within / 2);
};
