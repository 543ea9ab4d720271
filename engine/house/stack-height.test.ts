import { describe, expect, it } from 'vitest';
import { INCH } from '#quantities';
import { spreaderCount, stackHeight } from './stack-height.ts';

const EVERY = 24 * INCH;

describe('spreaderCount', () => {
  it.each([
    [0, 0, 0],
    [23.9, 0, 1],
    [24, 1, 1],
    [24.1, 1, 2],
    [47.9, 1, 2],
    [48, 2, 2],
    [66, 2, 3],
  ])('of %d in of bricks is %d counted down, %d counted up', (inches, down, up) => {
    expect(spreaderCount(inches * INCH, EVERY)).toBe(down);
    expect(spreaderCount(inches * INCH, EVERY, 'floor')).toBe(down);
    expect(spreaderCount(inches * INCH, EVERY, 'ceil')).toBe(up);
  });

  /** Stacks of one kind that are a whole number of spacings, summed brick by brick. */
  const WHOLE = [0.5, 0.6, 0.75, 1, 1.2, 1.25, 1.5, 2].flatMap((thickIn) =>
    Array.from({ length: 60 }, (_, index) => index + 1).flatMap((spacings) => {
      const bricks = (24 / thickIn) * spacings;
      if (!Number.isInteger(bricks)) return [];
      let sumM = 0;
      for (let brick = 0; brick < bricks; brick += 1) sumM += thickIn * INCH;
      return [{ sumM, spacings }];
    }),
  );

  it('neither gains nor loses a plate by rounding at a whole number of spacings', () => {
    const slipped = WHOLE.filter(({ sumM, spacings }) =>
      [spreaderCount(sumM, EVERY), spreaderCount(sumM, EVERY, 'ceil')].some(
        (count) => count !== spacings,
      ),
    );
    expect(slipped).toEqual([]);
  });

  it('needs that care: such sums do fall short of, and go past, their spacings', () => {
    expect(WHOLE.some(({ sumM, spacings }) => sumM / EVERY < spacings)).toBe(true);
    expect(WHOLE.some(({ sumM, spacings }) => sumM / EVERY > spacings)).toBe(true);
  });
});

describe('stackHeight', () => {
  const spreader = { thicknessM: 0.25 * INCH, everyM: EVERY };

  it('is bricks and plates', () => {
    const at = (inches: number) => stackHeight({ brickThicknessM: inches * INCH, spreader }) / INCH;
    expect(at(20)).toBeCloseTo(20, 9);
    expect(at(24)).toBeCloseTo(24.25, 9);
    expect(at(50)).toBeCloseTo(50.5, 9);
  });

  it('follows the house in how it counts plates', () => {
    const up = { ...spreader, rule: 'ceil' } as const;
    const found = stackHeight({ brickThicknessM: 20 * INCH, spreader: up });
    expect(found / INCH).toBeCloseTo(20.25, 9);
  });

  it('is bricks alone where the house has no plates', () => {
    expect(stackHeight({ brickThicknessM: 1.27, spreader: null })).toBe(1.27);
  });
});
