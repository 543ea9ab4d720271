import type { Dimension } from '#quantities';
import {
  FOOT,
  GRAVITY,
  INCH,
  kilograms,
  massToWeight,
  OUNCE,
  POUND,
  POUND_FORCE,
  parseQuantity,
  YARD,
} from '#quantities';
import type { ValidationCase } from '../../form.ts';

const value = (dimension: Dimension, text: string): number => {
  const answer = parseQuantity(dimension, text);
  return answer.ok ? answer.value : Number.NaN;
};

const exactly = (): readonly number[] => [
  value('length', '1 yd') - 0.9144,
  value('length', '1 ft') - 0.3048,
  value('length', '1 in') - 0.0254,
  value('mass', '1 lb') - 0.45359237,
  value('mass', '1 oz') - 0.028349523125,
  massToWeight(kilograms(POUND)) - POUND_FORCE,
];

const constants = (): readonly number[] => [
  YARD - 0.9144,
  FOOT - 0.3048,
  INCH - 0.0254,
  POUND - 0.45359237,
  OUNCE - 0.028349523125,
  GRAVITY - 9.80665,
];

export const theCase: ValidationCase = {
  id: 'VAL-QTY-04',
  title: 'The yard, the pound and the pound-force',
  calculation: 'quantities',
  unit: 'relative',
  tolerance: 1e-15,
  run: () => [...exactly().map(Math.abs), Math.abs(value('force', '1 lbf') / 4.4482216152605 - 1)],
  also: [
    {
      what: 'what is exact by definition, to the last bit',
      unit: 'm, kg, N or m/s²',
      tolerance: 0,
      run: () => [...exactly(), ...constants()].map(Math.abs),
    },
  ],
};
