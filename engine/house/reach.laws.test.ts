import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { panHeight } from './arbor-travel.ts';
import {
  deadBands,
  type HeightSpan,
  nextPlateHeight,
  type ReachGeometry,
  reachWindow,
} from './reach.ts';

const SEED = 33_931;
const RUNS = { seed: SEED, numRuns: 500 };

const height = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const geometry: fc.Arbitrary<ReachGeometry> = fc
  .record({
    panAtLowM: height(8, 25),
    panThicknessM: height(0, 0.2),
    lowStopM: height(0, 1.5),
    travelM: height(2, 20),
    purchase: fc.constantFrom(1 as const, 2 as const),
    galleryFloorM: height(3, 20),
    reachLowM: height(0, 0.5),
    reachM: height(0, 2),
  })
  .map(({ travelM, reachM, ...rest }) => ({
    ...rest,
    highStopM: rest.lowStopM + travelM,
    reachHighM: rest.reachLowM + reachM,
  }));
const stack = height(0, 2);

/** The same set on a travel so long that no stop cuts its windows. */
const uncut = (the: ReachGeometry): ReachGeometry => ({
  ...the,
  lowStopM: -100,
  highStopM: 400,
  panAtLowM: the.panAtLowM + 100,
});

describe(`reach windows (seed ${SEED})`, () => {
  it(`hold every height at which a hand reaches the plate, and no other (seed ${SEED})`, () => {
    fc.assert(
      fc.property(geometry, stack, height(0, 1), (the, stackM, part) => {
        const battenM = the.lowStopM + part * (the.highStopM - the.lowStopM);
        const panM = panHeight({ ...the, battenM });
        const plateM = nextPlateHeight(panM, the.panThicknessM, stackM) - the.galleryFloorM;
        const window = reachWindow(the, stackM);
        const margins = [plateM - the.reachLowM, the.reachHighM - plateM];
        fc.pre(margins.every((marginM) => Math.abs(marginM) > 1e-5));
        const isReached = margins.every((marginM) => marginM > 0);
        const isInside = window !== null && window.from <= battenM && battenM <= window.to;
        expect(isInside).toBe(isReached);
      }),
      RUNS,
    );
  });

  it(`move up by r times the thickness of a plate put on (seed ${SEED})`, () => {
    fc.assert(
      fc.property(geometry, stack, height(0.005, 0.08), (the, stackM, plateM) => {
        const long = uncut(the);
        const [before, after] = [reachWindow(long, stackM), reachWindow(long, stackM + plateM)];
        const shiftM = the.purchase * plateM;
        expect((after?.from ?? 0) - (before?.from ?? 0)).toBeCloseTo(shiftM, 9);
        expect((after?.to ?? 0) - (before?.to ?? 0)).toBeCloseTo(shiftM, 9);
      }),
      RUNS,
    );
  });

  it(`are twice as tall on double purchase (seed ${SEED})`, () => {
    fc.assert(
      fc.property(geometry, stack, (the, stackM) => {
        const heightOf = (purchase: 1 | 2): number => {
          const window = reachWindow({ ...uncut(the), purchase }, stackM);
          return (window?.to ?? Number.NaN) - (window?.from ?? Number.NaN);
        };
        expect(heightOf(2)).toBeCloseTo(2 * heightOf(1), 9);
        expect(heightOf(1)).toBeCloseTo(the.reachHighM - the.reachLowM, 9);
      }),
      RUNS,
    );
  });

  it(`and dead bands share out the travel between them (seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        fc.array(geometry, { maxLength: 4 }),
        stack,
        height(0, 1),
        (all, stackM, part) => {
          const travel = { from: metres(0.5), to: metres(20) };
          const windows = all.map((the) =>
            reachWindow({ ...the, lowStopM: travel.from, highStopM: travel.to }, stackM),
          );
          const bands = deadBands(windows, travel);
          const heightM = travel.from + part * (travel.to - travel.from);
          const isIn = (spans: readonly (HeightSpan | null)[]): boolean =>
            spans.some((span) => span !== null && span.from <= heightM && heightM <= span.to);
          const ends = [...windows, ...bands].flatMap((span) =>
            span === null ? [] : [span.from, span.to],
          );
          fc.pre(ends.every((endM) => Math.abs(endM - heightM) > 1e-5));
          expect(isIn(bands)).toBe(!isIn(windows));
          for (const { from, to } of bands) expect(to).toBeGreaterThan(from);
        },
      ),
      RUNS,
    );
  });
});
