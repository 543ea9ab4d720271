import { describe, expect, it } from 'vitest';
import { openRegions } from './balance-regions.ts';
import type { Stretch } from './balance-subject.ts';

const end = (valueN: number) => ({ valueN, lowN: valueN, highN: valueN, doubtN: 0 });

const stretch = (fromM: number, fromN: number, toM: number, toN: number): Stretch => ({
  fromM,
  toM,
  from: end(fromN),
  to: end(toN),
});

describe('regions that the lock does not hold', () => {
  it('begin where the curve crosses the limit', () => {
    const [region] = openRegions([stretch(0, 0, 10, -200)], 100);
    expect(region).toMatchObject({ side: -1, fromM: 5, toM: 10, leastN: 100, mostN: 200 });
    expect(region?.crossesAt).toEqual([5]);
  });

  it('are one region over two stretches that touch, and two where the curve comes back', () => {
    const falling = [stretch(0, -150, 5, -180), stretch(5, -160, 9, -120)];
    expect(openRegions(falling, 100)).toHaveLength(1);
    const back = [stretch(0, -150, 4, -50), stretch(4, -50, 8, -150)];
    expect(openRegions(back, 100)).toHaveLength(2);
  });

  it('are told apart by side', () => {
    const both = openRegions([stretch(0, -150, 10, 150)], 100);
    expect(both.map(({ side }) => side)).toEqual([-1, 1]);
  });

  it('take the edge that a resting piece leaves open', () => {
    const resting: Stretch = {
      fromM: 0,
      toM: 2,
      from: { valueN: -20, lowN: -20, highN: 140, doubtN: 0 },
      to: { valueN: -20, lowN: -20, highN: 140, doubtN: 0 },
    };
    expect(openRegions([resting], 100)).toMatchObject([{ side: 1, fromM: 0, toM: 2, mostN: 140 }]);
  });

  it('are none on the limit itself, and none where no limit is known', () => {
    expect(openRegions([stretch(0, 100, 10, -100)], 100)).toEqual([]);
    expect(openRegions([stretch(0, -900, 10, 900)], null)).toEqual([]);
  });
});
