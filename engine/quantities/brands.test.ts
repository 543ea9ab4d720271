import { describe, expect, it } from 'vitest';
import { kilograms, metres, newtons } from './brands.ts';
import { massToWeight, weightToMass } from './conversions.ts';

describe('makers', () => {
  it('give the number back', () => {
    expect(metres(7.48)).toBe(7.48);
    expect(newtons(-12)).toBe(-12);
  });

  it.each([Number.NaN, Infinity, -Infinity])('throw on %s', (n) => {
    expect(() => kilograms(n)).toThrow('kilograms must be a finite number');
  });

  it('turn a negative zero into zero', () => {
    expect(Object.is(newtons(-0), 0)).toBe(true);
  });
});

describe('mass and weight', () => {
  it('100 kg weigh 980.665 N', () => {
    expect(massToWeight(kilograms(100))).toBeCloseTo(980.665, 12);
  });

  it('980.665 N are the weight of 100 kg', () => {
    expect(weightToMass(newtons(980.665))).toBeCloseTo(100, 12);
  });
});
