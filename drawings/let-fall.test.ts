import { describe, expect, it } from 'vitest';
import { POUND } from '#quantities';
import type { OrderBrick } from '#state';
import { letFall } from './let-fall.ts';

const brick = (id: string, massKg: number): OrderBrick => ({
  id,
  massKg,
  thicknessM: 0.03,
  looksLike: [],
  atBattenN: massKg * 9.80665,
});

describe('energy as bricks let fall', () => {
  it('is one brick over the height whose m·g·h is the energy, by hand: 25 lb over 1 m', () => {
    // 25 lb is 11.33980925 kg (exact), so one metre is 111.20554 J.
    const fall = letFall(111.20554, [brick('F', 25 * POUND)]);
    expect(fall).toMatchObject({ kind: 'F', count: 1 });
    expect(fall?.fallM).toBeCloseTo(1, 6);
  });

  it('takes the largest kind of the house, whatever its place', () => {
    const bricks = [brick('H', 6), brick('F', 12), brick('O', 10)];
    expect(letFall(100, bricks)?.kind).toBe('F');
  });

  it('takes more bricks where one would fall further than 20 m, and no more than it takes', () => {
    const [one, two] = [20, 20.01].map((fallM) => letFall(10 * 9.80665 * fallM, [brick('F', 10)]));
    expect(one?.count).toBe(1);
    expect(two?.count).toBe(2);
    expect(two?.fallM).toBeCloseTo(10.005, 9);
  });

  it('is nothing where nothing is free, or no kind of brick is known', () => {
    expect(letFall(0, [brick('F', 10)])).toBeNull();
    expect(letFall(100, [])).toBeNull();
  });
});
