import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { takenOff } from '../asking.ts';

const TIMBER = 1.42;
const answer = takenOff({
  kind: 'frame',
  basis: 'calculated',
  carriedAs: 'tipping',
  drop: 4,
  pick: 0.3,
  members: [
    { name: 'stile', count: 2, z: 2, length: 4, massPerLength: TIMBER },
    { name: 'bottom rail', count: 1, z: 0, length: 2, massPerLength: TIMBER },
    { name: 'top rail', count: 1, z: 4, length: 2, massPerLength: TIMBER },
  ],
  sheets: [{ name: 'skin', count: 1, z: 2, area: 8, massPerArea: 4.37 }],
  hardware: [
    { name: 'cornice', count: 1, z: 3.8, each: 10 },
    { name: 'foot iron', count: 2, z: 0.1, each: 1.5 },
  ],
  allowance: 0.08,
});

describe('VAL-TKO-10 a flat with a heavy cornice', () => {
  it('has its mass and its centre where the hand puts them', () => {
    const centre = answer.centre ?? Number.NaN;
    const errors = [
      Math.abs((answer.mass?.mass ?? Number.NaN) / 70.2 - 1),
      Math.abs(centre / (142.3 / 260) - 1),
    ];
    record({
      id: 'VAL-TKO-10',
      worst: Math.max(...errors),
      tolerance: 1e-9,
      unit: 'relative',
      cases: errors.length,
    });
    expect(answer.carried).toMatchObject({ kind: 'tipping', centre, drop: 4, pick: 0.3 });
  });
});
