import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';
import { takenOff } from '../asking.ts';

const TIMBER = 1.42;
const answer = () =>
  takenOff({
    kind: 'frame',
    basis: 'calculated',
    carriedAs: 'tipping',
    drop: 4,
    pick: 0.3,
    members: [
      { name: 'stile', count: 2, z: 2, length: 4, massPerLength: TIMBER },
      { name: 'bottom rail', count: 1, z: 0, length: 2, massPerLength: TIMBER },
      { name: 'top rail', count: 1, z: 4, length: 2, massPerLength: TIMBER },
    ],
    sheets: [{ name: 'skin', count: 1, z: 2, area: 8, massPerArea: 4.37 }],
    hardware: [
      { name: 'cornice', count: 1, z: 3.8, each: 10 },
      { name: 'foot iron', count: 2, z: 0.1, each: 1.5 },
    ],
    allowance: 0.08,
  });

export const theCase: ValidationCase = {
  id: 'VAL-TKO-10',
  title: 'A flat with a heavy cornice: mass, and centre of gravity above the foot',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 1e-9,
  run: () => {
    const { mass, centre } = answer();
    return [
      Math.abs((mass?.mass ?? Number.NaN) / 70.2 - 1),
      Math.abs((centre ?? Number.NaN) / (142.3 / 260) - 1),
    ];
  },
  also: [
    {
      what: 'what it hands to the balance',
      unit: 'fields unlike',
      tolerance: 0,
      run: () => {
        const { carried, centre } = answer();
        if (carried?.kind !== 'tipping') return [1];
        return [unlike([carried.centre, carried.drop, carried.pick], [centre, 4, 0.3])];
      },
    },
  ],
};
