import { describe, expect, it } from 'vitest';
import type { Item, Placement } from '#show';
import { CLOTH, exact, itemOf, massOfKg, UNITS } from './example-items.ts';
import { loadsAlongBatten } from './loads-along-batten.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: {} };
const loads = (item: Item) => loadsAlongBatten(item, takeOff(item, RULES));
const at = (...xs: number[]): Placement => ({ at: 'points', xs: xs as never });
const between = (from: number, to: number): Placement => ({
  at: 'spread',
  from: from as never,
  to: to as never,
});

describe('loads along the batten', () => {
  it('share a mass equally among its picks, in order across the stage', () => {
    expect(loads(itemOf(massOfKg(60), { placement: at(4, -4, 0) }))).toEqual({
      known: true,
      value: [
        { x: -4, massKg: 20 },
        { x: 0, massKg: 20 },
        { x: 4, massKg: 20 },
      ],
    });
  });

  it('spread a mass from end to end, whichever end is named first', () => {
    const spread = { known: true, value: [{ from: -5, to: 5, massKg: 60 }] };
    expect(loads(itemOf(massOfKg(60), { placement: between(-5, 5) }))).toEqual(spread);
    expect(loads(itemOf(massOfKg(60), { placement: between(5, -5) }))).toEqual(spread);
    expect(loads(itemOf(massOfKg(60), { placement: between(2, 2) }))).toEqual({
      known: true,
      value: [{ x: 2, massKg: 60 }],
    });
  });

  it('carry what is in the hem with the cloth', () => {
    const cloth = itemOf(CLOTH, { kind: 'cloth', drop: exact(5), placement: between(-5, 5) });
    expect(loads(cloth)).toMatchObject({
      value: [{ massKg: expect.closeTo(39.6, 10) }],
    });
  });

  it('hang units with their clamps at their own x and the rest where the item says', () => {
    expect(loads(itemOf(UNITS, { placement: between(-6, 6) }))).toEqual({
      known: true,
      value: [
        { x: -3, massKg: 8.5 },
        { x: 3, massKg: 8.5 },
        { from: -6, to: 6, massKg: 15 },
      ],
    });
  });

  it('are unknown where a part has no place, and say which', () => {
    expect(loads(itemOf(UNITS))).toEqual({
      known: false,
      needs: ['position across the stage of flood (placement): not given'],
    });
    expect(loads(itemOf(massOfKg(60))).known).toBe(false);
  });

  it('are unknown where the mass is', () => {
    const item = itemOf({ by: 'mass', mass: { known: false }, hem: null }, { placement: at(0) });
    expect(loads(item)).toEqual({ known: false, needs: ['mass (takeoff.mass): not given'] });
  });
});

describe('the centre across the stage', () => {
  const centre = (item: Item) => takeOff(item, RULES).centreX;

  it('is that of its loads', () => {
    // 12 at −3, 5 at +3 (its clamps none), 15 spread about 1.
    const units = [
      { name: 'profile', count: 1, each: exact<never>(12), clampEach: null, xs: [-3] as never },
      { name: 'flood', count: 1, each: exact<never>(5), clampEach: null, xs: [3] as never },
      { name: 'cable', count: 1, each: exact<never>(15), clampEach: null, xs: null },
    ];
    const item = itemOf({ by: 'units', units }, { placement: between(-1, 3) });
    expect(centre(item)).toEqual({ known: true, value: (-36 + 15 + 15) / 32 });
  });

  it('needs no mass where all of it goes by the placement', () => {
    const item = itemOf({ by: 'mass', mass: { known: false }, hem: null }, { placement: at(1, 4) });
    expect(centre(item)).toEqual({ known: true, value: 2.5 });
  });

  it('is unknown without a place, and without mass to weigh it by', () => {
    expect(centre(itemOf(massOfKg(60))).known).toBe(false);
    const units = [
      { name: 'lamp', count: 1, each: exact<never>(0), clampEach: null, xs: [3] as never },
    ];
    expect(centre(itemOf({ by: 'units', units }))).toEqual({
      known: false,
      needs: ['mass (takeoff): found 0'],
    });
  });
});
