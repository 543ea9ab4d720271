import type { ValidationCase } from '../../form.ts';
import { takenOff, typed } from '../asking.ts';

const PIECES = 10;
const bracesKg = (each: string): number => {
  const { mass } = takenOff({
    kind: 'hardware',
    basis: 'published',
    lines: [{ name: 'brace', count: PIECES, each: typed('mass', each) }],
  });
  return mass?.mass ?? Number.NaN;
};

export const theCase: ValidationCase = {
  id: 'VAL-TKO-11',
  title: 'Brace weights: the same piece in pounds and in kilograms',
  calculation: 'takeoff',
  unit: 'kg',
  tolerance: 0.2268,
  run: () => [Math.abs(bracesKg('28 lb') - bracesKg('12.6 kg')) / PIECES],
  also: [
    {
      what: 'ten of 12.6 kg',
      unit: 'kg',
      tolerance: 5e-10,
      run: () => [Math.abs(bracesKg('12.6 kg') - 126)],
    },
  ],
};
