import { POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const drapeKg = (cloth: string): number =>
  totalKg({
    kind: 'cloth',
    basis: 'published',
    width: typed('length', '24 ft'),
    drop: typed('length', '20 ft'),
    areaMass: typed('massPerArea', cloth),
    fullness: typed('ratio', '50 %'),
    ...BARE,
  });

const RUNNING = '25 oz/lin yd @ 54 in';

export const theCase: ValidationCase = {
  id: 'VAL-TKO-01',
  title: 'A drape of 24 ft by 20 ft from its weight per running yard',
  calculation: 'takeoff',
  unit: 'lb or kg',
  tolerance: 0.05,
  run: () => {
    const massKg = drapeKg(RUNNING);
    return [
      Math.abs(massKg / POUND - 83.3),
      Math.abs(massKg - 37.8),
      Math.abs(drapeKg('25 oz/yd²') / POUND - 125),
    ];
  },
  also: [
    {
      what: 'unrounded, 250/3 lb',
      unit: 'lb',
      tolerance: 5e-10,
      run: () => [Math.abs(drapeKg(RUNNING) / POUND - 250 / 3)],
    },
  ],
};
