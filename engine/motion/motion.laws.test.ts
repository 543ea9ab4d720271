import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { releasable } from './releasable.ts';
import { type Run, type RunawayCase, runaway } from './runaway.ts';

const SEED = 71_903;
const RUNS = { seed: SEED, numRuns: 500 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Heights of nodes from 1 m up, half a metre apart or more. */
const heights = fc
  .array(between(0.5, 6), { minLength: 1, maxLength: 6 })
  .map((gaps) =>
    gaps.reduce<readonly number[]>((all, gap) => [...all, (all.at(-1) ?? 1) + gap], [1]),
  );

/** To a thousandth of a newton: below that a set is in balance or not by rounding alone. */
const force = fc.integer({ min: -4_000_000, max: 4_000_000 }).map((mN) => mN / 1000);
const step = fc.oneof(fc.constant(0), between(0.1, 80));

type Made = { readonly even: RunawayCase; readonly uneven: RunawayCase };

/** One set with a mass that stays, and the same with pieces that land: more hangs higher up. */
const made: fc.Arbitrary<Made> = heights.chain((levels) =>
  fc
    .record({
      forces: fc.array(fc.tuple(force, force, fc.boolean()), {
        minLength: levels.length,
        maxLength: levels.length,
      }),
      steps: fc.array(fc.tuple(step, step), { minLength: levels.length, maxLength: levels.length }),
      // In thousandths of the travel: within a micrometre of a node it counts as on it.
      at: fc.integer({ min: 0, max: 1000 }).map((part) => part / 1000),
      purchase: fc.constantFrom(1 as const, 2 as const),
      arbor: between(40, 900),
      batten: between(40, 200),
      lineMass: between(0, 50),
      blockMass: between(0, 30),
      share: between(0, 0.05),
      constant: between(0, 40),
      hold: between(0, 300),
    })
    .map((drawn): Made => {
      const { purchase, arbor, batten, lineMass, blockMass } = drawn;
      const curve = levels.map((height, index) => {
        const [below = 0, other = 0, jumps = false] = drawn.forces[index] ?? [];
        return { height, below, above: jumps ? other : below };
      });
      let hangsKg = batten;
      const hanging = levels.map((height, index) => {
        const [gradual = 0, atOnce = 0] = drawn.steps[index] ?? [];
        const below = hangsKg + gradual;
        hangsKg = below + atOnce;
        return { height, below, above: hangsKg };
      });
      const [lowStop, highStop] = [1, levels.at(-1) ?? 1];
      const even: RunawayCase = {
        curve,
        lowStop,
        highStop,
        height: lowStop + drawn.at * (highStop - lowStop),
        hold: drawn.hold,
        moves: {
          purchase,
          arbor,
          hanging: batten,
          lineMass,
          blockMass,
          friction: { share: drawn.share, of: 'both', constant: drawn.constant },
        },
      };
      return { even, uneven: { ...even, moves: { ...even.moves, hanging } } };
    }),
);

const free = (the: RunawayCase): RunawayCase => ({
  ...the,
  hold: 0,
  moves: { ...the.moves, friction: { share: 0, of: 'batten', constant: 0 } },
});

/** Relative to the size of what was summed. */
const close = (found: number, wanted: number, size: number, tolerance = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(tolerance * Math.max(1e-3, size));
};

const moving = (the: RunawayCase): Run | null => {
  const found = runaway(the);
  return found.moves ? found : null;
};

const same = (one: Run | null, other: Run | null, tolerance = 1e-9): void => {
  expect(one === null).toBe(other === null);
  if (one === null || other === null) return;
  expect([one.way, one.end]).toEqual([other.way, other.end]);
  close(one.height, other.height, 10, tolerance);
  close(one.time ?? -1, other.time ?? -1, one.time ?? 1, tolerance);
  // At rest the speed is none, and just before the stop it may be lost in rounding.
  close(one.speed, other.speed, Math.max(one.speed, 1e-2), tolerance);
};

/** Work that the largest force of a curve does over the whole travel: what rounding goes by. */
const workAtMost = ({ curve, lowStop, highStop }: RunawayCase): number =>
  Math.max(...curve.flatMap(({ below, above }) => [Math.abs(below), Math.abs(above)])) *
  (highStop - lowStop);

describe(`energy (seed ${SEED})`, () => {
  it(`what the imbalance gave is in motion, friction, hold or lost (seed ${SEED})`, () => {
    let ran = 0;
    fc.assert(
      fc.property(made, ({ even, uneven }) => {
        for (const the of [even, uneven]) {
          const run = moving(the);
          if (run === null) continue;
          ran += 1;
          const { released, friction, hold, landed, kinetic } = run.energy;
          const size = workAtMost(the);
          close(released - friction - hold - landed, kinetic, size, 1e-12);
          if (the === even) close(landed, 0, size, 1e-12);
          close((run.mass.moving * run.speed ** 2) / 2, kinetic, kinetic);
          expect(run.speed).toBeLessThanOrEqual(run.speedAtMost * (1 + 1e-9) + 1e-9);
        }
      }),
      RUNS,
    );
    expect(ran).toBeGreaterThan(500);
  });

  it(`without friction all of it is in the motion at the stop (seed ${SEED})`, () => {
    let stops = 0;
    fc.assert(
      fc.property(made, ({ even }) => {
        const the = free(even);
        const run = moving(the);
        const [start] = releasable(the).starts;
        if (run === null || start === undefined) return;
        expect(run.way).toBe(start.free.way);
        expect(run.end === 'stop').toBe(start.free.end.at === 'stop');
        close(run.energy.kinetic, start.free.end.energy, start.free.most.energy);
        close(run.height, start.free.end.height, 10, 1e-6);
        for (const { speed } of run.passings) {
          const kineticJ = (run.mass.moving * speed ** 2) / 2;
          expect(kineticJ).toBeLessThanOrEqual(start.free.most.energy * (1 + 1e-9) + 1e-9);
        }
        if (run.end === 'stop') stops += 1;
      }),
      RUNS,
    );
    expect(stops).toBeGreaterThan(100);
  });
});

const mirrored = (the: RunawayCase): RunawayCase => {
  const over = (heightM: number): number => the.lowStop + the.highStop - heightM;
  return {
    ...the,
    height: over(the.height),
    curve: the.curve
      .map(({ height, below, above }) => ({ height: over(height), below: -above, above: -below }))
      .toReversed(),
  };
};

describe(`mirror, size and reeving (seed ${SEED})`, () => {
  it(`in and out are alike where the mass stays (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, ({ even }) => {
        const [run, other] = [moving(even), moving(mirrored(even))];
        const back = { in: 'out', out: 'in' } as const;
        const turned =
          other === null
            ? null
            : {
                ...other,
                way: back[other.way],
                height: (even.lowStop + even.highStop - other.height) as Run['height'],
              };
        same(run, turned, 1e-7);
      }),
      RUNS,
    );
  });

  it(`masses and forces alike larger change neither speed nor time (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, between(0.1, 10), ({ uneven }, times) => {
        const { moves } = uneven;
        const larger: RunawayCase = {
          ...uneven,
          hold: uneven.hold * times,
          curve: uneven.curve.map((node) => ({
            ...node,
            below: node.below * times,
            above: node.above * times,
          })),
          moves: {
            ...moves,
            arbor: moves.arbor * times,
            lineMass: moves.lineMass * times,
            blockMass: moves.blockMass * times,
            hanging: scaled(moves.hanging, times),
            friction: { ...moves.friction, constant: moves.friction.constant * times },
          },
        };
        same(moving(uneven), moving(larger), 1e-7);
      }),
      RUNS,
    );
  });

  it(`four times the travel takes twice the time at twice the speed (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, ({ uneven }) => {
        const far = <T extends { readonly height: number }>(nodes: readonly T[]) =>
          nodes.map((node) => ({ ...node, height: 4 * node.height }));
        const { hanging } = uneven.moves;
        const longer: RunawayCase = {
          ...uneven,
          curve: far(uneven.curve),
          lowStop: 4 * uneven.lowStop,
          highStop: 4 * uneven.highStop,
          height: 4 * uneven.height,
          moves: { ...uneven.moves, hanging: typeof hanging === 'number' ? hanging : far(hanging) },
        };
        const [run, other] = [moving(uneven), moving(longer)];
        const back =
          other === null
            ? null
            : {
                ...other,
                height: (other.height / 4) as Run['height'],
                time: (other.time === null ? null : other.time / 2) as Run['time'],
                speed: (other.speed / 2) as Run['speed'],
              };
        same(run, back, 1e-7);
      }),
      RUNS,
    );
  });

  it(`a double purchase moves like a single one with a quarter of the arbor (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, ({ uneven }) => {
        const share = { share: 0, of: 'batten', constant: 0 } as const;
        const double: RunawayCase = {
          ...uneven,
          moves: { ...uneven.moves, purchase: 2, friction: share },
        };
        const single: RunawayCase = {
          ...double,
          moves: { ...double.moves, purchase: 1, arbor: double.moves.arbor / 4 },
        };
        const [run, other] = [moving(double), moving(single)];
        same(run, other);
        if (run === null || other === null) return;
        close(run.arborSpeed, other.arborSpeed / 2, 1);
      }),
      RUNS,
    );
  });
});

const scaled = (
  hanging: RunawayCase['moves']['hanging'],
  times: number,
): RunawayCase['moves']['hanging'] =>
  typeof hanging === 'number'
    ? hanging * times
    : hanging.map((node) => ({ ...node, below: node.below * times, above: node.above * times }));

describe(`holds and time (seed ${SEED})`, () => {
  it(`more hold makes it neither faster, sooner nor stronger (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, between(0, 500), ({ uneven }, more) => {
        const held = { ...uneven, hold: uneven.hold + more };
        const [run, slower] = [moving(uneven), moving(held)];
        if (slower !== null) expect(run).not.toBeNull();
        if (run !== null && slower?.end === 'stop' && slower.way === run.way) {
          expect(run.end).toBe('stop');
          expect(slower.speed).toBeLessThanOrEqual(run.speed * (1 + 1e-9));
          expect(slower.time ?? 0).toBeGreaterThanOrEqual((run.time ?? 0) * (1 - 1e-9));
        }
        const energies = [0, uneven.hold, held.hold].map(
          (holdN) => releasable(uneven, holdN).energyAgainstHold ?? Number.NaN,
        );
        const [most = 0, some = 0, least = 0] = energies;
        expect(releasable(uneven).energy).toBeCloseTo(most, 6);
        expect(some).toBeLessThanOrEqual(most + 1e-9);
        expect(least).toBeLessThanOrEqual(some + 1e-9);
      }),
      RUNS,
    );
  });

  it(`sent back without friction it rests where it began, as late (seed ${SEED})`, () => {
    let sent = 0;
    fc.assert(
      fc.property(made, ({ even }) => {
        const the = free(even);
        const run = moving(the);
        // Where it hardly starts, a rounding of the speed is metres of the way.
        if (run?.end !== 'stop' || Math.abs(run.acceleration.start) < 0.05) return;
        const back = runaway({
          ...the,
          height: run.height,
          already: { way: run.way === 'in' ? 'out' : 'in', speed: run.speed },
        });
        if (!back.moves || back.time === null || run.time === null) throw new Error('no motion');
        sent += 1;
        close(back.height, the.height, 10, 1e-9);
        // Near rest a rounding of the energy is its root in speed, and so in time.
        close(back.time, run.time, 1 + run.time, 1e-5);
      }),
      RUNS,
    );
    expect(sent).toBeGreaterThan(100);
  });

  it(`nodes in between change nothing (seed ${SEED})`, () => {
    fc.assert(
      fc.property(made, ({ uneven }) => {
        const { hanging } = uneven.moves;
        const finer: RunawayCase = {
          ...uneven,
          curve: halved(uneven.curve),
          moves: {
            ...uneven.moves,
            hanging: typeof hanging === 'number' ? hanging : halved(hanging),
          },
        };
        same(moving(uneven), moving(finer), 1e-7);
        expect(releasable(finer).energy).toBeCloseTo(releasable(uneven).energy, 6);
      }),
      RUNS,
    );
  });
});

type Node = { readonly height: number; readonly below: number; readonly above: number };

const halved = (nodes: readonly Node[]): readonly Node[] =>
  nodes.flatMap((node, index) => {
    const next = nodes[index + 1];
    if (next === undefined) return [node];
    const middle = (node.above + next.below) / 2;
    return [node, { height: (node.height + next.height) / 2, below: middle, above: middle }];
  });
