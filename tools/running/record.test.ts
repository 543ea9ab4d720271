import { describe, expect, it } from 'vitest';
import { faultOf } from '../../validation/record.ts';

const MEASURED = { id: 'VAL-BAL-01', worst: 3e-10, tolerance: 1e-9, unit: 'N', cases: 41 };

describe('the record of a validation case', () => {
  it('takes a measurement', () => {
    expect(faultOf(MEASURED)).toBeUndefined();
  });

  it.each([
    { id: 'BAL-01' },
    { worst: Number.NaN },
    { worst: -1e-10 },
    { tolerance: Number.POSITIVE_INFINITY },
    { cases: 0 },
    { unit: ' ' },
    { worst: 1.1e-9 },
  ])('refuses %o', (change) => {
    expect(faultOf({ ...MEASURED, ...change })).toBeDefined();
  });
});
