import { describe, expect, it } from 'vitest';
import { integralFromRoot } from './quadrature.ts';

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

describe('an integral from a root', () => {
  // Points so near the end that x is lost carry some 1e-18 of the whole; the rest is rounding.
  it.each([
    ['1/√x over 4', (x: number) => 1 / Math.sqrt(x), 4, 4],
    ['√x over 9', Math.sqrt, 9, 18],
    ['1/√(x·(1 + x)) over 1', (x: number) => 1 / Math.sqrt(x * (1 + x)), 1, 2 * Math.asinh(1)],
    ['e^x over 1', Math.exp, 1, Math.E - 1],
    ['a constant', () => 3, 2, 6],
  ])('is exact to rounding: %s', (_what, f, length, wanted) => {
    expect(relative(integralFromRoot(f, length), wanted)).toBeLessThanOrEqual(1e-14);
  });

  it('stands a root a millionth of the length before its start', () => {
    const early = 1e-6;
    const found = integralFromRoot((x) => 1 / Math.sqrt(x + early), 1);
    const wanted = 2 * (Math.sqrt(1 + early) - Math.sqrt(early));
    expect(relative(found, wanted)).toBeLessThanOrEqual(1e-10);
  });
});
