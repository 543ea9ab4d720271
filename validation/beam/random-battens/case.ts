import type { ValidationCase } from '../../form.ts';
import { trials } from '../random-trials.ts';

const SEED = 20_302;
const COUNT = 60;

export const theCase: ValidationCase = {
  id: 'VAL-BEM-15',
  title: 'Random battens: no number for a mechanism, one for all others',
  calculation: 'beam',
  unit: 'faults',
  tolerance: 0,
  run: () => [trials(COUNT, SEED).faults.length],
};
