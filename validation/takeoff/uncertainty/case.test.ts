import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { BARE, takenOff } from '../asking.ts';

const pieces = takenOff({
  kind: 'hardware',
  basis: 'estimated',
  lines: [
    { name: 'bracket', count: 1, each: { value: 30, tolerance: 3 } },
    { name: 'motor', count: 2, each: { value: 20, tolerance: 2 } },
    { name: 'sign', count: 1, each: { value: 60, relative: 0.2 } },
  ],
}).mass;

const cloth = takenOff({
  kind: 'cloth',
  basis: 'measured',
  // What is none is exactly none.
  toleranceByBasis: { measured: 0 },
  areaMass: { value: 0.4, relative: 0.05 },
  width: { value: 10, tolerance: 0.1 },
  drop: { value: 5, relative: 0.02 },
  fullness: 0,
  ...BARE,
}).mass;

describe('VAL-TKO-12 what a take-off may be off by', () => {
  it('is what the hand makes of it', () => {
    const found = [
      pieces?.uncertainty,
      pieces?.uncertaintyRss,
      cloth?.uncertainty,
      cloth?.uncertaintyRss,
    ];
    const wanted = [19, 13, 1.6342, 1.095445];
    const errors = found.map((massKg, index) =>
      Math.abs((massKg ?? Number.NaN) - (wanted[index] ?? Number.NaN)),
    );
    record({
      id: 'VAL-TKO-12',
      worst: Math.max(...errors),
      tolerance: 1e-6,
      unit: 'kg',
      cases: errors.length,
    });
    expect(pieces?.mass).toBe(130);
  });
});
