import type { ValidationCase } from '../../form.ts';
import { outside } from '../../unlike.ts';
import { totalKg } from '../asking.ts';

const SHEETS = [
  { thicknessMm: 4, kgPerM2: 2.65, sheetKg: 7.9 },
  { thicknessMm: 6.5, kgPerM2: 4.37, sheetKg: 13 },
  { thicknessMm: 9, kgPerM2: 6.38, sheetKg: 19 },
  { thicknessMm: 12, kgPerM2: 8.33, sheetKg: 24.8 },
  { thicknessMm: 15, kgPerM2: 10.35, sheetKg: 30.8 },
  { thicknessMm: 18, kgPerM2: 12.33, sheetKg: 36.7 },
  { thicknessMm: 21, kgPerM2: 14.28, sheetKg: 42.5 },
  { thicknessMm: 24, kgPerM2: 16.33, sheetKg: 48.6 },
];
const AREA_M2 = 1.22 * 2.44;

const sheetOf = (kgPerM2: number): number =>
  totalKg({
    kind: 'frame',
    basis: 'published',
    sheets: [{ name: 'birch ply', count: 1, area: AREA_M2, massPerArea: kgPerM2 }],
    allowance: 0,
  });

export const theCase: ValidationCase = {
  id: 'VAL-TKO-07',
  title: 'Sheets of birch ply against the masses of a data sheet',
  calculation: 'takeoff',
  unit: 'kg',
  tolerance: 0.04,
  run: () => SHEETS.map((sheet) => Math.abs(sheetOf(sheet.kgPerM2) - sheet.sheetKg)),
  also: [
    {
      what: 'density of the boards',
      unit: 'kg/m³ outside 650 to 710',
      tolerance: 0,
      run: () =>
        SHEETS.map(({ thicknessMm, kgPerM2 }) =>
          outside(sheetOf(kgPerM2) / AREA_M2 / (thicknessMm / 1000), 650, 710),
        ),
    },
  ],
};
