import { reachWindow } from '#house';
import { FOOT, INCH } from '#quantities';
import {
  asNumber,
  compare,
  type Exact,
  exact,
  greatest,
  least,
  minus,
  plus,
  times,
} from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';

const SETS = [
  { purchase: 1, pan: '59.5' },
  { purchase: 2, pan: '57' },
] as const;
const FLOORS = ['58', '38'] as const;

type Place = { readonly purchase: 1 | 2; readonly pan: string; readonly floor: string };

const exactWindow = (
  { purchase, pan, floor }: Place,
  plates: number,
): readonly [Exact, Exact] | null => {
  const stack = times(exact('0.1'), exact(String(plates)));
  const above = minus(plus(exact(pan), exact('0.25'), stack), exact(floor));
  const at = (reach: string): Exact =>
    plus(exact('3'), times(exact(String(purchase)), minus(above, exact(reach))));
  const [from, to] = [greatest(exact('3'), at('5.5')), least(exact('61'), at('0.25'))];
  return compare(from, to) > 0 ? null : [from, to];
};

const found = ({ purchase, pan, floor }: Place, plates: number) =>
  reachWindow(
    {
      purchase,
      panAtLowM: Number(pan) * FOOT,
      panThicknessM: 0.25 * FOOT,
      lowStopM: 3 * FOOT,
      highStopM: 61 * FOOT,
      galleryFloorM: Number(floor) * FOOT,
      reachLowM: 0.25 * FOOT,
      reachHighM: 5.5 * FOOT,
    },
    plates * 1.2 * INCH,
  );

const compared = () =>
  SETS.flatMap((set) => FLOORS.map((floor) => ({ ...set, floor }))).flatMap((place) =>
    Array.from({ length: 56 }, (_, plates) => ({
      wanted: exactWindow(place, plates),
      window: found(place, plates),
    })),
  );

export const theCase: ValidationCase = {
  id: 'VAL-HSE-07',
  title: 'Reach windows move with the stack',
  calculation: 'house',
  unit: 'ft',
  tolerance: 1e-7,
  run: () =>
    compared().map(({ wanted, window }) => {
      // A window where there is none, or none where there is one, is no small error.
      if (wanted === null || window === null)
        return wanted === window ? 0 : Number.POSITIVE_INFINITY;
      return Math.max(
        Math.abs(window.from / FOOT - asNumber(wanted[0])),
        Math.abs(window.to / FOOT - asNumber(wanted[1])),
      );
    }),
  also: [
    {
      what: 'the oracle has one window of one height and ten stacks without any',
      unit: 'windows',
      tolerance: 0,
      run: () => {
        const windows = compared().map(({ wanted }) => wanted);
        const single = windows.filter((window) => window !== null && compare(...window) === 0);
        const none = windows.filter((window) => window === null);
        return [Math.abs(single.length - 1), Math.abs(none.length - 10)];
      },
    },
  ],
};
