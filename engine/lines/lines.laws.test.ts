import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { headBlockForce, loftBlockForce, muleBlockForces } from './block-force.ts';
import { arborWireMass, restrainedForce } from './both-sides.ts';
import { blockPlaces, freeLength } from './run.ts';
import { tensionAlongRun } from './tension.ts';
import type { BlockForce, LineRun } from './types.ts';

const SEED = 60_617;
const RUNS = { seed: SEED, numRuns: 500 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const place = fc.record({ x: between(-15, 15), z: between(15, 25) });

const anyRun: fc.Arbitrary<LineRun> = fc.record({
  purchase: fc.constantFrom(1 as const, 2 as const),
  lineX: between(-12, 12),
  headX: fc.oneof(between(-14, -12.1), between(12.1, 14)),
  loftZ: between(15, 22),
  headZ: between(15, 23),
  wireEndZ: between(1, 14),
  attachZ: between(0, 14),
  mules: fc.array(place, { maxLength: 3 }),
});
const tension = between(0, 5000);
const massPerLength = between(0, 1);

/** Same number but for rounding: sums of a dozen terms of this size. */
const close = (found: number, wanted: number, size: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-12 * Math.max(1, size));
};

describe(`free length (seed ${SEED})`, () => {
  it(`is the same at every height of the batten (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, between(0, 12), (run, upM) => {
        const higher = {
          ...run,
          wireEndZ: run.wireEndZ + upM,
          attachZ: run.attachZ - upM / run.purchase,
        };
        close(freeLength(higher), freeLength(run), 100);
      }),
      RUNS,
    );
  });

  it(`is no shorter by way of one more block, and the same in a mirror (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, place, (run, mule) => {
        const mules = [...(run.mules ?? []), mule];
        expect(freeLength({ ...run, mules })).toBeGreaterThanOrEqual(freeLength(run) - 1e-12);
        close(freeLength(mirrored(run)), freeLength(run), 100);
      }),
      RUNS,
    );
  });
});

const mirrored = (run: LineRun): LineRun => ({
  ...run,
  lineX: -run.lineX,
  headX: -run.headX,
  mules: (run.mules ?? []).map(({ x, z }) => ({ x: -x, z })),
});

describe(`tension along a line (seed ${SEED})`, () => {
  it(`differs between two places by the wire between their heights only (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, tension, massPerLength, (run, tensionN, massPerLengthKg) => {
        const found = tensionAlongRun({ run, tensionN, massPerLengthKg });
        const at = (z: number): number => tensionN + massPerLengthKg * GRAVITY * (z - run.wireEndZ);
        for (const [index, { z }] of blockPlaces(run).entries()) {
          close(found.blocks[index]?.before ?? Number.NaN, at(z), 6000);
        }
        close(found.arbor, at(run.attachZ), 6000);
        const highestZ = Math.max(...blockPlaces(run).map(({ z }) => z));
        close(found.most, at(highestZ), 6000);
      }),
      RUNS,
    );
  });

  it(`out and in lie on either side of rest (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        anyRun,
        tension,
        fc.constantFrom('plain', 'rolling'),
        (run, tensionN, bearing) => {
          const arborN = (batten?: 'out' | 'in'): number =>
            tensionAlongRun({
              run,
              tensionN,
              massPerLengthKg: 0,
              ...(batten === undefined ? {} : { friction: { bearing, batten } }),
            }).arbor;
          expect(arborN('out')).toBeGreaterThanOrEqual(arborN());
          expect(arborN('in')).toBeLessThanOrEqual(arborN());
          // What goes out comes back: the two factors are each other's inverse.
          close(arborN('out') * arborN('in'), tensionN ** 2, 25e6);
        },
      ),
      RUNS,
    );
  });
});

/** As a vector, x to stage left and z up. */
const vector = (force: BlockForce, run: LineRun, from: 'loft' | 'head'): readonly number[] => {
  const side = (run.headX >= run.lineX ? 1 : -1) * (from === 'loft' ? 1 : -1);
  return [force.horizontal * side, -force.vertical];
};

describe(`forces on blocks (seed ${SEED})`, () => {
  it(`action and reaction: all blocks together carry both ends of the line (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, tension, (run, tensionN) => {
        const mules = run.mules ?? [];
        const head = headBlockForce({ lines: [{ run, tension: tensionN }], handLineMass: 0 });
        const forces = [
          vector(loftBlockForce(run, tensionN), run, 'loft'),
          ...muleBlockForces(
            run,
            mules.map(() => tensionN),
          ).map((force) => vector(force, run, 'loft')),
          vector(head.block, run, 'head'),
        ];
        const sum = (axis: 0 | 1): number =>
          forces.reduce((sumN, force) => sumN + (force[axis] ?? Number.NaN), 0);
        // A line of no mass pulls its blocks only by its two ends, both of which hang straight
        // down: nothing is left sideways, and twice the tension down.
        close(sum(0), 0, tensionN);
        close(sum(1), -2 * tensionN, tensionN);
      }),
      RUNS,
    );
  });

  it(`the resultant is 2·T·sin(turn/2), and its parts make it (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, tension, (run, tensionN) => {
        const force = loftBlockForce(run, tensionN);
        close(force.resultant, 2 * tensionN * Math.sin(force.turn / 2), tensionN);
        close(Math.hypot(force.horizontal, force.vertical), force.resultant, tensionN);
      }),
      RUNS,
    );
  });

  it(`scale with the tension, and are the same in a mirror (seed ${SEED})`, () => {
    fc.assert(
      fc.property(anyRun, tension, between(0.1, 10), (run, tensionN, times) => {
        const one = loftBlockForce(run, tensionN);
        close(loftBlockForce(run, times * tensionN).vertical, times * one.vertical, 1e5);
        const other = loftBlockForce(mirrored(run), tensionN);
        close(other.horizontal, one.horizontal, tensionN);
        close(other.vertical, one.vertical, tensionN);
      }),
      RUNS,
    );
  });
});

describe(`either side held (seed ${SEED})`, () => {
  const sides = fc.record({ battenSideKg: between(0, 600), arborMassKg: between(0, 900) });
  const lines = fc.record({
    purchase: fc.constantFrom(1 as const, 2 as const),
    lines: fc.integer({ min: 1, max: 9 }),
    massPerLength,
    headZ: between(18, 22),
    wireEndZ: between(1, 18),
    attachZ: between(1, 18),
  });

  it(`the sides differ by the imbalance, and the force is the larger (seed ${SEED})`, () => {
    fc.assert(
      fc.property(lines, sides, (set, hung) => {
        const found = restrainedForce(set, hung);
        // U as calculations.md section 4 writes it, with no block height in it.
        const imbalanceN =
          GRAVITY *
          (hung.battenSideKg +
            set.lines * set.massPerLength * (set.attachZ - set.wireEndZ) -
            hung.arborMassKg / set.purchase);
        close(found.battenSide - found.arborSide, imbalanceN, 1e4);
        expect(found.force).toBe(Math.max(found.battenSide, found.arborSide));
      }),
      RUNS,
    );
  });

  it(`the steel carries the arbor and its wire, whatever the purchase (seed ${SEED})`, () => {
    fc.assert(
      fc.property(lines, sides, (set, hung) => {
        const { arborSide } = restrainedForce(set, hung);
        const wholeN = GRAVITY * (hung.arborMassKg + arborWireMass(set));
        close(arborSide * set.purchase, wholeN, 1e4);
      }),
      RUNS,
    );
  });
});
