import { POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const ROLLS = [
  { cloth: '8 oz/lin yd @ 54 in', byHandLb: 50, quotedLb: 55 },
  { cloth: '16 oz/lin yd @ 54 in', byHandLb: 100, quotedLb: 100 },
];

const rollLb = (cloth: string): number =>
  totalKg({
    kind: 'cloth',
    basis: 'published',
    width: typed('length', '54 in'),
    drop: typed('length', '100 yd'),
    areaMass: typed('massPerArea', cloth),
    fullness: 0,
    ...BARE,
  }) / POUND;

export const theCase: ValidationCase = {
  id: 'VAL-TKO-02',
  title: 'Whole rolls of cloth against the mass that the trade quotes for them',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 0.1,
  run: () => ROLLS.map(({ cloth, quotedLb }) => Math.abs(rollLb(cloth) - quotedLb) / quotedLb),
  also: [
    {
      what: 'masses worked by hand',
      unit: 'relative',
      tolerance: 5e-10,
      run: () => ROLLS.map(({ cloth, byHandLb }) => Math.abs(rollLb(cloth) / byHandLb - 1)),
    },
  ],
};
