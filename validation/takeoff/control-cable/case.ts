import type { ValidationCase } from '../../form.ts';
import { outside } from '../../unlike.ts';
import { takenOff, typed } from '../asking.ts';

const CABLES = [
  { cores: 19, mm2: 1.5, kgPerKm: 590, wantedKg: 8.85 },
  { cores: 3, mm2: 1.5, kgPerKm: 190, wantedKg: 2.85 },
  { cores: 3, mm2: 2.5, kgPerKm: 250, wantedKg: 3.75 },
  { cores: 5, mm2: 2.5, kgPerKm: 350, wantedKg: 5.25 },
  { cores: 12, mm2: 1.5, kgPerKm: 465, wantedKg: 6.975 },
  { cores: 24, mm2: 1.5, kgPerKm: 740, wantedKg: 11.1 },
];
const COPPER = 8960;
const LENGTH_M = 15;

const loomOf = ({ kgPerKm }: { readonly kgPerKm: number }) => {
  const { mass, carried } = takenOff({
    kind: 'loom',
    basis: 'published',
    carriedAs: 'loom',
    length: LENGTH_M,
    massPerLength: typed('massPerLength', `${kgPerKm} g/m`),
    fixedAt: 11,
  });
  if (mass === null || carried?.kind !== 'loom') throw new Error('no loom');
  return { massKg: mass.mass, carriedKg: carried.massPerLength * carried.length };
};

export const theCase: ValidationCase = {
  id: 'VAL-TKO-09',
  title: 'Looms of control cable, and the copper in them',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 1e-9,
  run: () => CABLES.map((cable) => Math.abs(loomOf(cable).massKg / cable.wantedKg - 1)),
  also: [
    {
      what: 'more than its copper, less than five times that',
      unit: 'kg outside',
      tolerance: 0,
      run: () =>
        CABLES.map((cable) => {
          const copperKg = cable.cores * cable.mm2 * 1e-6 * LENGTH_M * COPPER;
          return outside(loomOf(cable).massKg, copperKg, 5 * copperKg);
        }),
    },
    {
      what: 'what it hands to the balance',
      unit: 'kg',
      tolerance: 5e-10,
      run: () => CABLES.map((cable) => Math.abs(loomOf(cable).carriedKg - cable.wantedKg)),
    },
  ],
};
