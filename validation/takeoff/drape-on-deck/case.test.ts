import { describe, expect, it } from 'vitest';
import type { TakeoffQuestion } from '#takeoff';
import { record } from '../../record.ts';
import { BARE, takenOff, totalKg } from '../asking.ts';

const drape = (drop: number): TakeoffQuestion => ({
  kind: 'cloth',
  basis: 'published',
  carriedAs: 'cloth',
  pick: 0,
  width: 15,
  drop,
  areaMass: 0.475,
  fullness: 0.5,
  ...BARE,
});

describe('VAL-TKO-04 a drape with three metres on the deck', () => {
  it('takes 32.06 kg of cloth and 9.30 kg of chain off the batten', () => {
    const { carried } = takenOff({ ...drape(7), bottomMassPerLength: 0.62 } as TakeoffQuestion);
    if (carried?.kind !== 'cloth') throw new Error('the drape is not carried as a cloth');
    const errors = [
      Math.abs((carried.mass * 3) / carried.drop - 32.06),
      Math.abs(totalKg(drape(7)) - totalKg(drape(4)) - 32.06),
      Math.abs(carried.hem - 9.3),
    ];
    record({
      id: 'VAL-TKO-04',
      worst: Math.max(...errors),
      tolerance: 0.005,
      unit: 'kg',
      cases: errors.length,
    });
    expect(carried.mass + carried.hem).toBeCloseTo(74.8125 + 9.3, 9);
  });
});
