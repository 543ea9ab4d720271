import { reachWindow } from '#house';
import { INCH } from '#quantities';
import { type Draw, drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';

const SEED = 20_302;

/** Sixteenths of an inch, from feet. */
const sixteenths = ({ whole }: Draw, fromFt: number, toFt: number): number =>
  whole(Math.round(fromFt * 192), Math.round(toFt * 192));

const typed: Make<Typed> = (draw) => ({
  purchase: draw.oneOf([1, 2]),
  lowStop: sixteenths(draw, 2, 5),
  travel: sixteenths(draw, 30, 60),
  panAtLow: sixteenths(draw, 50, 65),
  pan: sixteenths(draw, 0, 0.5),
  stack: sixteenths(draw, 0, 9),
  floor: sixteenths(draw, 20, 60),
  reachLow: sixteenths(draw, 0, 1),
  reach: sixteenths(draw, 0, 6),
});
type Typed = { readonly purchase: 1 | 2 } & Readonly<
  Record<
    'lowStop' | 'travel' | 'panAtLow' | 'pan' | 'stack' | 'floor' | 'reachLow' | 'reach',
    number
  >
>;

const metresOf = (n: number): number => (n / 16) * INCH;

/** All in thirty-seconds, since a double purchase halves a sixteenth. */
const isReached = (the: Typed, height: number): boolean => {
  const pan32 = 2 * the.panAtLow - (2 / the.purchase) * (height - the.lowStop);
  const above32 = pan32 + 2 * (the.pan + the.stack - the.floor);
  return 2 * the.reachLow <= above32 && above32 <= 2 * (the.reachLow + the.reach);
};

const windowOf = (the: Typed) =>
  reachWindow(
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

/** At every height of the travel in sixteenths: whether it is reached, and found to be reached. */
const misjudged = (
  the: Typed,
): { readonly errors: readonly (0 | 1)[]; readonly reached: number } => {
  const window = windowOf(the);
  // Far less than a sixteenth, far more than the rounding of metres.
  const [fromM, toM] = window === null ? [1, 0] : [window.from - 1e-9, window.to + 1e-9];
  const errors: (0 | 1)[] = [];
  let reached = 0;
  for (let height = the.lowStop; height <= the.lowStop + the.travel; height += 1) {
    const isWanted = isReached(the, height);
    const heightM = metresOf(height);
    const isFound = fromM <= heightM && heightM <= toM;
    errors.push(isWanted === isFound ? 0 : 1);
    if (isWanted) reached += 1;
  }
  return { errors, reached };
};

export const theCase: ValidationCase = {
  id: 'VAL-HSE-02',
  title: 'Where a loader reaches the next plate',
  calculation: 'house',
  unit: 'heights misjudged',
  tolerance: 0,
  run: () => {
    const all = drawn(typed, { seed: SEED, count: 80 }).map(misjudged);
    const reached = all.reduce((sum, one) => sum + one.reached, 0);
    if (reached <= 20_000) throw new Error(`only ${reached} heights are reached at all`);
    return enough(
      all.flatMap(({ errors }) => errors),
      600_000,
    );
  },
};
