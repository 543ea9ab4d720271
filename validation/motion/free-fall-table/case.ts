import type { Fall } from '#motion';
import { dropped } from '#motion';
import { FOOT, POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const fallOf = (mass: number, from: number): Fall => {
  const [deck] = dropped({
    mass,
    from,
    speed: 0,
    bounce: { least: 0, shareOfFall: 0 },
    levels: [{ name: 'deck', height: 0 }],
  });
  if (deck === undefined) throw new Error('it falls on no level');
  return deck.free;
};

const inDigits = (found: number, wanted: number, digits: number): number =>
  Math.abs(found - wanted) / 10 ** -digits;

/** Fall in m, speed in m/s, time in s, energy of 1 kg in J. */
const METRIC = [
  [3, 7.671, 0.782, 29.42],
  [5, 9.903, 1.01, 49.033],
  [6, 10.848, 1.106, 58.84],
  [8, 12.526, 1.277, 78.453],
  [10, 14.005, 1.428, 98.066],
  [12, 15.341, 1.564, 117.68],
  [15, 17.152, 1.749, 147.1],
  [18, 18.789, 1.916, 176.52],
  [20, 19.806, 2.02, 196.133],
  [25, 22.143, 2.258, 245.166],
] as const;

const MASSES_KG = [1, 5, 10, 12.5, 20] as const;

/** Energies of those masses in J, for the first and last falls of the table. */
const ENERGIES = [
  [3, [29.4, 147.1, 294.2, 367.7, 588.4]],
  [12, [117.7, 588.4, 1176.8, 1471, 2353.6]],
  [25, [245.2, 1225.8, 2451.7, 3064.6, 4903.3]],
] as const;

/** Fall in ft, speed in ft/s, time in s. */
const FEET = [
  [20, 35.87, 1.115],
  [30, 43.94, 1.366],
  [40, 50.73, 1.577],
  [50, 56.72, 1.763],
  [60, 62.14, 1.931],
  [70, 67.11, 2.086],
] as const;

/** Gallery in ft, speed in m/s, energy in J of a brick of 25 lb. */
const BRICKS = [
  [58, 18.6, 1966],
  [38, 15.1, 1288],
] as const;

const tables = (): readonly number[] => [
  ...METRIC.flatMap(([fallM, v, t, energyJ]) => {
    const { speed, time, energy } = fallOf(1, fallM);
    return [inDigits(speed, v, 3), inDigits(time, t, 3), inDigits(energy, energyJ, 3)];
  }),
  ...ENERGIES.flatMap(([fallM, energiesJ]) =>
    MASSES_KG.map((massKg, at) =>
      inDigits(fallOf(massKg, fallM).energy, energiesJ[at] ?? Number.NaN, 1),
    ),
  ),
  ...FEET.flatMap(([fallFt, v, t]) => {
    const { speed, time } = fallOf(1, fallFt * FOOT);
    return [inDigits(speed / FOOT, v, 2), inDigits(time, t, 3)];
  }),
  ...BRICKS.flatMap(([fallFt, v, energyJ]) => {
    const { speed, energy } = fallOf(25 * POUND, fallFt * FOOT);
    return [inDigits(speed, v, 1), inDigits(energy, energyJ, 0)];
  }),
];

/** Times of falls of 1, 4, 9 ... lengths: each is one unit of time later. */
const oddNumbers = (): readonly number[] =>
  [1, 2, 3, 4, 5].map((step) => {
    const [one, so] = [fallOf(1, 0.7).time, fallOf(1, 0.7 * step ** 2).time];
    return Math.abs(so / one / step - 1);
  });

export const theCase: ValidationCase = {
  id: 'VAL-MOT-06',
  title: 'Free fall, as Galileo has it and as a table',
  calculation: 'motion',
  unit: 'last digits printed',
  // A figure that ends just on the half may be rounded either way.
  tolerance: 0.505,
  run: tables,
  also: [{ what: 'odd numbers', unit: 'relative', tolerance: 1e-12, run: oddNumbers }],
};
