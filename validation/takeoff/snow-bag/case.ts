import type { HouseRules } from '#house';
import { known, unknownValue } from '#house';
import { kilograms, metres, POUND } from '#quantities';
import type { Item } from '#show';
import { takeOff, withReleases } from '#takeoff';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

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

const states = () => {
  const found = withReleases(SNOW_BAG, takeOff(SNOW_BAG, RULES), RULES);
  if (!found.known) throw new Error(found.needs.join('; '));
  return found.value;
};

export const theCase: ValidationCase = {
  id: 'VAL-TKO-14',
  title: 'A snow bag before and after the snow has fallen',
  calculation: 'takeoff',
  unit: 'lb',
  tolerance: 1e-6,
  run: () => {
    const found = states().flatMap(({ carried }) =>
      carried.kind === 'clear' ? [carried.mass, carried.uncertainty ?? Number.NaN] : [],
    );
    const wantedLb = [60, 15, 32, 15.56];
    return wantedLb.map((lb, index) => Math.abs((found[index] ?? Number.NaN) / POUND - lb));
  },
  also: [
    {
      what: 'what has fallen',
      unit: 'states unlike',
      tolerance: 0,
      run: () => [
        unlike(
          states().map(({ released }) => released),
          [[], ['snow falls']],
        ),
      ],
    },
  ],
};
