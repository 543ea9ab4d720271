import { spreaderCount, stackHeight } from '#house';
import { INCH } from '#quantities';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';

const SEED = 20_305;

type Stack = {
  readonly runs: readonly { readonly mils: number; readonly count: number }[];
  readonly plateMils: number;
  readonly everyMils: number;
  readonly rule: 'floor' | 'ceil';
};

const stack: Make<Stack> = ({ several, whole, oneOf, chance }) => ({
  // One time in five inches and half inches that fill a foot, or feet, to the last thousandth.
  runs: chance(0.2)
    ? [{ mils: 500 * whole(1, 4), count: 24 * whole(1, 3) }]
    : several(1, 4, () => ({ mils: 25 * whole(20, 80), count: whole(0, 30) })),
  plateMils: whole(100, 300),
  everyMils: oneOf([12_000, 18_000, 24_000, 30_000, 36_000]),
  rule: oneOf(['floor', 'ceil']),
});
const stacks = (): readonly Stack[] => drawn(stack, { seed: SEED, count: 400 });

const metresOf = (mils: number): number => (mils / 1000) * INCH;

const bricksMils = ({ runs }: Stack): number =>
  runs.reduce((sum, { mils, count }) => sum + mils * count, 0);

/** Plates by division with a remainder. */
const platesOf = (the: Stack): number => {
  const rest = bricksMils(the) % the.everyMils;
  const full = (bricksMils(the) - rest) / the.everyMils;
  return full + (the.rule === 'ceil' && rest > 0 ? 1 : 0);
};

/** Brick upon brick, in metres, so that rounding adds up as it would in a house. */
const thickness = ({ runs }: Stack): number => {
  let sumM = 0;
  for (const { mils, count } of runs) {
    for (let brick = 0; brick < count; brick += 1) sumM += metresOf(mils);
  }
  return sumM;
};

export const theCase: ValidationCase = {
  id: 'VAL-HSE-05',
  title: 'Height of a mixed stack, in thousandths of an inch',
  calculation: 'house',
  unit: 'relative',
  tolerance: 1e-13,
  run: () => {
    const all = stacks();
    // Full stacks are where a count goes wrong.
    enough(
      all.filter((the) => bricksMils(the) > 0 && bricksMils(the) % the.everyMils === 0),
      20,
    );
    return all.map((the) => {
      const { plateMils, everyMils, rule } = the;
      const wantedM = metresOf(bricksMils(the) + platesOf(the) * plateMils);
      const spreader = { thicknessM: metresOf(plateMils), everyM: metresOf(everyMils), rule };
      const foundM = stackHeight({ brickThicknessM: thickness(the), spreader });
      return Math.abs(foundM - wantedM) / (1 + wantedM);
    });
  },
  also: [
    {
      what: 'plates',
      unit: 'plates miscounted',
      tolerance: 0,
      run: () =>
        stacks().map((the) => {
          const found = spreaderCount(thickness(the), metresOf(the.everyMils), the.rule);
          return Math.abs(found - platesOf(the));
        }),
    },
  ],
};
