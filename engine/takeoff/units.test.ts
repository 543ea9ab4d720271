import { describe, expect, it } from 'vitest';
import { exact, given, HARDWARE, itemOf, UNITS } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: {} };

describe('the take-off of units', () => {
  it('adds units and clamps', () => {
    // 2 × (8 + 0.5) + 3 × 5 = 32 kg.
    const { mass, lines } = takeOff(itemOf(UNITS), RULES);
    expect(mass.known && mass.value.massKg).toBeCloseTo(32, 12);
    expect(lines.map(({ name, totalKg }) => [name, totalKg])).toEqual([
      ['profile', 16],
      ['clamp of profile', 1],
      ['flood', 15],
    ]);
  });

  it('is off by one tolerance for all units of a kind, since one number stands for them', () => {
    const units = [
      {
        name: 'profile',
        count: 12,
        each: given<never>(8, 'published', 0.5),
        clampEach: null,
        xs: null,
      },
    ];
    const { mass } = takeOff(itemOf({ by: 'units', units }), RULES);
    expect(mass.known && mass.value.uncertaintyKg).toBe(6);
    expect(mass.known && mass.value.uncertaintyRssKg).toBe(6);
  });

  it('keeps the positions that it was given, for unit and clamp alike', () => {
    const { lines } = takeOff(itemOf(UNITS), RULES);
    expect(lines.map(({ xs }) => xs)).toEqual([[-3, 3], [-3, 3], null]);
  });

  it('is blocked by a unit whose mass is unknown', () => {
    const units = [
      { name: 'mirror ball', count: 1, each: { known: false } as const, clampEach: null, xs: null },
    ];
    expect(takeOff(itemOf({ by: 'units', units }), RULES).needs).toEqual([
      'mass of one mirror ball (takeoff.units[0].each): not given',
    ]);
  });
});

describe('the take-off of hardware', () => {
  it('adds its lines', () => {
    const { mass, working } = takeOff(itemOf(HARDWARE), RULES);
    expect(mass.known && mass.value.massKg).toBeCloseTo(2.5, 12);
    expect(working.formula).toBe('m1 + m2');
  });

  it('weighs nothing where a line says so, and is blocked where there is no line', () => {
    const lines = [{ name: 'shackle', count: 0, each: exact<never>(1) }];
    const none = takeOff(itemOf({ by: 'hardware', lines }), RULES).mass;
    expect(none.known && none.value.massKg).toBe(0);
    expect(takeOff(itemOf({ by: 'hardware', lines: [] }), RULES).mass.known).toBe(false);
  });
});
