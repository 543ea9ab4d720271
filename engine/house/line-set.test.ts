import { describe, expect, it } from 'vitest';
import { purchaseOf, SUSPENSIONS } from './line-set.ts';

describe('purchaseOf', () => {
  it('is batten travel over arbor travel, and none where there is no arbor', () => {
    expect(SUSPENSIONS.map((suspension) => [suspension, purchaseOf(suspension)])).toEqual([
      ['singlePurchase', 1],
      ['doublePurchase', 2],
      ['motor', null],
      ['hemp', null],
      ['deadHung', null],
    ]);
  });

  it('stops at a suspension that it does not know', () => {
    expect(() => purchaseOf('magnet' as never)).toThrow('no case for "magnet"');
  });
});
