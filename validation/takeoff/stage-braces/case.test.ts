import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
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

describe('VAL-TKO-11 brace weights', () => {
  it('agree in pounds and in kilograms', () => {
    const errorKg = Math.abs(bracesKg('28 lb') - bracesKg('12.6 kg')) / PIECES;
    record({ id: 'VAL-TKO-11', worst: errorKg, tolerance: 0.2268, unit: 'kg', cases: 1 });
    expect(bracesKg('12.6 kg')).toBeCloseTo(126, 9);
  });
});
