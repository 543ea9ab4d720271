import { describe, expect, it } from 'vitest';
import type { HouseRules } from '#house';
import { known, unknownValue } from '#house';
import { kilograms, metres, POUND } from '#quantities';
import type { Item } from '#show';
import { takeOff, withReleases } from '#takeoff';
import { record } from '../../record.ts';

const RULES: Pick<HouseRules, 'toleranceByBasis'> = {
  toleranceByBasis: { estimated: 0.25, weighed: 0.02 },
};
const estimated = { basis: 'estimated' } as const;
const SNOW_BAG: Item = {
  id: 'bag',
  name: 'Snow bag',
  kind: 'clear',
  takeoff: { by: 'mass', mass: known(kilograms(60 * POUND), estimated), hem: null },
  drop: known(metres(0.9), estimated),
  pick: known(metres(0), estimated),
  centre: unknownValue(),
  placement: null,
  releases: [{ mass: known(kilograms(28 * POUND), { basis: 'weighed' }), how: 'snow falls' }],
  carriesPerson: false,
};

describe('VAL-TKO-14 a snow bag', () => {
  it('hangs 60 lb before and 32 lb after', () => {
    const states = withReleases(SNOW_BAG, takeOff(SNOW_BAG, RULES), RULES);
    if (!states.known) throw new Error(states.needs.join('; '));
    const found = states.value.flatMap(({ carried }) =>
      carried.kind === 'clear' ? [carried.mass, carried.uncertainty ?? Number.NaN] : [],
    );
    const wantedLb = [60, 15, 32, 15.56];
    const errors = wantedLb.map((lb, index) => Math.abs((found[index] ?? Number.NaN) / POUND - lb));
    record({
      id: 'VAL-TKO-14',
      worst: Math.max(...errors),
      tolerance: 1e-6,
      unit: 'lb',
      cases: errors.length,
    });
    expect(states.value.map(({ released }) => released)).toEqual([[], ['snow falls']]);
  });
});
