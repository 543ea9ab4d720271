import { describe, expect, it } from 'vitest';
import { exact, given, itemOf, LOOM, massOfKg } from './example-items.ts';
import { dropOf, givenCentreOf, pickOf, sizeFaults } from './item-sizes.ts';

describe('the sizes of an item', () => {
  it('are read from the item', () => {
    const item = itemOf(massOfKg(1), { centre: exact(0.46) });
    expect([dropOf(item).value, pickOf(item).value, givenCentreOf(item).value]).toEqual([
      2, 0.5, 0.46,
    ]);
    expect(sizeFaults(item)).toEqual([]);
  });

  it('say what is missing, and that no picks are written down too', () => {
    const item = itemOf(massOfKg(1), { drop: { known: false }, pick: { known: false } });
    expect(dropOf(item).needs).toEqual([
      'drop, from its top to its lowest point (drop): not given',
    ]);
    expect(pickOf(item).needs).toEqual([
      'length of picks or ties, from batten to its top (pick): not given; ' +
        'write 0 m if there is none',
    ]);
  });

  it('are all judged at once, the end of a loom among them', () => {
    const item = itemOf(
      { ...LOOM, fixedAt: given(-1) },
      { drop: given(-1), pick: given(-1), centre: given(1.01) },
    );
    expect(sizeFaults(item).map(({ path }) => path)).toEqual([
      'drop',
      'pick',
      'centre',
      'takeoff.fixedAt',
    ]);
  });

  it('take a centre at the foot and at the top', () => {
    expect(givenCentreOf(itemOf(massOfKg(1), { centre: exact(0) })).value).toBe(0);
    expect(givenCentreOf(itemOf(massOfKg(1), { centre: exact(1) })).value).toBe(1);
  });
});
