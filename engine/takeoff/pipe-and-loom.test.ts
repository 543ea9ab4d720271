import { describe, expect, it } from 'vitest';
import { itemOf, LOOM, PIPE } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: {} };

describe('the take-off of a second pipe', () => {
  it('is its length and its fittings', () => {
    const { mass, lines, working } = takeOff(itemOf(PIPE), RULES);
    expect(mass.known && mass.value.massKg).toBe(41.5);
    expect(lines.map(({ name, totalKg }) => [name, totalKg])).toEqual([
      ['pipe', 40],
      ['fittings', 1.5],
    ]);
    expect(working.formula).toBe('ℓ · w + k');
  });

  it('has no fittings where it says none, and is blocked where they are unknown', () => {
    const bare = takeOff(itemOf({ ...PIPE, fittings: null }), RULES);
    expect(bare.mass.known && bare.mass.value.massKg).toBe(40);
    expect(bare.working.formula).toBe('ℓ · w');
    const unsure = takeOff(itemOf({ ...PIPE, fittings: { known: false } }), RULES);
    expect(unsure.needs).toEqual([
      'fittings of the pipe (takeoff.fittings): not given; write 0 kg if there is none',
    ]);
  });
});

describe('the take-off of a loom', () => {
  it('is its full length, whatever of it hangs', () => {
    const { mass, lines } = takeOff(itemOf(LOOM), RULES);
    expect(mass.known && mass.value.massKg).toBeCloseTo(8.85, 12);
    expect(lines.map(({ name }) => name)).toEqual(['cable, full length']);
  });

  it('needs no fixed end for its mass', () => {
    const { mass } = takeOff(itemOf({ ...LOOM, fixedAt: { known: false } }), RULES);
    expect(mass.known).toBe(true);
  });
});
