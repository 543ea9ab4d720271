import { expect, it } from 'vitest';
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
import { record } from '../../record.ts';

const TOLERANCE = 1e-7;

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

it('VAL-HSE-07 windows are the exact ones for every stack, and none where there is none', () => {
  const places = SETS.flatMap((set) => FLOORS.map((floor) => ({ ...set, floor })));
  const counts = { single: 0, none: 0 };
  const errors = places.flatMap((place) =>
    Array.from({ length: 56 }, (_, plates) => {
      const [wanted, window] = [exactWindow(place, plates), found(place, plates)];
      if (wanted === null || window === null) {
        counts.none += 1;
        expect([place, plates, window]).toEqual([place, plates, wanted]);
        return 0;
      }
      if (compare(...wanted) === 0) counts.single += 1;
      return Math.max(
        Math.abs(window.from / FOOT - asNumber(wanted[0])),
        Math.abs(window.to / FOOT - asNumber(wanted[1])),
      );
    }),
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-07', worst, tolerance: TOLERANCE, unit: 'ft', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(counts).toEqual({ single: 1, none: 10 });
});
