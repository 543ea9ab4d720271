import { POUND } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { totalKg, typed } from '../asking.ts';

const PIPES = [
  { name: '1-1/4 schedule 40', outsideIn: 1.66, wallIn: 0.14, lbPerFt: '2.273 lb/ft' },
  { name: '1-1/4 schedule 80', outsideIn: 1.66, wallIn: 0.191, lbPerFt: '2.997 lb/ft' },
  { name: '1-1/2 schedule 40', outsideIn: 1.9, wallIn: 0.145, lbPerFt: '2.718 lb/ft' },
  { name: '1-1/2 schedule 80', outsideIn: 1.9, wallIn: 0.2, lbPerFt: '3.631 lb/ft' },
  { name: '2 schedule 40', outsideIn: 2.375, wallIn: 0.154, lbPerFt: '3.653 lb/ft' },
  { name: '2 schedule 80', outsideIn: 2.375, wallIn: 0.218, lbPerFt: '5.022 lb/ft' },
];

const STEEL_LB_PER_FT3 = 490;
const LENGTH_FT = 10;

const geometryLb = (outsideIn: number, wallIn: number): number => {
  const insideIn = outsideIn - 2 * wallIn;
  const areaFt2 = (Math.PI / 4) * (outsideIn ** 2 - insideIn ** 2) * (1 / 144);
  return areaFt2 * LENGTH_FT * STEEL_LB_PER_FT3;
};

export const theCase: ValidationCase = {
  id: 'VAL-TKO-05',
  title: 'Steel pipe: published mass per length against its own geometry',
  calculation: 'takeoff',
  unit: 'relative',
  tolerance: 0.0015,
  run: () =>
    PIPES.map(({ name, outsideIn, wallIn, lbPerFt }) => {
      const massKg = totalKg({
        kind: 'pipe',
        name,
        basis: 'published',
        length: typed('length', `${LENGTH_FT} ft`),
        massPerLength: typed('massPerLength', lbPerFt),
      });
      const wantedLb = geometryLb(outsideIn, wallIn);
      return Math.abs(massKg / POUND - wantedLb) / wantedLb;
    }),
};
