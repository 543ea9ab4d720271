import { describe, expect, it } from 'vitest';
import { TAKEOFF_KINDS } from '#show';
import {
  CLOTH,
  FRAME,
  given,
  HARDWARE,
  itemOf,
  LOOM,
  massOfKg,
  PIPE,
  UNITS,
} from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: {} };
const ALL = [massOfKg(60, 5), CLOTH, FRAME, UNITS, LOOM, PIPE, HARDWARE];

describe('a take-off', () => {
  it('is there for every kind', () => {
    expect(ALL.map(({ by }) => by)).toEqual([...TAKEOFF_KINDS]);
  });

  it.each(ALL)('of $by adds up: its lines are its total', (takeoff) => {
    const { lines, total } = takeOff(itemOf(takeoff), RULES);
    const sum = lines.reduce((massKg, line) => massKg + (line.totalKg ?? Number.NaN), 0);
    expect(total.known && total.value.massKg).toBeCloseTo(sum, 12);
  });

  it.each(ALL)('of $by has a working whose result is its mass', (takeoff) => {
    const { mass, working } = takeOff(itemOf(takeoff), RULES);
    expect(working.result.value?.value).toBe(mass.known && mass.value.massKg);
    expect(working.terms.length).toBeGreaterThan(0);
    const symbols = working.formula.split(' ').filter((token) => /^[^\d()·+/]/.test(token));
    expect(new Set(symbols)).toEqual(new Set(working.terms.map(({ symbol }) => symbol)));
  });

  it('says what is missing for the mass apart from what is missing for its uncertainty', () => {
    const unsure = takeOff(itemOf(massOfKg(60)), RULES);
    expect(unsure.needs).toEqual([]);
    expect(unsure.toleranceNeeds).toEqual([
      'tolerance of the mass (takeoff.mass): none given, and the house sets none for what is ' +
        'weighed',
    ]);
  });

  it('brings out every value it did not take, each once', () => {
    const item = itemOf(
      { ...CLOTH, areaMass: given(-1), paint: given(5) },
      { drop: given(-3), placement: { at: 'points', xs: [] } },
    );
    expect(takeOff(item, RULES).faults.map(({ code, path }) => [code, path])).toEqual([
      ['TKO-001', 'takeoff.areaMass'],
      ['TKO-001', 'drop'],
      ['TKO-004', 'takeoff.paint'],
      ['TKO-006', 'placement'],
    ]);
  });
});
