import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from './reckoned.ts';

describe('a reckoning', () => {
  it('has a value, or what is missing, and never both', () => {
    expect(reckoned(3)).toEqual({ known: true, value: 3 });
    expect(blocked(['mass of the batten'])).toEqual({
      known: false,
      needs: ['mass of the batten'],
    });
    expect('value' in blocked([])).toBe(false);
    expect('needs' in reckoned(null)).toBe(false);
  });
});
