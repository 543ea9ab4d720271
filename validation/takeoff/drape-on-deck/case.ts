import type { TakeoffQuestion } from '#takeoff';
import type { ValidationCase } from '../../form.ts';
import { BARE, takenOff, totalKg } from '../asking.ts';

const drape = (drop: number): TakeoffQuestion => ({
  kind: 'cloth',
  basis: 'published',
  carriedAs: 'cloth',
  pick: 0,
  width: 15,
  drop,
  areaMass: 0.475,
  fullness: 0.5,
  ...BARE,
});

const carriedCloth = () => {
  const { carried } = takenOff({ ...drape(7), bottomMassPerLength: 0.62 } as TakeoffQuestion);
  if (carried?.kind !== 'cloth') throw new Error('the drape is not carried as a cloth');
  return carried;
};

export const theCase: ValidationCase = {
  id: 'VAL-TKO-04',
  title: 'What leaves the batten when three metres of the drape lie on the deck',
  calculation: 'takeoff',
  unit: 'kg',
  tolerance: 0.005,
  run: () => {
    const carried = carriedCloth();
    return [
      Math.abs((carried.mass * 3) / carried.drop - 32.06),
      Math.abs(totalKg(drape(7)) - totalKg(drape(4)) - 32.06),
      Math.abs(carried.hem - 9.3),
    ];
  },
  also: [
    {
      what: 'cloth and chain, unrounded',
      unit: 'kg',
      tolerance: 5e-10,
      run: () => [Math.abs(carriedCloth().mass + carriedCloth().hem - (74.8125 + 9.3))],
    },
  ],
};
