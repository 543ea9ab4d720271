import type { ValidationCase } from '../form.ts';
import { theCase as clothByRunningYard } from './cloth-by-running-yard/case.ts';
import { theCase as clothWeightTable } from './cloth-weight-table/case.ts';
import { theCase as feetAndInches } from './feet-and-inches/case.ts';
import { theCase as ouncesPerSquareYard } from './ounces-per-square-yard/case.ts';
import { theCase as steelTableUnits } from './steel-table-units/case.ts';
import { theCase as yardAndPound } from './yard-and-pound/case.ts';

export const quantitiesCases: readonly ValidationCase[] = [
  clothByRunningYard,
  clothWeightTable,
  feetAndInches,
  ouncesPerSquareYard,
  steelTableUnits,
  yardAndPound,
];
