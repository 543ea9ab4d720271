import fc from 'fast-check';
import { expect, it } from 'vitest';
import { reachWindow } from '#house';
import { INCH } from '#quantities';
import { record } from '../../record.ts';

const SEED = 20_302;

/** Sixteenths of an inch, from feet. */
const sixteenths = (fromFt: number, toFt: number) =>
  fc.integer({ min: Math.round(fromFt * 192), max: Math.round(toFt * 192) });

const typed = fc.record({
  purchase: fc.constantFrom(1 as const, 2 as const),
  lowStop: sixteenths(2, 5),
  travel: sixteenths(30, 60),
  panAtLow: sixteenths(50, 65),
  pan: sixteenths(0, 0.5),
  stack: sixteenths(0, 9),
  floor: sixteenths(20, 60),
  reachLow: sixteenths(0, 1),
  reach: sixteenths(0, 6),
});
type Typed = Parameters<Parameters<typeof typed.map>[0]>[0];

const metresOf = (n: number): number => (n / 16) * INCH;

/** All in thirty-seconds, since a double purchase halves a sixteenth. */
const isReached = (the: Typed, height: number): boolean => {
  const pan32 = 2 * the.panAtLow - (2 / the.purchase) * (height - the.lowStop);
  const above32 = pan32 + 2 * (the.pan + the.stack - the.floor);
  return 2 * the.reachLow <= above32 && above32 <= 2 * (the.reachLow + the.reach);
};

it(`VAL-HSE-02 no batten height is misjudged (seed ${SEED})`, () => {
  let [asked, misjudged, reached] = [0, 0, 0];
  for (const the of fc.sample(typed, { seed: SEED, numRuns: 80 })) {
    const window = reachWindow(
      {
        purchase: the.purchase,
        lowStopM: metresOf(the.lowStop),
        highStopM: metresOf(the.lowStop + the.travel),
        panAtLowM: metresOf(the.panAtLow),
        panThicknessM: metresOf(the.pan),
        galleryFloorM: metresOf(the.floor),
        reachLowM: metresOf(the.reachLow),
        reachHighM: metresOf(the.reachLow + the.reach),
      },
      metresOf(the.stack),
    );
    for (let height = the.lowStop; height <= the.lowStop + the.travel; height += 1) {
      const heightM = metresOf(height);
      // Far less than a sixteenth, far more than the rounding of metres.
      const isInside =
        window !== null && window.from - 1e-9 <= heightM && heightM <= window.to + 1e-9;
      const wanted = isReached(the, height);
      asked += 1;
      if (wanted) reached += 1;
      if (isInside !== wanted) misjudged += 1;
    }
  }
  record({
    id: 'VAL-HSE-02',
    worst: misjudged,
    tolerance: 0,
    unit: 'heights misjudged',
    cases: asked,
  });
  expect(asked).toBeGreaterThan(600_000);
  expect(reached).toBeGreaterThan(20_000);
});
